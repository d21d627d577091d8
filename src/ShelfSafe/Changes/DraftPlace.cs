namespace ShelfSafe.Changes;

/// <summary>Where a line or a step of a recipe went.</summary>
internal enum DraftPlace
{
    /// <summary>It stays in the jar recipe.</summary>
    Kept,

    /// <summary>It waits for serving day.</summary>
    Serving,

    /// <summary>It is gone.</summary>
    Out,
}
