using ShelfSafe.Core;

namespace ShelfSafe.Reading;

/// <summary>Parts a paragraph that begins as a list of foods and goes on as directions: "2 lb beans, 1 onion, salt. Simmer an hour."</summary>
/// <remarks>Known gap: a list that begins with a verb ("Take 2 lb beans") stays a direction, whose foods are cut out by <see cref="ProsePhrases"/>.</remarks>
internal static class MixedParagraph
{
    /// <summary>Longest food without an amount, in words: more of them are a clause.</summary>
    private const int LongestName = 4;

    /// <summary>Longest sentence that is one food with its amount, in words.</summary>
    private const int LongestLine = 8;

    /// <summary>Foods with amounts that make a list.</summary>
    private const int LeastAmounts = 2;

    /// <summary>Whether so many words begin an amount that the text may be parted at all; where they do not, <see cref="Part"/> finds nothing.</summary>
    public static bool HasAmounts(string text)
    {
        int amounts = 0;
        for (int at = 0; at < text.Length && amounts < LeastAmounts; at++)
        {
            bool begins = !TextMarks.IsBlank(text[at]) && (at == 0 || TextMarks.IsBlank(text[at - 1]) || text[at - 1] is ';' or '|' or '。' || TextMarks.IsBullet(text[at - 1]));
            amounts += begins && AmountScan.StartsWithAmount(text.AsSpan(at)) ? 1 : 0;
        }

        return amounts == LeastAmounts;
    }

    /// <summary>The foods and the sentences; empty where the paragraph is all list or all directions.</summary>
    public static List<(MappedText Text, bool IsFood)> Part(Row row)
    {
        if (!row.Look.MayBeMixed(row.Breaks))
        {
            return [];
        }

        List<(MappedText Text, bool IsFood)> parts = Cut(row);
        if (parts.Count == 0)
        {
            row.Look.KeepUnmixed(row.Breaks);
        }

        return parts;
    }

    private static List<(MappedText Text, bool IsFood)> Cut(Row row)
    {
        List<MappedText> sentences = [];
        SentenceSplitter.Split(row.Text, row.Breaks, sentences);
        List<(MappedText Text, bool IsFood)> parts = [];
        bool list = false;
        bool prose = false;
        foreach (MappedText sentence in sentences)
        {
            bool foods = IsList(sentence) || (!prose && IsOneFood(sentence.Text));
            list |= foods;
            prose |= !foods && !IsName(sentence.Text.AsSpan().TrimEnd('.'));
            if (foods || (!prose && list))
            {
                parts.AddRange(ParagraphLines.AtCommas(sentence).Select(static food => (food, true)));
            }
            else
            {
                parts.Add((sentence, false));
            }
        }

        return prose && parts.Count(static part => part.IsFood && AmountScan.StartsWithAmount(part.Text.Text)) >= LeastAmounts ? parts : [];
    }

    // "2 lb beans. 1 onion.": a sentence for each food.
    private static bool IsOneFood(string sentence)
    {
        LineShape shape = LineShape.Of(sentence);
        return shape.StartsWithAmount && !shape.IsVerb && shape.Words <= LongestLine && ProsePhrases.HasFoodWord(sentence);
    }

    private static bool IsList(MappedText sentence)
    {
        LineShape shape = LineShape.Of(sentence.Text[AfterLabel(sentence.Text)..]);
        if (!shape.StartsWithAmount || shape.IsVerb)
        {
            return false;
        }

        int amounts = 0;
        bool names = true;
        foreach (MappedText part in ParagraphLines.AtCommas(sentence))
        {
            bool amount = AmountScan.StartsWithAmount(part.Text);
            amounts += amount ? 1 : 0;
            names &= amount || LineShape.Of(part.Text).Words is > 0 and <= LongestName;
        }

        return amounts >= LeastAmounts && (names || ParagraphLines.IsListOfAmounts(sentence.Text));
    }

    // "Filling: 900 g cheese, 4 eggs": the label of a group is part of its first line.
    private static int AfterLabel(string sentence)
    {
        int colon = sentence.IndexOf(':', StringComparison.Ordinal);
        return colon > 0 && IsName(sentence.AsSpan(0, colon)) ? colon + 1 : 0;
    }

    private static bool IsName(ReadOnlySpan<char> text)
    {
        LineShape shape = LineShape.Of(text.ToString());
        ReadOnlySpan<char> first = AmountScan.UnitAfter(text, 0);
        bool verb = shape.IsVerb || (LineWords.IsVerb(first) && first is not ("salt" or "flour"));
        return shape.Words is > 0 and <= LongestName && !verb && !shape.IsTiming;
    }
}
