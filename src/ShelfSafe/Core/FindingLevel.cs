namespace ShelfSafe.Core;

/// <summary>What a finding asks of the cook, in rising order.</summary>
public enum FindingLevel
{
    /// <summary>Teaching or quality.</summary>
    Note,

    /// <summary>Watch, measure, or follow closely.</summary>
    Caution,

    /// <summary>Must be changed first; the change is named.</summary>
    Change,

    /// <summary>As it stands it may not be jarred.</summary>
    Stop,
}
