using System.Globalization;
using ShelfSafe.Verdict;

namespace ShelfSafe.Reports;

/// <summary>Numbers the sources of one report in the order in which they are first named.</summary>
internal sealed class SourceList
{
    private readonly Dictionary<string, int> _numbers = new(StringComparer.Ordinal);
    private readonly List<string> _lines = [];
    private readonly List<(string Text, string Url)> _entries = [];

    /// <summary>The sources in their order, one line each.</summary>
    public IReadOnlyList<string> Lines => _lines;

    /// <summary>The sources in their order, title and address apart; the address is empty where none is known.</summary>
    public IReadOnlyList<(string Text, string Url)> Entries => _entries;

    /// <summary>The numbers of the sources, from 1; one that was not named before is added.</summary>
    public IReadOnlyList<int> Numbers(IEnumerable<SourceReference> sources) => [.. sources.Select(Number)];

    /// <summary>The number of a source given as text, or none for an empty one.</summary>
    public IReadOnlyList<int> Numbers(string source) => source.Length == 0 ? [] : [Number(source, source, string.Empty)];

    /// <summary>The mark that stands for the sources, such as " [1][3]"; empty where there is none.</summary>
    public string Mark(IEnumerable<SourceReference> sources)
    {
        string marks = string.Concat(Numbers(sources).Select(Bracketed));
        return marks.Length == 0 ? marks : " " + marks;
    }

    /// <summary>The mark that stands for a source given as text; empty for an empty one.</summary>
    public string Mark(string source) => source.Length == 0 ? string.Empty : " " + Bracketed(Numbers(source)[0]);

    private static string Bracketed(int number) => string.Create(CultureInfo.InvariantCulture, $"[{number}]");

    private int Number(SourceReference source) =>
        Number(source.Url.Length == 0 ? source.Text : $"{source.Text} <{source.Url}>", source.Text, source.Url);

    private int Number(string line, string text, string url)
    {
        if (!_numbers.TryGetValue(line, out int number))
        {
            number = _lines.Count + 1;
            _numbers.Add(line, number);
            _lines.Add(line);
            _entries.Add((text, url));
        }

        return number;
    }
}
