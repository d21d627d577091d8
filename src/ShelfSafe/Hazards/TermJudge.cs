using ShelfSafe.Core;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using ShelfSafe.Steps;

namespace ShelfSafe.Hazards;

/// <summary>Decides whether a term of a card holds for an item or for the whole batch.</summary>
/// <remarks>Each threshold is compared with the upper end, the one that is worse; what is unknown counts as above.</remarks>
internal static class TermJudge
{
    /// <summary>Whether every item term holds for the item and every recipe term for the batch.</summary>
    public static bool Holds(Check check, BatchItem? item, Batch batch, Acidity acidity)
    {
        foreach (Term term in check.Terms)
        {
            if (!Holds(term, item, batch, acidity))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Whether a single term holds for the item or the batch.</summary>
    public static bool Holds(Term term, BatchItem? item, Batch batch, Acidity acidity) =>
        (term.IsItemTerm ? item is not null && OfItem(term, item, batch) : OfBatch(term, batch, acidity)) != term.Negated;

    /// <summary>The step fact that a check asks for and a batch has, the first of several, or <see langword="null"/>.</summary>
    public static StepFact? FactOf(Check check, Batch batch)
    {
        foreach (Term term in check.Terms)
        {
            if (term.Kind != TermKind.Step || term.Negated)
            {
                continue;
            }

            foreach (string id in term.Values)
            {
                if (batch.Fact(id) is { } fact)
                {
                    return fact;
                }
            }
        }

        return null;
    }

    private static bool OfItem(Term term, BatchItem item, Batch batch) => term.Kind switch
    {
        TermKind.Trait => AnyTrait(term, item),
        TermKind.Food => item.Food is { } food && NamesFood(term, food),
        TermKind.Group => item.Food is not null && Names(term, item.Food.Group),
        TermKind.Acidity => Names(term, Word(item.Acidity)),
        TermKind.Process => Names(term, FirstWord(item.Food?.Process ?? "no")),
        TermKind.Bulk => Names(term, Word(item.Food?.Bulk ?? BulkUse.No)),
        TermKind.AmountAbove => (term.Unit == "ml" ? item.Millilitres : item.Grams).High > term.Threshold,
        TermKind.ShareAbove => ShareOf(item, batch).High > term.Threshold,
        TermKind.LineHas => LineWords.HasAny(item.Ingredient.Line.Text.Text, term.Values),
        TermKind.Unidentified => item.Food is null,
        TermKind.Unmeasured => !item.Weighed,
        TermKind.Optional => item.Ingredient.Optional,
        TermKind.ToTaste => item.Ingredient.ToTaste,
        TermKind.AboveSeasoning => AboveSeasoning(item, batch),
        _ => false,
    };

    private static bool OfBatch(Term term, Batch batch, Acidity acidity) => term.Kind switch
    {
        TermKind.Step => SaysAny(term, batch),
        TermKind.Dish => IsAnyKind(term, batch),
        TermKind.BatchHasTrait => (term.Mask & batch.TraitMask) != 0 && AnyInJar(term, batch, AnyTrait),
        TermKind.BatchHasFood => (term.Mask & batch.FoodMask) != 0 && AnyInJar(term, batch, static (term, item) => item.Food is { } food && NamesFood(term, food)),
        TermKind.BatchHasGroup => AnyInJar(term, batch, static (term, item) => item.Food is { } food && Names(term, food.Group)),
        TermKind.BatchFoodsAbove => FoodsOf(term, batch) > term.Threshold,
        TermKind.BatchShareOfTrait => ShareOf(term, batch, AnyTrait).High > term.Threshold,
        TermKind.BatchShareBelow => ShareOf(term, batch, AnyTrait).Low < term.Threshold,
        TermKind.BatchShareOfAcidity => ShareOf(term, batch, static (term, item) => Names(term, Word(item.Acidity))).High > term.Threshold,
        TermKind.BatchShareOfBulk => ShareOf(term, batch, static (term, item) => Names(term, Word(item.Food?.Bulk ?? BulkUse.No))).High > term.Threshold,
        TermKind.BatchAcidity => Names(term, Core.Names.Of(acidity)),
        TermKind.SolidsShareAbove => batch.SolidsShare.High > term.Threshold,
        TermKind.LeastSolidsShareAbove => batch.SolidsShare.Low > term.Threshold,
        TermKind.FatShareAbove => batch.ShareOf(static item => item.Has("fat")).High > term.Threshold,
        TermKind.NoSteps => !batch.HasSteps,
        TermKind.PrintedPhAbove => batch.PrintedPh > term.Threshold,
        TermKind.PrintedTime => batch.Printed.Any(static printed => printed.Minutes is not null),
        TermKind.JarAcidLacking => !batch.HasJarAcid,
        TermKind.Always => true,
        _ => false,
    };

    private static bool NamesFood(Term term, FoodRow food) => (term.Mask & food.IdMask) != 0 && Names(term, food.Id);

    private static bool Names(Term term, ReadOnlySpan<char> word)
    {
        foreach (string own in term.Values)
        {
            if (word.SequenceEqual(own))
            {
                return true;
            }
        }

        return false;
    }

    private static bool SaysAny(Term term, Batch batch)
    {
        if ((term.Mask & batch.FactMask) == 0)
        {
            return false;
        }

        foreach (string fact in term.Values)
        {
            if (batch.Says(fact))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsAnyKind(Term term, Batch batch)
    {
        if ((term.Mask & batch.KindMask) == 0)
        {
            return false;
        }

        foreach (string kind in term.Values)
        {
            if (batch.IsKind(kind))
            {
                return true;
            }
        }

        return false;
    }

    private static bool AnyInJar(Term term, Batch batch, Func<Term, BatchItem, bool> holds)
    {
        foreach (BatchItem item in batch.InJar)
        {
            if (holds(term, item))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether a check may hold for some item of a batch; false where it asks for a trait or a food that none of them has.</summary>
    public static bool MayHold(Check check, Batch batch) =>
        (check.TraitNeed == 0 || (check.TraitNeed & batch.TraitMask) != 0) && (check.FoodNeed == 0 || (check.FoodNeed & batch.FoodMask) != 0);

    // The closures stand in methods of their own, since one is made wherever a method that holds one is entered.
    private static Interval ShareOf(Term term, Batch batch, Func<Term, BatchItem, bool> holds) => batch.ShareOf(item => holds(term, item));

    private static Interval ShareOf(BatchItem item, Batch batch) => batch.ShareOf(other => ReferenceEquals(other, item));

    private static bool AnyTrait(Term term, BatchItem item)
    {
        if (item.Food is not { } food || (term.Mask & food.TraitMask) == 0)
        {
            return false;
        }

        foreach (string trait in term.Values)
        {
            if (food.Has(trait))
            {
                return true;
            }
        }

        return false;
    }

    // Carrots whole and carrots sliced are one food; each process of its own makes another. A choice counts by its worst food.
    private static int FoodsOf(Term term, Batch batch)
    {
        HashSet<string> processes = new(StringComparer.Ordinal);
        foreach (BatchItem item in batch.InJar)
        {
            if (item.Food is { } food && FirstWord(food.Process) is "yes" && Names(term, food.Group))
            {
                processes.Add(food.Process);
            }
        }

        return processes.Count;
    }

    // "To taste", and a bought sauce without an amount, count up to the limit and not above it.
    // Beside main foods without an amount, which bar a yes themselves, nothing can be said of the share of "a bay leaf".
    private static bool AboveSeasoning(BatchItem item, Batch batch) =>
        item.Food?.MinorGramsPerKilogram is not { } limit
        || (ShareOf(item, batch).High * 1000 > limit
            && !(item.Ingredient.Amount is null && item.Grams.IsBounded && (item.Ingredient.ToTaste || item.Food.Group == "condiment"))
            && !(item.Ingredient.Amount is null && item.Grams.IsBounded && batch.InJar.Any(static other => other.Food?.Bulk == BulkUse.Yes && !other.Weighed)));

    private static string Word(FoodAcidity acidity) => acidity switch
    {
        FoodAcidity.LowAcid => "low-acid",
        FoodAcidity.Borderline => "borderline",
        FoodAcidity.Acid => "acid",
        FoodAcidity.Dry => "dry",
    };

    private static string Word(BulkUse bulk) => bulk switch
    {
        BulkUse.No => "no",
        BulkUse.Seasoning => "seasoning",
        BulkUse.Yes => "yes",
    };

    private static ReadOnlySpan<char> FirstWord(string text)
    {
        int end = text.AsSpan().IndexOfAny(' ', ':');
        return end < 0 ? text : text.AsSpan(0, end);
    }
}
