namespace ShelfSafe.Pack;

/// <summary>Whether a food may be a bulk food of a published soup or mixture.</summary>
public enum BulkUse
{
    /// <summary>It may not.</summary>
    No,

    /// <summary>Only in a seasoning amount.</summary>
    Seasoning,

    /// <summary>It has its own published plain pressure process, or is plain tomato.</summary>
    Yes,
}
