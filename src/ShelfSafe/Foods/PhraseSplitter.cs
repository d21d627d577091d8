using System.Collections.Immutable;
using ShelfSafe.Reading.Amounts;

namespace ShelfSafe.Foods;

/// <summary>Splits the food phrase of a line at "and", "or", commas and slashes where each side is a food.</summary>
internal sealed class PhraseSplitter(LineWordTable words, FoodCatalogue catalogue)
{
    private readonly FoodState _states = new(catalogue, words);
    private readonly FoodName _names = new(words, catalogue);

    // "A roll soaked in milk" brings the milk too; soaking water is poured away.
    private const string SoakedIn = " soaked in ";

    /// <summary>The foods of the line, at least one.</summary>
    public List<FoodPhrase> Split(LineState state)
    {
        List<FoodPhrase> found = [];
        // "maple syrup, agave, or honey" is one choice, "salt, pepper and thyme" are three foods.
        bool choice = state.Between(state.Start, state.End).Contains(", or ", StringComparison.OrdinalIgnoreCase);
        string[] all = choice ? [" and ", " & ", " plus ", " + ", " n ", " 'n' ", SoakedIn] : [" and ", " & ", ", ", " plus ", " + ", " n ", " 'n' ", SoakedIn];
        all = state.IsRatio ? [.. all, " to "] : all;
        string[] either = choice ? [", or ", " or ", ", ", "/"] : [" or ", "/", " alternatively ", " and/or "];
        List<(int Start, int End)> pieces = Pieces(state, state.Start, state.End, all);
        foreach ((int Start, int End) piece in pieces)
        {
            List<(int Start, int End)> sides = Pieces(state, piece.Start, piece.End, either);
            (int Start, int End) main = sides[0];
            List<Alternative> others = [];
            string phrase = state.Between(main.Start, main.End);
            foreach ((int Start, int End) side in sides.Skip(1))
            {
                Add(others, state, state.Between(side.Start, side.End), phrase);
            }

            // Beside another food too several peppers are the vegetable: "3 cups each of onions and peppers".
            FoodMatch match = pieces.Count > 1 && phrase.Trim().Equals("peppers", StringComparison.OrdinalIgnoreCase) ? catalogue.Find("bell pepper") : _states.Match(state, phrase, alone: pieces.Count == 1, others);
            if (sides.Count > 1 && SharesHead(state, sides, phrase) is { } shared)
            {
                // The head that both share is quoted with the first: "chicken or beef broth".
                (phrase, match) = (shared, catalogue.Find(shared));
                main = (main.Start, sides[^1].End);
            }

            string plain = _names.Plain(phrase, state, match);
            found.Add(new(main.Start, main.End, plain, plain == "pepper" && IsOfVegetables(state) ? catalogue.Find("bell pepper") : match, [.. others]));
        }

        if (state.Others.Count > 0 && found.Count > 0)
        {
            found[^1] = WithOthers(state, found[^1]);
        }

        return found;
    }

    // The last food with what a bracket names instead of it.
    private FoodPhrase WithOthers(LineState state, FoodPhrase last)
    {
        List<Alternative> others = [.. last.Alternatives];
        foreach ((int Start, int End) other in state.Others)
        {
            foreach ((int Start, int End) side in Bare(state, other))
            {
                int had = others.Count;
                Add(others, state, state.Text[side.Start..side.End], state.Between(last.Start, last.End));
                if (others.Count > had && others[^1].Match is Unidentified && NumberScan.TryRange(state.Text, NumberScan.Skip(state.Text, side.Start), out _, out _))
                {
                    others.RemoveAt(had); // "(or two big ones)", "(or 2 x 14 oz)": an amount, and no food
                }
            }
        }

        return last with { Alternatives = [.. others] };
    }

    // No kitchen takes the spice by the piece, the cup or the pound: "1 pepper, diced" is the vegetable.
    private static bool IsOfVegetables(LineState state) =>
        state.Measures is [{ Unit: "each" or "slice" or "piece" or "cup" or "pint" or "quart" or "lb" or "kg" }, ..];

