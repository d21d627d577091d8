using System.Collections.Immutable;

namespace ShelfSafe.Pack;

/// <summary>Short lists of traits, groups, kinds of dish and rules that a judgement reads as a set (<c>rules/lists.csv</c>).</summary>
/// <remarks>
/// An empty list would hear nothing, so a pack that lacks one of <see cref="All"/> is broken. Lists whose name begins with
/// <see cref="CardMark"/> belong to the cards alone: a check names them instead of saying their words.
/// </remarks>
internal sealed class RuleLists
{
    /// <summary>Begins the name of a list that cards name.</summary>
    public const string CardMark = "@";

    /// <summary>Traits that a spelling or a modifier may not take away from what was written.</summary>
    public const string KeptTraits = "kept-traits";

    /// <summary>Traits that make a food of the steps count though no list names it.</summary>
    public const string StepTraits = "step-traits";

    /// <summary>Traits of foods that are barred from jars where they are the body of the dish.</summary>
    public const string BodyTraits = "body-traits";

    /// <summary>Traits of food that is low in acid as soon as water is with it.</summary>
    public const string SwellingTraits = "swelling-traits";

    /// <summary>Traits of food that makes a batch wet.</summary>
    public const string WetTraits = "wet-traits";

    /// <summary>Step facts after which dry goods are dry no longer.</summary>
    public const string WetFacts = "wet-facts";

    /// <summary>Kinds of dish that rely on acid for keeping.</summary>
    public const string AcidKinds = "acid-kinds";

    /// <summary>Kinds of dish that take tomato and the like as their liquid.</summary>
    public const string StewKinds = "stew-kinds";

    /// <summary>Kinds of dish that stay dry though their tag tells how they are cooked later.</summary>
    public const string DryKinds = "dry-kinds";

    /// <summary>Kinds of dish that are dry once a step of <see cref="DryingFacts"/> took their water out.</summary>
    public const string DriedKinds = "dried-kinds";

    /// <summary>Step facts that take the water out of a dish of <see cref="DriedKinds"/>.</summary>
    public const string DryingFacts = "drying-facts";

    /// <summary>Traits of foods that count as dry in a dish of <see cref="DryKinds"/> with nothing wet in it.</summary>
    public const string DryAloneGroups = "dry-alone-groups";

    /// <summary>Rules whose change mends the food instead of leaving it out.</summary>
    public const string MendingRules = "mending-rules";

    /// <summary>Groups of foods of some bulk, which a title or a note may name.</summary>
    public const string BulkGroups = "bulk-groups";

    /// <summary>Groups of foods that make a strained broth a soup again.</summary>
    public const string SolidGroups = "solid-groups";

    /// <summary>Groups of foods that come in a shell of their own.</summary>
    public const string ShelledGroups = "shelled-groups";

    /// <summary>Groups of foods that the list must name where the steps put them in.</summary>
    public const string ListedGroups = "listed-groups";

    /// <summary>Groups of foods whose plain process was set for food in plain pieces.</summary>
    public const string PlainGroups = "plain-groups";

    /// <summary>Groups of foods by which no published process fails where a step adds some.</summary>
    public const string HarmlessGroups = "harmless-groups";

    /// <summary>Traits of foods that are asked all the same, though their group stands in <see cref="HarmlessGroups"/>.</summary>
    public const string AskedTraits = "asked-traits";

    /// <summary>Kinds of dish whose tested recipes are themselves sieved, blended or boiled down.</summary>
    public const string SmoothKinds = "smooth-kinds";

    /// <summary>Kinds of dish that one acid fruit makes as another does.</summary>
    public const string FruitKinds = "fruit-kinds";

    /// <summary>Step facts that tell what becomes of the food; of an opened jar they say nothing.</summary>
    public const string LaterFacts = "later-facts";

    /// <summary>Words in the line of an acid for a weaker or another one.</summary>
    public const string AcidLineDoubt = "acid-line-doubt";

    /// <summary>Words of a line that take more of its food than it measures.</summary>
    public const string LineMore = "line-more";

    /// <summary>Words before a second amount in brackets that stands in for the first.</summary>
    public const string AmountAgain = "amount-again";

    /// <summary>Words for what thickens, looked for in the steps of a published recipe.</summary>
    public const string ThickenerWords = "thickener-words";

    /// <summary>Every list that the program asks for.</summary>
    public static readonly string[] All =
    [
        KeptTraits, StepTraits, BodyTraits, SwellingTraits, WetTraits, WetFacts, AcidKinds, StewKinds, DryKinds, DriedKinds, DryingFacts, DryAloneGroups, MendingRules,
        BulkGroups, SolidGroups, ShelledGroups, ListedGroups, PlainGroups, HarmlessGroups, AskedTraits, SmoothKinds, FruitKinds, ThickenerWords, LaterFacts, AcidLineDoubt, AmountAgain, LineMore,
        .. AdaptLists.All,
    ];

    private readonly RowTable<Row> _rows;

    /// <summary>Opens the table.</summary>
    /// <param name="text">The table.</param>
    /// <param name="faults">Receives what is wrong with a table that is text.</param>
    public RuleLists(PackText text, List<PackFault> faults)
    {
        _rows = new(text, TableKeys.Lists, static row => new Row(row.Text("list"), row.Text("word"), row.Line), faults);
    }

    /// <summary>Number of rows.</summary>
    public int Count => _rows.Count;

    /// <summary>The words of a list.</summary>
    public RuleList Of(string list) => new(() => _rows.With("list", list).Select(static row => row.Word));

    /// <summary>The words of a list in the order of the table; none where there is no such list.</summary>
    public ImmutableArray<string> WordsOf(string list) => [.. _rows.With("list", list).Select(static row => row.Word)];

    /// <summary>Names of the lists that cards name.</summary>
    public IEnumerable<string> OfCards => _rows.All.Select(static row => row.List).Where(IsOfCards).Distinct(StringComparer.Ordinal);

    /// <summary>Whether a word of a card names a list.</summary>
    public static bool IsOfCards(string word) => word.StartsWith(CardMark, StringComparison.Ordinal);

    /// <summary>Adds a fault for a list that is missing or unknown, and for a trait, group or rule that no table has.</summary>
    public void Check(PackTables tables, List<PackFault> faults)
    {
        HashSet<string> traits = [.. tables.Foods.SelectMany(static food => food.Traits)];
        HashSet<string> groups = [.. tables.Foods.Select(static food => food.Group)];
        HashSet<string> rules = [.. tables.Hazards.Select(static card => card.Rule)];
        foreach (string list in All.Where(list => _rows.With("list", list).IsEmpty))
        {
            faults.Add(new(TableKeys.Lists.File, 1, 1, $"the list \"{list}\" is missing or empty"));
        }

        foreach (Row row in _rows.All)
        {
            HashSet<string>? known = row.List.EndsWith("-traits", StringComparison.Ordinal) ? traits
                : row.List.EndsWith("-groups", StringComparison.Ordinal) ? groups
                : row.List.EndsWith("-rules", StringComparison.Ordinal) ? rules
                : null;
            if (!IsOfCards(row.List) && !All.Contains(row.List, StringComparer.Ordinal))
            {
                faults.Add(new(TableKeys.Lists.File, row.Line, 1, $"the list \"{row.List}\" is not known; known lists: {string.Join(", ", All)}"));
            }
            else if (known?.Contains(row.Word) == false)
            {
                faults.Add(new(TableKeys.Lists.File, row.Line, row.List.Length + 2, $"no food or card has \"{row.Word}\""));
            }
        }
    }

    private sealed record Row(string List, string Word, int Line);
}
