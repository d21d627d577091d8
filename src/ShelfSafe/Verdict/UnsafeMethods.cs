using ShelfSafe.Core;
using ShelfSafe.Hazards;
using ShelfSafe.Pack;
using ShelfSafe.Steps;

namespace ShelfSafe.Verdict;

/// <summary>Methods that guidance rejects (<c>rules/unsafe-methods.csv</c>), by step fact.</summary>
internal sealed class UnsafeMethods
{
    private readonly Dictionary<string, (FindingLevel Level, string Message, string Why, string Instead, string Source)> _rows = new(StringComparer.Ordinal);

    /// <summary>Reads the table.</summary>
    public UnsafeMethods(string text, List<PackFault> faults)
    {
        CsvTable.Read("unsafe-methods.csv", text, ["fact", "level", "message", "why", "instead", "source", "url", "status"], row =>
        {
            FindingLevel level = row.Choice("level", ("stop", FindingLevel.Stop), ("change", FindingLevel.Change), ("caution", FindingLevel.Caution), ("note", FindingLevel.Note));
            _rows[row.Text("fact")] = (level, row.Text("message"), row.Text("why"), row.Text("instead"), row.Text("source"));
            return string.Empty;
        }, faults);
    }

    /// <summary>The finding for a step fact, or <see langword="null"/> where it is no unsafe method.</summary>
    public RawFinding? Finding(StepFact fact) => _rows.TryGetValue(fact.Id, out (FindingLevel Level, string Message, string Why, string Instead, string Source) row)
        ? new("unsafe-method", row.Level, null, null, [fact.Span], row.Message.Replace("{words}", fact.Words, StringComparison.Ordinal), row.Why, row.Instead, [row.Source])
        : null;
}
