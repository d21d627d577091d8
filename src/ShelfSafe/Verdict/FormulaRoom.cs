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
internal sealed class FormulaRoom(FormulaJudge judge, Limits limits, RuleList fruitKinds, WordTable words)
{
    private readonly FormulaScaling _scaling = new(words);

    /// <summary>Prepares the formulas of a pack.</summary>
    /// <exception cref="InvalidDataException">A formula table is wrong.</exception>
    public static FormulaRoom Create(RulePack pack, HazardRoom hazards)
    {
        List<PackFault> faults = [];
        FormulaJudge judge = FormulaJudge.Create(pack, hazards, faults);
        return faults.Count == 0 ? new(judge, pack.Tables.Limits, pack.Tables.Lists.Of(RuleLists.FruitKinds), WordTable.BuiltIn) : throw new InvalidDataException(faults[0].ToString());
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

        return best is { Candidate.Judgement: Judgement.Refuses } far && !HasMainFood(judge.Find(far.Candidate.Id)!, batch)
            ? far with { Candidate = far.Candidate with { IsNear = false, IsNamed = false, Reason = words["reason.formula.other-food"] }, Differences = [] }
            : best;
    }

    /// <summary>Up to three formulas near a dish that got no process, the one that the report names among them.</summary>
    /// <param name="view">The dish.</param>
    /// <param name="lead">What the report names as nearest, or <see langword="null"/>.</param>
    public ImmutableArray<NearestFormula> Nearest(FormulaView view, Candidate? lead)
    {
        string named = lead is { Kind: "formula", IsNamed: true } ? lead.Id : string.Empty;
        List<NearestFormula> nearest = [];
        NearestFormula? beside = null;
        bool kin = false;
        foreach ((FormulaRow formula, List<FormulaLine> lines, bool ofKind) in judge.Nearest(view, named))
        {
            if ((kin && !ofKind) || nearest.Count >= (int)limits["nearest-formulas"])
            {
                break; // a chutney has no need of a pickle where a chutney is near
            }

            if (MainFoodsMeet(formula, lines) && HasMainFood(formula, view.Batch))
            {
                kin |= ofKind;
                nearest.Add(Near(formula, lines));
            }
            else if (formula.Id == named && !LosesAllMeat(lines))
            {
                beside = Near(formula, lines);
            }
        }

        // What is named though it has no place for the main food of the dish is told last.
        return beside is null ? [.. nearest] : [.. nearest.Take((int)limits["nearest-formulas"] - 1), beside];
    }

    private NearestFormula Near(FormulaRow formula, List<FormulaLine> lines)
    {
        FormulaNear near = _scaling.Near(formula, lines);
        return new(formula.Id, formula.Name, near.Swap, IsMeasured(formula, lines) ? near.Ingredients : [], formula.Source);
    }

    // A published recipe whose main food the dish lacks, or that has no place for the main food of the dish, is another dish.
    private bool MainFoodsMeet(FormulaRow formula, List<FormulaLine> lines)
    {
        int main = formula.MainSlot();
        if (main >= 0 && (!lines.Exists(line => line.Options.Contains(main)) || LacksMost(formula, lines)))
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

    // Of a ragu with beef and pork the beef may stay; an elk chili without its elk is another dish.
    private static bool LosesAllMeat(List<FormulaLine> lines)
    {
        List<FormulaLine> meat = lines.FindAll(static line => line.Item.Food?.Group is "meat" or "poultry" or "seafood");
        return meat.Count > 0 && meat.TrueForAll(static line => line.Options.IsEmpty);
    }

    // Apples that would have to become a mincemeat with its beef and suet are no mincemeat.
    private bool LacksMost(FormulaRow formula, List<FormulaLine> lines)
    {
        double has = 0;
        double lacks = 0;
        for (int i = 0; i < formula.Slots.Length; i++)
        {
            FormulaSlot slot = formula.Slots[i];
            double grams = slot.Presence == FormulaPresence.Required && slot.Role != FormulaRole.Free && !slot.IsCarrier ? slot.Grams ?? 0 : 0;
            bool filled = lines.Exists(line => line.Options.Contains(i));
            (has, lacks) = (has + (filled ? grams : 0), lacks + (filled ? 0 : grams));
        }

        return lacks > has * limits["nearest-lacks"];
    }

    // The food that a formula is made of must be more than a garnish of the dish: one chilli among two dozen eggs makes no pickled peppers.
    // A group of foods that is called as the food itself is of it: tinned tomatoes are tomatoes. Blackberries make a syrup as raspberries do.
    private bool HasMainFood(FormulaRow formula, Batch batch)
    {
        int main = formula.MainSlot();
        if (main < 0)
        {
            return true;
        }

        FormulaSlot slot = formula.Slots[main];
        bool fruit = formula.Kinds.Any(fruitKinds.Contains);
        Interval share = batch.ShareOf(item => item.Food is { } food
            && (slot.Foods.Contains(food.Id) || slot.Swaps.Contains(food.Id) || slot.Foods.Contains(food.Group) || (fruit && food is { Group: "fruit", Acidity: FoodAcidity.Acid })));
        return !(share.High < limits["main-food-share"]);
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
        if (judge.Find(id) is not { } formula)
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
