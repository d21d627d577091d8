using ShelfSafe.Pack;

namespace ShelfSafe.Foods;

/// <summary>Unit words (<c>rules/units.csv</c>) and the little words of ingredient lines (<c>rules/line-words.csv</c>).</summary>
internal sealed class LineWordTable
{
    private readonly Dictionary<string, string> _units = new(StringComparer.Ordinal);
    private readonly List<(string Tail, string BlankTail)> _tails = [];
    private readonly Dictionary<string, List<int>> _tailsByFirst = new(StringComparer.Ordinal);
    private readonly HashSet<string> _hasThree = new(StringComparer.Ordinal);
    private readonly Dictionary<string, HashSet<string>> _kinds = new(StringComparer.Ordinal);

    /// <summary>Reads both tables; what is wrong is reported.</summary>
    public LineWordTable(PackText units, PackText words, List<PackFault> faults)
    {
        CsvTable.Read("units.csv", units, ["word", "unit", "kind", "factor", "region", "source"], row =>
        {
            string word = row.Text("word");
            _units[word] = row.Text("unit");
            if (word.AsSpan().Count(' ') == 2)
            {
                _hasThree.Add(word[..word.IndexOf(' ', StringComparison.Ordinal)]);
            }

            return string.Empty;
        }, faults);
        CsvTable.Read("line-words.csv", words, ["word", "kind", "source"], row =>
        {
            string kind = row.Text("kind");
            if (!_kinds.TryGetValue(kind, out HashSet<string>? set))
            {
                _kinds[kind] = set = new(StringComparer.Ordinal);
            }

            set.Add(row.Text("word"));
            if (kind == "tail")
            {
                AddTail(row.Text("word"));
            }

            return string.Empty;
        }, faults);
    }

    /// <summary>The tails ("to taste", "for frying") whose first word stands in a lower-case line, in the order of the table, each also with a blank before it.</summary>
    public IEnumerable<(string Tail, string BlankTail)> TailsIn(string line)
    {
        SortedSet<int>? found = null;
        for (int i = line.IndexOf(' ', StringComparison.Ordinal); i >= 0; i = line.IndexOf(' ', i + 1))
        {
            int end = i + 1;
            while (end < line.Length && char.IsLetter(line[end]))
            {
                end++;
            }

            if (_tailsByFirst.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(line.AsSpan(i + 1, end - i - 1), out List<int>? tails))
            {
                found ??= [];
                found.UnionWith(tails);
            }
        }

        return found is null ? [] : found.Select(index => _tails[index]);
    }

    /// <summary>All words of a kind.</summary>
    public IReadOnlySet<string> Of(string kind) => _kinds.TryGetValue(kind, out HashSet<string>? set) ? set : new HashSet<string>();

    /// <summary>Whether a word is of a kind.</summary>
    public bool Is(string kind, string word) => _kinds.TryGetValue(kind, out HashSet<string>? set) && set.Contains(word);

    /// <summary>Reads a unit word at an offset, two words first; a capital T alone is a tablespoon, a small one a teaspoon.</summary>
    public string? Unit(string text, int at, out int end)
    {
        end = at;
        int first = WordEnd(text, at);
        if (first == at)
        {
            if (at < text.Length && text[at] is '"' or '\u201D')
            {
                end = at + 1;
                return "inch";
            }

            return null;
        }

        int next = first;
        while (next < text.Length && (text[next] is ' ' or '\u00A0' or '-' or '.'))
        {
            next++;
        }

        int second = WordEnd(text, next);
        int third = second;
        while (third > next && third < text.Length && text[third] is ' ' or '\u00A0')
        {
            third++;
        }

        int thirdEnd = WordEnd(text, third);
        if (_hasThree.Count > 0 && thirdEnd > third && third > second && _hasThree.Contains(text[at..first].ToLowerInvariant())
            && Known(text[at..first] + " " + text[next..second] + " " + text[third..thirdEnd]) is { } three)
        {
            end = Dot(text, thirdEnd);
            return three;
        }

        if (second > next && Known(text[at..first] + " " + text[next..second]) is { } two)
        {
            end = Dot(text, second);
            return two;
        }

        string? one = Known(text[at..first]);
        end = one is null ? at : Dot(text, first);
        return one;
    }

    private void AddTail(string tail)
    {
        int end = 0;
        while (end < tail.Length && char.IsLetter(tail[end]))
        {
            end++;
        }

        if (!_tailsByFirst.TryGetValue(tail[..end], out List<int>? tails))
        {
            _tailsByFirst[tail[..end]] = tails = [];
        }

        tails.Add(_tails.Count);
        _tails.Add((tail, " " + tail));
    }

    private static int Dot(string text, int end) => end < text.Length && text[end] == '.' ? end + 1 : end;

    private static int WordEnd(string text, int at)
    {
        while (at < text.Length && (char.IsLetter(text[at]) || text[at] == '#'))
        {
            at++;
        }

        return at;
    }

    private string? Known(string word) =>
        word.Length == 1 && _units.TryGetValue(word, out string? exact) ? exact
        : _units.TryGetValue(word.ToLowerInvariant(), out string? unit) ? unit : null;
}
