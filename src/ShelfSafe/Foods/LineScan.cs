using ShelfSafe.Core;
using ShelfSafe.Reading.Amounts;

namespace ShelfSafe.Foods;

/// <summary>Takes amounts, brackets, preparation and the little words off a line, until the food phrase is left.</summary>
internal sealed class LineScan(LineWordTable words, FoodCatalogue catalogue)
{
    /// <summary>Reads the line into the state.</summary>
    public void Run(LineState state)
    {
        Brackets(state);
        Leading(state);
        if (state.Measures.Count == 0)
        {
            Trailing(state);
        }
        else
        {
            TrailingSum(state);
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
        Flags(state, low);
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

        foreach (string marker in (string[])["replace with ", "substitute ", "sub with ", "swap for ", "replaced with ", "replaced by ", "substituted with ", "substituted by ", "similarly shaped "])
        {
            int at = low.IndexOf(marker, StringComparison.Ordinal);
            if (at >= 0)
            {
                state.Others.Add((NumberScan.Skip(state.Text, start) + at + marker.Length, end));
                return;
            }
        }

        state.JuiceOrZest ??= OnlyPart(inner);
        state.Preparation = Join(state.Preparation, inner);
    }

    private static void Flags(LineState state, string low)
    {
        state.Optional |= low.Contains("optional", StringComparison.Ordinal) || low.Contains("if you like", StringComparison.Ordinal) || low.Contains("if desired", StringComparison.Ordinal);
        state.ToTaste |= low.Contains("to taste", StringComparison.Ordinal) || low.Contains("as needed", StringComparison.Ordinal);
        state.AtServing |= (low.Contains("to serve", StringComparison.Ordinal) || low.Contains("for serving", StringComparison.Ordinal) || low.Contains("when serving", StringComparison.Ordinal) || low.Contains("at the table", StringComparison.Ordinal) || low.Contains("at serving", StringComparison.Ordinal))
            && !low.Contains("plus extra", StringComparison.Ordinal) && !low.Contains("plus more", StringComparison.Ordinal) && !low.Contains("extra for", StringComparison.Ordinal);
    }

    private void Leading(LineState state)
    {
        string text = state.Text;
        int at = SkipHoles(state, 0);
        bool again = true;
        while (again)
        {
            again = false;
            string word = NumberScan.Word(text, at, out int end);
            bool bound = word is "up" or "at" or "no" or "not" && NumberScan.TryRange(text, at, out _, out _);
            bool circa = word == "c" && end + 1 < text.Length && text[end] == '.' && char.IsAsciiDigit(text[NumberScan.Skip(text, end + 1) is var digit && digit < text.Length ? digit : end]);
            if (word.Length > 0 && !bound && (circa || words.Is("about", word)))
            {
                at = SkipHoles(state, end < text.Length && text[end] == '.' ? end + 1 : end);
                again = true;
            }
        }

        at = JuiceOf(state, at);
        int after = Amount(state, at, first: true);
        if (after < 0)
        {
            // "Pinch of salt", "Clove of garlic", "dash pepper": a unit word without a number is one.
            int unitAt = SkipSizes(state, at);
            if (words.Unit(text, unitAt, out int unitEnd) is { } unit && unitEnd - unitAt > 2 && SkipOf(text, unitEnd) is var rest && rest < text.Length
                && (IsOf(text, unitEnd) || unit is "pinch" or "dash" or "handful" or "splash" or "drizzle" || (unitAt > at && unit is "bunch" or "sprig" or "head" or "piece")))
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

        state.Start = SkipOf(text, SkipHoles(state, JuiceOf(state, SkipHoles(state, after))));
    }

    private static int JuiceOf(LineState state, int at)
    {
        string word = NumberScan.Word(state.Text, at, out int end);
        int start = at;
        while (word is "freshly" or "fresh" or "finely" or "squeezed" or "grated" or "strained" or "the")
        {
            at = NumberScan.Skip(state.Text, end);
            word = NumberScan.Word(state.Text, at, out end);
        }

        if (word is not ("juice" or "zest" or "rind" or "peel"))
        {
            return start;
        }

        int next = NumberScan.Skip(state.Text, end);
        string second = NumberScan.Word(state.Text, next, out int secondEnd);
        string what = word == "juice" ? "juice" : "zest";
        if (second is "and" or "&" && NumberScan.Word(state.Text, NumberScan.Skip(state.Text, secondEnd), out int thirdEnd) is "juice" or "zest" or "rind")
        {
            what = "juice and zest";
            next = NumberScan.Skip(state.Text, thirdEnd);
            second = NumberScan.Word(state.Text, next, out secondEnd);
        }

        if (second is not ("of" or "from"))
        {
            return start;
        }

        state.JuiceOrZest = what;
        return NumberScan.Skip(state.Text, secondEnd);
    }

    // Reads "2", "2 cups", "1 lb / 450 g", "2 (14 oz) cans", "2 x 400 g tins"; -1 where no amount stands there.
    private int Amount(LineState state, int at, bool first)
    {
        string text = state.Text;
        if (!NumberScan.TryRange(text, at, out int end, out Interval value) || end == at)
        {
            return -1;
        }

        if (NumberScan.Skip(text, end) is var percent && percent < text.Length && text[percent] == '%')
        {
            // "2 % milk" and "70 % chocolate" tell what it is, not how much.
            return -1;
        }

        string spelled = NumberScan.Word(text, at, out int wordEnd);
        if (spelled is "a" or "an" && NumberScan.Word(text, NumberScan.Skip(text, wordEnd), out int fewEnd) is "few" or "little" or "bit" or "lot" or "small" or "large" or "big" or "good" or "generous" or "heaped" or "whole" or "medium" is var vague && vague)
        {
            return Vague(state, fewEnd, NumberScan.Word(text, NumberScan.Skip(text, wordEnd), out _));
        }

        int afterNumber = SkipHoles(state, end);
        afterNumber = SkipSizes(state, afterNumber);
        bool times = afterNumber < text.Length && text[afterNumber] is 'x' or 'X' or '×' && afterNumber + 1 < text.Length && (text[afterNumber + 1] == ' ' || char.IsDigit(text[afterNumber + 1]));
        if (times)
        {
            afterNumber = NumberScan.Skip(text, afterNumber + 1);
        }

        // "2 x 400 g tins", "1 15 oz can", "one 28-oz can": a second measure before the package word is its size.
        if (NumberScan.TryNumber(text, afterNumber, out int sizeEnd, out double size) && char.IsDigit(text[Math.Min(afterNumber, text.Length - 1)])
            && words.Unit(text, NumberScan.Skip(text, Dash(text, sizeEnd)), out int sizeUnitEnd) is { } sizeUnit
            && NumberScan.Skip(text, Dash(text, SkipHoles(state, sizeUnitEnd))) is var packageAt
            && (sizeUnit is not ("inch" or "cm") || words.Unit(text, packageAt, out _) is "piece" or "slice" or "stick" or "strip"))
        {
            if (words.Unit(text, packageAt, out int packageEnd) is "can" or "package" or "jar" or "bottle" or "block" or "glass" or "piece" or "slice" or "stick" is var packed && packed)
            {
                state.Package = new(Interval.Exactly(size), sizeUnit);
                state.Measures.Add(new(value, words.Unit(text, packageAt, out _)!));
                return packageEnd;
            }

            if (times || sizeUnit is "oz" or "g" or "lb" or "ml" or "kg" or "l")
            {
                bool canned = NumberScan.Word(text, packageAt, out _) is "canned" or "tinned";
                state.Package = new(Interval.Exactly(size), sizeUnit);
                state.Measures.Add(new(value, canned ? "can" : "each"));
                return sizeUnitEnd;
            }
        }

        int unitAt = NumberScan.Skip(text, Dash(text, afterNumber));
        string? unit = words.Unit(text, unitAt, out int unitEnd);
        if (unit is "inch" or "cm" && Length(state, value, unit, unitEnd) is var measured && measured > 0)
        {
            return measured;
        }

        if (unit is "inch" or "cm")
        {
            // "4 1/4 inch thick steaks" is four steaks; "a 2 inch piece of ginger" is a piece.
            unit = null;
            int blank = text.IndexOf(' ', at, Math.Max(0, end - at));
            if (blank > at && value.High > 1)
            {
                value = Interval.Exactly(Math.Floor(value.Low));
            }
        }

        if (unit is null)
        {
            (value, end) = ListFraction(text, at, end, value);
            state.Measures.Add(new(value, "each"));
            ParenthesisPackage(state, end);
            return afterNumber;
        }

        bool unitIsFood = unit is "clove" && !IsOf(text, unitEnd) && NothingLeft(state, unitEnd);
        if (unitIsFood)
        {
            state.Measures.Add(new(value, "each"));
            return unitAt;
        }

        bool isPackage = unit is "can" or "package" or "jar" or "bottle" or "block";
        int packageWord = NumberScan.Skip(text, Dash(text, SkipHoles(state, unitEnd)));
        if (!isPackage && unit is "oz" or "g" or "ml" or "lb" or "l" or "kg" && words.Unit(text, packageWord, out int tin) is "can" or "jar" or "package" or "bottle" && words.Unit(text, packageWord, out tin) is { } vessel)
        {
            // "400 ml can", "28oz (825 ml) can of tomatoes": one can of that size.
            state.Package = new(value, unit);
            state.Measures.Add(new(Interval.Exactly(1), vessel));
            return tin;
        }

        value = OrTwo(text, ref unitEnd, value);
        state.Measures.Add(new(value, unit));
        InnerMeasures(state, end, isPackage, value);
        return More(state, unitEnd, first);
    }

    // "2-inch piece of ginger" is one piece of that length, "2 inches of ginger" is a length of it; -1 where it only tells how thick something is.
    private int Length(LineState state, Interval value, string unit, int unitEnd)
    {
        string text = state.Text;
        int next = NumberScan.Skip(text, Dash(text, unitEnd));
        string word = NumberScan.Word(text, next, out _);
        if (words.Unit(text, next, out int pieceEnd) is "piece" or "slice" or "stick" or "stalk" or "strip" && words.Unit(text, next, out pieceEnd) is { } piece)
        {
            state.Package = new(value, unit);
            state.Measures.Add(new(Interval.Exactly(1), piece));
            return pieceEnd;
        }

        bool dashed = unitEnd < text.Length && text[unitEnd] == '-';
        if (!dashed && word.Length > 0 && word is not ("thick" or "long" or "wide" or "cube" or "cubes" or "pieces" or "slices" or "dice") && (word is "of" || text[^1] is not ('s' or 'S')))
        {
            state.Measures.Add(new(value, unit));
            return unitEnd;
        }

        return -1;
    }

    // "a pound or two" is one to two pounds.
    private static Interval OrTwo(string text, ref int end, Interval value)
    {
        int at = NumberScan.Skip(text, end);
        if (NumberScan.Word(text, at, out int orEnd) is "or" && NumberScan.TryNumber(text, orEnd, out int numberEnd, out double high) && high > value.High
            && (numberEnd >= text.Length || NumberScan.Skip(text, numberEnd) >= text.Length || text[NumberScan.Skip(text, numberEnd)] is ')' or ',' || NumberScan.Word(text, NumberScan.Skip(text, numberEnd), out _) is "of"))
        {
            end = numberEnd;
            return new(value.Low, high);
        }

        return value;
    }

    private int Vague(LineState state, int end, string word)
    {
        string text = state.Text;
        int next = NumberScan.Skip(text, end);
        string? unit = words.Unit(text, next, out int unitEnd);
        if (word is "few" or "little" or "bit" or "lot")
        {
            if (unit is not null && word == "few")
            {
                return unitEnd;
            }

            return next;
        }

        if (word is "small" or "medium" or "large" or "big")
        {
            state.Size = word == "big" ? "large" : word;
        }

        state.Measures.Add(new(Interval.Exactly(1), unit ?? "each"));
        return unit is null ? next : unitEnd;
    }

    // "2 (14 oz) cans": the bracket between number and package word holds the size.
    private void ParenthesisPackage(LineState state, int end)
    {
        string text = state.Text;
        int at = NumberScan.Skip(text, end);
        foreach ((int from, int to) in state.Holes)
        {
            if (from == at && NumberScan.TryRange(text, from + 1, out int numberEnd, out Interval size)
                && words.Unit(text, NumberScan.Skip(text, Dash(text, numberEnd)), out _) is { } unit)
            {
                int after = NumberScan.Skip(text, to);
                if (words.Unit(text, after, out int packageEnd) is "can" or "package" or "jar" or "bottle" or "block" && words.Unit(text, after, out packageEnd) is { } package)
                {
                    state.Package = new(size, unit);
                    state.Measures[^1] = state.Measures[^1] with { Unit = package };
                    state.Holes.Add((after, packageEnd));
                }
                else
                {
                    state.Measures.Add(new(size, unit));
                }
            }
        }
    }

    private void InnerMeasures(LineState state, int end, bool isPackage, Interval count)
    {
        string text = state.Text;
        foreach ((int from, int to) in state.Holes.ToArray())
        {
            if (from < end || text[from] is not ('(' or '['))
            {
                continue;
            }

            int at = NumberScan.Skip(text, from + 1);
            if (words.Is("about", NumberScan.Word(text, at, out int aboutEnd)))
            {
                at = NumberScan.Skip(text, aboutEnd);
            }

            if (NumberScan.TryRange(text, at, out int numberEnd, out Interval size) && numberEnd < to
                && words.Unit(text, NumberScan.Skip(text, Dash(text, numberEnd)), out _) is { } unit && unit is not ("inch" or "cm"))
            {
                if (isPackage && state.Package is null)
                {
                    state.Package = new(size, unit);
                }
                else
                {
                    state.Measures.Add(new(size, unit));
                }
            }
        }
    }

    // Further measures of the same food: "1 lb / 450 g", "500g or 1lb", "1 cup plus 2 tbsp".
    private int More(LineState state, int end, bool first)
    {
        string text = state.Text;
        int at = SkipHoles(state, end);
        bool sum = false;
        int next = at;
        if (at < text.Length && text[at] is '/' or '|' or '=' or '+' && !(text[at] == '+' && !NumberScan.TryRange(text, at + 1, out _, out _)))
        {
            sum = text[at] == '+';
            next = at + 1;
        }
        else
        {
            string word = NumberScan.Word(text, at, out int wordEnd);
            bool dash = at < text.Length && text[at] is '-' or '\u2013';
            if ((word is "to" || dash) && first && state.Measures.Count == 1
                && NumberScan.TryNumber(text, dash ? at + 1 : wordEnd, out int highEnd, out double high) && high > state.Measures[0].Value.Low
                && words.Unit(text, NumberScan.Skip(text, highEnd), out int highUnitEnd) == state.Measures[0].Unit)
            {
                state.Measures[0] = state.Measures[0] with { Value = new(state.Measures[0].Value.Low, high) };
                return highUnitEnd;
            }

            bool more = (word is "or" && NumberScan.Word(text, NumberScan.Skip(text, wordEnd), out _) is "more") || (end < text.Length && text[end] == '+' && end == at);
            if (more && state.Measures.Count == 1)
            {
                state.Measures[0] = state.Measures[0] with { Value = new(state.Measures[0].Value.Low, double.PositiveInfinity) };
                return NumberScan.Word(text, NumberScan.Skip(text, wordEnd), out int moreEnd) is "more" ? moreEnd : at + 1;
            }

            if (word is "or" or "plus" or "and")
            {
                sum = word is not "or";
                next = wordEnd;
            }
            else if (first && state.Measures.Count == 1 && SmallerPart(state, at) is var part && part > 0)
            {
                return part;
            }
        }

        if (!first || (next > at && NumberScan.TryRange(text, next, out int numberEnd, out Interval value) && Second(state, numberEnd, value, sum) is var done && done > 0 && (end = done) > 0))
        {
            return end;
        }

        return end;
    }

    // "2 lb 4 oz", "1 kg 500 g": the next smaller unit of the same system adds to the first.
    private int SmallerPart(LineState state, int at)
    {
        string text = state.Text;
        if (at >= text.Length || !char.IsAsciiDigit(text[at]) || !NumberScan.TryNumber(text, at, out int numberEnd, out double number))
        {
            return -1;
        }

        string? unit = words.Unit(text, NumberScan.Skip(text, Dash(text, numberEnd)), out int unitEnd);
        bool smaller = (state.Measures[0].Unit, unit) is ("lb", "oz") or ("kg", "g") or ("l", "ml") or ("gallon", "quart" or "pint") or ("quart", "pint" or "cup") or ("pint", "fl-oz" or "cup") or ("cup", "tbsp" or "tsp") or ("tbsp", "tsp");
        return smaller ? Second(state, numberEnd, Interval.Exactly(number), sum: true) is var end && end > 0 ? end : unitEnd : -1;
    }

    private int Second(LineState state, int numberEnd, Interval value, bool sum)
    {
        string text = state.Text;
        if (words.Unit(text, NumberScan.Skip(text, Dash(text, numberEnd)), out int unitEnd) is not { } unit)
        {
            return -1;
        }

        if (sum)
        {
            Amount before = state.Measures[0];
            if (UnitFactors.Ratio(unit, before.Unit) is { } ratio)
            {
                state.Measures[0] = before with { Value = before.Value + (value * ratio) };
                return unitEnd;
            }

            return -1;
        }

        state.Measures.Add(new(value, unit));
        return unitEnd;
    }

    // "1 cup sugar plus 2 tbsp": the rest of a sum may stand behind the food.
    private void TrailingSum(LineState state)
    {
        string text = state.Text;
        foreach (string joint in (string[])[" plus ", " + "])
        {
            int at = text.IndexOf(joint, Math.Min(state.Start, text.Length), StringComparison.OrdinalIgnoreCase);
            if (at > state.Start && NumberScan.TryRange(text, at + joint.Length, out int numberEnd, out Interval value)
                && words.Unit(text, NumberScan.Skip(text, Dash(text, numberEnd)), out int unitEnd) is not null
                && (unitEnd >= text.Length || text[NumberScan.Skip(text, unitEnd) is var rest && rest < text.Length ? rest : text.Length - 1] is ',' or '.' or ')' || NumberScan.Skip(text, unitEnd) >= text.Length)
                && Second(state, numberEnd, value, sum: true) > 0)
            {
                state.Holes.Add((at, unitEnd));
                return;
            }
        }
    }

    private void Trailing(LineState state)
    {
        string text = state.Text;
        for (int i = state.Start + 1; i < text.Length; i++)
        {
            bool from = i > 5 && text.AsSpan(0, i).EndsWith("from ", StringComparison.OrdinalIgnoreCase) && NumberScan.TryNumber(text, i, out _, out _);
            bool starts = from || char.IsDigit(text[i]) || "½⅓⅔¼¾⅛".Contains(text[i], StringComparison.Ordinal) || (text[i] == '.' && i + 1 < text.Length && char.IsDigit(text[i + 1]));
            bool boundary = !char.IsLetterOrDigit(text[i - 1]) && text[i - 1] is not ('/' or '.' or ',');
            bool afterColon = i > 1 && (text.AsSpan(0, i).TrimEnd().EndsWith(":", StringComparison.Ordinal) || (text[i] is 'a' or 'A' && text.AsSpan(0, i).TrimEnd().EndsWith(",", StringComparison.Ordinal)));
            if (InHole(state, i) || !((starts && boundary) || (afterColon && char.IsLetter(text[i]) && !char.IsWhiteSpace(text[i]) && NumberScan.TryNumber(text, i, out _, out _))))
            {
                continue;
            }

            int mark = i;
            int end = TrailingAmount(state, i);
            if (end <= 0)
            {
                continue;
            }

            string before = text[..mark].TrimEnd(' ', '*', ':', '-', '\u2013', '\u2014', ',', '~', '=', '|', '\u00A0');
            foreach (string lead in (string[])["about", "approx.", "approx", "around", "ca.", "ca", "roughly"])
            {
                if (before.EndsWith(" " + lead, StringComparison.OrdinalIgnoreCase))
                {
                    before = before[..^lead.Length].TrimEnd(' ', ':', '-', ',', '*');
                }
            }

            int rest = NumberScan.Skip(text, end);
            string tail = state.Between(rest, text.Length).TrimStart(' ', ',', '*', '|', '.');
            Flags(state, tail.ToLowerInvariant());
            bool named = before.Length > state.Start && state.Between(state.Start, before.Length).Length > 1;
            if (named)
            {
                state.End = before.Length;
                state.Preparation = Join(state.Preparation, tail.Trim(' ', ',', '.', '*'));
            }

            return;
        }

        foreach ((int From, int To) hole in state.Holes.ToArray())
        {
            int inner = NumberScan.Skip(text, hole.From + 1);
            if (words.Is("about", NumberScan.Word(text, inner, out int aboutEnd)))
            {
                inner = NumberScan.Skip(text, aboutEnd + (aboutEnd < text.Length && text[aboutEnd] == '.' ? 1 : 0));
            }

            // Its own amount is read inside the bracket, so the bracket is no hole for that while.
            state.Holes.Remove(hole);
            bool found = hole.From >= state.Start && TrailingAmount(state, inner) > 0;
            state.Holes.Add(hole);
            if (found)
            {
                return;
            }
        }
    }

    private int TrailingAmount(LineState state, int at)
    {
        int before = state.Measures.Count;
        int end = Amount(state, at, first: true);
        if (end > 0 && state.Measures.Count > before)
        {
            // "10 - 15 medium sized" is a count; a bare "95 %" or "50-70%" is no amount.
            int next = NumberScan.Skip(state.Text, end);
            if (next < state.Text.Length && state.Text[next] == '%')
            {
                state.Measures.RemoveRange(before, state.Measures.Count - before);
                return -1;
            }

            return end;
        }

        return -1;
    }

    // What the words behind the food say: "to taste", "for frying", "cut into pieces", "or margarine" stays in the phrase.
    private void Phrases(LineState state)
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

    private void Comma(LineState state)
    {
        string text = state.Text;
        for (int i = state.Start; i < state.End; i++)
        {
            bool parts = text[i] is ',' or ';' or ':' || (text[i] is '\u2013' or '\u2014' or '-' or '.' && i > 0 && i + 1 < text.Length && text[i + 1] == ' ' && (text[i] == '.' || text[i - 1] == ' '));
            if (!parts || InHole(state, i))
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

            if (OnlyPart(state.Between(i + 1, text.Length)) is { } part)
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

    // "2 lemons, juiced", "1 orange, zest only", "1 lime, juice and zest": only that of the fruit goes in.
    private static string? OnlyPart(string tail)
    {
        bool juice = false;
        bool zest = false;
        string[] folded = WordFolding.Words(tail);
        for (int i = 0; i < folded.Length && i < 5; i++)
        {
            bool named = folded[i] is "juice" or "juiced" or "zest" or "zested";
            if (i == 0 && !named && folded[i] is not ("grated" or "finely" or "freshly" or "squeezed" or "strained" or "the" or "only"))
            {
                return null;
            }

            juice |= folded[i] is "juice" or "juiced";
            zest |= folded[i] is "zest" or "zested";
            if (folded[i] is "of" or "from")
            {
                return null;
            }
        }

        return juice && zest ? "juice and zest" : juice ? "juice" : zest ? "zest" : null;
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

    private int SkipSizes(LineState state, int at)
    {
        while (true)
        {
            string word = NumberScan.Word(state.Text, at, out int end);
            if (word.Length == 0 || !(words.Is("size", word) || word is "heaped" or "heaping" or "level" or "scant" or "generous" or "good" or "rounded" or "full" or "standard" or "whole" or "very" or "sized" or "thin" or "thick"))
            {
                return at;
            }

            int next = NumberScan.Skip(state.Text, Dash(state.Text, end));
            if (words.Unit(state.Text, next, out _) is null && !(words.Is("size", NumberScan.Word(state.Text, next, out _)) || NumberScan.Word(state.Text, next, out _) is "sized" or "thin" or "thick"))
            {
                return at;
            }

            at = next;
        }
    }

    private static int SkipHoles(LineState state, int at)
    {
        bool moved = true;
        while (moved)
        {
            moved = false;
            at = NumberScan.Skip(state.Text, at);
            foreach ((int from, int to) in state.Holes)
            {
                if (at >= from && at < to)
                {
                    at = to;
                    moved = true;
                }
            }
        }

        return at;
    }

    private static (Interval Value, int End) ListFraction(string text, int at, int end, Interval value)
    {
        // "2/3 cardamom pods", "5/6 bay leaves" of whole things means two to three, five to six.
        int slash = text.IndexOf('/', at, Math.Max(0, end - at));
        if (slash > 0
            && double.TryParse(text[at..slash].Trim(), System.Globalization.CultureInfo.InvariantCulture, out double top)
            && double.TryParse(text[(slash + 1)..end].Trim(), System.Globalization.CultureInfo.InvariantCulture, out double bottom)
            && top >= 2 && bottom == top + 1 && text[^1] is 's' or 'S' or 'f')
        {
            return (new(top, bottom), end);
        }

        return (value, end);
    }

    private static bool NothingLeft(LineState state, int at) => state.Between(at, state.Text.Length).Trim(' ', '.', ',', '*').Length == 0;

    private static int EndOfClause(string text, int start, int end)
    {
        int comma = text.IndexOfAny([',', ';', '('], start);
        return comma < 0 || comma > end ? end : comma;
    }

    private static bool IsOf(string text, int at) => NumberScan.Word(text, NumberScan.Skip(text, at), out _) is "of";

    private static int SkipOf(string text, int at)
    {
        int next = NumberScan.Skip(text, at);
        return NumberScan.Word(text, next, out int end) is "of" or "de" ? NumberScan.Skip(text, end) : next;
    }

    private static int Dash(string text, int at) => at < text.Length && text[at] is '-' or '\u2011' or '\u2013' && at < text.Length ? at + 1 : at;

    private static bool InHole(LineState state, int at)
    {
        foreach ((int from, int to) in state.Holes)
        {
            if (at >= from && at < to)
            {
                return true;
            }
        }

        return false;
    }

    private static string Join(string left, string right) => left.Length == 0 ? right : right.Length == 0 ? left : left + ", " + right;
}
