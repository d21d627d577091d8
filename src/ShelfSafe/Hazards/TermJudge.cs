using ShelfSafe.Core;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;

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
            bool holds = term.IsItemTerm ? item is not null && OfItem(term, item, batch) : OfBatch(term, batch, acidity);
            if (holds == term.Negated)
            {
                return false;
            }
        }

        return true;
    }

    private static bool OfItem(Term term, BatchItem item, Batch batch) => term.Kind switch
    {
        TermKind.Trait => AnyTrait(term, item),
        TermKind.Food => item.Food is not null && term.Values.Contains(item.Food.Id, StringComparer.Ordinal),
        TermKind.Group => item.Food is not null && term.Values.Contains(item.Food.Group, StringComparer.Ordinal),
        TermKind.Acidity => term.Values.Contains(Word(item.Acidity), StringComparer.Ordinal),
        TermKind.Process => term.Values.Contains(FirstWord(item.Food?.Process ?? "no"), StringComparer.Ordinal),
        TermKind.Bulk => term.Values.Contains(Word(item.Food?.Bulk ?? BulkUse.No), StringComparer.Ordinal),
        TermKind.AmountAbove => (term.Unit == "ml" ? item.Millilitres : item.Grams).High > term.Threshold,
        TermKind.ShareAbove => batch.ShareOf(other => other.Line == item.Line && ReferenceEquals(other, item)).High > term.Threshold,
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
        TermKind.Step => term.Values.Any(batch.Says),
        TermKind.Dish => term.Values.Any(batch.IsKind),
        TermKind.BatchHasTrait => batch.InJar.Any(item => AnyTrait(term, item)),
        TermKind.BatchHasFood => batch.InJar.Any(item => item.Food is not null && term.Values.Contains(item.Food.Id, StringComparer.Ordinal)),
        TermKind.BatchHasGroup => batch.InJar.Any(item => item.Food is not null && term.Values.Contains(item.Food.Group, StringComparer.Ordinal)),
        TermKind.BatchFoodsAbove => FoodsOf(term, batch) > term.Threshold,
        TermKind.BatchShareOfTrait => batch.ShareOf(item => AnyTrait(term, item)).High > term.Threshold,
        TermKind.BatchShareBelow => batch.ShareOf(item => AnyTrait(term, item)).Low < term.Threshold,
        TermKind.BatchShareOfAcidity => batch.ShareOf(item => term.Values.Contains(Word(item.Acidity), StringComparer.Ordinal)).High > term.Threshold,
        TermKind.BatchShareOfBulk => batch.ShareOf(item => term.Values.Contains(Word(item.Food?.Bulk ?? BulkUse.No), StringComparer.Ordinal)).High > term.Threshold,
        TermKind.BatchAcidity => term.Values.Contains(Names.Of(acidity), StringComparer.Ordinal),
        TermKind.SolidsShareAbove => batch.SolidsShare.High > term.Threshold,
        TermKind.LeastSolidsShareAbove => batch.SolidsShare.Low > term.Threshold,
        TermKind.FatShareAbove => batch.ShareOf(item => item.Has("fat")).High > term.Threshold,
        TermKind.NoSteps => !batch.HasSteps,
        TermKind.PrintedPhAbove => batch.PrintedPh > term.Threshold,
        TermKind.PrintedTime => batch.Printed.Any(printed => printed.Minutes is not null),
        TermKind.JarAcidLacking => !batch.HasJarAcid,
        TermKind.Always => true,
        _ => false,
    };

    private static bool AnyTrait(Term term, BatchItem item)
    {
        foreach (string trait in term.Values)
        {
            if (item.Has(trait))
            {
                return true;
            }
        }

        return false;
    }

    // Carrots whole and carrots sliced are one food; each process of its own makes another. A choice counts by its worst food.
    private static int FoodsOf(Term term, Batch batch) => batch.InJar
        .Where(item => item.Food is { } food && FirstWord(food.Process) == "yes" && term.Values.Contains(food.Group, StringComparer.Ordinal))
        .Select(item => item.Food!.Process)
        .Distinct(StringComparer.Ordinal)
        .Count();

    private static bool AboveSeasoning(BatchItem item, Batch batch) =>
        item.Food?.MinorGramsPerKilogram is not { } limit
        || batch.ShareOf(other => ReferenceEquals(other, item)).High * 1000 > limit;

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

    private static string FirstWord(string text)
    {
        int end = text.AsSpan().IndexOfAny(' ', ':');
        return end < 0 ? text : text[..end];
    }
}
