using ShelfSafe.Core;

namespace ShelfSafe.Reading;

/// <summary>One row of the file after Markdown, HTML or plain lines were flattened into reading order.</summary>
internal sealed class Row
{
    private RowLook? _look;

    /// <summary>What its words look like by themselves; the reader sets it where it has seen the words before.</summary>
    public RowLook Look
    {
        get => _look ??= new(Text.Text);
        set => _look = value;
    }

    /// <summary>What its words announce, were it a heading.</summary>
    public HeadingKind Announces => Look.Announces;

    /// <summary>What its words look like as one line.</summary>
    public LineShape Shape => Look.Shape;

    /// <summary>What it is.</summary>
    public required RowKind Kind { get; init; }

    /// <summary>Its words.</summary>
    public required MappedText Text { get; init; }

    /// <summary>Heading: 1 to 6 as printed, 8 for a line that acts as a known heading, 9 for any other label.</summary>
    public int Level { get; init; }

    /// <summary>A label printed at the start of a paragraph ("Note: ..."), which holds for this row alone.</summary>
    public string? Label { get; init; }

    /// <summary>Line ends inside <see cref="Text"/>.</summary>
    public IReadOnlyList<LineBreak> Breaks { get; init; } = [];

    /// <summary>Number of the list or table it stands in, from 1; 0 outside.</summary>
    public int Block { get; init; }

    /// <summary>Depth of an item in its list, from 1; 0 outside.</summary>
    public int Depth { get; init; }

    /// <summary>Whether the item's list is numbered.</summary>
    public bool Ordered { get; init; }

    /// <summary>Whether items of a deeper list follow inside this one.</summary>
    public bool HasChildren { get; set; }

    /// <summary>Cells of a table row in printed order, empty ones included.</summary>
    public IReadOnlyList<MappedText> Cells { get; init; } = [];

    /// <summary>Whether a table row is the table's header.</summary>
    public bool IsHeader { get; init; }

    /// <summary>Number of characters at the start that are printed bold or italic.</summary>
    public int LeadLength { get; init; }

    /// <summary>Whether that start is bold, not italic.</summary>
    public bool LeadBold { get; init; }

    /// <summary>Whether all words but a closing colon are bold or italic.</summary>
    public bool AllLead => LeadLength > 0 && Text.Text.AsSpan(Math.Min(LeadLength, Text.Text.Length)).TrimEnd().TrimEnd(':').IsEmpty;
}
