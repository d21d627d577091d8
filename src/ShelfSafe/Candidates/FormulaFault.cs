using ShelfSafe.Pack;

namespace ShelfSafe.Candidates;

/// <summary>What keeps a batch from a formula.</summary>
internal enum FormulaFaultKind
{
    /// <summary>More of it than tested.</summary>
    TooMuch,

    /// <summary>Less of it than tested.</summary>
    TooLittle,

    /// <summary>The formula has no such food.</summary>
    NewFood,

    /// <summary>A food that the formula needs is not there.</summary>
    Missing,

    /// <summary>No amount could be read.</summary>
    Unmeasured,

    /// <summary>The label does not say 5 percent.</summary>
    Unlabelled,

    /// <summary>The label says less than 5 percent.</summary>
    Weak,

    /// <summary>It does not say that the juice is bottled.</summary>
    Fresh,

    /// <summary>Its word means the tested food in one country and another elsewhere.</summary>
    Ambiguous,

    /// <summary>The line does not say that the acid goes into each jar.</summary>
    NotPerJar,

    /// <summary>A step changes the food into another one.</summary>
    Step,
}

/// <summary>One such fault.</summary>
/// <param name="Slot">The slot, or <see langword="null"/> for a new food.</param>
/// <param name="Line">The cook's line, or <see langword="null"/> where there is none.</param>
/// <param name="Allowed">The amount that would fit, in words, or empty.</param>
internal sealed record FormulaFault(FormulaFaultKind Kind, FormulaSlot? Slot, FormulaLine? Line, string Allowed)
{
    /// <summary>Whether naming the bottle, the food or the jar mends it.</summary>
    public bool IsMended => Kind is FormulaFaultKind.Unlabelled or FormulaFaultKind.Fresh or FormulaFaultKind.Ambiguous or FormulaFaultKind.NotPerJar;
}
