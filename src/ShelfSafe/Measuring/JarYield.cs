using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Foods;

namespace ShelfSafe.Measuring;

/// <summary>Turns a volume in the pot into jars and canner loads.</summary>
/// <param name="rows">Rows of <c>rules/jars.csv</c>.</param>
/// <param name="weights">Rows of <c>rules/jar-weights.csv</c>.</param>
public sealed class JarYield(ImmutableArray<JarRow> rows, ImmutableArray<JarWeightRow> weights)
{
    private const string Quart = "quart";
    private static readonly double GramsAPound = UnitFactors.Ratio("lb", "g")!.Value;

    /// <summary>The volume that packed pieces take in jars, by the published weight a quart: the liquid only fills the gaps between them.</summary>
    /// <param name="grams">The pieces, fresh, g.</param>
    /// <param name="product">Product of the process table.</param>
    /// <param name="headspaceInches">Headspace of the governing process row, inches.</param>
    /// <returns>Millilitres of filled jars, or <see langword="null"/> where no weight is published for the product.</returns>
    public Interval? Packed(Interval grams, string product, double headspaceInches)
    {
        if (weights.FirstOrDefault(row => row.Product == product) is not { PoundsAQuart.Low: > 0 } weight || !grams.IsBounded || Plan(Interval.Zero, Quart, headspaceInches) is not { } quart)
        {
            return null;
        }

        return new(
            grams.Low / (weight.PoundsAQuart.High * GramsAPound) * quart.FillMillilitres.High,
            grams.High / (weight.PoundsAQuart.Low * GramsAPound) * quart.FillMillilitres.Low);
    }

    /// <summary>What a jar holds to the brim, ml; <see langword="null"/> for a size that no row names.</summary>
    internal double? Brim(string jar) => rows.FirstOrDefault(row => row.Jar == jar)?.BrimMillilitres;

    /// <summary>Jars of one size for a batch.</summary>
    /// <param name="millilitres">Volume in the pot, ml, air gaps left out.</param>
    /// <param name="jar">Jar size id.</param>
    /// <param name="headspaceInches">Headspace of the governing process row, inches.</param>
    /// <param name="capacity">Jars that the cook's own canner takes, or <see langword="null"/> for the canner of the table.</param>
    /// <returns>The plan, or <see langword="null"/> where the size is not in the table, the volume has no bound, or the headspace leaves no room.</returns>
    public JarPlan? Plan(Interval millilitres, string jar, double headspaceInches, CannerCapacity? capacity = null)
    {
        JarRow? row = rows.FirstOrDefault(row => row.Jar == jar);
        if (row is null || !millilitres.IsBounded || millilitres.Low < 0 || !(headspaceInches >= 0))
        {
            return null;
        }

        Interval fill = new(
            row.BrimMillilitres - (headspaceInches * row.MillilitresPerInch.High),
            row.BrimMillilitres - (headspaceInches * row.MillilitresPerInch.Low));
        if (fill.Low <= 0)
        {
            return null;
        }

        double fewest = Math.Floor(millilitres.Low / fill.High);
        double most = Math.Ceiling(millilitres.High / fill.Low); // up: have enough jars ready
        Interval load = capacity?.Of(jar, row.Load) ?? row.Load;
        Interval loads = new(Math.Ceiling(fewest / load.High), Math.Ceiling(most / load.Low));
        double lowRest = millilitres.Low - (fewest * fill.High);
        Interval remainder = fewest == Math.Floor(millilitres.High / fill.Low) && millilitres.Low == millilitres.High && fill.Low == fill.High
            ? Interval.Exactly(lowRest)
            : new(0, Math.Min(fill.High, millilitres.High));
        return new(jar, new(fewest, most), fill, loads, remainder, load);
    }
}

/// <summary>Jars of one size for a batch.</summary>
/// <param name="Jar">Jar size id.</param>
/// <param name="Jars">Jars needed: full ones at least, all with the last part-filled one at most.</param>
/// <param name="FillMillilitres">What one jar takes below its headspace, narrow to wide mouth, ml.</param>
/// <param name="Loads">Canner loads of the cook's own canner, else of one that takes 7 quarts.</param>
/// <param name="RemainderMillilitres">What may be left for a last, part-filled jar, ml.</param>
/// <param name="Load">Jars in one load.</param>
public sealed record JarPlan(string Jar, Interval Jars, Interval FillMillilitres, Interval Loads, Interval RemainderMillilitres, Interval Load);
