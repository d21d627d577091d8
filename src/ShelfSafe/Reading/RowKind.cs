namespace ShelfSafe.Reading;

/// <summary>What a row of the flattened file is.</summary>
internal enum RowKind
{
    /// <summary>A heading, or a bold or colon-ended line that does a heading's work.</summary>
    Heading,

    /// <summary>An item of a list.</summary>
    Item,

    /// <summary>A paragraph.</summary>
    Paragraph,

    /// <summary>A row of a table.</summary>
    TableRow,

    /// <summary>Lines of a code block: people indent ingredient lists by accident.</summary>
    Code,
}
