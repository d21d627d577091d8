using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Pack;

namespace ShelfSafe.Foods;

/// <summary>Finds the food that a cook means by a phrase: the whole phrase first, then its head noun.</summary>
/// <remarks>A word with two regional meanings is both; two near foods, or none, is unidentified.</remarks>
public sealed class FoodCatalogue
{
    private readonly FoodIndex _index;
    private readonly Dictionary<string, FoodMatch> _own = new(StringComparer.Ordinal);
    private readonly Dictionary<string, FoodMatch>.AlternateLookup<ReadOnlySpan<char>> _ownLookup;
    private readonly int _longestOwn;
    private readonly Memo<string, FoodMatch> _found = new();
    private readonly Memo<string, bool> _foods = new();
    private readonly Memo<string, IReadOnlyList<FoodMention>> _mentions = new();
    private readonly Func<string, bool> _isFiller;
    private readonly Func<string, bool> _isCut;
    private readonly Func<string, bool> _isPlain;
    private readonly SpellingIndex _spelling;

    /// <summary>Builds the lookup.</summary>
    /// <param name="foods">The food table.</param>
    /// <param name="aliases">Words for its foods.</param>
    /// <param name="ownWords">The cook's own words; each can only point to a food of the table.</param>
    /// <param name="fillers">Words of size, state and preparation that do not change which food is meant.</param>
    /// <param name="cuts">Words for cuts of any animal: what stands before them names the food.</param>
    /// <param name="region">Country code that settles words with regional meanings, or empty.</param>
    public FoodCatalogue(IReadOnlyList<FoodRow> foods, IReadOnlyList<AliasRow> aliases, IReadOnlyList<AliasRow> ownWords, IEnumerable<string> fillers, IEnumerable<string> cuts, string region)
        : this(FoodIndex.Of(foods ?? throw new ArgumentNullException(nameof(foods)), aliases ?? throw new ArgumentNullException(nameof(aliases)), region), () => foods, ownWords, Keys(fillers), Keys(cuts), static _ => false, new(RulePack.Default.Tables.Lists))
    {
    }

    private FoodCatalogue(FoodIndex index, Func<IReadOnlyList<FoodRow>> foods, IReadOnlyList<AliasRow> ownWords, Func<string, bool> isFiller, Func<string, bool> isCut, Func<string, bool> isPlain, HazardTraits traits)
    {
        ArgumentNullException.ThrowIfNull(ownWords);
        (_index, _isFiller, _isCut, _isPlain, Traits) = (index, isFiller, isCut, isPlain, traits);
        Dictionary<string, FoodRow> byId = new(StringComparer.Ordinal);
        foreach (FoodRow food in ownWords.Count == 0 ? [] : foods())
        {
            byId[food.Id] = food;
        }

        foreach (AliasRow alias in ownWords)
        {
            string key = WordFolding.Key(alias.Alias);
            if (key.Length > 0 && byId.TryGetValue(alias.Food, out FoodRow? food))
            {
                _own[key] = new Identified(food, OnTheCooksWord: true);
                _longestOwn = Math.Max(_longestOwn, key.AsSpan().Count(' ') + 1);
            }
        }

        _ownLookup = _own.GetAlternateLookup<ReadOnlySpan<char>>();
        _spelling = new(index, _own.Keys, isPlain);
    }

    private static Func<string, bool> Keys(IEnumerable<string> words) => new HashSet<string>(words.Select(WordFolding.Key), StringComparer.Ordinal).Contains;

    /// <summary>The lookup of a pack; of the built-in one it is ready made.</summary>
    internal static FoodCatalogue Create(RulePack pack, IReadOnlyList<AliasRow> ownWords, LineWordTable words, string region)
    {
        PackTables tables = pack.Tables;
        FoodIndex index = pack.Image is { } image ? new(image, tables.Food, region) : FoodIndex.Of(tables.Foods, tables.Aliases, region);
        Lazy<PlainWords> plain = new(() => new(pack.Text("plain-words.csv")));
        return new(index, () => tables.Foods, ownWords, word => words.Fillers.Has(word), word => words.Cuts.Has(word), word => plain.Value.Has(word), new(tables.Lists));
    }

    /// <summary>Traits that reading must not lose.</summary>
    internal HazardTraits Traits { get; }

