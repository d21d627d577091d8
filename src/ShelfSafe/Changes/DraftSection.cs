namespace ShelfSafe.Changes;

/// <summary>A part of the prose of a recipe.</summary>
internal enum DraftSection
{
    /// <summary>Before the ingredients.</summary>
    Introduction,

    /// <summary>The directions.</summary>
    Method,

    /// <summary>Notes.</summary>
    Notes,

    /// <summary>For serving.</summary>
    Serving,
}
