using ShelfSafe.Reading.Amounts;

namespace ShelfSafe.Foods;

/// <summary>Cuts a line where a second food starts with an amount of its own: "2 carrots; 1 onion and 3 potatoes".</summary>
/// <remarks>A cut is made only where both sides name a food, so "1 cup plus 2 tbsp flour" and "butter, 2 tbsp melted" stay whole.</remarks>
internal sealed class LineCutter(FoodCatalogue catalogue, LineWordTable words)
{
    private static readonly System.Buffers.SearchValues<char> EndMarks = System.Buffers.SearchValues.Create(";,(\u00B7\u2022|");
    private static readonly string[] Joints = [";", ",", " and ", " & ", " + ", " plus ", " to ", " in ", " with ", " \u00B7 ", " \u2022 ", " | "];

    /// <summary>Offsets of the pieces, at least one, in reading order.</summary>
    public List<(int Start, int End)> Cut(string text)
    {
        List<(int Start, int End)> pieces = [];
        int from = 0;
        int depth = 0;
        for (int i = 0; i < text.Length; i++)
        {
            depth += text[i] is '(' or '[' ? 1 : text[i] is ')' or ']' ? -1 : 0;
            if (depth > 0 || Joint(text, i) is not { } joint)
            {
                continue;
            }

            int next = AfterLittleWord(text, i + joint.Length);
            if (joint == " to " && !char.IsAsciiLetter(text[i - 1]))
            {
                continue; // "6 to 12 hours" is a range, "2 cups sugar to 2 quarts water" are two foods
            }

            bool link = joint is " in " or " with ";
            if (link && (!StartsWithMeasure(text, next) || KeepsTogether(text[from..i])))
            {
                continue; // "cut in 4 pieces", "soaked in 1 litre water", "served with 200 g rice"
            }

            bool dot = joint is " \u00B7 " or " \u2022 ";
            bool part = joint is "," or ";" && StartsWithPart(text, next);
            bool bar = joint is " | "; // "16 lb pumpkins | water"
            if (dot || (part || bar || StartsWithAmount(text, next)) && NamesFood(text, from, i, amountFirst: false) && NamesFood(text, next, Math.Min(text.Length, EndOf(text, next)), amountFirst: !part && !bar) && !IsCountOf(text, from, i, next))
            {
                pieces.Add((from, i));
                if (link && IsWater(text, next))
                {
                    return pieces; // "cornflour in 2 tbsp water": a little water that is not counted as liquid
                }

                from = next;
                i = next - 1;
            }
        }

        pieces.Add((from, text.Length));
        return pieces;
    }

    /// <summary>"500 g waxy ones": more of the food named before it.</summary>
    public static bool NamesTheSame(string phrase) => WordFolding.Words(phrase) is [.., "ones"];

    // A number with a weight or volume, and so no length, count or time.
    private bool StartsWithMeasure(string text, int at) =>
        NumberScan.TryRange(text, at, out int end, out _) && words.Unit(text, NumberScan.Skip(text, end), out _) is { } unit
        && (UnitFactors.Ratio(unit, "g") is not null || UnitFactors.Ratio(unit, "ml") is not null);

    private bool KeepsTogether(string left) => WordFolding.Words(left) is [.., var last] && words.Is("keeps-together", last);

    private bool IsWater(string text, int at) =>
        EndOf(text, at) == text.Length && catalogue.Find(Scanned(text, at, text.Length).Phrase) is Identified { Food: { } food } && food.Has("water");

    // "Garlic, 3 cloves": the count of the food before it, and no spice.
    private bool IsCountOf(string text, int start, int end, int next) =>
        text.AsSpan(start, end - start).TrimEnd().EndsWith("garlic", StringComparison.OrdinalIgnoreCase) && NumberScan.TryRange(text, next, out int number, out _)
        && words.Unit(text, NumberScan.Skip(text, number), out _) == "clove";

    private static string? Joint(string text, int at)
    {
        if (text[at] is not (' ' or ',' or ';'))
        {
            return null;
        }

        // A comma between digits is a decimal comma or a thousand.
        bool number = text[at] == ',' && at > 0 && at + 1 < text.Length && char.IsAsciiDigit(text[at - 1]) && char.IsAsciiDigit(text[at + 1]);
        foreach (string joint in Joints)
        {
            if (!number && string.CompareOrdinal(text, at, joint, 0, joint.Length) == 0)
            {
                return joint;
            }
        }

        return null;
    }

    private static int AfterLittleWord(string text, int at)
    {
        int next = NumberScan.Skip(text, at);
        return NumberScan.Word(text, next, out int end) is "and" or "plus" ? NumberScan.Skip(text, end) : next;
    }

    private static bool StartsWithAmount(string text, int at) =>
        at < text.Length && NumberScan.TryRange(text, at, out int end, out _) && end < text.Length
        && (!char.IsLetter(text[at]) || NumberScan.Word(text, at, out _) is "a" or "an" or "one" or "two" or "three" or "four" or "half");

    // "..., the yolks of two eggs", "..., juice of one lemon": the amount stands behind the part.
    private bool StartsWithPart(string text, int at)
    {
        string word = NumberScan.Word(text, at, out int end);
        word = word == "the" ? NumberScan.Word(text, NumberScan.Skip(text, end), out end) : word;
        return words.Is("part-of", word) && NumberScan.Word(text, NumberScan.Skip(text, end), out _) == "of";
    }

    private static int EndOf(string text, int at)
    {
        int end = text.AsSpan(at).IndexOfAny(EndMarks);
        return end < 0 ? text.Length : at + end;
    }

    private bool NamesFood(string text, int start, int end, bool amountFirst)
    {
        LineState state = Scanned(text, start, end);
        return (!amountFirst || state.Measures.Count > 0) && state.Phrase.Length > 2
            && ((amountFirst && NamesTheSame(state.Phrase)) || (catalogue.IsFood(state.Phrase) && !IsIdle(state.Phrase)));
    }

    private LineState Scanned(string text, int start, int end)
    {
        LineState state = new(text[start..end]);
        new LineScan(words, catalogue).Run(state);
        return state;
    }

    private bool IsIdle(string phrase) => WordFolding.Words(phrase).All(word => words.Is("filler", word) || words.Is("prep", word) || words.Is("size", word) || words.Is("cut", WordFolding.Singular(word)));
}
