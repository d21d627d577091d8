using ShelfSafe.Reading.Amounts;
using static ShelfSafe.Foods.LineText;

namespace ShelfSafe.Foods;

/// <summary>Cuts preparation, purpose and talk off the food phrase.</summary>
internal sealed class ClauseScan(LineWordTable words, FoodCatalogue catalogue)
{
    // What the words behind the food say: "to taste", "for frying", "cut into pieces", "or margarine" stays in the phrase.
    public void Phrases(LineState state)
    {
        string low = state.Text.ToLowerInvariant();
        Flags(state, low);
        foreach ((string marker, string blankMarker) in words.TailsIn(low))
        {
            int at = low.IndexOf(blankMarker, Math.Min(low.Length, state.Start), StringComparison.Ordinal);
            bool ends = at >= 0 && (at + marker.Length + 1 == low.Length || !char.IsLetter(low[at + marker.Length + 1]));
            if (ends && at > state.Start && at < state.End && !GoesOn(state, at, marker) && catalogue.IsFood(state.Between(state.Start, at)))
            {
                state.Preparation = Join(state.Between(at, state.End).Trim(' ', ',', '.'), state.Preparation);
                state.End = at;
            }
        }
    }

    // "Salt and freshly ground pepper", "carrots chopped and peas": another food stands behind the word of preparation.
    private bool GoesOn(LineState state, int at, string marker)
    {
        if (marker.Contains(' ', StringComparison.Ordinal))
        {
            return false;
        }

        string before = WithoutPreparation(state.Text[state.Start..at].TrimEnd());
        string behind = " " + state.Between(Math.Min(state.End, at + marker.Length + 1), state.End);
        if (EndsInJoint(before))
        {
            return catalogue.IsFood(behind);
        }

        foreach (string joint in (string[])[" and ", " or ", " & ", ", ", "/"])
        {
            int joined = behind.IndexOf(joint, StringComparison.OrdinalIgnoreCase);
            string next = joined < 0 ? string.Empty : behind[(joined + joint.Length)..].Split([',', '('], 2)[0];
            if (next.Length > 0 && !IsState(next) && !words.Is("prep", WordFolding.Words(next).FirstOrDefault() ?? string.Empty) && catalogue.IsFood(next))
            {
                return true;
            }
        }

        return false;
    }

    private string WithoutPreparation(string text)
    {
        int blank = text.LastIndexOf(' ');
        while (blank > 0 && words.Is("prep", text[(blank + 1)..].ToLowerInvariant()))
        {
            text = text[..blank].TrimEnd();
            blank = text.LastIndexOf(' ');
        }

        return text;
    }

    private static bool EndsInJoint(string text) =>
        text.EndsWith(" and", StringComparison.OrdinalIgnoreCase) || text.EndsWith(" or", StringComparison.OrdinalIgnoreCase) || text.EndsWith('&') || text.EndsWith(',') || text.EndsWith('/') || text.EndsWith(" plus", StringComparison.OrdinalIgnoreCase);

    public void Comma(LineState state)
    {
        string text = state.Text;
        for (int i = state.Start; i < state.End; i++)
        {
            if (!Parts(text, i) || InHole(state, i))
            {
                continue;
            }

            string head = state.Between(state.Start, i);
            string tail = state.Between(i + 1, state.End);
            if (head.Length == 0 || IsState(head))
            {
                // "boneless, skinless chicken": what stands before the comma is no food yet.
                continue;
            }

            if (BracketScan.OnlyPart(state.Between(i + 1, text.Length)) is { } part)
            {
                state.JuiceOrZest ??= part;
            }
            else if (IsList(tail))
            {
                return;
            }

            int or = tail.StartsWith("or ", StringComparison.OrdinalIgnoreCase) ? 3 : -1;
            if (or > 0)
            {
                int start = NumberScan.Skip(text, i + 1) + 3;
                state.Others.Add((start, EndOfClause(text, start, state.End)));
            }

            state.Preparation = Join(tail, state.Preparation);
            state.End = i;
            return;
        }
    }

    // A sign that ends the food: a comma, a dash or point with blanks, "1 tsp salt/quart".
    private bool Parts(string text, int i) => text[i] is ',' or ';' or ':'
        || (text[i] is '\u2013' or '\u2014' or '-' or '.' && i > 0 && i + 1 < text.Length && text[i + 1] == ' ' && (text[i] == '.' || text[i - 1] == ' '))
        || (text[i] == '/' && words.Is("jar-size", NumberScan.Word(text, i + 1, out _)));

    // Whether the words after a comma go on listing foods: "salt, pepper and thyme", "maple syrup, agave, or honey".
    private bool IsList(string tail)
    {
        if (WordFolding.Words(tail).All(word => words.Is("kind-alone", word) || words.Is("filler", word) || words.Is("prep", word) || word is "and" or "or"))
        {
            return false; // "mixed sweet and tart": kinds of the food before the comma
        }

        string first = tail.Split([',', ';'], 2)[0];
        foreach (string joint in (string[])[" and ", " or ", " & "])
        {
            first = first.Split(joint, 2, StringSplitOptions.None)[0];
        }

        if (first.StartsWith("or ", StringComparison.OrdinalIgnoreCase) || first.StartsWith("and ", StringComparison.OrdinalIgnoreCase))
        {
            first = first[(first.IndexOf(' ', StringComparison.Ordinal) + 1)..];
            return tail.Length < 60 && catalogue.IsFood(first) && !IsState(first) && !tail.StartsWith("or ", StringComparison.OrdinalIgnoreCase);
        }

        string[] folded = WordFolding.Words(first);
        return folded.Length is > 0 and < 5 && !IsState(first) && !words.Is("prep", folded[0]) && !words.Is("prep", folded[^1]) && catalogue.IsFood(first);
    }

    private bool IsState(string phrase) => WordFolding.Words(phrase).All(word => words.Is("filler", word) || words.Is("prep", word) || words.Is("size", word));

    public static void Tail(LineState state)
    {
        // A bracketless alternative at the end: "spaghetti or similar" is left to the splitter.
        while (state.End > state.Start && (char.IsWhiteSpace(state.Text[state.End - 1]) || state.Text[state.End - 1] is '.' or ',' or '*' or ':' or '-' or ';'))
        {
            state.End--;
        }
    }

    public static void Trim(LineState state)
    {
        while (state.Start < state.End && !char.IsLetterOrDigit(state.Text[state.Start]))
        {
            state.Start++;
        }

        while (state.End > state.Start && !char.IsLetterOrDigit(state.Text[state.End - 1]) && state.Text[state.End - 1] is not (')' or '%'))
        {
            state.End--;
        }
    }
}
