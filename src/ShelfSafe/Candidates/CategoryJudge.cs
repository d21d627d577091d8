using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Hazards;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using static ShelfSafe.Candidates.CategoryTerms;

namespace ShelfSafe.Candidates;

/// <summary>Judges a batch by one open category: applies, allowed foods, gates, and what would be left after the changes.</summary>
/// <remarks>Only tightens: a food that neither the core nor the allowed list names is a finding, whatever it is.</remarks>
internal sealed class CategoryJudge(HazardRoom hazards, PackTables tables)
{
    private readonly CategoryRows _rows = new(tables.ProcessTable, tables.Lists);
    private readonly CategoryLoss _loss = new(tables.Limits);
    private readonly RuleList _mending = tables.Lists.Of(RuleLists.MendingRules);
    private readonly WordTable _words = WordTable.BuiltIn;

    /// <summary>The category's verdict, or <see langword="null"/> where it has nothing to do with the batch.</summary>
    public Candidate? Judge(CategoryCard card, Batch batch, Acidity acidity, IReadOnlyList<RawFinding> found)
    {
        if (!Any(card.Applies, null, batch, acidity) || !batch.InJar.Any(item => Any(card.Core, item, batch, acidity)))
        {
            return null;
        }

        List<RawFinding> own = Foreign(card, batch, acidity, found);
        string? refusal = PassGates(card, batch, acidity, own);
        List<RawFinding> all = [.. found, .. own];
        (Judgement judgement, string reason) = refusal is not null
            ? (Judgement.Refuses, refusal)
            : Weigh(card, batch, acidity, all);
        ImmutableArray<ProcessRow> rows = judgement == Judgement.Refuses ? [] : _rows.Of(card, batch, acidity, all);
        if (rows.IsEmpty && judgement != Judgement.Refuses && card.Method != "dry")
        {
            (judgement, reason) = (Judgement.Refuses, _words.With("reason.category.no-process", card.Name.ToLowerInvariant()));
        }

        (ImmutableArray<ProcessRow> governing, ImmutableArray<ProcessRow> overruled) = card.LongestTime ? _rows.Longest(card, batch, acidity, rows, all) : (rows, []);
        return new(card.Id, card.Name, "category", card.Method, card.Rank, judgement, [.. own], governing, reason) { Overruled = overruled, IsSmooth = card.IsSmooth };
    }

    // One finding for each food that the category does not know and nothing bars yet.
    private List<RawFinding> Foreign(CategoryCard card, Batch batch, Acidity acidity, IReadOnlyList<RawFinding> found)
    {
        List<RawFinding> own = [];
        foreach (BatchItem item in batch.InJar)
        {
            if (!Any(card.Core, item, batch, acidity) && !Any(card.Allowed, item, batch, acidity) && !AlreadyBarred(item, found))
            {
                own.Add(Foreign(card, item, batch));
            }
        }

        return own;
    }

    // Adds what the gates find; answers why the category refuses, or null.
    private string? PassGates(CategoryCard card, Batch batch, Acidity acidity, List<RawFinding> own)
    {
        string? refusal = null;
        foreach (Gate gate in card.Gates)
        {
            foreach (RawFinding finding in Findings(gate, card, batch, acidity))
            {
                own.Add(finding);
                refusal = gate.Refuses ? finding.Message : refusal;
            }
        }

        return refusal;
    }

    private static bool AlreadyBarred(BatchItem item, IReadOnlyList<RawFinding> found)
    {
        foreach (RawFinding finding in found)
        {
            if (ReferenceEquals(finding.Item, item) && finding.Level >= FindingLevel.Change)
            {
                return true;
            }
        }

        return false;
    }

    private RawFinding Foreign(CategoryCard card, BatchItem item, Batch batch)
    {
        string rule = item.Food is null ? "unidentified" : "untested-food";
        return hazards.Raise(rule, item, batch with { Dish = card.Dish }, level: FindingLevel.Change);
    }

