namespace ShelfSafe.Pack;

/// <summary>Names of the lists of <c>rules/lists.csv</c> by which a recipe is rewritten for the jar; their words are folded and singular.</summary>
internal static class AdaptLists
{
    /// <summary>Verbs of the kitchen that begin a clause.</summary>
    public const string Verbs = "adapt-verbs";

    /// <summary>Verbs that wrap food that stays in food that goes.</summary>
    public const string Coating = "adapt-coating";

    /// <summary>Words before a food that go with it.</summary>
    public const string Describing = "adapt-describing";

    /// <summary>Words that say that a liquid is thick.</summary>
    public const string Thick = "adapt-thick";

    /// <summary>Words for a liquid that thickens.</summary>
    public const string Liquids = "adapt-liquids";

    /// <summary>Words for several foods at once, which may mean one that stays.</summary>
    public const string Several = "adapt-several";

    /// <summary>Words for what a food gives off, which its own name tells apart.</summary>
    public const string Rendered = "adapt-rendered";

    /// <summary>Verbs that add a food.</summary>
    public const string Adding = "adapt-adding";

    /// <summary>Verbs that add a food where <c>in</c> follows.</summary>
    public const string AddingIn = "adapt-adding-in";

    /// <summary>Words for what may be added without standing in the list: no food of its own, or in the jar anyway.</summary>
    public const string Free = "adapt-free";

    /// <summary>Verbs by which a sentence is about the table, whatever it names.</summary>
    public const string Serving = "adapt-serving";

    /// <summary>Words behind which a step of serving names what stands beside the dish.</summary>
    public const string Beside = "adapt-beside";

    /// <summary>Verbs of serving behind which foods may wait for the table.</summary>
    public const string Table = "adapt-table";

    /// <summary>Words of a step that may mean any food of the list.</summary>
    public const string Unnamed = "adapt-unnamed";

    /// <summary>Verbs that fill jars.</summary>
    public const string Filling = "adapt-filling";

    /// <summary>Words for closing jars.</summary>
    public const string Closing = "adapt-closing";

    /// <summary>Words for processing jars.</summary>
    public const string Processing = "adapt-processing";

    /// <summary>Words for heating closed jars.</summary>
    public const string Heating = "adapt-heating";

    /// <summary>Words for having jars ready.</summary>
    public const string Readying = "adapt-readying";

    /// <summary>Words for what follows the process.</summary>
    public const string Following = "adapt-following";

    /// <summary>All other words that a sentence may hold if the published steps are to stand in its place.</summary>
    public const string JarWords = "adapt-jar-words";

    /// <summary>Every one of them.</summary>
    public static readonly string[] All =
    [
        Verbs, Coating, Describing, Thick, Liquids, Several, Rendered, Adding, AddingIn, Free, Serving, Beside, Table, Unnamed,
        Filling, Closing, Processing, Heating, Readying, Following, JarWords,
    ];
}
