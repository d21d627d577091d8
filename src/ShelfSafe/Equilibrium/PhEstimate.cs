using ShelfSafe.Core;

namespace ShelfSafe.Equilibrium;

/// <summary>Where the equilibrium pH of a mixture may lie.</summary>
/// <param name="WorkedExample">The whole interval: for the worked examples of a lesson only, never for a cook's own recipe.</param>
/// <remarks>An estimate may raise an alarm and never lower one.</remarks>
public readonly record struct PhEstimate(Interval WorkedExample)
{
    /// <summary>The upper end, the only one that may be shown for a cook's own recipe, and only with the sentence that a calibrated meter must decide.</summary>
    public double UpperEnd => WorkedExample.High;
}
