using ShelfSafe.Pack;

namespace ShelfSafe.Foods;

/// <summary>Unit words (<c>rules/units.csv</c>) and the little words of ingredient lines (<c>rules/line-words.csv</c>).</summary>
internal sealed class LineWordTable
{
    private const int Often = 20_000;
    private const int LongestOnStack = 80;
    private readonly PackImage _image;
    private readonly int _at;
    private readonly PackWords _units;
    private readonly PackWords _hasThree;
    private readonly PackWords _tailsByFirst;
    private readonly (string Tail, string BlankTail)[] _tails;
    private readonly Dictionary<string, PackWords> _kinds = new(StringComparer.Ordinal);
    private int _asked;

    /// <summary>Reads both tables; what is wrong is reported.</summary>
    public LineWordTable(PackText units, PackText words, List<PackFault> faults)
        : this(PackImage.Of(writer => LineWordWriter.Write(units, words, faults, writer)))
    {
    }

    private LineWordTable(PackImage image)
    {
        (_image, _at) = (image, image.Section(LineWordWriter.Section));
        _units = Words(0);
        _hasThree = Words(1);
        ImageMap kinds = new(image, Part(2));
        for (int kind = 0; kind < kinds.Count; kind++)
        {
            _kinds.Add(kinds.Key(kind), new(image, _at + kinds.Value(kind)));
        }

        _tailsByFirst = Words(3);
        _tails = new (string, string)[image.Int32(Part(4))];
        Fillers = Words(5);
        Cuts = Words(6);
    }

    /// <summary>All words with their kinds once they were asked for often, or <see langword="null"/>: a run over one recipe need not gather them.</summary>
    public WordKinds? Gathered { get; private set; }

    /// <summary>Words of size, state and preparation that do not change which food is meant, folded as keys.</summary>
    public PackWords Fillers { get; }

    /// <summary>Words for cuts of any animal, folded as keys.</summary>
    public PackWords Cuts { get; }

    /// <summary>The words of a pack; of the built-in one they are ready made.</summary>
    /// <param name="pack">The pack.</param>
    /// <param name="faults">Receives what is wrong.</param>
    public static LineWordTable Of(RulePack pack, List<PackFault> faults) =>
        pack.Image is { } image ? new(image) : new(pack.Text("units.csv"), pack.Text("line-words.csv"), faults);

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

            if (_tailsByFirst.TryGet(line.AsSpan(i + 1, end - i - 1), out int list))
            {
                found ??= [];
                for (int left = _image.Int32(_at + list); left > 0; left--)
                {
                    found.Add(_image.Int32(_at + list + (4 * left)));
                }
            }
        }

        return found is null ? [] : found.Select(Tail);
    }

    /// <summary>All words of a kind.</summary>
    public IEnumerable<string> Of(string kind) => _kinds.TryGetValue(kind, out PackWords? words) ? words.All : [];

    /// <summary>Whether a word is of a kind.</summary>
    public bool Is(string kind, ReadOnlySpan<char> word)
    {
        if (Gathered is { } gathered)
        {
            return gathered.Is(kind, word);
        }

        // Two threads may gather at the same time; both are equal, and one of them stays.
        Gathered = ++_asked > Often ? new(_kinds) : null;
        return _kinds.TryGetValue(kind, out PackWords? words) && words.Has(word);
    }

    /// <summary>Whether a word is of any kind at all.</summary>
    public bool Knows(string word) => _kinds.Values.Any(words => words.Has(word));

    /// <summary>Whether some of the words are of a kind.</summary>
    public bool HasAny(string kind, ReadOnlySpan<string> all)
    {
        foreach (string word in all)
        {
            if (Is(kind, word))
            {
                return true;
            }
        }

        return false;
    }

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
        if (OfThree(text, (at, first), (next, second), out int thirdEnd) is { } three)
        {
            end = Dot(text, thirdEnd);
            return three;
        }

        if (second > next && Known(text.AsSpan(at, first - at), text.AsSpan(next, second - next)) is { } two)
        {
            end = Dot(text, second);
            return two;
        }

        string? one = Known(text.AsSpan(at, first - at));
        end = one is null ? at : Dot(text, first);
        return one;
    }

    // The unit of three words that the first two begin, or null.
    private string? OfThree(string text, (int Start, int End) first, (int Start, int End) second, out int end)
    {
        int third = second.End;
        while (third > second.Start && third < text.Length && text[third] is ' ' or '\u00A0')
        {
            third++;
        }

        end = WordEnd(text, third);
        return _hasThree.Count > 0 && end > third && third > second.End && _hasThree.Has(text[first.Start..first.End].ToLowerInvariant())
            ? Known(text[first.Start..first.End] + " " + text[second.Start..second.End] + " " + text[third..end])
            : null;
    }

    private int Part(int part) => _at + _image.Int32(_at + (4 * part));

    private PackWords Words(int part) => new(_image, Part(part));

    // Two threads may make the same pair at the same time; a pair that is half written is seen as not yet made.
    private (string Tail, string BlankTail) Tail(int number)
    {
        if (_tails[number] is not { Tail: not null, BlankTail: not null } pair)
        {
            string tail = _image.String(_image.Int32(Part(4) + 4 + (4 * number)));
            _tails[number] = pair = (tail, " " + tail);
        }

        return pair;
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

    private string? Known(ReadOnlySpan<char> word)
    {
        Span<char> lower = word.Length <= LongestOnStack ? stackalloc char[LongestOnStack] : new char[word.Length];
        lower = lower[..word.ToLowerInvariant(lower)];
        return (word.Length == 1 && _units.TryGet(word, out int unit)) || _units.TryGet(lower, out unit) ? _image.String(unit) : null;
    }

    // Two words with one blank between them.
    private string? Known(ReadOnlySpan<char> first, ReadOnlySpan<char> second)
    {
        int length = first.Length + 1 + second.Length;
        Span<char> both = length <= LongestOnStack ? stackalloc char[LongestOnStack] : new char[length];
        first.CopyTo(both);
        both[first.Length] = ' ';
        second.CopyTo(both[(first.Length + 1)..]);
        return Known(both[..length]);
    }
}