    /// <summary>What a phrase means: an identified food, a choice of foods that all count, or <see cref="Unidentified"/>; never <see langword="null"/>.</summary>
    /// <param name="phrase">Words for one food, in any case and number, amounts and preparation taken off.</param>
    public FoodMatch Find(string phrase)
    {
        ArgumentNullException.ThrowIfNull(phrase);
        return _found.TryGet(phrase, out FoodMatch? known) ? known : _found.Keep(phrase, phrase.Length, Search(phrase));
    }

    private FoodMatch Search(string phrase)
    {
        string[] words = [.. WordFolding.Words(phrase).Select(WordFolding.Singular)];
        if (words.Length is 0 or > 40)
        {
            return new Unidentified(phrase);
        }

        string[] bare = Bare(words);
        return Whole(words) ?? Whole(BareButKind(words)) ?? Whole(bare) ?? BeforeLink(words) ?? ByHead(bare) ?? Corrected(bare) ?? new Unidentified(phrase);
    }

    /// <summary>Whether the whole phrase, sizes and states aside, is a food of the table.</summary>
    public bool IsFood(string phrase)
    {
        ArgumentNullException.ThrowIfNull(phrase);
        return _foods.TryGet(phrase, out bool known) ? known : _foods.Keep(phrase, phrase.Length, HasFood(phrase));
    }

    private bool HasFood(string phrase)
    {
        string[] words = [.. WordFolding.Words(phrase).Select(WordFolding.Singular)];
        return words.Length is > 0 and < 12 && (Whole(words) ?? Whole(Bare(words)) ?? BeforeLink(words) ?? ByHead(Bare(words))) is not null;
    }

    /// <summary>Whether a word is ordinary English that names no food.</summary>
    internal bool IsPlain(string word) => _isPlain(word);

    /// <summary>Whether a word alone names a food of the table, a slip of spelling allowed.</summary>
    internal bool Knows(string word) => Find(word) is not Unidentified;

    /// <summary>Whether the phrase as it stands, sizes and states aside, is a key of the table.</summary>
    public bool IsExact(string phrase, out FoodMatch? match)
    {
        string[] words = [.. WordFolding.Words(phrase).Select(WordFolding.Singular)];
        match = words.Length is > 0 and < 12 ? Whole(words) ?? Whole(Bare(words)) : null;
        return match is not null;
    }

    /// <summary>Whether a kind word before the phrase names another food of the table: "ground" before "beef".</summary>
    public bool IsKindOf(string kind, string phrase, out FoodMatch? match)
    {
        string[] words = [.. WordFolding.Words(phrase).Select(WordFolding.Singular)];
        string[] bare = words.Length is > 0 and < 12 ? Bare(words) : [];
        match = bare.Length == 0 ? null : Whole([kind, .. bare]) ?? Whole([.. bare, kind]);
        return match is not null;
    }

    /// <summary>Foods named in running text: the longest match at each word, with offsets into the text, in reading order.</summary>
    /// <remarks>Whole phrases of the table alone: spelling is not mended and no head noun is looked for.</remarks>
    public IReadOnlyList<FoodMention> Mentions(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return _mentions.TryGet(text, out IReadOnlyList<FoodMention>? known) ? known : _mentions.Keep(text, text.Length, MentionsIn(text)); // several rooms ask for the same sentence
    }

    private List<FoodMention> MentionsIn(string text)
    {
        List<FoodMention> found = [];
        RunningText words = new(text);
        for (int i = 0; i < words.Count;)
        {
            int taken = 0;
            int most = Math.Max(_longestOwn, _index.LongestFrom(words.Key(i, 1)));
            for (int n = Math.Min(most, words.Count - i); n > 0 && taken == 0; n--)
            {
                if (Known(words.Key(i, n)) is { } match)
                {
                    found.Add(new(words.Start(i), words.End(i + n - 1), words.Key(i, n).ToString(), match));
                    taken = n;
                }
            }

            i += Math.Max(1, taken);
        }

        return found;
    }

    // The cook's own word goes before the table's.
    private FoodMatch? Known(ReadOnlySpan<char> key) =>
        _own.Count > 0 && _ownLookup.TryGetValue(key, out FoodMatch? own) ? own : _index.Find(key);

    private FoodMatch? Whole(ReadOnlySpan<string> words) => words.Length > 0 ? Known(string.Join(' ', words!)) : null;

