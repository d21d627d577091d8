using ShelfSafe.Reading.Amounts;

namespace ShelfSafe.Foods;

/// <summary>Reads "juice of", "zest of", "freshly squeezed juice of": only that part of the counted fruit goes in.</summary>
internal static class FruitPart
{
    /// <summary>Offset behind the words, or the same offset where they do not stand there.</summary>
    public static int Read(LineState state, int at)
    {
        string word = NumberScan.Word(state.Text, at, out int end);
        int start = at;
        if (word is "freshly" or "fresh")
        {
            at = NumberScan.Skip(state.Text, end);
            word = NumberScan.Word(state.Text, at, out end);
            if (word is "squeezed" or "grated")
            {
                at = NumberScan.Skip(state.Text, end);
                word = NumberScan.Word(state.Text, at, out end);
            }
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
}
