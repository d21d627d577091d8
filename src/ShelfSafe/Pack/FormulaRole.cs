namespace ShelfSafe.Pack;

/// <summary>How a food's amount in a published formula binds the cook.</summary>
public enum FormulaRole
{
    /// <summary>Dry seasonings, salt outside ferments, covering liquid: any kitchen amount.</summary>
    Free,

    /// <summary>Low-acid foods, added water, fat: no more than tested.</summary>
    AtMost,

    /// <summary>Acids, and base foods where no acid is added: no less than tested.</summary>
    AtLeast,

    /// <summary>Base foods beside an added acid, sugar and pectin of a jam, salt of a ferment: as tested.</summary>
    Fixed,
}
