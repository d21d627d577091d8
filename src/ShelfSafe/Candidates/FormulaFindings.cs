using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Hazards;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;

namespace ShelfSafe.Candidates;

/// <summary>Puts the faults of a comparison in the cook's words.</summary>
internal sealed class FormulaFindings(HazardRoom hazards)
{
    /// <summary>One finding a fault.</summary>
    public ImmutableArray<RawFinding> Of(FormulaRow formula, FormulaFit fit, Batch batch) =>
        [.. fit.Faults.Select(fault => One(formula, fault, batch))];

    /// <summary>Why the formula admits or refuses, in one sentence.</summary>
    public static string Reason(FormulaRow formula, FormulaFit fit, Judgement judgement, bool untimed)
    {
        string name = formula.Name;
        string points = Count(fit.Faults.Length);
        return judgement switch
        {
            Judgement.Admits => $"Its foods and amounts are those of the published recipe \"{name}\".",
            Judgement.AdmitsAfter => $"Its foods and amounts are those of the published recipe \"{name}\" once the changes are made.",
            Judgement.Refuses when untimed => $"Its foods and amounts are those of \"{name}\", but no printed time for it was seen.",
            Judgement.Refuses => $"The nearest published recipe is \"{name}\", and this one differs from it in {points}.",
        };
    }

    private static string Count(int faults) => faults == 1 ? "one point" : $"{faults} points";

    private RawFinding One(FormulaRow formula, FormulaFault fault, Batch batch)
    {
        BatchItem? item = fault.Line?.Item;
        string rule = fault.Kind switch
        {
            FormulaFaultKind.Unlabelled or FormulaFaultKind.Weak => "weak-vinegar",
            FormulaFaultKind.Fresh => "fresh-citrus",
            FormulaFaultKind.Unmeasured => "unmeasured",
            FormulaFaultKind.NewFood when item?.Food is null => "unidentified",
            FormulaFaultKind.NewFood => "untested-food",
            FormulaFaultKind.TooMuch or FormulaFaultKind.TooLittle or FormulaFaultKind.Missing or FormulaFaultKind.NotPerJar or FormulaFaultKind.Step => "proportions",
        };
        RawFinding raised = hazards.Raise(rule, item, batch, level: FindingLevel.Change);
        if (fault.IsMended && rule != "proportions")
        {
            return raised;
        }

        (string message, string instead) = Words(formula, fault, raised);
        return raised with { Message = message, Instead = instead, Ingredient = item?.Words, Sources = [formula.Source] };
    }

    private static (string Message, string Instead) Words(FormulaRow formula, FormulaFault fault, RawFinding raised)
    {
        string food = fault.Line?.Item.Words ?? fault.Slot?.Name ?? "this";
        string name = $"the published recipe \"{formula.Name}\"";
        return fault.Kind switch
        {
            FormulaFaultKind.TooMuch => ($"There is more \"{food}\" than in {name}.", $"Use at most {fault.Allowed} of it for this amount of the main food."),
            FormulaFaultKind.TooLittle => ($"There is less \"{food}\" than in {name}.", $"Use at least {fault.Allowed} of it for this amount of the main food."),
            FormulaFaultKind.NewFood => ($"\"{food}\" is not part of {name}.", "Leave it out of the jar and add it when you serve."),
            FormulaFaultKind.Missing => ($"\"{food}\" is part of {name} and missing here.", fault.Allowed.Length == 0 || fault.Allowed == "0" ? $"Add the {food} that it was tested with." : $"Add {fault.Allowed} of {food}."),
            FormulaFaultKind.Unmeasured => ($"No amount of \"{food}\" could be compared with {name}.", "Write down its weight or its cups."),
            FormulaFaultKind.Weak => ($"The vinegar in \"{food}\" is weaker than the 5 percent of {name}.", "Use vinegar whose label says 5 percent."),
            FormulaFaultKind.NotPerJar => ($"{name} has its acid put into each jar, and this one does not say so.", $"Put {fault.Allowed} of {fault.Slot!.Name} into each pint jar, twice that into a quart."),
            FormulaFaultKind.Step => ($"The steps leave this dish {fault.Allowed}, which {name} is not.", raised.Instead),
            FormulaFaultKind.Unlabelled or FormulaFaultKind.Fresh => (raised.Message, raised.Instead),
        };
    }
}
