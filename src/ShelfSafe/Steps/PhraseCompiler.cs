using System.Globalization;
using System.Runtime.InteropServices;

namespace ShelfSafe.Steps;

/// <summary>Turns the phrase grammar of the rule pack into <see cref="Phrase"/> objects.</summary>
/// <remarks>
/// A phrase is words parted by blanks. <c>a|b</c> either; <c>@name</c> a named list of words; <c>word*</c> a beginning;
/// <c>=word</c> exactly this form; <c>#</c> a number, <c>#60</c> a number of 60 or more, <c>30</c> that number (several: the range from the least to the greatest); <c>?</c> after a place: may be missing;
/// <c>..3</c> between two places: up to 3 other words, at most 16. Plain words match all their English endings.
/// </remarks>
internal sealed class PhraseCompiler(Vocabulary vocabulary)
{
    private const int LongestGap = 16;
    private const int MostWays = 4000; // ways to lay a phrase over the words after its first: bounds the work for one word
    private readonly Dictionary<string, string[]> _lists = new(StringComparer.Ordinal);
    private readonly List<(List<int> Set, string Prefix)> _waiting = [];
    private readonly List<(List<Draft> Places, Action<Phrase> Done)> _drafts = [];

    private sealed record Draft(List<int> Words, double Least, double Most, bool Optional, int Gap);

    /// <summary>Names a list of words for <c>@name</c>; lists may name earlier lists.</summary>
    public bool AddList(string name, string words)
    {
        List<string> all = [];
        foreach (string word in words.Split('|', StringSplitOptions.TrimEntries))
        {
            if (word.StartsWith('@'))
            {
                if (!_lists.TryGetValue(word, out string[]? inner))
                {
                    return false;
                }

                all.AddRange(inner);
            }
            else
            {
                all.Add(word);
            }
        }

        return _lists.TryAdd(name, [.. all]);
    }

    /// <summary>Reads a phrase; it is handed over by <see cref="Finish"/>.</summary>
    /// <returns>What is wrong, or <see langword="null"/>.</returns>
    public string? Add(string text, Action<Phrase> done)
    {
        List<Draft> places = [];
        int gap = 0;
        foreach (string piece in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (piece.StartsWith("..", StringComparison.Ordinal))
            {
                if (!int.TryParse(piece.AsSpan(2), NumberStyles.None, CultureInfo.InvariantCulture, out gap) || gap > LongestGap)
                {
                    return $"\"{piece}\" is no gap; write ..1 to ..{LongestGap}";
                }

                continue;
            }

            bool optional = piece.EndsWith('?');
            Draft draft = new([], double.NaN, double.NaN, optional, gap);
            foreach (string word in (optional ? piece[..^1] : piece).Split('|'))
            {
                if (Word(word, ref draft) is { } fault)
                {
                    return fault;
                }
            }

            places.Add(draft);
            gap = 0;
        }

        if (places.Count == 0 || places[0].Optional)
        {
            return $"the phrase \"{text}\" must begin with a word that is not optional";
        }

        _drafts.Add((places, done));
        int ways = places.Aggregate(1, (product, place) => Math.Min(product * (place.Gap + 1), MostWays + 1));
        return ways > MostWays ? $"the phrase \"{text}\" has too many long gaps" : null;
    }

    /// <summary>Hands over every phrase, once all words are known.</summary>
    public void Finish()
    {
        foreach ((List<int> set, string prefix) in _waiting)
        {
            set.AddRange(vocabulary.PrefixesUnder(prefix));
        }

        foreach ((List<Draft> places, Action<Phrase> done) in _drafts)
        {
            done(new([.. places.Select(place => new PhrasePlace(Rising(place.Words), place.Least, place.Most, place.Optional, place.Gap))]));
        }
    }

    private string? Word(string word, ref Draft draft)
    {
        if (word.StartsWith('@'))
        {
            return List(word, ref draft);
        }

        if (word.StartsWith('#') || (word.Length > 0 && word.All(char.IsAsciiDigit)))
        {
            return Number(word, ref draft);
        }

        if (word.EndsWith('*'))
        {
            string prefix = word[..^1];
            draft.Words.Add(vocabulary.AddPrefix(prefix));
            _waiting.Add((draft.Words, prefix));
            return prefix.Length < 3 ? $"\"{word}\" is too short a beginning; write at least 3 letters" : null;
        }

        draft.Words.Add(word.StartsWith('=') ? vocabulary.AddExact(word[1..]) : vocabulary.AddStem(word));
        return word.Length == 0 || !word.TrimStart('=').All(char.IsLetter) ? $"\"{word}\" is no word" : null;
    }

    private string? List(string name, ref Draft draft)
    {
        if (!_lists.TryGetValue(name, out string[]? words))
        {
            return $"the list \"{name}\" is not known; its row must stand above";
        }

        foreach (string inner in words)
        {
            if (Word(inner, ref draft) is { } fault)
            {
                return fault;
            }
        }

        return null;
    }

    // "#60" is a number of 60 or more, "12" this very number.
    private static string? Number(string word, ref Draft draft)
    {
        double least = 0;
        if (word[0] != '#')
        {
            double exactly = double.Parse(word, CultureInfo.InvariantCulture);
            draft = draft with
            {
                Least = double.IsNaN(draft.Least) ? exactly : Math.Min(draft.Least, exactly),
                Most = double.IsNaN(draft.Most) ? exactly : Math.Max(draft.Most, exactly),
            };
            return null;
        }

        if (word.Length > 1 && !double.TryParse(word.AsSpan(1), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out least))
        {
            return $"\"{word}\" is no number class; write # or #60";
        }

        draft = draft with { Least = least, Most = double.PositiveInfinity };
        return null;
    }

    private static WordBits Rising(List<int> words)
    {
        words.Sort();
        return new(CollectionsMarshal.AsSpan(words));
    }
}
