using System.Collections.Immutable;

namespace ShelfSafe.Foods;

/// <summary>Splits the food phrase of a line at "and", "or", commas and slashes where each side is a food.</summary>
internal sealed class PhraseSplitter(LineWordTable words, FoodCatalogue catalogue)
{
    /// <summary>The foods of the line, at least one.</summary>
    public List<FoodPhrase> Split(LineState state)
    {
        List<FoodPhrase> found = [];
        // "maple syrup, agave, or honey" is one choice, "salt, pepper and thyme" are three foods.
        bool choice = state.Between(state.Start, state.End).Contains(", or ", StringComparison.OrdinalIgnoreCase);
        string[] all = choice ? [" and ", " & ", " plus "] : [" and ", " & ", ", ", " plus "];
        string[] either = choice ? [", or ", " or ", ", ", "/"] : [" or ", "/", " alternatively ", " and/or "];
        foreach ((int Start, int End) piece in Pieces(state, state.Start, state.End, all))
        {
            List<(int Start, int End)> sides = Pieces(state, piece.Start, piece.End, either);
            (int Start, int End) main = sides[0];
            List<Alternative> others = [];
            foreach ((int Start, int End) side in sides.Skip(1))
            {
                Add(others, state, side);
            }

            string phrase = state.Between(main.Start, main.End);
            FoodMatch match = Match(state, phrase);
            if (sides.Count > 1 && SharesHead(state, sides, phrase) is { } shared)
            {
                (phrase, match) = (shared, catalogue.Find(shared));
            }

            found.Add(new(main.Start, main.End, Plain(phrase, state, match), match, [.. others]));
        }

        if (state.Others.Count > 0 && found.Count > 0)
        {
            List<Alternative> others = [.. found[^1].Alternatives];
            foreach ((int Start, int End) other in state.Others)
            {
                foreach ((int Start, int End) side in Bare(state, other))
                {
                    Add(others, state, side);
                }
            }

            found[^1] = found[^1] with { Alternatives = [.. others] };
        }

        return found;
    }

    private void Add(List<Alternative> others, LineState state, (int Start, int End) side)
    {
        string phrase = state.Text[side.Start..side.End].Trim(' ', '.', ',', ')', '(', '"');
        if (phrase.Length == 0)
        {
            return;
        }

        FoodMatch match = Match(state, phrase);
        if (match is not Unidentified || WordFolding.Words(phrase).Length < 4)
        {
            string[] folded = WordFolding.Words(phrase);
            if (folded.All(word => words.Is("filler", word) || words.Is("prep", word) || words.Is("vague-other", word)))
            {
                return;
            }

            others.Add(new(Plain(phrase, state, match), match));
        }
    }

    private static IEnumerable<(int Start, int End)> Bare(LineState state, (int Start, int End) other)
    {
        int start = other.Start;
        for (int i = other.Start; i <= other.End; i++)
        {
            bool parts = i == other.End || state.Text[i] is ',' or '/'
                || string.Compare(state.Text, i, " or ", 0, 4, StringComparison.OrdinalIgnoreCase) == 0;
            if (parts && i > start)
            {
                yield return (start, i);
                start = i < other.End && state.Text[i] == ' ' ? i + 4 : i + 1;
            }
        }
    }

    private FoodMatch Match(LineState state, string phrase)
    {
        if (state.JuiceOrZest is { } form)
        {
            FoodMatch of = catalogue.Find(phrase + (form == "zest" ? " zest" : " juice"));
            return of is Unidentified ? catalogue.Find(phrase) : of;
        }

        FoodMatch match = catalogue.Find(phrase);
        string line = state.Text.ToLowerInvariant();
        if (match is Unidentified && state.Preparation.Length > 0 && catalogue.Find(phrase + " " + state.Preparation.Split(',')[0]) is Identified wider)
        {
            return wider;
        }

        // "1 can black beans", "lemon juice, bottled": a word elsewhere in the line may name another food of the table.
        foreach ((string word, string kind) in (ReadOnlySpan<(string, string)>)[("bottled", "bottled"), ("canned", "canned"), ("tinned", "canned"), ("dried", "dried"), ("frozen", "frozen"), ("ground", "ground"), ("smoked", "smoked"), ("bone-in", "bone-in"), ("minced", "minced"), ("powder", "powder")])
        {
            if (line.Contains(word, StringComparison.Ordinal) && catalogue.IsKindOf(kind, phrase, out FoodMatch? special))
            {
                return special!;
            }
        }

        if (state.Measures.Count > 0 && state.Measures[0].Unit == "can" && catalogue.IsKindOf("canned", phrase, out FoodMatch? tinned))
        {
            return tinned!;
        }

        return match;
    }

