namespace ShelfSafe.Equilibrium;

/// <summary>
/// Chemistry for lessons: the interval in which the equilibrium pH of a mixture lies, and the water activity of syrups, jams and dry mixes.
/// Amounts in kilograms and moles, the unit in each name; constants come in as arguments.
/// </summary>
/// <remarks>
/// Nothing here may set, shorten or permit a process, and no estimate may say that a mixture is acid: only a calibrated meter on the blended, equilibrated product
/// or a tested recipe can tell. For a cook's own recipe only the upper end and the warning are shown; the whole interval belongs to worked
/// examples. A water activity excuses no low-acid recipe.
/// </remarks>
internal static class NamespaceDoc;
