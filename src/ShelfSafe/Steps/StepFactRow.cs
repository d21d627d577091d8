using ShelfSafe.Pack;

namespace ShelfSafe.Steps;

/// <summary>One row of <c>rules/step-facts.csv</c>; several rows of one fact are alternatives.</summary>
/// <remarks>
/// <paramref name="Fact"/> is a fact id, <c>@name</c> (a list of words) or <c>%name</c> (a list of phrases parted by <c>;</c>).
/// A pattern is a phrase, then conditions: <c>&amp; phrase</c> in the same sentence, <c>~ phrase</c> in the same or a neighbouring one, <c>^ phrase</c> anywhere in the recipe.
/// Exceptions are parted by <c>;</c>: a phrase in the same sentence, <c>&lt; phrase</c> just before the hit, <c>&lt;&lt; phrase</c> right before it,
/// <c>~ phrase</c> in the same or a neighbouring sentence, <c>^ phrase</c> anywhere in the recipe. The phrases: see <see cref="PhraseCompiler"/>.
/// </remarks>
/// <param name="ExampleHit">Texts that must give the fact, parted by <c> || </c>; sentences of a text by <c> / </c>. Run as a test.</param>
/// <param name="ExampleMiss">Texts that must not give the fact, parted likewise. Run as a test.</param>
/// <param name="Line">Line in the table, from 1.</param>
internal sealed record StepFactRow(string Fact, string Pattern, string Unless, string ExampleHit, string ExampleMiss, string Source, int Line)
{
    /// <summary>Path of the table in the pack.</summary>
    public const string File = "step-facts.csv";

    /// <summary>Name of the compiled rows in an image.</summary>
    public const string Compiled = "step-rules";

    /// <summary>The columns in order.</summary>
    public static readonly string[] Columns = ["fact", "pattern", "unless", "example_hit", "example_miss", "source"];

    /// <summary>Reads the table; what is wrong is added to the faults.</summary>
    public static List<StepFactRow> Read(PackText text, List<PackFault> faults) => CsvTable.Read(File, text, Columns, Row, faults);

    /// <summary>Whether the row only names words or phrases for other rows.</summary>
    public bool IsList => Fact.StartsWith('@') || Fact.StartsWith('%');

    /// <summary>The texts that must give the fact.</summary>
    public IReadOnlyList<string> Hits => Examples(ExampleHit);

    /// <summary>The texts that must not give it.</summary>
    public IReadOnlyList<string> Misses => Examples(ExampleMiss);

    private static string[] Examples(string cell) => cell.Split(" || ", StringSplitOptions.RemoveEmptyEntries);

    private static StepFactRow Row(CsvRow row) => new(
        row.Text("fact"),
        row.Text("pattern"),
        row.Text("unless"),
        row.Text("example_hit"),
        row.Text("example_miss"),
        row.Text("source"),
        row.Line);
}
