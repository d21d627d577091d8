namespace ShelfSafe.Measuring;

/// <summary>Whether a food goes into the jar.</summary>
public enum Presence
{
    /// <summary>It goes in.</summary>
    In,

    /// <summary>It may go in: optional, or one of several that the recipe lets the cook choose from.</summary>
    Maybe,

    /// <summary>A heading or step says that it is only added at serving, and no step adds it earlier.</summary>
    AtServing,
}
