namespace ShelfSafe.Reading;

/// <summary>A label inside a list: it holds for the items below it, or beside it until the next label.</summary>
internal readonly record struct ItemLabel(string? Text, int Block, int Depth, bool AtServing, bool Nested)
{
    public bool Ends(Row row) => Text is not null && (row.Block != Block || row.Depth < Depth || (Nested && row.Depth == Depth));
}
