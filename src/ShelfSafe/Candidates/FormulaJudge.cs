using System.Collections.Immutable;
using ShelfSafe.Hazards;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;

namespace ShelfSafe.Candidates;

/// <summary>Judges a batch by the published formulas: each was tested at its own proportions and covers those alone.</summary>
/// <remarks>Known gap: cut and peel are not compared; a food that only a step names and that carries no hazard is not seen.</remarks>
internal sealed class FormulaJudge
{
    private static readonly string[] Thickeners = ["flour", "cornstarch", "corn starch", "arrowroot", "roux", "tapioca", "potato starch", "slurry"];

    private readonly ImmutableArray<FormulaRow> _formulas;
    private readonly FormulaIndex _index;
    private readonly Dictionary<string, ProcessRow> _processes;
    private readonly Limits _limits;
    private readonly FormulaFindings _findings;
    private readonly HashSet<string> _thickeners;

    /// <summary>Prepares the formulas of a pack.</summary>
    public FormulaJudge(ImmutableArray<FormulaRow> formulas, HazardRoom hazards, PackTables tables)
    {
        _formulas = formulas;
        _index = new(formulas);
        _processes = tables.Processes.ToDictionary(row => row.Id, StringComparer.Ordinal);
        _limits = tables.Limits;
        _findings = new(hazards);
        _thickeners = [.. tables.Foods.Where(food => food.Has("thickener")).Select(food => food.Id)];
    }

    /// <summary>The formulas that cover the batch, as written or once a label is named; else the nearest one of the dish's kind, which refuses.</summary>
    public ImmutableArray<FormulaVerdict> Judge(Batch batch)
    {
        (ulong Filled, int Foods)[] found = _index.Find(batch);
        int foods = FormulaIndex.Foods(batch);
        ImmutableArray<FormulaVerdict>.Builder covering = ImmutableArray.CreateBuilder<FormulaVerdict>();
        FormulaVerdict? nearest = null;
        for (int i = 0; i < _formulas.Length; i++)
        {
            if (found[i].Foods < foods || !_index.IsComplete(i, found[i].Filled))
            {
                continue;
            }

            FormulaVerdict verdict = Of(_formulas[i], batch);
            if (verdict.Candidate.Judgement != Judgement.Refuses)
            {
                covering.Add(verdict);
            }
            else if (IsOfKind(_formulas[i], batch) && (nearest is null || verdict.Candidate.Findings.Length < nearest.Candidate.Findings.Length))
            {
                nearest = verdict;
            }
        }

        if (covering.Count > 0)
        {
            return covering.ToImmutable();
        }

        nearest ??= NearestOfKind(batch, found);
        return nearest is null ? [] : [nearest];
    }

    /// <summary>Up to <paramref name="count"/> published formulas near the batch: of its kind first, then with the most foods in common.</summary>
    public ImmutableArray<FormulaNear> Nearest(Batch batch, int count)
    {
        (ulong Filled, int Foods)[] found = _index.Find(batch);
        return
        [
            .. Enumerable.Range(0, _formulas.Length)
                .Where(i => HasTime(_formulas[i]) && found[i].Filled != 0 && (IsOfKind(_formulas[i], batch) || _index.Share(i, found[i].Filled) > 0.5))
                .OrderByDescending(i => IsOfKind(_formulas[i], batch))
                .ThenByDescending(i => _index.Share(i, found[i].Filled))
                .ThenByDescending(i => found[i].Foods)
                .ThenBy(i => _formulas[i].Id, StringComparer.Ordinal)
                .Take(count)
                .Select(i => FormulaScaling.Near(_formulas[i], batch)),
        ];
    }

    private FormulaVerdict? NearestOfKind(Batch batch, (ulong Filled, int Foods)[] found)
    {
        int best = -1;
        double most = 0;
        for (int i = 0; i < _formulas.Length; i++)
        {
            double alike = _index.Share(i, found[i].Filled) + ((double)found[i].Foods / (batch.InJar.Length + 1));
            if (found[i].Filled != 0 && alike > most && IsOfKind(_formulas[i], batch) && HasTime(_formulas[i]))
            {
                (best, most) = (i, alike);
            }
        }

        return best < 0 ? null : Of(_formulas[best], batch);
    }

    private bool HasTime(FormulaRow formula) => formula.Seen && formula.ProcessRows.Any(row => _processes[row].Seen);

    private static bool IsOfKind(FormulaRow formula, Batch batch) => formula.Kinds.Any(batch.IsKind);

    /// <summary>What one formula says of the batch.</summary>
    public FormulaVerdict Of(FormulaRow formula, Batch batch)
    {
        List<FormulaLine> lines = FormulaSorter.Lines(formula, batch);
        FormulaFit? best = null;
        int[] chosen = [];
        foreach (int[] way in FormulaSorter.Ways(lines))
        {
            FormulaFit fit = new FormulaScale(formula, batch, _limits).Of(lines, way);
            if (best is null || fit.Faults.Length < best.Faults.Length)
            {
                (best, chosen) = (fit, way);
            }

            if (best.Faults.IsEmpty)
            {
                break;
            }
        }

        FormulaFit found = Stepped(formula, batch, best!);
        ImmutableArray<ProcessRow> rows = HasTime(formula) && found.Covers ? [.. formula.ProcessRows.Select(id => _processes[id]).Where(row => row.Seen)] : [];
        Judgement judgement = rows.IsEmpty ? Judgement.Refuses
            : found.Faults.IsEmpty && batch.HasSteps ? Judgement.Admits
            : Judgement.AdmitsAfter;
        Candidate candidate = new(
            formula.Id,
            formula.Name,
            "formula",
            rows.IsEmpty ? string.Empty : rows[0].Method,
            100,
            judgement,
            _findings.Of(formula, found, batch),
            rows,
            FormulaFindings.Reason(formula, found, judgement, rows.IsEmpty && found.Covers));
        ImmutableArray<BatchItem> covered = [.. lines.Where((_, at) => chosen[at] >= 0).SelectMany(line => line.Items)];
        return new(formula, candidate, found.Differences, covered);
    }

    // What the steps turn the food into: thickened where the formula has no thickener, or not fermented where it must be.
    private FormulaFit Stepped(FormulaRow formula, Batch batch, FormulaFit fit)
    {
        bool ferments = formula.Slots.Any(slot => slot.Role == FormulaRole.Fixed && !slot.Discarded && slot.Foods.Contains("salt"));
        bool thickened = batch.Facts.Any(fact => fact.Id is "thickener-in-steps" or "thickened" && !IsOwnThickener(formula, fact.Sentence.Text.Text));
        bool unfermented = ferments && !batch.Says("fermented") && !batch.IsKind("fermented-vegetable");
        return thickened || unfermented
            ? fit with { Faults = fit.Faults.Add(new(FormulaFaultKind.Step, null, null, thickened ? "thickened" : "not fermented")) }
            : fit;
    }

    // A step may stir in the thickener that the formula lists, and no other; with an amount of its own it is more than the listed one.
    private bool IsOwnThickener(FormulaRow formula, string sentence)
    {
        string[] own = [.. formula.Slots.Where(slot => slot.Foods.Any(_thickeners.Contains)).Select(slot => slot.Name)];
        foreach (string word in Thickeners)
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