    private void Add(List<Alternative> others, LineState state, string side, string main)
    {
        string phrase = WithoutMeasure(BeforeCondition(side).Trim(' ', '.', ',', ')', '(', '"'));
        if (phrase.Length == 0)
        {
            return;
        }

        if (FoodState.Named(phrase) is { } kind)
        {
            AddState(others, kind, phrase, main);
            return;
        }

        string printed = phrase;
        FoodMatch match = _states.Match(state, phrase, alone: true, []);
        string[] named = WordFolding.Words(main);
        if (match is Unidentified && named.Length > 1 && catalogue.IsExact(string.Join(' ', named[..^1]) + " " + phrase, out FoodMatch? front))
        {
            // "chicken breast or thigh", "vanilla bean or essence": the other side takes the front words of the first.
            phrase = string.Join(' ', named[..^1]) + " " + phrase;
            match = front!;
        }

        if (match is not Unidentified || WordFolding.Words(phrase).Length < 6)
        {
            string[] folded = WordFolding.Words(phrase);
            if (folded.All(word => words.Is("filler", word) || words.Is("prep", word) || words.Is("vague-other", word)))
            {
                return;
            }

            others.Add(new(_names.Plain(phrase, state, match), match, printed));
        }
    }

    // "1 fresh bay leaf or 2 dried": the other side names only the state of the same food.
    private void AddState(List<Alternative> others, string kind, string printed, string main)
    {
        if (catalogue.IsKindOf(kind, main, out FoodMatch? same) && !others.Exists(other => other.Match.Candidates.SequenceEqual(same!.Candidates)))
        {
            others.Add(new(FoodState.Name(kind, main), same!, printed));
        }
    }

    // "or stew meat if you are frugal": what stands behind the little word is talk.
    private static string BeforeCondition(string side)
    {
        foreach (string word in (ReadOnlySpan<string>)[" if ", " when ", " that ", " which ", " as long ", " for ", " to taste", " - ", ";"])
        {
            int at = side.IndexOf(word, StringComparison.OrdinalIgnoreCase);
            side = at > 0 ? side[..at] : side;
        }

        return side;
    }

    // "or 1 teaspoon dried oregano": the measure of the other side is no part of its name.
    private string WithoutMeasure(string phrase)
    {
        if (!NumberScan.TryRange(phrase, 0, out int end, out _))
        {
            return phrase;
        }

        int at = NumberScan.Skip(phrase, end);
        string? unit = words.Unit(phrase, at, out int unitEnd);
        at = unit is null ? at : NumberScan.Skip(phrase, unitEnd);
        string rest = NumberScan.Word(phrase, at, out int ofEnd) is "of" ? phrase[ofEnd..].Trim() : phrase[at..].Trim();
        return rest;
    }

    private static IEnumerable<(int Start, int End)> Bare(LineState state, (int Start, int End) other)
    {
        int start = other.Start;
        for (int i = other.Start; i <= other.End; i++)
        {
            bool parts = i == other.End || state.Text[i] is ',' || (state.Text[i] == '/' && !IsRatio(state.Text, i, "/"))
                || string.Compare(state.Text, i, " or ", 0, 4, StringComparison.OrdinalIgnoreCase) == 0;
            if (parts && i > start)
            {
                yield return (start, i);
                start = i < other.End && state.Text[i] == ' ' ? i + 4 : i + 1;
            }
        }
    }

    // "chicken or beef broth": the first side takes the head of the last.
    private string? SharesHead(LineState state, List<(int Start, int End)> sides, string first)
    {
        string[] last = state.Between(sides[^1].Start, sides[^1].End).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (first.EndsWith('-') && last.Length > 0)
        {
            // "vegetable- or chicken-noodles": the hyphen tells that the head is still to come.
            return first.TrimEnd('-') + " " + last[^1].Split('-')[^1];
        }

        string[] firsts = first.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (last.Length < 2 || char.IsNumber(last[0][0]) || firsts.Length == 0 || !firsts.SkipLast(1).All(word => words.Is("filler", word.ToLowerInvariant()) || words.Is("size", word.ToLowerInvariant())))
        {
            return null;
        }

        first = firsts[^1];

        for (int from = 1; from < last.Length; from++)
        {
            string shared = first + " " + string.Join(' ', last[from..]);
            if (catalogue.IsExact(shared, out _))
            {
                return shared;
            }
        }

        return null;
    }

