namespace ShelfSafe.Foods;

/// <summary>Gives a food the plain singular name that the recipe uses, without size, state and measure.</summary>
internal sealed class FoodName(LineWordTable words, FoodCatalogue catalogue)
{
    /// <summary>The plain name of a phrase.</summary>
    public string Plain(string phrase, LineState state, FoodMatch match)
    {
        string bare = WithoutCompounds(phrase);
        List<string> kept = Telling(bare, match);
        if (kept.Count == 0)
        {
            kept.AddRange(WordFolding.Words(phrase));
        }

        if (kept.Count > 1 && kept.IndexOf("of") is int of and > 0 && of < kept.Count - 1 && words.Unit(kept[0], 0, out _) is not null)
        {
            kept.RemoveRange(0, of + 1);
        }

        string name = WithoutPart(string.Join(' ', kept.Select(WordFolding.Singular)), state);
        if (state.JuiceOrZest is null && kept.Count < WordFolding.Words(phrase).Length && !catalogue.Find(name).Candidates.SequenceEqual(catalogue.Find(phrase).Candidates))
        {
            // A word that seemed idle tells the food: "half and half", "stock cube", "curry leaf"; and the "fat" of "duck fat" is no size.
            bool ground = match.MayHave("ground");
            string[] told = [.. WordFolding.Words(bare).Where(word => !char.IsDigit(word[0]) && !IsCut(word, ground))];
            string[] unsized = Array.FindAll(told, word => !words.Is("size", word));
            name = string.Join(' ', (told is [.., var last] && words.Is("size", last) ? told : unsized).Select(WordFolding.Singular));
        }

        return state.JuiceOrZest switch
        {
            "zest" => name + " zest",
            { } => name + " juice",
            null => name,
        };
    }

    // The words that tell a food: neither size, state nor cut, and no "and" at either end.
    private List<string> Telling(string bare, FoodMatch match)
    {
        List<string> kept = [];
        foreach (string word in WordFolding.Words(bare))
        {
            bool ground = word == "ground" && match.MayHave("ground");
            if (ground || (!words.Is("filler", word) && !words.Is("size", word) && !words.Is("prep", word) && !char.IsDigit(word[0])))
            {
                kept.Add(word);
            }
        }

        while (kept.Count > 1 && (kept[0] is "and" or "or" || kept[^1] is "and" or "or"))
        {
            kept.RemoveAt(kept[0] is "and" or "or" ? 0 : kept.Count - 1);
        }

        return kept;
    }

    // "free-range eggs", "bone-in thighs": folding parts the compound, and half of it would stay as a name.
    private string WithoutCompounds(string phrase)
    {
        if (!phrase.Contains('-', StringComparison.Ordinal))
        {
            return phrase;
        }

        string[] kept = [.. phrase.Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(part => !(part.Contains('-', StringComparison.Ordinal) && words.Is("filler", part.TrimEnd(',').ToLowerInvariant())))];
        return kept.Length == 0 ? phrase : string.Join(' ', kept);
    }

    // "garlic clove", "celery stalk": the measure says it already.
    private string WithoutPart(string name, LineState state)
    {
        int blank = name.LastIndexOf(' ');
        if (blank > 0 && words.Is("name-part", name.AsSpan(blank + 1)) && state.Measures is [{ Unit: not "each" }, ..] && catalogue.IsFood(name[..blank]))
        {
            name = name[..blank];
        }

        bool counted = name.StartsWith("clove ", StringComparison.Ordinal) || name.StartsWith("amount ", StringComparison.Ordinal);
        return counted ? name[(name.IndexOf(' ', StringComparison.Ordinal) + 1)..] : name;
    }

    // Words of cutting do not name the food, save where they make it minced meat.
    private bool IsCut(string word, bool ground) =>
        word is "whole" or "freshly" or "finely" or "bone" or "skin" or "on"
        || (words.Is("prep", word) && word.EndsWith("ed", StringComparison.Ordinal) && word is not ("cooked" or "roasted" or "toasted" or "boiled") && !(ground && word == "minced"));
}
