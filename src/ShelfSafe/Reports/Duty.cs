using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Verdict;

namespace ShelfSafe.Reports;

/// <summary>One thing to do, and every finding that asks for it.</summary>
internal sealed class Duty(Finding first)
{
    /// <summary>The finding that was met first; its reason and advice are those of all.</summary>
    public Finding First => first;

    /// <summary>What was found, each message once, and the lines it stands on.</summary>
    public List<(string Message, SortedSet<int> Lines)> Entries { get; } = [];

    /// <summary>The sources of all, each once.</summary>
    public List<SourceReference> Sources { get; } = [];

    /// <summary>Groups the findings of one level by what they ask for, in the order of the report.</summary>
    public static List<Duty> Of(ImmutableArray<Finding> findings, FindingLevel level)
    {
        List<Duty> duties = [];
        Dictionary<(string Rule, string Why, string Instead, string? Part), Duty> seen = [];
        foreach (Finding finding in findings.IsDefault ? [] : findings)
        {
            if (finding.Level != level)
            {
                continue;
            }

            (string Rule, string Why, string Instead, string? Part) key = (finding.Rule, finding.Why, finding.Instead, finding.Part);
            if (!seen.TryGetValue(key, out Duty? duty))
            {
                duty = new(finding);
                seen.Add(key, duty);
                duties.Add(duty);
            }

            duty.Add(finding);
        }

        return duties;
    }

    private void Add(Finding finding)
    {
        int index = Entries.FindIndex(entry => string.Equals(entry.Message, finding.Message, StringComparison.Ordinal));
        if (index < 0)
        {
            index = Entries.Count;
            Entries.Add((finding.Message, []));
        }

        foreach (Place place in finding.Places.IsDefault ? [] : finding.Places)
        {
            Entries[index].Lines.Add(place.Line);
        }

        foreach (SourceReference source in finding.Sources.IsDefault ? [] : finding.Sources)
        {
            if (!Sources.Contains(source))
            {
                Sources.Add(source);
            }
        }
    }
}
