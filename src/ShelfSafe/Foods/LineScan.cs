using ShelfSafe.Core;
using ShelfSafe.Reading.Amounts;

namespace ShelfSafe.Foods;

/// <summary>Takes amounts, brackets, preparation and the little words off a line, until the food phrase is left.</summary>
internal sealed class LineScan(LineWordTable words, FoodCatalogue catalogue)
{
    private readonly LineAmount _amounts = new(words);

    /// <summary>Reads the line into the state.</summary>
    public void Run(LineState state)
    {
        Brackets(state);
        Leading(state);
        if (state.Measures.Count == 0)
        {
            new TrailingAmount(words, _amounts).Read(state);
        }

        Phrases(state);
        Comma(state);
        Tail(state);
        Trim(state);
        Size(state);
    }

    private static void Brackets(LineState state)
    {
        string text = state.Text;
        for (int i = 0; i < text.Length; i++)
        {
            if (text[i] is not ('(' or '['))
            {
                continue;
            }

            int close = text.IndexOfAny([')', ']'], i);
            close = close < 0 ? text.Length : close;
            state.Holes.Add((i, Math.Min(text.Length, close + 1)));
            Inside(state, i + 1, close);
            i = close;
        }
    }

    private static void Inside(LineState state, int start, int end)
    {
        string inner = state.Text[start..end].Trim();
        string low = inner.ToLowerInvariant();
        LineFlags.Read(state, low);
        int or = NumberScan.Skip(state.Text, start);
        if (NumberScan.Word(state.Text, or, out int afterOr) is "or" or "alternatively")
        {
            if (!NumberScan.TryRange(state.Text, afterOr, out _, out _))
            {
                state.Others.Add((afterOr, end));
            }

            return;
        }

        if (low.StartsWith("and/or ", StringComparison.Ordinal))
        {
            state.Others.Add((start + 7, end));
            return;
        }

        foreach (string marker in (string[])["replace with ", "substitute ", "sub with ", "swap for ", "similarly shaped "])
        {
            int at = low.IndexOf(marker, StringComparison.Ordinal);
            if (at >= 0)
            {
                state.Others.Add((NumberScan.Skip(state.Text, start) + at + marker.Length, end));
                return;
            }
        }

        state.Preparation = LineFlags.Join(state.Preparation, inner);
    }

    private void Leading(LineState state)
    {
        string text = state.Text;
        int at = LinePlaces.SkipHoles(state, 0);
        bool again = true;
        while (again)
        {
            again = false;
            string word = NumberScan.Word(text, at, out int end);
            if (word.Length > 0 && words.Is("about", word))
            {
                at = LinePlaces.SkipHoles(state, end);
                again = true;
            }
        }

        at = FruitPart.Read(state, at);
        bool negative = at + 1 < text.Length && text[at] is '-' or '\u2212' && char.IsAsciiDigit(text[Math.Min(at + 1, text.Length - 1)]);
        int after = _amounts.Amount(state, negative ? at + 1 : at, first: true);
        if (negative && after >= 0)
        {
            // Less than nothing is no amount: it is kept as printed, and nothing weighs it.
            state.Measures[0] = state.Measures[0] with { Value = new(-state.Measures[0].Value.High, -state.Measures[0].Value.Low) };
        }

        if (after < 0)
        {
            // "Pinch of salt", "Clove of garlic", "dash pepper": a unit word without a number is one.
            if (words.Unit(text, at, out int unitEnd) is { } unit && unitEnd - at > 2 && LinePlaces.SkipOf(text, unitEnd) is var rest && rest < text.Length
                && (LinePlaces.IsOf(text, unitEnd) || unit is "pinch" or "dash" or "handful" or "splash" or "drizzle"))
            {
                state.Measures.Add(new(Interval.Exactly(1), unit));
                after = rest;
            }
            else if (NumberScan.Word(text, at, out int fewEnd) is "few" or "some" or "several" or "a" && words.Unit(text, NumberScan.Skip(text, fewEnd), out _) is not null)
            {
                after = at;
            }
            else
            {
                state.Start = at;
                return;
            }
        }

        state.Start = LinePlaces.SkipOf(text, LinePlaces.SkipHoles(state, FruitPart.Read(state, LinePlaces.SkipHoles(state, after))));
    }