    // "chicken or beef broth": the first side takes the head of the last.
    private string? SharesHead(LineState state, List<(int Start, int End)> sides, string first)
    {
        string[] last = state.Between(sides[^1].Start, sides[^1].End).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (last.Length < 2 || first.Contains(' ', StringComparison.Ordinal))
        {
            return null;
        }

        string shared = first + " " + last[^1];
        return catalogue.IsExact(shared, out _) ? shared : null;
    }

    private List<(int Start, int End)> Pieces(LineState state, int start, int end, params string[] joints)
    {
        List<(int Start, int End)> pieces = [];
        int from = start;
        for (int i = start; i < end; i++)
        {
            foreach (string joint in joints)
            {
                if (i + joint.Length >= end || state.InHole(i) || string.Compare(state.Text, i, joint, 0, joint.Length, StringComparison.OrdinalIgnoreCase) != 0)
                {
                    continue;
                }

                int next = i + joint.Length;
                while (next < end && string.Compare(state.Text, next, "and ", 0, 4, StringComparison.OrdinalIgnoreCase) == 0 || next < end && string.Compare(state.Text, next, "or ", 0, 3, StringComparison.OrdinalIgnoreCase) == 0)
                {
                    next += state.Text[next] is 'a' or 'A' ? 4 : 3;
                }

                string left = state.Between(from, i);
                string right = state.Between(next, end);
                string whole = state.Between(from, end);
                bool or = joint is " or " or ", or " or "/" or " alternatively " or " and/or " || joints.Contains(", or ", StringComparer.Ordinal);
                if (left.Length == 0 || right.Length == 0 || (!or && catalogue.IsExact(whole, out _)) || !Parts(left, right, or))
                {
                    continue;
                }

                pieces.Add((from, i));
                from = next;
                i = next - 1;
                break;
            }
        }

        pieces.Add((from, end));
        return pieces;
    }

    private bool Parts(string left, string right, bool or)
    {
        string firstRight = right.Split([',', '/'], 2)[0];
        foreach (string joint in (string[])[" and ", " or ", " & ", " plus "])
        {
            firstRight = firstRight.Split(joint, 2, StringSplitOptions.None)[0];
        }

        bool leftFood = catalogue.IsFood(left);
        bool rightFood = catalogue.IsFood(firstRight);
        string[] rightWords = WordFolding.Words(firstRight);
        bool rightIsPrep = rightWords.Length == 0 || (words.Is("prep", rightWords[0]) && !rightFood) || rightWords.All(word => words.Is("filler", word) || words.Is("prep", word));
        bool leftIsPrep = WordFolding.Words(left).All(word => words.Is("filler", word) || words.Is("prep", word));
        return !rightIsPrep && !leftIsPrep && (or ? rightFood || leftFood : leftFood && rightFood);
    }

    private string Plain(string phrase, LineState state, FoodMatch match)
    {
        List<string> kept = [];
        foreach (string word in WordFolding.Words(phrase))
        {
            bool ground = word == "ground" && match.MayHave("ground");
            if (ground || (!words.Is("filler", word) && !words.Is("size", word) && !words.Is("prep", word) && !char.IsDigit(word[0])))
            {
                kept.Add(word);
            }
        }

        if (kept.Count == 0)
        {
            kept.AddRange(WordFolding.Words(phrase));
        }

        if (kept.Count > 1 && kept.IndexOf("of") is int of and > 0 && of < kept.Count - 1 && words.Unit(kept[0], 0, out _) is not null)
        {
            kept.RemoveRange(0, of + 1);
        }

        string name = string.Join(' ', kept.Select(WordFolding.Singular));
        foreach (string measure in (ReadOnlySpan<string>)[" clove", " stick", " stalk", " sprig", " meat"])
        {
            if (name.EndsWith(measure, StringComparison.Ordinal) && state.Measures is [{ Unit: not "each" }, ..] && catalogue.IsFood(name[..^measure.Length]))
            {
                name = name[..^measure.Length];
            }
        }

        if (name.StartsWith("clove ", StringComparison.Ordinal) || name.StartsWith("amount ", StringComparison.Ordinal))
        {
            name = name[(name.IndexOf(' ', StringComparison.Ordinal) + 1)..];
        }

        return state.JuiceOrZest switch
        {
            "zest" => name + " zest",
            { } => name + " juice",
            null => name,
        };
    }
}
