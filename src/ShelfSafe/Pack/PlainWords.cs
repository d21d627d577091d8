namespace ShelfSafe.Pack;

/// <summary>Ordinary English words that name no food, no device and no state of a food (<c>rules/plain-words.csv</c>).</summary>
/// <remarks>Searched where it stands, one word a line in the order of their code units, so that nothing is built for the few lookups of a recipe.</remarks>
internal sealed class PlainWords
{
    private const string File = "plain-words.csv";
    private readonly string _text;
    private readonly int _first;
    private readonly ImageIndex? _index; // of the built-in pack

    /// <summary>Takes the table; what is wrong is added to the faults.</summary>
    public PlainWords(PackText table)
    {
        _index = table.Cells?.Index("word");
        _text = table.ToString();
        _first = _text.IndexOf('\n', StringComparison.Ordinal) + 1;
    }

    /// <summary>Faults of the table: words out of order cannot be found.</summary>
    public static void Check(string text, List<PackFault> faults)
    {
        string[] lines = text.TrimEnd().Split('\n');
        for (int i = 2; i < lines.Length; i++)
        {
            if (string.CompareOrdinal(lines[i - 1].TrimEnd(), lines[i].TrimEnd()) >= 0)
            {
                faults.Add(new(File, i + 1, 1, "the words stand in the order of their letters, each once"));
                return;
            }
        }
    }

    /// <summary>Whether the word, in lower case, stands in the table.</summary>
    public bool Has(ReadOnlySpan<char> word)
    {
        if (_index is { } index)
        {
            return index.Has(word);
        }

        int low = _first;
        int high = _text.Length;
        while (low < high)
        {
            int start = Start((low + high) / 2, low);
            int end = _text.IndexOf('\n', start);
            end = end < 0 ? _text.Length : end;
            int order = word.CompareTo(_text.AsSpan(start, end - start).TrimEnd('\r'), StringComparison.Ordinal);
            if (order == 0)
            {
                return true;
            }

            if (order < 0)
            {
                high = start;
            }
            else
            {
                low = Math.Min(end + 1, _text.Length);
            }
        }

        return false;
    }

    private int Start(int at, int low)
    {
        while (at > low && _text[at - 1] != '\n')
        {
            at--;
        }

        return at;
    }
}
