using ShelfSafe.Foods;

namespace ShelfSafe.Measuring;

/// <summary>What the words of an ingredient say about the state in which it is measured, and what is done with it after.</summary>
/// <remarks>
/// A word before the food ("cooked rice") names the state as measured, one after it ("rice, cooked") what is done then.
/// Known gap: where the reader gives no place for the food, any state word counts as either.
/// </remarks>
internal readonly struct PrintedState
{
    private static readonly string[] CookedWords = ["cooked", "boiled", "browned", "fried", "roasted", "steamed", "simmered", "leftover"];
    private static readonly string[] DryWords = ["dry", "dried", "uncooked", "powdered"];
    private static readonly string[] CannedWords = ["can", "cans", "canned", "tin", "tins", "tinned"];
    private readonly string _before;
    private readonly string _after;

    /// <summary>Reads the words of the ingredient.</summary>
    public PrintedState(Ingredient ingredient)
    {
        string own = ingredient.Words + " " + ingredient.Food + " " + ingredient.Preparation;
        string line = ingredient.Line.Text.Text;
        int at = ingredient.Food.Length == 0 ? -1 : line.IndexOf(ingredient.Words, StringComparison.OrdinalIgnoreCase);
        int comma = at < 0 ? -1 : line.IndexOf(',', at + ingredient.Words.Length);
        Words = own;
        _before = at < 0 ? own : ingredient.Words + " " + ingredient.Food + (comma < 0 ? " " + ingredient.Preparation : string.Empty);
        _after = at < 0 ? own : comma < 0 ? string.Empty : ingredient.Preparation ?? string.Empty;
        string unit = ingredient.Amount?.Unit ?? string.Empty;
        IsLiquid = Has(line, "liquid"); // the line reader takes the word for a state and drops it
        IsCanned = unit == "can" || HasAny(own, CannedWords) || CanNumber.In(line) is not null;
    }

    /// <summary>All words of the food and its preparation.</summary>
    public string Words { get; }

    /// <summary>Whether it comes out of a tin.</summary>
    public bool IsCanned { get; }

    /// <summary>Whether it is measured cooked.</summary>
    public bool IsCooked => HasAny(_before, CookedWords);

    /// <summary>Whether it is measured dry.</summary>
    public bool IsDry => HasAny(_before, DryWords);

    /// <summary>Whether it is measured as a liquid where it is also sold dry.</summary>
    public bool IsLiquid { get; }

    /// <summary>Whether it is measured frozen.</summary>
    public bool IsFrozen => Has(_before, "frozen");

    /// <summary>What is done after measuring: <c>drained</c>, <c>cooked</c>, <c>soaked</c>, or <see langword="null"/>.</summary>
    public string? Then => Has(_after, "drained") ? "drained" : HasAny(_after, CookedWords) ? "cooked" : Has(_after, "soaked") ? "soaked" : null;

    /// <summary>Whether a whole word is there.</summary>
    public static bool Has(string text, string word)
    {
        for (int at = 0; at + word.Length <= text.Length; at++)
        {
            int end = at;
            while (end < text.Length && char.IsLetter(text[end]))
            {
                end++;
            }

            if (end - at == word.Length && text.AsSpan(at, word.Length).Equals(word, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }

            at = end;
        }

        return false;
    }

    private static bool HasAny(string text, string[] words)
    {
        foreach (string word in words)
        {
            if (Has(text, word))
            {
                return true;
            }
        }

        return false;
    }
}
