namespace ShelfSafe.Foods;

/// <summary>What a room works out of a text by its words alone: once, and then kept beside the text for as long as the text itself is.</summary>
/// <typeparam name="T">What it works out; never changed after.</typeparam>
/// <param name="number">Place of the note in a text.</param>
/// <param name="work">Works it out. It must hang on nothing but the text, else another recipe would change the answer.</param>
internal sealed class TextNote<T>(int number, Func<ReadText, T> work)
{
    /// <summary>The note of a text.</summary>
    public T Of(ReadText text) => text.Note(number) is Kept kept ? kept.Value : Worked(text);

    // Another thread may do the same; both results are equal.
    private T Worked(ReadText text)
    {
        Kept kept = new(work(text));
        text.Note(number, kept);
        return kept.Value;
    }

    private sealed record Kept(T Value);
}
