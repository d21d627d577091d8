using System.Collections.Immutable;
using ShelfSafe.Hazards;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;

namespace ShelfSafe.Candidates;

/// <summary>Judges a batch by the published formulas: each was tested at its own proportions and covers those alone.</summary>
/// <remarks>Known gap: cut and peel are not compared; a food that only a step names and that carries no hazard is not seen.</remarks>
internal sealed class FormulaJudge
{
    // Step facts after which no pieces are left.
    private static readonly string[] SmoothFacts = ["blended", "mashed", "sieved", "cooked-to-pieces"];

    private readonly RowTable<FormulaRow> _formulas;
    private readonly FormulaIndex _index;
    private readonly RowTable<ProcessRow> _processes;
    private readonly Limits _limits;
    private readonly WordTable _words;
    private readonly RuleList _thickenerWords;
    private readonly RuleList _smooth;
    private readonly FormulaFindings _findings;
    private readonly Lazy<HashSet<string>> _thickeners;

    private FormulaJudge(RowTable<FormulaRow> formulas, FormulaIndex index, HazardRoom hazards, PackTables tables)
    {
        _formulas = formulas;
        _index = index;
        _processes = tables.ProcessTable;
        _limits = tables.Limits;
        _words = WordTable.BuiltIn;
        _thickenerWords = tables.Lists.Of(RuleLists.ThickenerWords);
        _smooth = tables.Lists.Of(RuleLists.SmoothKinds);
        _findings = new(hazards, WordTable.BuiltIn);
        _thickeners = new(() => [.. tables.Foods.Where(food => food.Has("thickener")).Select(food => food.Id)]);
    }

    /// <summary>Prepares the formulas of a pack; what is wrong is added to the faults.</summary>
    public static FormulaJudge Create(RulePack pack, HazardRoom hazards, List<PackFault> faults)
    {
        RowTable<FormulaRow> formulas = FormulaTable.Open(pack, faults);
        return new(formulas, pack.Image is { } image ? new(image) : FormulaIndex.Of(formulas.All, pack.Tables), hazards, pack.Tables);
    }

    /// <summary>All formulas, in the order of the table.</summary>
    public ImmutableArray<FormulaRow> Formulas => _formulas.All;

    /// <summary>A batch as the formulas look at it.</summary>
    public FormulaView Look(Batch batch) => new(batch, _index.Find(batch));

    /// <summary>The formulas that cover the batch, as written or once a label is named; else the nearest one of the dish's kind, which refuses.</summary>
    public ImmutableArray<FormulaVerdict> Judge(FormulaView view)
    {
        (Batch batch, (ulong Filled, int Foods)[] found) = (view.Batch, view.Found);
        int foods = FormulaIndex.Foods(batch);
        int acids = batch.InJar.Count(static item => item.Has("acidifier") || item.Has("vinegar"));
        ImmutableArray<FormulaVerdict>.Builder covering = ImmutableArray.CreateBuilder<FormulaVerdict>();
        FormulaFit? nearest = null;
        FormulaRow? formula = null;
        int kinship = 0;
        for (int i = 0; i < _formulas.Count; i++)
        {
            bool complete = found[i].Foods >= foods && _index.IsComplete(i, found[i].Filled);
            // A salsa with vinegar for its lime juice is nearest to that salsa, not to a sauce that takes vinegar.
            bool otherAcid = !complete && found[i].Foods + acids >= foods && _index.HasTime(i) && _index.LacksAcidAlone(i, found[i].Filled) && _index.Kinship(i, batch) > 1;
            if (!complete && !otherAcid)
            {
                continue;
            }

            FormulaFit fit = Fit(_formulas[i], view.Lines, batch);
            if (fit.Covers && _index.HasTime(i))
            {
                covering.Add(Verdict(_formulas[i], fit, batch));
            }
            else if (_index.Kinship(i, batch) is var own and > 0 && (nearest is null || IsNearer(fit, own, nearest, kinship)))
            {
                (nearest, formula, kinship) = (fit, _formulas[i], own);
            }
        }

        if (covering.Count > 0)
        {
            return covering.ToImmutable();
        }

        (FormulaFit Fit, FormulaRow Formula)? refusing = nearest is null ? null : (nearest, formula!);
        return Refusing(refusing, kinship, view) is { } best ? [Verdict(best.Formula, best.Fit, batch)] : [];
    }

    // The one that is told as nearest: of the complete ones, or of the dish's kind though it lacks a food.
    private (FormulaFit Fit, FormulaRow Formula)? Refusing((FormulaFit Fit, FormulaRow Formula)? nearest, int kinship, FormulaView view)
    {
        // One that lacks a food may still be nearer than a complete one of another kind.
        bool far = nearest is { } complete && kinship < 2 && complete.Fit.Faults.Length > _limits["formula-near-points"];
        return (nearest is null || far) && NearestOfKind(view) is var (kin, near) && (nearest is null || near > kinship)
            ? (Fit(kin, view.Lines, view.Batch), kin)
            : nearest;
    }

