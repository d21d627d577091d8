namespace ShelfSafe.Changes;

/// <summary>A sentence of the prose.</summary>
internal sealed class DraftStep(string text, DraftSection section, bool added = false)
{
    /// <summary>What it does at the jar, where it was added for that.</summary>
    public JarPart Part { get; init; }

    /// <summary>The sentence as it is printed now.</summary>
    public string Text { get; set; } = text;

    /// <summary>The part of the recipe it stands in.</summary>
    public DraftSection Section { get; } = section;

    /// <summary>Whether the jar version added it.</summary>
    public bool Added { get; } = added;

    /// <summary>Where it went.</summary>
    public DraftPlace Place { get; set; }
}
