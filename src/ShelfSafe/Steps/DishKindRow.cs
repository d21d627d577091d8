using System.Collections.Immutable;
using ShelfSafe.Pack;

namespace ShelfSafe.Steps;

/// <summary>One row of <c>rules/dish-kinds.csv</c>; rows of one kind are alternatives.</summary>
/// <param name="Kind">Kind, or <c>@name</c> / <c>%name</c> for a list as in <c>step-facts.csv</c>.</param>
/// <param name="Words">Phrases of the title, parted by <c>;</c>.</param>
/// <param name="Foods">Alternatives parted by <c>|</c>, each of terms joined by <c>+</c>: a food id, <c>milk*</c> an id's beginning, <c>fact:baked</c> a step fact, <c>!</c> before a term for its absence.</param>
/// <param name="Unless">Exceptions for the words, as in <c>step-facts.csv</c>.</param>
/// <param name="NotAJar">yes, no, freeze, or closed: told by its foods even against the title, since only published recipes cover it.</param>
/// <param name="Line">Line in the table, from 1.</param>
internal sealed record DishKindRow(string Kind, string Words, ImmutableArray<ImmutableArray<string>> Foods, string Unless, string NotAJar, string Source, int Line)
{
    /// <summary>Path of the table in the pack.</summary>
    public const string File = "dish-kinds.csv";

    /// <summary>Name of the compiled rows in an image.</summary>
    public const string Compiled = "dish-rules";

    /// <summary>Reads or opens the table; what is wrong is added to the faults.</summary>
    public static RowTable<DishKindRow> Read(PackText text, List<PackFault> faults) => new(text, TableKeys.DishKinds, Row, faults);

    /// <summary>The words of the title as rows of step facts, one fact a row: its place in the table.</summary>
    public static IEnumerable<StepFactRow> Phrases(ImmutableArray<DishKindRow> rows) => rows.Select(static (row, at) => new StepFactRow(
        row.Kind[0] is '@' or '%' ? row.Kind : $"{at}", row.Words, row.Unless, string.Empty, string.Empty, row.Source, row.Line)).Where(static row => row.Pattern.Length > 0);

    private static DishKindRow Row(CsvRow row) => new(
        row.Text("kind"),
        row.Text("words"),
        [.. row.Text("foods").Split('|', StringSplitOptions.RemoveEmptyEntries).Select(terms => terms.Split('+', StringSplitOptions.TrimEntries).ToImmutableArray())],
        row.Text("unless"),
        row.Choice("not_a_jar", ("no", "no"), ("yes", "yes"), ("freeze", "freeze"), ("closed", "closed"), (string.Empty, string.Empty)),
        row.Text("source"),
        row.Line);
}
