using ShelfSafe.Verdict;

namespace ShelfSafe.Reports;

/// <summary>Numbers the sources of one report in the order in which they are first named.</summary>
internal sealed class SourceList
{
    private readonly Dictionary<string, int> _numbers = new(StringComparer.Ordinal);
    private readonly List<string> _lines = [];

    /// <summary>The sources in their order, one line each.</summary>
    public IReadOnlyList<string> Lines => _lines;

    /// <summary>The mark that stands for the sources, such as " [1][3]"; empty where there is none.</summary>
    public string Mark(IEnumerable<SourceReference> sources)
    {
        string marks = string.Empty;
        foreach (SourceReference source in sources)
        {
            marks += Number(source.Url.Length == 0 ? source.Text : $"{source.Text} <{source.Url}>");
        }

        return marks.Length == 0 ? marks : " " + marks;
    }

    /// <summary>The mark that stands for a source given as text; empty for an empty one.</summary>
    public string Mark(string source) => source.Length == 0 ? string.Empty : " " + Number(source);

    private string Number(string line)
    {
        if (!_numbers.TryGetValue(line, out int number))
        {
            number = _lines.Count + 1;
            _numbers.Add(line, number);
            _lines.Add(line);
        }

        return string.Create(System.Globalization.CultureInfo.InvariantCulture, $"[{number}]");
    }
}
