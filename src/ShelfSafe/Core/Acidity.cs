namespace ShelfSafe.Core;

/// <summary>Acidity class of a batch. The line is pH 4.6 (21 CFR 114.3).</summary>
public enum Acidity
{
    /// <summary>Too much is unread to say.</summary>
    Unknown,

    /// <summary>Every part reliably at or below pH 4.6.</summary>
    Acid,

    /// <summary>Acid and low-acid foods mixed; the finished pH is unknown until measured.</summary>
    Acidified,

    /// <summary>Low-acid food with water in it.</summary>
    LowAcid,

    /// <summary>Too little water to need canning.</summary>
    Dry,
}
