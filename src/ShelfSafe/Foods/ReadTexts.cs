namespace ShelfSafe.Foods;

/// <summary>Keeps sentences and lines that were looked at, within a bound, since room after room asks for the same ones.</summary>
internal sealed class ReadTexts(FoodCatalogue catalogue, LineWordTable words)
{
    private readonly Memo<string, ReadText> _known = new(1_024);

    /// <summary>The text as it is looked at.</summary>
    public ReadText Of(string text) => _known.TryGet(text, out ReadText? known) ? known : _known.Keep(text, text.Length, new(text, catalogue, words));
}
