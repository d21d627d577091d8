using ShelfSafe.Reading.Amounts;

namespace ShelfSafe.Foods;

/// <summary>Finds what a phrase means when a word elsewhere in its line tells the state: "lemon juice, bottled", "1 can black beans".</summary>
internal sealed class FoodState(FoodCatalogue catalogue, LineWordTable words)
{
    private static readonly Dictionary<string, string> StateWords = new(StringComparer.Ordinal)
    {
        ["dried"] = "dried", ["dry"] = "dried", ["dehydrated"] = "dried", ["fresh"] = "fresh", ["frozen"] = "frozen", ["canned"] = "canned", ["tinned"] = "canned", ["powder"] = "powder", ["powdered"] = "powder",
        ["ground"] = "ground", ["minced"] = "minced", ["smoked"] = "smoked", ["bottled"] = "bottled", ["cooked"] = "cooked",
    };

    // Made when a line first needs them; of two threads both make the same.
    private string[]? _wiped;
    private string[]? _fresh;

    /// <summary>The state that a lone word names, or <see langword="null"/>.</summary>
    public static string? Named(string phrase) => StateWords.GetValueOrDefault(WordFolding.Key(phrase));

    /// <summary>What a phrase means in its line.</summary>
    /// <param name="alone">Whether the line names this food only.</param>
    /// <param name="others">Receives what the food is in another state that the line allows.</param>
    public FoodMatch Match(LineState state, string phrase, bool alone, List<Alternative> others)
    {
        if (state.JuiceOrZest is { } form)
        {
            if (form == "zest" && IsThickRind(phrase))
            {
                state.JuiceOrZest = null;
                return catalogue.IsExact(phrase + " rind", out FoodMatch? rind) ? rind! : catalogue.Find(phrase);
            }

            FoodMatch of = catalogue.Find(phrase + (form == "zest" ? " zest" : " juice"));
            return of is Unidentified ? catalogue.Find(phrase) : of;
        }

        FoodMatch match = catalogue.Find(phrase);
        string line = state.Text.ToLowerInvariant();
        if (match is Unidentified && state.Preparation.Length > 0 && catalogue.Find(phrase + " " + state.Preparation.Split(',')[0]) is Identified wider)
        {
            return wider;
        }

        return InState(line, phrase, alone, match, others)
            ?? (state.Measures.Count > 0 && state.Measures[0].Unit == "can" && catalogue.IsKindOf("canned", phrase, out FoodMatch? tinned) ? tinned! : match);
    }

    // "1 can black beans", "lemon juice, bottled": a word elsewhere in the line may name another food of the table; null where none does for sure.
    private FoodMatch? InState(string line, string phrase, bool alone, FoodMatch match, List<Alternative> others)
    {
        foreach ((string word, string kind) in (ReadOnlySpan<(string, string)>)[("bottled", "bottled"), ("canned", "canned"), ("tinned", "canned"), ("dried", "dried"), ("frozen", "frozen"), ("ground", "ground"), ("smoked", "smoked"), ("bone-in", "bone-in"), ("minced", "minced"), ("powder", "powder")])
        {
            // In a line of several foods the word belongs to one of them only; there it must not make another one drier or more acid.
            bool counts = alone || kind is "ground" or "minced" or "smoked" or "bone-in";
            if (!counts || !line.Contains(word, StringComparison.Ordinal) || IsDenied(line, word) || !catalogue.IsKindOf(kind, phrase, out FoodMatch? special))
            {
                continue;
            }

            if (!IsChoice(line, word))
            {
                return special!;
            }

            // "fresh or dried", "chopped or powder": both count.
            if (special!.Candidates.SequenceEqual(match.Candidates) || others.Exists(other => other.Match.Candidates.SequenceEqual(special.Candidates)))
            {
                continue;
            }

            others.Add(new(Name(kind, phrase), special!, phrase));
        }

        return null;
    }

    // Zest is the thin peel of a citrus fruit. The rind of a melon weighs as a melon does, and is as low in acid.
    private bool IsThickRind(string phrase) =>
        !catalogue.IsExact(phrase + " zest", out _) && catalogue.Find(phrase) is not Unidentified
        && catalogue.Find(phrase + " zest").Candidates.SequenceEqual(catalogue.Find("zest").Candidates);

    /// <summary>Plain words for a food in a state.</summary>
    public static string Name(string kind, string food)
    {
        string key = WordFolding.Key(food);
        key = kind == "dried" && key.StartsWith("fresh ", StringComparison.Ordinal) ? key["fresh ".Length..] : key; // "fresh thyme or 1/2 tsp dried"
        return kind == "powder" ? key + " powder" : kind + " " + key;
    }

    private bool IsDenied(string line, string word) =>
        (word == "dried" && IsWiped(line)) || (word == "bottled" && IsFresh(line) && !IsChoice(line, word)) || line.Contains("not " + word, StringComparison.Ordinal) || line.Contains("no " + word, StringComparison.Ordinal) || line.Contains("non-" + word, StringComparison.Ordinal) || line.Contains("un" + word, StringComparison.Ordinal);

    // "Washed and dried" is still fresh.
    private bool IsWiped(string line) => Array.Exists(_wiped ??= [.. words.Of("state-wiped")], wiped => line.Contains(wiped, StringComparison.Ordinal));

    // "Fresh squeezed, so much nicer than bottled": the word is only named beside.
    private bool IsFresh(string line) => Array.Exists(_fresh ??= [.. words.Of("state-fresh")], fresh => line.Contains(fresh, StringComparison.Ordinal));

    private static bool IsChoice(string line, string word) =>
        line.Contains("or " + word, StringComparison.Ordinal) || line.Contains(word + " or ", StringComparison.Ordinal) || line.Contains("/" + word, StringComparison.Ordinal) || line.Contains(word + "/", StringComparison.Ordinal) || IsMeasuredChoice(line, word);

    // "1 tbsp fresh thyme or 1/2 tsp dried": an amount stands between the little word and the state.
    private static bool IsMeasuredChoice(string line, string word)
    {
        int at = line.IndexOf(word, StringComparison.Ordinal);
        int or = at < 0 ? -1 : line.LastIndexOf("or ", at, StringComparison.Ordinal);
        return or > 0 && line[or - 1] is (' ' or '(') && NumberScan.TryRange(line, or + 3, out int end, out _) && end <= at
            && line.AsSpan(end, at - end).Trim().Count(' ') == 0;
    }
}