    // What a few changes make the published recipe is nearest; else a salsa is nearer to a salsa than to a sauce that is also called one.
    private bool IsNearer(FormulaFit fit, int kinship, FormulaFit other, int otherKinship)
    {
        (int own, int others) = (Points(fit), Points(other));
        bool few = own <= _limits["formula-near-points"] || others <= _limits["formula-near-points"];
        int order = own.CompareTo(others);
        return (few && order != 0) || kinship == otherKinship ? order < 0 : kinship > otherKinship;
    }

    // One acid for another is one change: the published acid is missing and the cook's own is no part of the recipe.
    private static int Points(FormulaFit fit) =>
        fit.Faults.Length - (fit.Faults.Any(static fault => fault is { Kind: FormulaFaultKind.Missing, Slot.IsAcid: true })
            && fit.Faults.Any(static fault => fault is { Kind: FormulaFaultKind.NewFood, Line: { } line } && line.Item.Has("acidifier")) ? 1 : 0);

    /// <summary>Published formulas near the batch, each with the lines of the batch in its slots and whether it is of the batch's kind: such ones first, then with the most foods in common.</summary>
    /// <remarks>Sorted into slots as they are asked for, since few are.</remarks>
    /// <param name="view">The dish.</param>
    /// <param name="first">Id of the formula that comes before all others; empty for none.</param>
    public IEnumerable<(FormulaRow Formula, List<FormulaLine> Lines, bool OfKind)> Nearest(FormulaView view, string first = "")
    {
        (Batch batch, (ulong Filled, int Foods)[] found) = (view.Batch, view.Found);
        double least = _limits["nearest-share"];
        List<(int Formula, int Kinship, double Share, int Foods)> near = [];
        for (int i = 0; i < _formulas.Count; i++)
        {
            if (found[i].Filled == 0 || !_index.HasTime(i) || _index.LacksMain(i, found[i].Filled))
            {
                continue;
            }

            int kinship = _index.Kinship(i, batch);
            double share = _index.Share(i, found[i].Filled);
            if (kinship > 0 || (share > least && _index.HasMain(i, found[i].Filled)))
            {
                near.Add((i, kinship, share, found[i].Foods));
            }
        }

        near.Sort((one, other) =>
        {
            int order = other.Kinship.CompareTo(one.Kinship);
            order = order != 0 ? order : other.Share.CompareTo(one.Share);
            order = order != 0 ? order : other.Foods.CompareTo(one.Foods);
            return order != 0 ? order : _index.Rank(one.Formula).CompareTo(_index.Rank(other.Formula));
        });
        if (Find(first) is { } named)
        {
            yield return (named, FormulaSorter.Lines(named, view.Lines, batch), true);
        }

        foreach ((int formula, int kinship, _, _) in near)
        {
            if (_formulas[formula] is var other && other.Id != first)
            {
                yield return (other, FormulaSorter.Lines(other, view.Lines, batch), kinship > 0);
            }
        }
    }

    /// <summary>The formula of an id, or <see langword="null"/>.</summary>
    public FormulaRow? Find(string id) => _formulas.First("id", id);

    private (FormulaRow Formula, int Kinship)? NearestOfKind(FormulaView view)
    {
        (Batch batch, (ulong Filled, int Foods)[] found) = (view.Batch, view.Found);
        int best = -1;
        (bool Main, int Kinship, double Alike) most = (false, 0, 0); // what is made of the dish's own food comes first
        for (int i = 0; i < _formulas.Count; i++)
        {
            if (found[i].Filled == 0 || !_index.HasTime(i))
            {
                continue;
            }

            (bool Main, int Kinship, double Alike) own = (_index.HasMain(i, found[i].Filled), _index.Kinship(i, batch), _index.Share(i, found[i].Filled) + ((double)found[i].Foods / (batch.InJar.Length + 1)));
            if (own.Kinship > 0 && own.CompareTo(most) > 0)
            {
                (best, most) = (i, own);
            }
        }

        return best < 0 ? null : (_formulas[best], most.Kinship);
    }

    private bool HasTime(FormulaRow formula) => formula.Seen && formula.ProcessRows.Any(row => Process(row).Seen);

    private ProcessRow Process(string id) => _processes.First("id", id) ?? throw new KeyNotFoundException(id);

    /// <summary>What one formula says of the batch.</summary>
    public FormulaVerdict Of(FormulaRow formula, Batch batch) => Verdict(formula, Fit(formula, PrintedLine.Of(batch), batch), batch);

