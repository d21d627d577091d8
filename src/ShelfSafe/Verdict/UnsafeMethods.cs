using System.Collections.Concurrent;
using ShelfSafe.Core;
using ShelfSafe.Hazards;
using ShelfSafe.Pack;
using ShelfSafe.Steps;

namespace ShelfSafe.Verdict;

/// <summary>Methods that guidance rejects (<c>rules/unsafe-methods.csv</c>), by step fact.</summary>
internal sealed class UnsafeMethods
{
    private readonly RowTable<Row> _rows;
    private readonly Func<string, Row?> _find;
    private readonly ConcurrentDictionary<string, Row?> _ofFacts = new(StringComparer.Ordinal); // no more than the pack has facts

    /// <summary>Reads the table.</summary>
    public UnsafeMethods(PackText text, List<PackFault> faults)
    {
        _rows = new(text, TableKeys.UnsafeMethods, static row =>
        {
            FindingLevel level = Level(row, "level");
            FindingLevel dry = row.Text("level_dry").Length == 0 ? level : Level(row, "level_dry");
            return new Row(level, dry, row.Text("message"), row.Text("why"), row.Text("instead"), row.Text("source"));
        }, faults);
        _find = fact => _rows.First("fact", fact);
    }

    /// <summary>The finding for a step fact, or <see langword="null"/> where it is no unsafe method.</summary>
    /// <param name="acidity">Dry goods have levels of their own: without the method they keep all the same.</param>
    public RawFinding? Finding(StepFact fact, Acidity acidity) => _ofFacts.GetOrAdd(fact.Id, _find) is { } row
        ? new("unsafe-method", acidity == Acidity.Dry ? row.DryLevel : row.Level, null, null, [fact.Span], null, [row.Source])
        {
            Message = row.Message.Replace("{words}", fact.Words, StringComparison.Ordinal),
            Why = row.Why,
            Instead = row.Instead,
        }
        : null;

    private static FindingLevel Level(CsvRow row, string column) =>
        row.Choice(column, ("stop", FindingLevel.Stop), ("change", FindingLevel.Change), ("caution", FindingLevel.Caution), ("note", FindingLevel.Note));

    private sealed record Row(FindingLevel Level, FindingLevel DryLevel, string Message, string Why, string Instead, string Source);
}
