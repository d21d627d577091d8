using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Hazards;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;

namespace ShelfSafe.Candidates;

/// <summary>Puts the faults of a comparison in the cook's words.</summary>
internal sealed class FormulaFindings(HazardRoom hazards, WordTable words)
{
    /// <summary>One finding a fault.</summary>
    public ImmutableArray<RawFinding> Of(FormulaRow formula, FormulaFit fit, Batch batch) =>
        [.. fit.Faults.Select(fault => One(formula, fault, batch))];

    /// <summary>Why the formula admits or refuses, in one sentence.</summary>
    public string Reason(FormulaRow formula, FormulaFit fit, Judgement judgement, bool untimed) => judgement switch
    {
        Judgement.Admits => words.With("reason.formula.admits", formula.Name),
        Judgement.AdmitsAfter => words.With("reason.formula.when-changed", formula.Name),
        Judgement.Refuses when untimed => words.With("reason.formula.no-time", formula.Name),
        Judgement.Refuses => words.With("reason.formula.nearest", formula.Name, Count(fit.Faults.Length)),
    };

    private string Count(int faults) => faults == 1 ? words["reason.formula.one-point"] : words.With("reason.formula.points", faults);

    private RawFinding One(FormulaRow formula, FormulaFault fault, Batch batch)
    {
        BatchItem? item = fault.Line?.Item;
        string rule = fault.Kind switch
        {
            FormulaFaultKind.Unlabelled or FormulaFaultKind.Weak => "weak-vinegar",
            FormulaFaultKind.Fresh => "fresh-citrus",
            FormulaFaultKind.Ambiguous => "regional-word",
            FormulaFaultKind.Unmeasured => "unmeasured",
            FormulaFaultKind.NewFood when item?.Food is null => "unidentified",
            FormulaFaultKind.NewFood => "untested-food",
            FormulaFaultKind.TooMuch or FormulaFaultKind.TooLittle or FormulaFaultKind.Missing or FormulaFaultKind.NotPerJar or FormulaFaultKind.Step => "proportions",
        };
        RawFinding raised = hazards.Raise(rule, item, batch, level: FindingLevel.Change);
        if (fault.IsMended && fault.Kind is not (FormulaFaultKind.NotPerJar or FormulaFaultKind.Ambiguous))
        {
            return raised;
        }

        (string message, string instead) = Words(formula, fault, raised);
        return raised with { Message = message, Instead = instead, Ingredient = item?.Words, Sources = [formula.Source] };
    }

    private (string Message, string Instead) Words(FormulaRow formula, FormulaFault fault, RawFinding raised)
    {
        FormulaSlot? kind = fault is { Kind: FormulaFaultKind.NewFood, Line: { } line } ? FormulaSorter.OfOneKind(formula, line.Item) : null;
        object?[] blanks = [fault.Line?.Item.Words ?? fault.Slot?.Name ?? words["fault.this"], formula.Name, fault.Allowed, (fault.Slot ?? kind)?.Name];
        string Say(string key) => words.With(key, blanks);
        return fault.Kind switch
        {
            FormulaFaultKind.TooMuch => (Say("fault.too-much"), Say("fault.too-much.instead")),
            FormulaFaultKind.TooLittle => (Say("fault.too-little"), Say("fault.too-little.instead")),
            FormulaFaultKind.NewFood when kind is not null => (Say("fault.other-kind"), Say("fault.other-kind.instead")),
            FormulaFaultKind.NewFood => (Say("fault.new-food"), Say("fault.new-food.instead")),
            FormulaFaultKind.Missing => (Say("fault.missing"), Say(fault.Allowed is "" or "0" ? "fault.missing.instead-plain" : "fault.missing.instead")),
            FormulaFaultKind.Unmeasured => (Say("fault.unmeasured"), Say("fault.unmeasured.instead")),
            FormulaFaultKind.Weak => (Say("fault.weak"), Say("fault.weak.instead")),
            FormulaFaultKind.NotPerJar => (Say("fault.not-per-jar"), Say("fault.not-per-jar.instead")),
            FormulaFaultKind.Step => (Say("fault.step"), raised.Instead),
            FormulaFaultKind.Ambiguous => (raised.Message, Say("fault.ambiguous.instead")),
            FormulaFaultKind.Unlabelled or FormulaFaultKind.Fresh => (raised.Message, raised.Instead),
        };
    }
}
