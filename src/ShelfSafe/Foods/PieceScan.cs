using ShelfSafe.Core;
using ShelfSafe.Reading.Amounts;
using static ShelfSafe.Foods.LineText;

namespace ShelfSafe.Foods;

/// <summary>Reads lengths in inches and centimetres: of one piece, of each of several pieces, or of the food itself.</summary>
internal sealed class PieceScan(LineWordTable words)
{
    // "7 3/4-inch pieces of pork" are seven pieces and no length of 7 3/4 inches; -1 where no pieces follow. "1 1/2-inch pieces" are of that length.
    public int Counted(LineState state, Interval value, string unit, int unitEnd)
    {
        int next = NumberScan.Skip(state.Text, Dash(state.Text, unitEnd));
        string word = NumberScan.Word(state.Text, next, out _);
        if (value.Low < 2 || !word.EndsWith('s') || words.Unit(state.Text, next, out int pieceEnd) is not ("piece" or "slice" or "stick" or "strip" or "cube"))
        {
            return -1;
        }

        string piece = words.Unit(state.Text, next, out pieceEnd)!;
        state.Package = new(Interval.Exactly(value.Low - Math.Floor(value.Low)), unit);
        state.Measures.Add(new(Interval.Exactly(Math.Floor(value.Low)), piece));
        return pieceEnd;
    }

    // "2-inch piece of ginger" is one piece of that length, "2 inches of ginger" is a length of it; -1 where it only tells how thick something is.
    public int Length(LineState state, Interval value, string unit, int unitEnd)
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
        if (!dashed && word.Length > 0 && word is not ("thick" or "long" or "wide" or "cube" or "cubes" or "pieces" or "slices" or "dice") && (word is "of" || FoodEnd(text) is not ('s' or 'S')))
        {
            state.Measures.Add(new(value, unit));
            return unitEnd;
        }

        return -1;
    }

    // The last letter of what stands before a comma or a bracket: "2 inch ginger", "1 inch carrots, 3 lb".
    private static char FoodEnd(string text)
    {
        int end = text.AsSpan().IndexOfAny(',', '(');
        ReadOnlySpan<char> food = text.AsSpan(0, end < 0 ? text.Length : end).TrimEnd();
        return food.IsEmpty ? text[^1] : food[^1];
    }
}
