using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Changes;

/// <summary>Makes the changes that findings ask for, each with its reason, and stops at the first that it may not decide.</summary>
internal sealed class DraftEditor
{
    private readonly AdaptRules _rules;
    private readonly Dictionary<DraftLine, ImmutableArray<IngredientReport>> _entries = [];
    private readonly HashSet<DraftLine> _ownServing = [];
    private readonly SeasoningLines _seasonings;
    private readonly StepRewriter _steps;
    private readonly DraftLines _lines;

    /// <summary>Prepares an editor of one draft.</summary>
    public DraftEditor(AdaptRules rules, Draft draft)
    {
        (_rules, Draft, Log) = (rules, draft, new(rules));
        _steps = new(rules, draft, Log, _entries, _ownServing);
        _seasonings = new(rules, Log, _entries);
        _lines = new(rules, draft, Log, _entries);
        Added = new(rules, draft, Log);
    }

    /// <summary>The recipe as it stands now.</summary>
    public Draft Draft { get; }

    /// <summary>Changes, questions and reasons.</summary>
    public AdaptLog Log { get; }

    /// <summary>The steps and the liquid that this program adds.</summary>
    public AddedSteps Added { get; }

    /// <summary>Every change so far: what goes and what is cut down, what is added, and then the steps.</summary>
    public ImmutableArray<AdaptChange> Changes => [.. Log.Changes.Concat(Added.Liquid).OrderBy(static change => change.Kind switch
    {
        "serve" or "leave-out" or "amount" => 0,
        "liquid" or "acid" => 1,
        "reworded" or "method" => 2,
        _ => 3,
    })];

    /// <summary>What may be added as liquid: the dish's own plain broth or tomato juice first, water last.</summary>
    public IEnumerable<string> Liquids => _entries.Where(pair => pair.Key.Place == DraftPlace.Kept && pair.Value is [{ Identified: true, OnTheCooksWord: false, Alternatives.IsEmpty: true } entry] && _rules.IsLiquid(entry))
        .Select(pair => pair.Value[0].Food)
        .Append("water")
        .Distinct(StringComparer.Ordinal);

    /// <summary>Remembers which foods stand on which line, from the report on the untouched copy.</summary>
    public void Start(VettingReport copy)
    {
        foreach ((int at, DraftLine line) in Draft.LineAt)
        {
            _entries[line] = [.. copy.Ingredients.Where(entry => entry.Line == at)];
            int serving = copy.Findings.Where(finding => finding.Rule == "at-serving").Sum(finding => finding.Places.Count(place => place.Line == at));
            if (line.Place == DraftPlace.Serving || (serving > 0 && serving == _entries[line].Length))
            {
                line.Place = DraftPlace.Serving; // the recipe itself keeps it for serving
                _ownServing.Add(line);
            }
        }

        _steps.MoveOwnServing();

        // Steps that this program adds must never make up for steps that the recipe lacks.
        if (copy.Findings.Any(finding => finding.Rule == "no-steps"))
        {
            Log.Ask("no-steps", string.Empty);
        }
    }

    /// <summary>Moves to serving day what the recipe's own steps bring to the table alone.</summary>
    /// <returns>Whether anything was moved.</returns>
    public bool KeepForTable(VettingReport copy)
    {
        ImmutableArray<DraftLine> lines = TableFoods.Of(Draft, copy, _rules.Words);
        foreach (DraftLine line in lines)
        {
            line.Place = DraftPlace.Serving;
            Log.Change("serve", line.Text, string.Empty, "@table");
        }

        return lines.Length > 0;
    }

    /// <summary>Adds the steps that every jar version gets; asks where the recipe names another headspace.</summary>
    public void AddSteps(VettingReport report)
    {
        Added.OtherHeadspace(report).ForEach(step => Log.Ask("@headspace", step.Text));
        Added.Add(report);
    }

    /// <summary>Puts the steps at the jar into working order; asks where that cannot be done.</summary>
    public void Arrange(VettingReport report)
    {
        new JarOrder(_rules, Draft, Log.Changes).Arrange(_steps.Staying(), report.Category?.Id == "soup", step => Log.Ask("@order", step.Text));
    }

    /// <summary>Steps for serving day, any of which will do, where no printed step names a food kept for it; empty where all are named.</summary>
    /// <param name="shown">Sentences for serving day that are printed.</param>
    /// <returns>The one that names the foods, then the one that points at the list: a food named in a step may be read as going into the jar.</returns>
    public ImmutableArray<DraftStep> ServingSteps(IReadOnlySet<DraftStep> shown)
    {
        HashSet<string> named = [.. Draft.Steps.Where(step => shown.Contains(step) || step is { Section: DraftSection.Serving, Place: DraftPlace.Kept }).SelectMany(step => Mentions.Words(step.Text))];
        string[] foods = [.. _entries.Where(pair => pair.Key.Place == DraftPlace.Serving).SelectMany(pair => pair.Value).Select(FoodWords.Of).Distinct(StringComparer.Ordinal).Where(food => !Mentions.Words(food).Any(named.Contains))];
        return foods.Length == 0
            ? []
            : [new(_rules["@serving-step"].Step.Replace("{food}", FoodWords.Joined(foods), StringComparison.Ordinal), DraftSection.Serving, added: true), new(_rules["@serving-list"].Step, DraftSection.Serving, added: true)];
    }

