namespace ShelfSafe.Pack;

/// <summary>Whether a food of a published formula may be missing.</summary>
public enum FormulaPresence
{
    /// <summary>It must be there.</summary>
    Required,

    /// <summary>It may be left out.</summary>
    Optional,

    /// <summary>It stands for the nearest slot above that is not itself such a stand-in.</summary>
    Instead,
}
