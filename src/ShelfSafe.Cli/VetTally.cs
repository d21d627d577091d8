using ShelfSafe.Core;
using ShelfSafe.Reports;
using ShelfSafe.Verdict;

namespace ShelfSafe.Cli;

/// <summary>What a run has come to: counts for the summary, and the exit code.</summary>
/// <param name="failOn">Level that asks for exit code 1, or <see langword="null"/> for the verdict to decide.</param>
internal sealed class VetTally(string? failOn)
{
    private readonly Dictionary<string, int> _outcomes = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _rules = new(StringComparer.Ordinal);
    private int _recipes;
    private bool _fails;
    private int _troubles;

    /// <summary>Levels, worst first.</summary>
    public static IReadOnlyList<string> Levels { get; } = ["stop", "change", "caution", "note"];

    /// <summary>Recipes that were vetted.</summary>
    public int Recipes => _recipes;

    /// <summary>The exit code so far.</summary>
    public int Code => _troubles > 0 ? ExitCode.Trouble : _fails ? ExitCode.Verdict : ExitCode.Permitted;

    /// <summary>Counts one recipe.</summary>
    public void Add(VetCount count)
    {
        _recipes++;
        _outcomes[count.Outcome] = _outcomes.GetValueOrDefault(count.Outcome) + 1;
        foreach (string rule in count.Rules)
        {
            _rules[rule] = _rules.GetValueOrDefault(rule) + 1;
        }

        _fails |= failOn is null ? !count.Permitted : count.Worst is { } worst && worst >= Level(failOn);
    }

    /// <summary>Counts something that could not be read.</summary>
    public void AddTrouble() => _troubles++;

    /// <summary>Writes the counts: outcomes by name, then the rules that most recipes tripped.</summary>
    public void Write(TextWriter error, Words words)
    {
        error.WriteLine(words.With("summary.read", _recipes, _troubles));
        Write(error, words, "summary.outcome", _outcomes);
        Write(error, words, "summary.rule", _rules);
    }

    private static FindingLevel Level(string name) => (FindingLevel)(Levels.Count - 1 - Levels.ToList().IndexOf(name));

    private static void Write(TextWriter error, Words words, string key, Dictionary<string, int> counts)
    {
        foreach ((string name, int count) in counts.OrderByDescending(static pair => pair.Value).ThenBy(static pair => pair.Key, StringComparer.Ordinal))
        {
            error.WriteLine("  " + words.With(key, name, count));
        }
    }
}

/// <summary>What the tally keeps of one recipe.</summary>
/// <param name="Outcome">Word of the outcome.</param>
/// <param name="Rules">Rules that it tripped, each once.</param>
/// <param name="Permitted">Whether a process or the shelf is open to it as written.</param>
/// <param name="Worst">Worst level found, or <see langword="null"/>.</param>
internal sealed record VetCount(string Outcome, IReadOnlyList<string> Rules, bool Permitted, FindingLevel? Worst)
{
    /// <summary>Reads a report.</summary>
    public static VetCount Of(VettingReport report)
    {
        bool barred = report.Findings.Any(static finding => finding.Level is FindingLevel.Stop or FindingLevel.Change);
        return new(
            Names.Of(report.Outcome),
            [.. report.Findings.Select(static finding => finding.Rule).Distinct(StringComparer.Ordinal)],
            !barred && !report.LacksRow && (report.Outcome is Core.Outcome.BoilingWater or Core.Outcome.Pressure or Core.Outcome.DryStorage),
            report.Findings.IsEmpty ? null : report.Findings.Max(static finding => finding.Level));
    }
}
