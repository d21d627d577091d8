using ShelfSafe.Core;
using ShelfSafe.Reading.Amounts;
using static ShelfSafe.Foods.LineText;

namespace ShelfSafe.Foods;

/// <summary>Finds an amount that stands behind the food: "Onions: 3 large", "Tomatoes (1 kg)".</summary>
internal sealed class TrailingScan(LineWordTable words, MeasureScan measures)
{
    /// <summary>Reads the first amount behind the food and ends the phrase before it.</summary>
    public void Trailing(LineState state)
    {
        string text = state.Text;
        for (int i = state.Start + 1; i < text.Length; i++)
        {
            if (InHole(state, i) || !MayStart(text, i))
            {
                continue;
            }

            int end = TrailingAmount(state, i);
            if (end > 0)
            {
                EndPhrase(state, i, end);
                return;
            }
        }

        InBrackets(state);
    }

    /// <summary>Reads what counted food weighs behind a comma: "4 chicken breasts, 4 oz each", "8 chicken thighs, about 3 pounds".</summary>
    public void Weight(LineState state)
    {
        string text = state.Text;
        int comma = state.Measures is [{ Unit: "each" }] && state.Package is null ? text.IndexOf(',', Math.Min(state.Start, text.Length)) : -1;
        if (comma < 0 || InHole(state, comma))
        {
            return;
        }

        int at = NumberScan.Skip(text, comma + 1);
        at = words.Is("about", NumberScan.Word(text, at, out int aboutEnd)) ? NumberScan.Skip(text, aboutEnd + (aboutEnd < text.Length && text[aboutEnd] == '.' ? 1 : 0)) : at;
        if (!NumberScan.TryRange(text, at, out int numberEnd, out Interval value)
            || words.Unit(text, NumberScan.Skip(text, Dash(text, numberEnd)), out int unitEnd) is not { } unit || UnitFactors.Ratio(unit, "g") is null)
        {
            return;
        }

        string word = NumberScan.Word(text, NumberScan.Skip(text, unitEnd), out int wordEnd);
        bool each = word is "each" or "apiece";
        int end = each || word is "total" or "altogether" ? wordEnd : unitEnd;
        if (NumberScan.Skip(text, end) is var rest && rest < text.Length && text[rest] is not (',' or ';' or '.'))
        {
            return; // "2 onions, 1 lb of carrots" is another food
        }

        if (each)
        {
            state.Package = new(value, unit);
        }
        else
        {
            state.Measures.Add(new(value, unit));
        }

        EndPhrase(state, comma, end);
    }

    /// <summary>Reads the size of a package that stands behind the food: "1 can crushed pineapple 15 oz", "2 tins tomatoes, 400 g each".</summary>
    public void PackageSize(LineState state)
    {
        string text = state.Text;
        if (state.Package is not null || state.Measures is not [var only] || !IsPackage(only.Unit))
        {
            return;
        }

        for (int i = state.Start + 1; i < text.Length; i++)
        {
            if (!InHole(state, i) && MayStart(text, i) && NumberScan.TryRange(text, i, out int numberEnd, out Interval size)
                && words.Unit(text, NumberScan.Skip(text, Dash(text, numberEnd)), out int end) is { } unit and ("oz" or "fl-oz" or "g" or "kg" or "lb" or "ml" or "l")
                && EndsSize(text, ref end))
            {
                state.Package = new(size, unit);
                EndPhrase(state, i, end);
                return;
            }
        }
    }

    // Behind a size nothing more is said of it: "240 g drained" is no size of the tin.
    private static bool EndsSize(string text, ref int end)
    {
        end = NumberScan.Skip(text, end < text.Length && text[end] == '.' ? end + 1 : end);
        if (NumberScan.Word(text, end, out int wordEnd) is "each" or "apiece" or "size")
        {
            end = NumberScan.Skip(text, wordEnd);
        }

        return end >= text.Length || text[end] is ',' or ';' or '(';
    }

