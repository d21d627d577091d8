namespace ShelfSafe.Foods;

/// <summary>A sentence or line as several rooms look at it: its words and the foods that it names, each worked out once.</summary>
internal sealed class ReadText(string text, FoodCatalogue catalogue, LineWordTable words, int notes = 0, ReadTexts? owner = null)
{
    private readonly object?[] _notes = new object?[notes];
    private FoodMention[]? _mentions;
    private IReadOnlyList<PlacedWord>? _placed;
    private (int Start, int End)[] _places = [];
    private string[]? _folded;
    private string[]? _singulars;
    private KindSet? _kinds;

    /// <summary>The text itself.</summary>
    public string Text => text;

    /// <summary>Whether it is this text, with the notes of this owner's rooms.</summary>
    public bool IsOf(ReadTexts texts, string words) => ReferenceEquals(owner, texts) && text == words;

    /// <summary>The foods that it names.</summary>
    public FoodMention[] Mentions => _mentions ??= Foods();

    /// <summary>Its words as they stand, with their places.</summary>
    public IReadOnlyList<PlacedWord> Placed => _placed ??= PlacedWord.Of(text);

    /// <summary>Its words, folded.</summary>
    public string[] Folded => _folded ?? Fold();

    /// <summary>Its words, folded and singular.</summary>
    public string[] Singulars => _singulars ??= Array.ConvertAll(Folded, WordFolding.Singular);

    /// <summary>The folded words of the text up to an offset.</summary>
    public ReadOnlySpan<string> Before(int offset) => Before(offset, out _);

    /// <summary>Whether some word of the text is of a kind.</summary>
    public bool Has(string kind) =>
        words.Gathered is not { } gathered ? words.HasAny(kind, Folded)
        : gathered.Has((_kinds ??= new KindSet(gathered.Of(Folded))).Kinds, kind);

    /// <summary>Whether some word before an offset is of a kind.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="offset">The offset.</param>
    /// <param name="within">How many words back are looked at.</param>
    public bool HasBefore(string kind, int offset, int within = int.MaxValue)
    {
        ReadOnlySpan<string> before = Before(offset, out bool cut);
        return (cut || Has(kind)) && words.HasAny(kind, before[Math.Max(0, before.Length - within)..]);
    }

    /// <summary>A note by its place, or <see langword="null"/>.</summary>
    public object? Note(int number) => _notes[number];

    /// <summary>Keeps a note.</summary>
    public void Note(int number, object note) => _notes[number] = note;

    private ReadOnlySpan<string> Before(int offset, out bool cut)
    {
        string[] all = Folded;
        int count = 0;
        while (count < all.Length && _places[count].End <= offset)
        {
            count++;
        }

        // A word that the offset cuts is read as far as it goes.
        cut = count < all.Length && _places[count].Start < offset;
        return cut ? WordFolding.Words(text[..offset]) : all.AsSpan(0, count);
    }

    private FoodMention[] Foods()
    {
        FoodMention[] all = [.. catalogue.Mentions(text)];
        return all.Length > 0 && Has("label-word") ? Array.FindAll(all, mention => !IsOnLabel(mention)) : all;
    }

    // "Label with the date" is a day; "stone the dates" is a fruit.
    private bool IsOnLabel(FoodMention mention) => words.Is("label-thing", text[mention.Start..mention.End].ToLowerInvariant());

    private sealed record KindSet(KindBits Kinds);

    // Another thread may do the same; both results are equal, and the places stand before the words do.
    private string[] Fold()
    {
        List<(int, int)> places = [];
        string[] folded = WordFolding.Words(text, places);
        _places = [.. places];
        return _folded = folded;
    }
}