    private FormulaFit Fit(FormulaRow formula, ImmutableArray<PrintedLine> printed, Batch batch)
    {
        double leastGrams = batch.TotalGrams.Low;
        List<FormulaLine> lines = FormulaSorter.Lines(formula, printed, batch);
        FormulaFit? best = null;
        foreach (int[] way in FormulaSorter.Ways(lines))
        {
            FormulaFit fit = new FormulaScale(formula, leastGrams, _limits).Of(lines, way);
            if (best is null || fit.Faults.Length < best.Faults.Length)
            {
                best = fit;
            }

            if (best.Faults.IsEmpty || best.Faults.Any(fault => IsFinal(formula, fault, lines)))
            {
                break;
            }
        }

        return Stepped(formula, batch, best!);
    }

    // A fault that no other way of sorting the lines could mend: neither its line nor its slot has a choice.
    private static bool IsFinal(FormulaRow formula, FormulaFault fault, List<FormulaLine> lines)
    {
        // Too much and too little hang on the scale, and the scale on every line.
        if (fault.Kind is not (FormulaFaultKind.NewFood or FormulaFaultKind.Missing or FormulaFaultKind.Unmeasured or FormulaFaultKind.Weak) || fault.Line is { Options.Length: > 1 })
        {
            return false;
        }

        int slot = fault.Slot is null ? -1 : formula.Slots.IndexOf(fault.Slot);
        return !lines.Exists(line => line.Options.Length > 1 && line.Options.Contains(slot));
    }

    private FormulaVerdict Verdict(FormulaRow formula, FormulaFit fit, Batch batch)
    {
        bool timed = HasTime(formula);
        ImmutableArray<ProcessRow> rows = timed && fit.Covers ? [.. formula.ProcessRows.Select(Process).Where(row => row.Seen)] : [];
        Judgement judgement = rows.IsEmpty ? Judgement.Refuses
            : fit.Faults.IsEmpty && batch.HasSteps ? Judgement.Admits
            : Judgement.AdmitsAfter;
        Candidate candidate = new(
            formula.Id,
            formula.Name,
            "formula",
            rows.IsEmpty ? string.Empty : rows[0].Method,
            100,
            judgement,
            _findings.Of(formula, fit, batch),
            rows,
            _findings.Reason(formula, fit, judgement, untimed: !timed && fit.Covers))
        {
            IsNear = fit.Faults.Length <= _limits["formula-near-points"] && !fit.Faults.Any(fault => fault.Kind == FormulaFaultKind.Missing),
        };
        // Without a measured amount on either side there is nothing to compare.
        return new(formula, candidate, fit.Scale > 0 ? fit.Differences : [], fit.Taken, IsSmooth(formula));
    }

    // What the steps turn the food into: thickened where the formula has no thickener, smooth where it was tested in pieces, fermented where it must not be, or not long enough.
    private FormulaFit Stepped(FormulaRow formula, Batch batch, FormulaFit fit)
    {
        bool ferments = formula.Slots.Any(slot => slot.Role == FormulaRole.Fixed && !slot.Discarded && slot.Foods.Contains("salt"));
        bool thickened = batch.Facts.Any(fact => fact.Id is "thickener-in-steps" or "thickened" && !IsOwnThickener(formula, fact.Sentence.Text.Text));
        bool unfermented = ferments && !batch.Says("fermented") && !batch.IsKind(FormulaIndex.Fermented);
        string? state = thickened ? "fault.thickened"
            : unfermented ? "fault.not-fermented"
            : ferments && batch.Says("ferment-short") ? "fault.ferment-short"
            : !IsSmooth(formula) && SmoothFacts.Any(batch.Says) ? "fault.blended"
            : batch.Says("packed-dry") ? "fault.packed-dry"
            : batch.Says("deep-fried") ? "fault.fried"
            : batch.Says("smoked-first") ? "fault.smoked"
            : !ferments && batch.Says("ferment-named") && !batch.IsKind(FormulaIndex.Fermented) ? "fault.fermented"
            : null;
        return state is null ? fit : fit with { Faults = fit.Faults.Add(new(FormulaFaultKind.Step, null, null, _words[state])) };
    }

    private bool IsSmooth(FormulaRow formula) => formula.Kinds.Any(_smooth.Contains);

    // A step may stir in the thickener that the formula lists, and no other; with an amount of its own it is more than the listed one.
    private bool IsOwnThickener(FormulaRow formula, string sentence)
    {
        string[] own = [.. formula.Slots.Where(slot => slot.Foods.Any(_thickeners.Value.Contains)).Select(slot => slot.Name)];
        foreach (string word in _thickenerWords.Words)
        {
            int at = sentence.IndexOf(word, StringComparison.OrdinalIgnoreCase);
            if (at >= 0 && (!own.Contains(word, StringComparer.Ordinal) || sentence.AsSpan(Math.Max(at - 20, 0), Math.Min(at, 20)).ContainsAnyInRange('0', '9')))
            {
                return false;
            }
        }

        return own.Length > 0;
    }
}
