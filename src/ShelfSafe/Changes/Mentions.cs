using System.Collections.Immutable;
using ShelfSafe.Foods;
using ShelfSafe.Verdict;

namespace ShelfSafe.Changes;

/// <summary>Whether a sentence speaks of food that goes, of food that stays, or of both.</summary>
internal sealed class Mentions
{
    private readonly HashSet<string> _gone = new(StringComparer.Ordinal);
    private readonly HashSet<string> _stays = new(StringComparer.Ordinal);
    private readonly HashSet<(string, string)> _phrases = [];
    private readonly HashSet<string> _several;

    /// <summary>Collects the words of both sides.</summary>
    /// <param name="gone">Plain food words of what goes.</param>
    /// <param name="stays">Plain food words of what stays.</param>
    /// <param name="known">Words that mean several foods, add one or need not stand in the list.</param>
    public Mentions(IEnumerable<string> gone, IEnumerable<string> stays, AdaptWords known)
    {
        Known = known;
        _several = new(known.Several.Words, StringComparer.Ordinal);
        HashSet<string> plain = new(StringComparer.Ordinal);
        HashSet<string> parts = new(StringComparer.Ordinal);
        foreach (string[] food in stays.Select(food => Words(food).ToArray()).Where(words => words.Length > 0))
        {
            _stays.Add(food[^1]);
            _ = food.Length == 1 && plain.Add(food[0]);
            parts.UnionWith(food);
        }

        foreach (string[] food in gone.Select(food => Words(food).ToArray()).Where(words => words.Length > 0))
        {
            // With plain pepper in the jar, "pepper" means that, and only "cayenne pepper" what goes. "Bacon grease" is not all grease.
            _ = food.Length > 1 && (plain.Contains(food[^1]) || known.Rendered.Contains(food[^1])) ? _phrases.Add((food[^2], food[^1])) : _gone.Add(food[^1]);
        }

        // "Beef" may be short for the "beef chuck" that stays, but not where beef itself goes.
        _stays.UnionWith(parts.Except(_gone));
    }

    /// <summary>The words by which sentences are cut.</summary>
    public AdaptWords Known { get; }

    /// <summary>The words of what goes, or of what goes to one place alone, against those of what stays.</summary>
    /// <param name="entries">The foods of each line.</param>
    /// <param name="ownServing">Lines that the recipe itself keeps for serving; they do not go.</param>
    /// <param name="only">The one place, or <see langword="null"/> for any but the jar.</param>
    /// <param name="rules">Rows that name the kin of foods.</param>
    public static Mentions Of(Dictionary<DraftLine, ImmutableArray<IngredientReport>> entries, HashSet<DraftLine> ownServing, DraftPlace? only, AdaptRules rules)
    {
        KeyValuePair<DraftLine, ImmutableArray<IngredientReport>>[] gone = [.. entries.Where(pair => !ownServing.Contains(pair.Key) && (only is null ? pair.Key.Place != DraftPlace.Kept : pair.Key.Place == only))];
        KeyValuePair<DraftLine, ImmutableArray<IngredientReport>>[] stays = [.. entries.Where(pair => pair.Key.Place == DraftPlace.Kept)];
        string[] kin = [.. rules.Kin(gone.SelectMany(pair => pair.Value), [.. stays.SelectMany(pair => pair.Value)])];
        Mentions mentions = new(gone.SelectMany(Foods).Concat(kin), stays.SelectMany(Foods), rules.Words);
        mentions._several.ExceptWith(rules.NoneOf([.. stays.SelectMany(pair => pair.Value)]));
        return mentions;
    }

    /// <summary>All foods that a line may mean.</summary>
    public static IEnumerable<string> Foods(KeyValuePair<DraftLine, ImmutableArray<IngredientReport>> pair) =>
        pair.Value.SelectMany(entry => entry.Alternatives.Select(other => other.Food).Append(entry.Food));

    /// <summary>Counts words as naming food that stays, whatever goes by the same name.</summary>
    public void Arrive(IReadOnlyCollection<string> words)
    {
        _gone.ExceptWith(words);
        _stays.UnionWith(words);
    }

    /// <summary>Whether the word names food that goes.</summary>
    public bool IsGone(string word) => _gone.Contains(word);

    /// <summary>Whether the word names food that stays, or may.</summary>
    public bool IsKept(string word) => _stays.Contains(word) || _several.Contains(word);

    /// <summary>Whether two words together name food that goes, where the second alone may stay.</summary>
    public bool IsGone(string first, string second) => _phrases.Contains((first, second));

    /// <summary>Whether the sentence names food that goes; a word of both sides counts.</summary>
    public bool NamesGone(string sentence) => Phrased(sentence).Any(word => word.Gone || IsGone(word.Word));

    /// <summary>Whether the sentence names food that stays, or may; a word of both sides counts.</summary>
    public bool NamesKept(string sentence) => Kept(sentence).Any();

    /// <summary>The words of the sentence that name food that stays, or may.</summary>
    public IEnumerable<string> Kept(string sentence) => Phrased(sentence).Where(word => !word.Gone && IsKept(word.Word)).Select(word => word.Word);

    /// <summary>Whether the sentence adds something that is none of the foods that stay: perhaps food that goes, by another name.</summary>
    public bool AddsUnnamed(string sentence)
    {
        string[] words = [.. Words(sentence)];
        bool adds = words.Any(Known.Adding.Contains) || words.Zip(words.Skip(1)).Any(pair => Known.AddingIn.Contains(pair.First) && pair.Second == "in");
        return _gone.Count > 0 && adds && !words.Any(word => IsKept(word) || Known.Free.Contains(word));
    }

    /// <summary>Folded singular words of a sentence.</summary>
    public static IEnumerable<string> Words(string sentence) => WordFolding.Words(sentence).Select(WordFolding.Singular);

    // Each word, and whether it is half of a phrase that goes.
    private IEnumerable<(string Word, bool Gone)> Phrased(string sentence)
    {
        string[] words = [.. Words(sentence)];
        return words.Select((word, at) => (word, (at > 0 && _phrases.Contains((words[at - 1], word))) || (at + 1 < words.Length && _phrases.Contains((word, words[at + 1])))));
    }
}
