namespace ShelfSafe.Changes;

/// <summary>What an added step does at the jar.</summary>
internal enum JarPart
{
    /// <summary>Nothing: it is no step at the jar, or the cook's own.</summary>
    None,

    /// <summary>It fills the jars.</summary>
    Fill,

    /// <summary>It closes them.</summary>
    Close,

    /// <summary>It processes them.</summary>
    Process,
}
