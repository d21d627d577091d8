using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Verdict;

namespace ShelfSafe.Reports;

/// <summary>One thing to do, and every finding that asks for it.</summary>
internal sealed class Duty(Finding first)
{
    private readonly List<DutyEntry> _entries = [];

    /// <summary>The finding that was met first; its reason and advice are those of all.</summary>
    public Finding First => first;

    /// <summary>What was found, each sentence once, and the lines it stands on.</summary>
    /// <param name="words">Words for people.</param>
    public IReadOnlyList<(string Message, SortedSet<int> Lines)> Entries(Words words) => [.. _entries.Select(entry => (entry.Message(words["duty.each"]), entry.Lines))];

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
        (string? name, string rest) = Cut(finding);
        DutyEntry? entry = _entries.Find(entry => string.Equals(entry.Rest, rest, StringComparison.Ordinal) && entry.Names.Count == 0 == name is null);
        if (entry is null)
        {
            _entries.Add(entry = new(rest));
        }

        if (name is not null && !entry.Names.Contains(name))
        {
            entry.Names.Add(name);
        }

        entry.Lines.UnionWith((finding.Places.IsDefault ? [] : finding.Places).Select(place => place.Line));
        foreach (SourceReference source in finding.Sources.IsDefault ? [] : finding.Sources)
        {
            if (!Sources.Contains(source))
            {
                Sources.Add(source);
            }
        }
    }

    // What is said of one ingredient may be said of several at once: the quoted words in front are parted from the rest.
    private static (string? Name, string Said) Cut(Finding finding)
    {
        string quoted = $"\"{finding.Ingredient}\" ";
        return finding.Ingredient is not null && finding.Message.StartsWith(quoted, StringComparison.Ordinal)
            ? (quoted[..^1], finding.Message[quoted.Length..])
            : (null, finding.Message);
    }
}

/// <summary>What is said of one ingredient, or of several in the same words.</summary>
/// <param name="Rest">The message behind the quoted ingredient, or the whole of it.</param>
internal sealed record DutyEntry(string Rest)
{
    /// <summary>The quoted ingredients; empty where the message begins with none.</summary>
    public List<string> Names { get; } = [];

    /// <summary>Lines of the recipe.</summary>
    public SortedSet<int> Lines { get; } = [];

    /// <summary>The sentence: <c>"onions", "peppers": each is low in acid</c> for what is one, without "each" for what is many.</summary>
    /// <param name="each">The word for "each".</param>
    public string Message(string each) => Names.Count switch
    {
        0 => Rest,
        1 => $"{Names[0]} {Rest}",
        _ when Rest.AsSpan(0, Math.Max(Rest.IndexOf(' ', StringComparison.Ordinal), 0)).EndsWith("s", StringComparison.Ordinal) => $"{string.Join(", ", Names)}: {each} {Rest}",
        _ => $"{string.Join(", ", Names)} {Rest}",
    };
}