    private string[] Bare(string[] words)
    {
        string[] bare = [.. words.Where(word => !_isFiller(word) && !char.IsDigit(word[0]))];
        return bare.Length == 0 ? words : bare;
    }

    // "Very lean ground beef": the words that make another food of it are taken off last.
    private string[] BareButKind(string[] words) =>
        Array.Exists(words, IsKind) ? [.. words.Where(word => IsKind(word) || (!_isFiller(word) && !char.IsDigit(word[0])))] : [];

    private static bool IsKind(string word) => word is "ground" or "minced" or "cooked" or "roasted" or "instant";

    // "Olives stuffed with pimento", "beans in sauce": the food stands before the little word, and what follows may bring a hazard.
    private FoodMatch? BeforeLink(string[] words)
    {
        int link = Array.FindIndex(words, 1, word => word is "with" or "in" or "without" or "stuffed" or "from" or "by" or "per");
        if (link < 1 || link == words.Length - 1)
        {
            return null;
        }

        string[] before = Bare(words[..link]);
        FoodMatch? head = Whole(before) ?? ByHead(before);
        if (head is null || words[link] is "without" or "from" or "by" or "per")
        {
            return head;
        }

        string[] after = Bare(words[(link + 1)..]);
        return after.Length == 0 ? head : WithModifier(head, after, string.Empty);
    }

    // The longest run of words that is a food and ends the phrase is its head; "X of Y" is Y; then the longest run that begins it.
    private FoodMatch? ByHead(string[] words)
    {
        int of = Array.IndexOf(words, "of");
        if (of > 0 && of < words.Length - 1 && Whole(words.AsSpan(of + 1)) is { } behind)
        {
            return behind;
        }

        for (int cut = 0; cut < 3 && cut < words.Length && IsUsual(words.AsSpan(words.Length - cut)); cut++)
        {
            ReadOnlySpan<string> rest = words.AsSpan(0, words.Length - cut);
            for (int from = cut == 0 ? 1 : 0; from < rest.Length; from++)
            {
                if (Whole(rest[from..]) is { } head)
                {
                    return WithModifier(head, rest[..from], rest[^1]);
                }
            }
        }

        for (int length = words.Length - 3; length > 0; length--)
        {
            for (int from = 0; from + length <= words.Length; from++)
            {
                if (IsUsual(words.AsSpan(from + length)) && Whole(words.AsSpan(from, length)) is { } inner)
                {
                    return inner;
                }
            }
        }

        return null;
    }

    // An unknown word at the end is the head itself: "beef zorblax" is no beef.
    private bool IsUsual(ReadOnlySpan<string> words)
    {
        foreach (string word in words)
        {
            if (!_isFiller(word) && !_isCut(word))
            {
                return false;
            }
        }

        return true;
    }

    // "Peanut sauce", "cheese crackers": what stands before the head may bring a hazard that the head does not have.
    private FoodMatch WithModifier(FoodMatch head, ReadOnlySpan<string> before, string last)
    {
        if (_isCut(last))
        {
            for (int from = 0; from < before.Length; from++)
            {
                if (Whole(before[from..]) is Identified { Food.Group: "meat" or "poultry" or "seafood" } animal)
                {
                    return animal;
                }
            }
        }

        for (int from = 0; from < before.Length; from++)
        {
            if (Whole(before[from..]) is { } modifier && modifier.Candidates.Any(food => Traits.Brings(food, head)))
            {
                ImmutableArray<FoodRow> all = [.. head.Candidates.Concat(modifier.Candidates).Distinct()];
                return new OneOf(all);
            }
        }

        return head;
    }

    private FoodMatch? Corrected(string[] words)
    {
        FoodMatch? found = OneNear(string.Join(' ', words));
        for (int from = 1; found is null && from < words.Length; from++)
        {
            found = OneNear(string.Join(' ', words[from..])) is { } near ? WithModifier(near, words.AsSpan(0, from), words[^1]) : null;
        }

        return found;
    }

    private FoodMatch? OneNear(string key)
    {
        FoodMatch? one = null;
        foreach (string near in _spelling.Near(key))
        {
            if (Known(near) is not Identified match || (one is Identified before && before.Food != match.Food))
            {
                return null;
            }

            one = match with { Corrected = true };
        }

        return one;
    }
}
