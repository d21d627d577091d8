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
    public ImmutableArray<BatchItem> InJar { get; } = [.. Items.Where(static item => item.InJar)];

    /// <summary>The ids of the facts as a mask.</summary>
    internal ulong FactMask { get; } = WordMask.Of([.. Facts.Select(static fact => fact.Id)]);

    /// <summary>The kinds as a mask.</summary>
    internal ulong KindMask { get; } = WordMask.Of(Kinds);

    /// <summary>The traits of all items as a mask.</summary>
    internal ulong TraitMask { get; } = Items.Aggregate(0UL, static (mask, item) => mask | (item.Food?.TraitMask ?? 0));

    /// <summary>The ids of their foods as a mask.</summary>
    internal ulong FoodMask { get; } = Items.Aggregate(0UL, static (mask, item) => mask | (item.Food?.IdMask ?? 0));

    /// <summary>Mass of the whole batch, g.</summary>
    public Interval TotalGrams => Parted(InJar, static _ => true, static item => item.Grams).Chosen;

    /// <summary>Volume of the whole batch, ml, air gaps left out.</summary>
    public Interval TotalMillilitres => Parted(InJar, static _ => true, static item => item.Millilitres).Chosen;

    /// <summary>Share, 0 to 1, that the chosen items have of the batch by mass.</summary>
    /// <remarks>The upper end is high / (high + others low), as an item's own uncertainty must not count twice.</remarks>
    public Interval ShareOf(Func<BatchItem, bool> chosen) => Share(InJar, chosen, static item => item.Grams);

    /// <summary>Share, 0 to 1, by volume of everything that does not run like water; the upper end as of <see cref="ShareOf"/>.</summary>
    public Interval SolidsShare { get; } = Share([.. Items.Where(static item => item.InJar)], static item => !item.Has("thin-liquid"), static item => item.Millilitres);

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

    private static Interval Share(ImmutableArray<BatchItem> items, Func<BatchItem, bool> chosen, Func<BatchItem, Interval> measure)
    {
        (Interval own, Interval others) = Parted(items, chosen, measure);
        return own.ShareAgainst(others);
    }

    // Of a choice each food has 0 to m and together m: the chosen side takes the most, the other side the least.
    private static (Interval Chosen, Interval Others) Parted(ImmutableArray<BatchItem> items, Func<BatchItem, bool> chosen, Func<BatchItem, Interval> measure)
    {
        (Interval allChosen, Interval allOthers) = (Interval.Zero, Interval.Zero);
        for (int i = 0; i < items.Length;)
        {
            int line = items[i].Line;
            if (i + 1 == items.Length || items[i + 1].Line != line)
            {
                Interval alone = measure(items[i]);
                (allChosen, allOthers) = chosen(items[i]) ? (allChosen + alone, allOthers) : (allChosen, allOthers + alone);
                i++;
                continue;
            }

            Interval? own = null;
            Interval? others = null;
            for (; i < items.Length && items[i].Line == line; i++)
            {
                Interval amount = measure(items[i]);
                if (chosen(items[i]))
                {
                    own = own is { } before ? before.Hull(amount) : amount;
                }
                else
                {
                    others = others is { } before ? before.Hull(amount) : amount;
                }
            }

            allChosen += own is not { } mine ? Interval.Zero : others is null ? mine : mine.OrNothing();
            allOthers += others is not { } rest ? Interval.Zero : own is null ? rest : rest.OrNothing();
        }

        return (allChosen, allOthers);
    }
}
