using System.Collections.Immutable;

namespace ShelfSafe.Pack;

/// <summary>Writes the fields of cards, one after the other.</summary>
/// <param name="writer">Takes the strings.</param>
/// <param name="section">Takes the fields.</param>
internal sealed class CardWriter(PackImageWriter writer, ImageSection section)
{
    /// <summary>A whole number.</summary>
    public void Number(int number) => section.Add(number);

    /// <summary>A text.</summary>
    public void Text(string text) => section.Add(writer.Id(text));

    /// <summary>Some texts.</summary>
    public void Texts(params ReadOnlySpan<string> texts)
    {
        foreach (string text in texts)
        {
            Text(text);
        }
    }

    /// <summary>A list: its length, then each item.</summary>
    public void List<T>(ImmutableArray<T> items, Action<T> write)
    {
        section.Add(items.Length);
        foreach (T item in items)
        {
            write(item);
        }
    }

    /// <summary>A check.</summary>
    public void Check(Check check)
    {
        List(check.Terms, term =>
        {
            Number((int)term.Kind);
            Number(term.Negated ? 1 : 0);
            List(term.Values, Text);
            section.Add(term.Threshold);
            Text(term.Unit);
        });
        Number(check.Line);
    }
}