    private IEnumerable<RawFinding> Findings(Gate gate, CategoryCard card, Batch batch, Acidity acidity)
    {
        if (!gate.Check.HasItemTerm)
        {
            if (TermJudge.Holds(gate.Check, null, batch, acidity))
            {
                Steps.StepFact? fact = TermJudge.FactOf(gate.Check, batch);
                // Too little liquid points at an amount that the cook left open ("3 cups stock or water"), never at one that is not told.
                BatchItem? liquid = gate.Rule == "too-little-liquid"
                    ? batch.InJar.Where(item => item.Has("water") && item is { Presence: Presence.Maybe, Ingredient.Amount: not null }).MaxBy(item => item.Grams.High)
                    : null;
                if (liquid is not null)
                {
                    yield return Finding(gate, liquid, Named(gate, card, batch), liquid.Ingredient.Span, null) with { Item = null };
                    yield break;
                }

                yield return Finding(gate, null, Named(gate, card, batch), fact?.Span ?? new(batch.Span.Start, batch.Span.Start), fact?.Words);
            }

            yield break;
        }

        if (!TermJudge.MayHold(gate.Check, batch))
        {
            yield break;
        }

        foreach (BatchItem item in batch.InJar)
        {
            if (TermJudge.Holds(gate.Check, item, batch, acidity))
            {
                yield return Finding(gate, item, Named(gate, card, batch), item.Ingredient.Span, null);
            }
        }
    }

    // What refuses speaks of the dish as it is, what asks for a change of the dish it would become.
    private static Batch Named(Gate gate, CategoryCard card, Batch batch) => gate.Refuses && batch.Kinds.Length > 0 ? batch : batch with { Dish = card.Dish };

    private RawFinding Finding(Gate gate, BatchItem? item, Batch batch, SourceSpan span, string? words)
    {
        HazardCard card = hazards.Card(gate.Rule);
        return new(
            gate.Rule,
            gate.Level,
            item,
            item?.Words,
            [span],
            new(hazards.Text, gate.Message, card.Why, gate.Instead.Length > 0 ? gate.Instead : card.Instead, item, batch, words),
            gate.Sources);
    }

    private (Judgement Judgement, string Reason) Weigh(CategoryCard card, Batch batch, Acidity acidity, List<RawFinding> all)
    {
        FindingLevel worst = FindingLevel.Note;
        HashSet<BatchItem> gone = new(ReferenceEqualityComparer.Instance);
        foreach (RawFinding finding in all)
        {
            worst = finding.Level > worst ? finding.Level : worst;
            if (finding.Level >= FindingLevel.Change && finding.Item is { InJar: true } item)
            {
                gone.Add(item);
            }
        }

        if (worst == FindingLevel.Stop)
        {
            return (Judgement.Refuses, _words.With("reason.category.barred", card.Name.ToLowerInvariant()));
        }

        if (worst < FindingLevel.Change)
        {
            return batch.HasSteps && batch.InJar.All(item => item.Food is not null && item.Weighed)
                ? (Judgement.Admits, _words.With("reason.category.admits", card.Name.ToLowerInvariant()))
                : (Judgement.AdmitsAfter, _words.With("reason.category.when-written", card.Name.ToLowerInvariant()));
        }

        // A change that only asks for an amount, a label or a step keeps its food: it is gone only where the finding would take it out.
        gone.RemoveWhere(item => Any(card.Core, item, batch, acidity) && !Removes(item, all, _mending));
        double lost = _loss.Of(batch, gone);
        bool coreLeft = batch.InJar.Any(item => !gone.Contains(item) && Any(card.Core, item, batch, acidity) && !item.Has("thin-liquid"));
        if (!coreLeft || card.Core.IsEmpty)
        {
            return (Judgement.Refuses, _words["reason.category.main-food"]);
        }

        return lost > tables.Limits["largest-share-left-out"]
            ? (Judgement.Refuses, _words["reason.category.other-dish"])
            : (Judgement.AdmitsAfter, _words.With("reason.category.when-changed", card.Name.ToLowerInvariant()));
    }
}
