using ShelfSafe.Core;

namespace ShelfSafe.Reading;

/// <summary>What the words of a row look like by themselves, each worked out when first asked for.</summary>
/// <remarks>It hangs on the words alone, so it may be kept for all recipes that have the row.</remarks>
internal sealed class RowLook(string text)
{
    private const int Unknown = -1;
    private volatile int _announces = Unknown;
    private volatile int _isList = Unknown;
    private volatile int _mayBeMixed = Unknown;
    private volatile LineBreak[]? _unmixed;
    private object? _shape; // boxed, so that threads see it whole or not at all

    /// <summary>What other rooms found out of the words.</summary>
    public TextLook Words { get; } = new();

    /// <summary>What the words announce, were they a heading.</summary>
    public HeadingKind Announces
    {
        get
        {
            if (_announces == Unknown)
            {
                _announces = (int)HeadingWords.Classify(text);
            }

            return (HeadingKind)_announces;
        }
    }

    /// <summary>What they look like as one line.</summary>
    public LineShape Shape => (LineShape)(_shape ??= LineShape.Of(text));

    /// <summary>Whether they are a list of foods with amounts.</summary>
    public bool IsListOfAmounts
    {
        get
        {
            if (_isList == Unknown)
            {
                _isList = ParagraphLines.IsListOfAmounts(text) ? 1 : 0;
            }

            return _isList == 1;
        }
    }

    /// <summary>Whether they may be a list and its directions in one paragraph: they name amounts enough, and were not found to be all of one kind.</summary>
    /// <param name="breaks">Where the lines of the paragraph end.</param>
    public bool MayBeMixed(IReadOnlyList<LineBreak> breaks)
    {
        if (_mayBeMixed == Unknown)
        {
            _mayBeMixed = MixedParagraph.HasAmounts(text) ? 1 : 0;
        }

        return _mayBeMixed == 1 && !(_unmixed is { } known && known.SequenceEqual(breaks));
    }

    /// <summary>Notes that they are all list or all directions.</summary>
    /// <param name="breaks">Where the lines of the paragraph end.</param>
    public void KeepUnmixed(IReadOnlyList<LineBreak> breaks) => _unmixed = [.. breaks];
}
