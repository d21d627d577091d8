namespace ShelfSafe.Pack;

/// <summary>Something wrong in the rule pack: where, what is wrong, and what would be right.</summary>
/// <param name="File">Path inside the pack, with <c>/</c>.</param>
/// <param name="Line">Line from 1.</param>
/// <param name="Column">Column from 1.</param>
/// <param name="Message">What is wrong and what would be right, one line.</param>
public sealed record PackFault(string File, int Line, int Column, string Message)
{
    /// <inheritdoc/>
    public override string ToString() =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{File}:{Line}:{Column}: {Message}");
}
