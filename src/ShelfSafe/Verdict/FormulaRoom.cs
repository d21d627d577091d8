using System.Collections.Immutable;
using ShelfSafe.Candidates;
using ShelfSafe.Core;
using ShelfSafe.Hazards;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;

namespace ShelfSafe.Verdict;

/// <summary>What the published formulas say of a dish, with the findings that remain beside it.</summary>
/// <param name="Candidate">The formula that covers it, or the nearest of its kind, which refuses.</param>
/// <param name="Found">Findings of the dish that the tested recipe does not answer.</param>
/// <param name="Differences">The comparison food by food.</param>
internal sealed record FormulaAnswer(Candidate Candidate, List<RawFinding> Found, ImmutableArray<FormulaDifference> Differences);

/// <summary>Lets the published formulas judge a dish. A stop bars every one of them; a change that remains must be made first.</summary>
internal sealed class FormulaRoom(FormulaJudge judge, Limits limits, WordTable words)
{
    private readonly FormulaScaling _scaling = new(words);

    /// <summary>Prepares the formulas of a pack.</summary>
    /// <exception cref="InvalidDataException">A formula table is wrong.</exception>
    public static FormulaRoom Create(RulePack pack, HazardRoom hazards)
    {
        List<PackFault> faults = [];
        FormulaJudge judge = FormulaJudge.Create(pack, hazards, faults);
        return faults.Count == 0 ? new(judge, pack.Tables.Limits, WordTable.BuiltIn) : throw new InvalidDataException(faults[0].ToString());
    }

    /// <summary>A batch as the formulas look at it.</summary>
    public FormulaView Look(Batch batch) => judge.Look(batch);

    /// <summary>The formula that asks for least, or the nearest one of the dish's kind; <see langword="null"/> where none has to do with it.</summary>
    public FormulaAnswer? Of(FormulaView view, List<RawFinding> found)
    {
        Batch batch = view.Batch;
        FormulaAnswer? best = null;
        foreach (FormulaVerdict verdict in judge.Judge(view))
        {
            if (!verdict.Formula.Needs.IsEmpty && !verdict.Formula.Needs.Any(need => batch.Says(need) || batch.IsKind(need)))
            {
                continue;
            }

            FormulaAnswer own = Settle(verdict, batch, found);
            if (best is null || own.Candidate.Judgement > best.Candidate.Judgement)
            {
                best = own;
            }
        }

        return best;
    }

    /// <summary>Up to three formulas near a dish that got no process.</summary>
    public ImmutableArray<NearestFormula> Nearest(FormulaView view)
    {
        ImmutableArray<NearestFormula>.Builder nearest = ImmutableArray.CreateBuilder<NearestFormula>();
        foreach ((FormulaRow formula, List<FormulaLine> lines) in judge.Nearest(view))
        {
            if (MainFoodsMeet(formula, lines))
            {
                FormulaNear near = _scaling.Near(formula, lines);
                nearest.Add(new(formula.Id, formula.Name, near.Swap, IsMeasured(formula, lines) ? near.Ingredients : [], formula.Source));
            }

            if (nearest.Count >= (int)limits["nearest-formulas"])
            {
                break;
            }
        }

        return nearest.ToImmutable();
    }

    // A published recipe whose main food the dish lacks, or that has no place for the main food of the dish, is another dish.
    private static bool MainFoodsMeet(FormulaRow formula, List<FormulaLine> lines)
    {
        int main = formula.MainSlot();
        if (main >= 0 && !lines.Exists(line => line.Options.Contains(main)))
        {
            return false;
        }

        // A chili without its meat is no pepper sauce.
        if (lines.Exists(line => line.Options.IsEmpty && line.Item.Food?.Group is "meat" or "poultry" or "seafood"))
        {
            return false;
        }

        FormulaLine? own = lines.Where(line => !line.Item.Has("water") && !line.Item.Has("sugar") && !line.Item.Has("acidifier") && !line.Item.Has("vinegar") && line.Item.Grams.IsBounded).MaxBy(line => line.Item.Grams.Low + line.Item.Grams.High);
        return own is null || !own.Options.IsEmpty;
    }

    // Without a weighed main food there is nothing to scale by.
    private static bool IsMeasured(FormulaRow formula, List<FormulaLine> lines) =>
        formula.MainSlot() is var main && lines.Exists(line => line.Options.Contains(main) && line.Item.Weighed);

    /// <summary>Every formula by id and name.</summary>
    public ImmutableArray<FormulaName> Names => [.. judge.Formulas.Select(formula => new FormulaName(formula.Id, formula.Name))];

    /// <summary>The batch beside one formula, food by food; <see langword="null"/> where no formula has the id.</summary>
    /// <param name="id">Id of the formula.</param>
    /// <param name="batch">The dish.</param>
    /// <param name="settle">Fits the words of the points to a dish that must become the published recipe.</param>
    public FormulaComparison? Compare(string id, Batch batch, Func<List<RawFinding>, List<RawFinding>> settle)
    {
        if (judge.Formulas.FirstOrDefault(formula => formula.Id == id) is not { } formula)
        {
            return null;
        }

        FormulaVerdict verdict = judge.Of(formula, batch);
        FormulaTarget target = _scaling.Target(formula, batch);
        return new(
            formula.Id,
            formula.Name,
            formula.Source,
            formula.Url,
            verdict.Candidate.Judgement != Judgement.Refuses,
            [.. verdict.Differences.Select(own => new Difference(own.What, own.Unit, own.Yours, own.Tested, own.Allowed))],
            [.. settle([.. verdict.Candidate.Findings]).Select(finding => new FormulaPoint(finding.Rule, finding.Ingredient, finding.Message, finding.Instead))],
            [.. target.Slots.Select(slot => new FormulaAmount(slot.Name, slot.Amount, [.. slot.Spans.Select(span => span.Start)], slot.Required) { Free = slot.Free })],
            [.. target.Extra.Select(span => span.Start)]);
    }

    private FormulaAnswer Settle(FormulaVerdict verdict, Batch batch, List<RawFinding> found)
    {
        List<RawFinding> rest = [.. found.Where(finding => !verdict.Answers(finding, batch))];
        Candidate candidate = verdict.Candidate;
        if (candidate.Judgement == Judgement.Refuses)
        {
            return new(candidate, rest, verdict.Differences);
        }

        FindingLevel worst = rest.Concat(candidate.Findings).Select(finding => finding.Level).DefaultIfEmpty(FindingLevel.Note).Max();
        bool read = batch.HasSteps && batch.InJar.All(item => item.Food is not null && (item.Weighed || verdict.Covered.Contains(item)));
        Judgement judgement = worst == FindingLevel.Stop ? Judgement.Refuses
            : worst == FindingLevel.Change || !read ? Judgement.AdmitsAfter
            : candidate.Judgement;
        string reason = judgement == Judgement.Refuses
            ? words.With("reason.formula.barred", candidate.Name)
            : judgement == candidate.Judgement ? candidate.Reason
            : words.With("reason.formula.changes-first", candidate.Name);
        return new(candidate with { Judgement = judgement, Reason = reason }, rest, verdict.Differences);
    }
}
