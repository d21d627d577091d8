using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Steps;

namespace ShelfSafe.Measuring;

/// <summary>What goes in the jar, as one batch: foods, step facts and shares.</summary>
/// <param name="Part">Name of the dish where the file holds several.</param>
/// <param name="Span">Place of the whole dish.</param>
/// <param name="Items">One item a food.</param>
/// <param name="Facts">What the steps say.</param>
/// <param name="Kinds">Kinds of dish, the surest first.</param>
/// <param name="NotAJar"><c>yes</c> where the kind is baked, fried or fresh, <c>freeze</c> where it is a freezer dish, else empty.</param>
/// <param name="Dish">Plain word for the dish in messages.</param>
/// <param name="HasSteps">Whether there is any direction.</param>
/// <param name="PrintedPh">Highest pH printed in the recipe, or <see langword="null"/>.</param>
/// <param name="Printed">Times, pressures and jars that the recipe itself prints.</param>
/// <param name="HasJarAcid">Whether the published acid of a plain tomato pack goes into each jar.</param>
public sealed record Batch(
    string? Part,
    SourceSpan Span,
    ImmutableArray<BatchItem> Items,
    ImmutableArray<StepFact> Facts,
    ImmutableArray<string> Kinds,
    string NotAJar,
    string Dish,
    bool HasSteps,
    double? PrintedPh,
    ImmutableArray<PrintedProcess> Printed,
    bool HasJarAcid = false)
{
    /// <summary>The foods in the jar, those at serving left out.</summary>
    public ImmutableArray<BatchItem> InJar { get; } = [.. Items.Where(item => item.InJar)];

    /// <summary>Mass of the whole batch, g.</summary>
    public Interval TotalGrams => Sum(_ => true, item => item.Grams);

    /// <summary>Volume of the whole batch, ml, air gaps left out.</summary>
    public Interval TotalMillilitres => Sum(_ => true, item => item.Millilitres);

    /// <summary>Share, 0 to 1, that the chosen items have of the batch by mass.</summary>
    /// <remarks>The upper end is high / (high + others low), as an item's own uncertainty must not count twice.</remarks>
    public Interval ShareOf(Func<BatchItem, bool> chosen) => Share(chosen, item => item.Grams);

    /// <summary>Share, 0 to 1, by volume of everything that does not run like water; the upper end as of <see cref="ShareOf"/>.</summary>
    public Interval SolidsShare => Share(item => !item.Has("thin-liquid"), item => item.Millilitres);

    /// <summary>Whether the steps say the fact.</summary>
    public bool Says(string fact) => Fact(fact) is not null;

    /// <summary>The first place where the steps say the fact, or <see langword="null"/>.</summary>
    public StepFact? Fact(string fact)
    {
        foreach (StepFact own in Facts)
        {
            if (string.Equals(own.Id, fact, StringComparison.Ordinal))
            {
                return own;
            }
        }

        return null;
    }

    /// <summary>Whether the dish is of the kind.</summary>
    public bool IsKind(string kind)
    {
        foreach (string own in Kinds)
        {
            if (string.Equals(own, kind, StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }

    private Interval Share(Func<BatchItem, bool> chosen, Func<BatchItem, Interval> measure) =>
        Sum(chosen, measure, mine: true).ShareAgainst(Sum(chosen, measure, mine: false));

    private Interval Sum(Func<BatchItem, bool> chosen, Func<BatchItem, Interval> measure, bool mine = true)
    {
        // Of a choice each food has 0 to m and together m: the chosen side takes the most, the other side the least.
        Interval total = Interval.Zero;
        for (int i = 0; i < InJar.Length;)
        {
            int line = InJar[i].Line;
            Interval? hull = null;
            bool all = true;
            bool any = false;
            for (; i < InJar.Length && InJar[i].Line == line; i++)
            {
                bool counts = chosen(InJar[i]) == mine;
                any |= counts;
                all &= counts;
                if (counts)
                {
                    hull = hull is { } before ? before.Hull(measure(InJar[i])) : measure(InJar[i]);
                }
            }

            if (any)
            {
                total += all ? hull!.Value : hull!.Value.OrNothing();
            }
        }

        return total;
    }
}