    private static bool MayStart(string text, int i)
    {
        bool number = char.IsDigit(text[i]) || "½⅓⅔¼¾⅛".Contains(text[i], StringComparison.Ordinal) || (text[i] == '.' && i + 1 < text.Length && char.IsDigit(text[i + 1]))
            || (i > 5 && text.AsSpan(0, i).EndsWith("from ", StringComparison.OrdinalIgnoreCase) && NumberScan.TryNumber(text, i, out _, out _));
        if (number && !char.IsLetterOrDigit(text[i - 1]) && text[i - 1] is not ('/' or '.' or ','))
        {
            return true;
        }

        // "Lemons: two", "Butter, a stick": a spelled-out number counts only behind a colon or an article behind a comma.
        bool afterSign = i > 1 && char.IsLetter(text[i]) && !char.IsLetterOrDigit(text[i - 1])
            && (text.AsSpan(0, i).TrimEnd().EndsWith(":", StringComparison.Ordinal) || (text[i] is 'a' or 'A' && text.AsSpan(0, i).TrimEnd().EndsWith(",", StringComparison.Ordinal)));
        return afterSign && NumberScan.TryNumber(text, i, out _, out _);
    }

    private static void EndPhrase(LineState state, int mark, int end)
    {
        string text = state.Text;
        string before = text[..mark].TrimEnd(' ', '*', ':', '-', '\u2013', '\u2014', ',', '~', '=', '|', '\u00A0');
        foreach (string lead in (ReadOnlySpan<string>)["about", "approx.", "approx", "around", "ca.", "ca", "roughly"])
        {
            if (before.EndsWith(" " + lead, StringComparison.OrdinalIgnoreCase))
            {
                before = before[..^lead.Length].TrimEnd(' ', ':', '-', ',', '*');
            }
        }

        string tail = state.Between(NumberScan.Skip(text, end), text.Length).TrimStart(' ', ',', '*', '|', '.');
        Flags(state, tail.ToLowerInvariant());
        if (before.Length > state.Start && state.Between(state.Start, before.Length).Length > 1)
        {
            state.End = before.Length;
            state.Preparation = Join(state.Preparation, tail.Trim(' ', ',', '.', '*'));
        }
    }

    private void InBrackets(LineState state)
    {
        string text = state.Text;
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
        Amount? package = state.Package;
        int end = measures.Amount(state, at, first: true);
        if (end > 0 && state.Measures.Count > before)
        {
            // "10 - 15 medium sized" is a count; a bare "95 %" or "50-70%" is no amount.
            int next = NumberScan.Skip(state.Text, end);
            if ((next < state.Text.Length && state.Text[next] == '%') || IsSize(state.Text, at, state.Measures[before].Unit))
            {
                state.Measures.RemoveRange(before, state.Measures.Count - before);
                state.Package = package;
                return -1;
            }

            return end;
        }

        return -1;
    }

    // "Beets, 2 to 2 1/2 inches across", "beans, cut in 2-inch lengths": a length tells how large a piece is, and no number of them.
    // "Pork, 7 3/4-inch pieces" and "ginger, 2-inch piece" count, and "ginger: 2 inches" measures.
    private bool IsSize(string text, int at, string unit)
    {
        int end = at;
        while (end < text.Length && (char.IsNumber(text[end]) || text[end] is ' ' or '/' or '.' or '-' or '\u2013' or '\u2044' || IsBetween(text, end)))
        {
            end += IsBetween(text, end) ? 2 : 1;
        }

        bool one = words.Unit(text, end, out int unitEnd) is "inch" or "cm" && !NumberScan.Word(text, NumberScan.Skip(text, Dash(text, unitEnd)), out _).EndsWith('s');
        bool apart = text.AsSpan(0, at).TrimEnd() is [.., ',' or ':' or '(' or '-' or '\u2013'];
        return words.Unit(text, end, out unitEnd) is "inch" or "cm" && end > at
            && !(apart && unit is not ("each" or "inch" or "cm") && (one || text.AsSpan(at, end - at).TrimEnd(" -").Contains(' ')))
            && !(apart && unitEnd == text.Length && text.AsSpan(0, at).TrimEnd().EndsWith(":", StringComparison.Ordinal));
    }

    private static bool IsBetween(string text, int at) => string.CompareOrdinal(text, at, "to ", 0, 3) == 0 || string.CompareOrdinal(text, at, "or ", 0, 3) == 0;
}
