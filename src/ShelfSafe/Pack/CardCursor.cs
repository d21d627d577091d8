using System.Collections.Immutable;

namespace ShelfSafe.Pack;

/// <summary>Reads the fields that <see cref="CardWriter"/> wrote, one after the other.</summary>
/// <param name="image">The image.</param>
/// <param name="at">Where the first stands.</param>
internal sealed class CardCursor(PackImage image, int at)
{
    /// <summary>A whole number.</summary>
    public int Number()
    {
        at += sizeof(int);
        return image.Int32(at - sizeof(int));
    }

    /// <summary>A text.</summary>
    public string Text() => image.String(Number());

    /// <summary>A list.</summary>
    public ImmutableArray<T> List<T>(Func<T> read)
    {
        ImmutableArray<T>.Builder items = ImmutableArray.CreateBuilder<T>(Number());
        for (int left = items.Capacity; left > 0; left--)
        {
            items.Add(read());
        }

        return items.MoveToImmutable();
    }

    /// <summary>A check.</summary>
    public Check Check() => new(List(Term), Number());

    private Term Term()
    {
        (TermKind kind, bool negated, ImmutableArray<string> values) = ((TermKind)Number(), Number() != 0, List(Text));
        double threshold = image.Double(at);
        at += sizeof(double);
        return new(kind, negated, values, threshold, Text());
    }
}
