using ShelfSafe.Core;

namespace ShelfSafe.Foods;

/// <summary>Keeps sentences and lines that were looked at, within a bound, since room after room asks for the same ones.</summary>
internal sealed class ReadTexts(FoodCatalogue catalogue, LineWordTable words)
{
    private readonly Memo<string, ReadText> _known = new();

    private int _notes;

    /// <summary>Makes room in every text for what a room works out of it. Asked for before the first text is read.</summary>
    public TextNote<T> Note<T>(Func<ReadText, T> work) => new(_notes++, work);

    /// <summary>The text as it is looked at.</summary>
    public ReadText Of(string text) => _known.TryGet(text, out ReadText? known) ? known : _known.Keep(text, text.Length, new(text, catalogue, words, _notes, this));

    /// <summary>The text as it is looked at; asked for a second time, it need not be searched for.</summary>
    public ReadText Of(MappedText text)
    {
        if (text.Look.LookedUp is ReadText known && known.IsOf(this, text.Text))
        {
            return known;
        }

        ReadText read = Of(text.Text);
        text.Look.LookedUp = read;
        return read;
    }
}