    // What the words behind the food say: "to taste", "for frying", "cut into pieces", "or margarine" stays in the phrase.
    private void Phrases(LineState state)
    {
        string low = state.Text.ToLowerInvariant();
        LineFlags.Read(state, low);
        foreach (string marker in words.Of("tail"))
        {
            int at = low.IndexOf(" " + marker, Math.Min(low.Length, state.Start), StringComparison.Ordinal);
            bool ends = at >= 0 && (at + marker.Length + 1 == low.Length || !char.IsLetter(low[at + marker.Length + 1]));
            if (ends && at > state.Start && at < state.End && catalogue.IsFood(state.Between(state.Start, at)))
            {
                state.Preparation = LineFlags.Join(state.Between(at, state.End).Trim(' ', ',', '.'), state.Preparation);
                state.End = at;
            }
        }
    }

    private void Comma(LineState state)
    {
        string text = state.Text;
        for (int i = state.Start; i < state.End; i++)
        {
            bool parts = text[i] is ',' or ';' or ':' || (text[i] is '\u2013' or '\u2014' or '-' or '.' && i > 0 && i + 1 < text.Length && text[i + 1] == ' ' && (text[i] == '.' || text[i - 1] == ' '));
            if (!parts || state.InHole(i))
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

            if (IsList(tail))
            {
                return;
            }

            int or = tail.StartsWith("or ", StringComparison.OrdinalIgnoreCase) ? 3 : -1;
            if (or > 0)
            {
                int start = NumberScan.Skip(text, i + 1) + 3;
                state.Others.Add((start, EndOfClause(text, start, state.End)));
            }

            state.Preparation = LineFlags.Join(tail, state.Preparation);
            state.End = i;
            return;
        }
    }

    // Whether the words after a comma go on listing foods: "salt, pepper and thyme", "maple syrup, agave, or honey".
    private bool IsList(string tail)
    {
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

    private static void Tail(LineState state)
    {
        // A bracketless alternative at the end: "spaghetti or similar" is left to the splitter.
        while (state.End > state.Start && (char.IsWhiteSpace(state.Text[state.End - 1]) || state.Text[state.End - 1] is '.' or ',' or '*' or ':' or '-' or ';'))
        {
            state.End--;
        }
    }

    private static void Trim(LineState state)
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

    // "2 garlic cloves", "4 celery sticks": the last word of the phrase is the measure.
    private void LastWordIsUnit(LineState state)
    {
        if (state.Measures is not [{ Unit: "each" } count, ..])
        {
            return;
        }

        string phrase = state.Between(state.Start, state.End);
        string[] parts = phrase.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        string? first = parts.Length > 1 ? words.Unit(parts[^1], 0, out _) : null;
        string? middle = parts.Length > 1 ? words.Unit(parts[parts.Length > 2 ? ^2 : 0], 0, out _) : null;
        string? unit = first is "clove" or "stalk" or "sprig" or "leaf" or "slice" or "stick" or "head" or "strand" or "bunch" or "can" or "jar" ? first
            : middle is "clove" or "sprig" && parts.Length > 1 ? middle : null;
        if (unit is not null && !(unit == "stick" && words.Is("size", parts[0])))
        {
            state.Measures[0] = count with { Unit = unit };
        }
    }

    private void Size(LineState state)
    {
        LastWordIsUnit(state);
        foreach (string word in WordFolding.Words(state.Text))
        {
            if (state.Size is null && words.Is("size", word))
            {
                state.Size = word is "large" or "big" or "jumbo" ? "large" : word is "small" or "little" or "baby" or "mini" ? "small" : "medium";
            }
        }
    }

    private static int EndOfClause(string text, int start, int end)
    {
        int comma = text.IndexOfAny([',', ';', '('], start);
        return comma < 0 || comma > end ? end : comma;
    }
}
