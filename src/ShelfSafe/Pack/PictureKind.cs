namespace ShelfSafe.Pack;

/// <summary>What a lesson is drawn with.</summary>
public enum PictureKind
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>Temperature at the slowest point against time: thin, and with a starch that sets partway.</summary>
    Sets,

    /// <summary>Temperature at the slowest point against time: thin, and thick from the start.</summary>
    Conducts,

    /// <summary>Temperature at the slowest point against time: thick food in a pint and in a quart.</summary>
    Sizes,

    /// <summary>Boiling point and temperature at a gauge pressure against altitude.</summary>
    Altitude,

    /// <summary>Temperature at a gauge pressure against the air left in the canner.</summary>
    Air,

    /// <summary>Foods and mixtures on the pH scale.</summary>
    Acid,

    /// <summary>Water activity of syrups and jams.</summary>
    Water,

    /// <summary>What a food is made of, as bars.</summary>
    Composition,
}