    private List<(int Start, int End)> Pieces(LineState state, int start, int end, params string[] joints)
    {
        List<(int Start, int End)> pieces = [];
        int from = start;
        for (int i = start; i < end; i++)
        {
            if (state.Text[i] is not (' ' or ',' or '/'))
            {
                continue;
            }

            foreach (string joint in joints)
            {
                if (i + joint.Length >= end || InHole(state, i) || !StandsAt(state.Text, i, joint) || IsRatio(state.Text, i, joint))
                {
                    continue;
                }

                int next = AfterJoint(state.Text, i + joint.Length, end);
                string left = state.Between(from, i);
                string right = state.Between(next, end);
                string whole = state.Between(from, end);
                bool or = joint is " or " or ", or " or "/" or " alternatively " or " and/or " || joints.Contains(", or ", StringComparer.Ordinal);
                if (left.Length == 0 || right.Length == 0 || (joint == SoakedIn && right.Contains("water", StringComparison.OrdinalIgnoreCase)) || (!or && catalogue.IsExact(whole, out _) && !(joint == ", " && (StandsAlone(left, First(right)) || StandsAlone(string.Empty, left)))) || !Parts(left, right, or))
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

    private static bool StandsAt(string text, int at, string word) => string.Compare(text, at, word, 0, word.Length, StringComparison.OrdinalIgnoreCase) == 0;

    // "80/20 ground beef" is no choice.
    private static bool IsRatio(string text, int at, string joint) =>
        joint == "/" && at > 0 && char.IsAsciiDigit(text[at - 1]) && char.IsAsciiDigit(text[at + 1]);

    // "Salt, and or pepper": the little words behind a joint belong to it.
    private static int AfterJoint(string text, int next, int end)
    {
        while (next < end && (StandsAt(text, next, "and ") || StandsAt(text, next, "or ")))
        {
            next += text[next] is 'a' or 'A' ? 4 : 3;
        }

        return next;
    }

    private static string First(string right)
    {
        string first = right.Split([',', '/'], 2)[0];
        foreach (string joint in (string[])[" and ", " or ", " & ", " plus "])
        {
            first = first.Split(joint, 2, StringSplitOptions.None)[0];
        }

        return first;
    }

    // "Allspice, cloves": the word for a piece of garlic is a spice beside any other food; and "garlic cloves, salt" is no garlic salt.
    private bool StandsAlone(string left, string right) =>
        WordFolding.Words(right) is [.., var last]
        && ((words.Unit(last, 0, out _) == "clove" && catalogue.IsFood(right) && !WordFolding.Words(left).Contains("garlic"))
            || (catalogue.IsExact(right, out FoodMatch? food) && food!.Candidates.All(static one => one.Has("salt"))));

    private bool Parts(string left, string right, bool or)
    {
        string firstRight = First(right);
        bool leftFood = catalogue.IsFood(left);
        bool rightFood = catalogue.IsFood(firstRight);
        string[] rightWords = WordFolding.Words(firstRight);
        bool rightIsPrep = rightWords.Length == 0 || (words.Is("prep", rightWords[0]) && !rightFood) || (rightWords.All(word => words.Is("filler", word) || words.Is("prep", word)) && !StandsAlone(left, firstRight));
        string[] leftWords = WordFolding.Words(left);
        bool leftIsPrep = leftWords.All(word => words.Is("filler", word) || words.Is("prep", word));
        return !rightIsPrep && !leftIsPrep && !(leftWords is [.., var kind] && SharesKind(kind, rightWords)) && (or ? rightFood || leftFood : leftFood && rightFood);
    }

    // "Sweet and hot peppers": a kind alone is no food, though its name is one ("sweet" for sweets).
    private bool SharesKind(string kind, string[] right) =>
        right.Length > 1 && words.Is("kind-alone", kind) && catalogue.IsExact(kind + " " + right[^1], out _);

    private static bool InHole(LineState state, int at) => state.Holes.Exists(hole => at >= hole.Start && at < hole.End);
}
