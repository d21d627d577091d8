namespace ShelfSafe.Records;

/// <summary>What a field of an exported batch holds.</summary>
internal enum FieldKind
{
    /// <summary>A text.</summary>
    Text,

    /// <summary>A number.</summary>
    Number,

    /// <summary>True or false.</summary>
    Flag,
}

/// <summary>One field of an exported batch: its name, what it holds, and whether it may be missing.</summary>
internal sealed record BatchField(string Name, FieldKind Kind, bool Optional, Func<BatchRecord, string?> Write);
