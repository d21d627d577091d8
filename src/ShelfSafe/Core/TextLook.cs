namespace ShelfSafe.Core;

/// <summary>What was found out of the words of a text alone, wherever they stand; texts of the same words may share it.</summary>
internal sealed class TextLook
{
    private volatile object? _lookedUp;
    private volatile TextPiece[]? _sentences;
    private volatile string? _yield;

    /// <summary>What was looked up for the words last; <see langword="null"/> where nothing was.</summary>
    public object? LookedUp
    {
        get => _lookedUp;
        set => _lookedUp = value;
    }

    /// <summary>The sentences of the words as one unbroken line; <see langword="null"/> where nobody asked yet.</summary>
    public TextPiece[]? Sentences
    {
        get => _sentences;
        set => _sentences = value;
    }

    /// <summary>How much the words say the recipe makes; empty where they say nothing of it, <see langword="null"/> where nobody asked yet.</summary>
    public string? Yield
    {
        get => _yield;
        set => _yield = value;
    }
}