    /// <summary>Treats every finding that asks for a change; what only the cook can decide waits until nothing else is left to change.</summary>
    /// <returns>Whether anything was changed.</returns>
    public bool Treat(VettingReport report)
    {
        int before = Log.Changes.Count;
        Dictionary<int, DraftLine> lines = new(Draft.LineAt);
        Dictionary<int, DraftStep> steps = new(Draft.StepAt);
        foreach (Finding finding in report.Findings.Where(finding => finding.Level >= FindingLevel.Change).OrderBy(finding => finding.Rule == "thickener" ? 0 : 1))
        {
            Treat(report, finding, lines, steps);
        }

        _steps.Follow();
        bool moved = Log.Changes.Count > before;
        if (!moved || Log.IsStuck)
        {
            Leave(report, reasons: !moved);
        }

        return moved;
    }

    private void Treat(VettingReport report, Finding finding, Dictionary<int, DraftLine> lines, Dictionary<int, DraftStep> steps)
    {
        AdaptRow row = RowOf(finding);
        switch (row.Treatment)
        {
            case "ask" when finding.Places.Any(place => steps.ContainsKey(place.Line)):
                Log.Ask(finding); // its sentence may not go anywhere unread
                break;
            case "ask":
                break; // see Leave
            case "freeze":
                finding.Places.Select(place => steps.GetValueOrDefault(place.Line)).OfType<DraftStep>().ToList().ForEach(_steps.Thin);
                break; // see Leave
            case "acid":
                if (!PublishedAcid.Add(Draft, Log.Changes, report, row, _rules.Words))
                {
                    Log.Give(finding);
                }

                break;
            case "step" or "liquid":
                break; // their steps stand in already; liquid is measured out at the end
            default:
                foreach (Place place in finding.Places)
                {
                    Move(report, finding, row, lines.GetValueOrDefault(place.Line), steps.GetValueOrDefault(place.Line));
                }

                break;
        }
    }

    /// <summary>Asks what only the cook can say, and tells what no change mends.</summary>
    /// <param name="report">The report with what is left.</param>
    /// <param name="reasons">Whether the reasons are told as well: while changes are made they may still fall away.</param>
    public void Leave(VettingReport report, bool reasons)
    {
        foreach (Finding finding in report.Findings.Where(finding => finding.Level >= FindingLevel.Change))
        {
            switch (RowOf(finding).Treatment)
            {
                case "ask":
                    Log.Ask(finding);
                    break;
                case "freeze" when reasons:
                    Log.Give(finding);
                    break;
                default:
                    break;
            }
        }
    }

    /// <summary>Cuts what may only season the jar down to the published share, or moves it to serving day.</summary>
    /// <returns>Whether anything was changed.</returns>
    public bool Season(VettingReport report)
    {
        Dictionary<int, DraftLine> lines = new(Draft.LineAt);
        bool changed = false;
        foreach (Finding finding in report.Findings.Where(finding => finding.Level >= FindingLevel.Change))
        {
            foreach (DraftLine line in finding.Places.Select(place => lines.GetValueOrDefault(place.Line)).OfType<DraftLine>().Where(line => _seasonings.MayStay(finding, line, report)))
            {
                changed = true;
                if (!_seasonings.CutDown(line, report))
                {
                    _lines.Move(line, _rules[finding.Rule], _rules[finding.Rule].Treatment, [.. finding.Sources]);
                }
            }
        }

        _steps.Follow();
        return changed;
    }

    /// <summary>Whether so much would have to go that another dish is left.</summary>
    public bool TooMuchOut(VettingReport report)
    {
        double gone = 0;
        double all = 0;
        foreach ((DraftLine line, ImmutableArray<IngredientReport> entries) in _entries)
        {
            foreach (IngredientReport entry in entries)
            {
                if (entry.Grams is { IsBounded: true } grams)
                {
                    double middle = (grams.Low + grams.High) / 2;
                    all += middle;
                    gone += line.Place == DraftPlace.Kept ? 0 : middle;
                }
                else if (line.Place != DraftPlace.Kept && entry is { ToTaste: false, Optional: false } && Log.Changes.Exists(change => change.What == line.Text))
                {
                    Log.Ask("@amount-out", line.Text);
                    return true;
                }
            }
        }

        if (gone > _rules.LargestShareOut * all)
        {
            Log.Give("@main-food");
            return true;
        }

        return report.Ingredients.IsEmpty;
    }

    /// <summary>Brings the list to the amounts of a published recipe.</summary>
    public void BringTo(FormulaComparison comparison)
    {
        if (_lines.BringTo(comparison, _steps.Arrived))
        {
            _steps.Follow();
        }
    }

    private AdaptRow RowOf(Finding finding) => finding.Level == FindingLevel.Stop ? _rules["proportions"] : _rules.For(finding);

    private void Move(VettingReport report, Finding finding, AdaptRow row, DraftLine? line, DraftStep? step)
    {
        if (line is { Place: DraftPlace.Kept } && finding.Ingredient is not null && row.Treatment != "method")
        {
            if (!_seasonings.MayStay(finding, line, report))
            {
                _lines.Move(line, row, row.Treatment, [.. finding.Sources]);
            }
        }
        else if (step is { Place: DraftPlace.Kept, Added: false } && finding.Ingredient is null or { Length: > 0 })
        {
            _steps.Move(step!, row, finding.Sources);
        }
        else if (line is null && step is null)
        {
            Log.Give(finding);
        }
    }
}
