using ShelfSafe.Foods;

namespace ShelfSafe.Verdict;

/// <summary>Hears that words before a place deny what stands there: "do not bake", "without the stalks", "no bacon".</summary>
/// <remarks>
/// The kind <c>denied</c> of <c>rules/line-words.csv</c> denies anything; beside it each thing denied has a kind of words of its own
/// ("out of the oven" denies heat, "minus the skin" a food), since what is wrongly heard as denied would be missed.
/// </remarks>
internal sealed class Denials(LineWordTable words)
{
    private const int BeforeFood = 3;
    private const int BeforeHeat = 4;

    /// <summary>"No skin", "without the stalks", "not peeled": the line leaves out what follows.</summary>
    /// <param name="before">The folded words of the line up to it.</param>
    public bool LeavesOut(ReadOnlySpan<string> before)
    {
        for (int i = before.Length - 1; i >= Math.Max(0, before.Length - BeforeFood) && IsOpen(before[i]); i--)
        {
            if (IsWithout(before[i]))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>As <see cref="LeavesOut"/>, unless a word takes the denial back: "don't forget the cream" and "never without bacon" put it in.</summary>
    /// <param name="before">The folded words of the sentence up to the food.</param>
    public bool LeavesOutForGood(ReadOnlySpan<string> before)
    {
        bool denied = false;
        foreach (string word in before)
        {
            if (denied && words.Is("serve-undo", word))
            {
                return false;
            }

            denied |= IsWithout(word);
        }

        return LeavesOut(before);
    }

    /// <summary>"No bacon, no lard", "don't add the noodles": named to be left out. "Not until the end" puts it in.</summary>
    /// <param name="sentence">The sentence.</param>
    /// <param name="food">Offset of the food.</param>
    public bool OfFood(ReadText sentence, int food)
    {
        ReadOnlySpan<string> before = sentence.Before(food);
        if (OfNeed(sentence, before))
        {
            return true;
        }

        if (before.Length == 0 || sentence.Has("step-late"))
        {
            return false;
        }

        if (words.Is("food-denied", before[^1]))
        {
            return true;
        }

        int verb = before.Length - 1;
        while (verb > 0 && before[verb] is "the" or "any" or "in")
        {
            verb--;
        }

        return verb > 0 && words.Is("step-add", before[verb]) && Denies(before[verb - 1], "step-denied");
    }

    // "You won't need oil", "no need for butter"; but "you won't need the oil yet" puts it in later.
    private bool OfNeed(ReadText sentence, ReadOnlySpan<string> before)
    {
        int verb = before.Length - 1;
        while (verb > 0 && before[verb] is "any" or "the" or "for")
        {
            verb--;
        }

        return verb > 0 && words.Is("need-verb", before[verb]) && (Denies(before[verb - 1], "step-denied") || words.Is("food-denied", before[verb - 1]))
            && !sentence.Folded.Any(word => words.Is("step-late", word) && !words.Is("need-verb", word));
    }

    /// <summary>"Do not add the stars", "without adding the stars".</summary>
    /// <param name="before">The folded words of the sentence up to the verb of adding.</param>
    public bool OfAdding(ReadOnlySpan<string> before) =>
        before is [.., string last] && (Denies(last, "step-denied") || words.Is("adding-denied", last));

    /// <summary>"Do not bake", "never in the oven", "keep out of the sun".</summary>
    /// <param name="all">Words of the sentence.</param>
    /// <param name="at">Index of the word for heat.</param>
    public bool OfHeat(IReadOnlyList<PlacedWord> all, int at) => Near(all, at, "heat-denied");

    /// <summary>"No canner", "not under pressure": what is named is not used.</summary>
    /// <param name="all">Words of the sentence.</param>
    /// <param name="at">Index of the word.</param>
    public bool OfDevice(IReadOnlyList<PlacedWord> all, int at) => Near(all, at, "line-without");

    /// <summary>"Do not dilute": whether the word right before one that makes acid less takes it back.</summary>
    public bool OfLess(string before) => Denies(before, "acid-denied");

    private bool Near(IReadOnlyList<PlacedWord> all, int at, string kind)
    {
        for (int i = Math.Max(0, at - BeforeHeat); i < at; i++)
        {
            if (Denies(all[i].Plain, kind))
            {
                return true;
            }
        }

        return false;
    }

    // "Without meat with pesto": a denial does not reach past the word that begins something new.
    private bool IsOpen(string word) => !words.Is("denial-ends", word);

    private bool IsWithout(string word) => Denies(word, "line-without");

    private bool Denies(string word, string kind) => words.Is("denied", word) || words.Is(kind, word);
}
