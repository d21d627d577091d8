using ShelfSafe.Reading.Amounts;

namespace ShelfSafe.Foods;

/// <summary>Reads an amount that stands behind the food: "Onions: 3 large", "Corn (1 can)", "Butter, a stick or two".</summary>
internal sealed class TrailingAmount(LineWordTable words, LineAmount amounts)
{
    /// <summary>Looks for an amount behind the food and takes it off.</summary>
    public void Read(LineState state)
    {
        string text = state.Text;
        for (int i = state.Start + 1; i < text.Length; i++)
        {
            bool from = i > 5 && text.AsSpan(0, i).EndsWith("from ", StringComparison.OrdinalIgnoreCase) && NumberScan.TryNumber(text, i, out _, out _);
            bool starts = from || char.IsDigit(text[i]) || "½⅓⅔¼¾⅛".Contains(text[i], StringComparison.Ordinal) || (text[i] == '.' && i + 1 < text.Length && char.IsDigit(text[i + 1]));
            bool boundary = !char.IsLetterOrDigit(text[i - 1]) && text[i - 1] is not ('/' or '.' or ',');
            bool afterColon = i > 1 && (text.AsSpan(0, i).TrimEnd().EndsWith(":", StringComparison.Ordinal) || (text[i] is 'a' or 'A' && text.AsSpan(0, i).TrimEnd().EndsWith(",", StringComparison.Ordinal)));
            if (state.InHole(i) || !((starts && boundary) || (afterColon && char.IsLetter(text[i]) && !char.IsWhiteSpace(text[i]) && NumberScan.TryNumber(text, i, out _, out _))))
            {
                continue;
            }

            int mark = i;
            int end = Take(state, i);
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
            LineFlags.Read(state, tail.ToLowerInvariant());
            bool named = before.Length > state.Start && state.Between(state.Start, before.Length).Length > 1;
            if (named)
            {
                state.End = before.Length;
                state.Preparation = LineFlags.Join(state.Preparation, tail.Trim(' ', ',', '.', '*'));
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
            bool found = hole.From >= state.Start && Take(state, inner) > 0;
            state.Holes.Add(hole);
            if (found)
            {
                return;
            }
        }
    }

    private int Take(LineState state, int at)
    {
        int before = state.Measures.Count;
        int end = amounts.Amount(state, at, first: true);
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
}
