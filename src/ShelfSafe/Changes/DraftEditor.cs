using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Changes;

/// <summary>Makes the changes that findings ask for, each with its reason, and stops at the first that it may not decide.</summary>
internal sealed class DraftEditor(AdaptRules rules, Draft draft)
{
    private readonly List<AdaptChange> _changes = [];
    private readonly Dictionary<DraftLine, ImmutableArray<IngredientReport>> _entries = [];
    private readonly HashSet<DraftLine> _ownServing = [];

    /// <summary>The recipe as it stands now.</summary>
    public Draft Draft { get; } = draft;

    /// <summary>The steps and the water that this program adds.</summary>
    public AddedSteps Added => field ??= new(rules, Draft, _changes);

    /// <summary>What the cook must say first.</summary>
    public List<AdaptNote> Questions { get; } = [];

    /// <summary>Why it cannot be done.</summary>
    public List<AdaptNote> Reasons { get; } = [];

    /// <summary>Whether a question or a reason stands in the way.</summary>
    public bool IsStuck => Questions.Count > 0 || Reasons.Count > 0;

    /// <summary>Every change so far.</summary>
    public ImmutableArray<AdaptChange> Changes => [.. _changes, .. Added.Water];

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

        // Its steps go with it where they speak of nothing else; any other stays as the recipe has it.
        Mentions own = new(_entries.Where(pair => _ownServing.Contains(pair.Key)).SelectMany(Mentions.Foods), _entries.Where(pair => pair.Key.Place == DraftPlace.Kept).SelectMany(Mentions.Foods));
        foreach (DraftStep step in Draft.Steps.Where(step => step.Section == DraftSection.Method && own.NamesGone(step.Text) && !own.NamesKept(step.Text)))
        {
            step.Place = DraftPlace.Serving;
        }

        // Steps that this program adds must never make up for steps that the recipe lacks.
        if (copy.Findings.Any(finding => finding.Rule == "no-steps"))
        {
            Ask("no-steps", string.Empty);
        }
    }

    /// <summary>Adds the steps that every jar version gets; asks where the recipe names another headspace.</summary>
    public void AddSteps(VettingReport report)
    {
        Added.OtherHeadspace(report).ForEach(step => Ask("@headspace", step.Text));
        Added.Add(report);
    }

    /// <summary>Puts the steps at the jar into working order; asks where that cannot be done.</summary>
    public void Arrange(VettingReport report)
    {
        new JarOrder(rules, Draft, _changes).Arrange(Staying(), report.Category?.Id == "soup", step => Ask("@order", step.Text));
    }

    /// <summary>Steps for serving day, any of which will do, where no printed step names a food kept for it; empty where all are named.</summary>
    /// <param name="shown">Sentences for serving day that are printed.</param>
    /// <returns>The one that names the foods, then the one that points at the list: a food named in a step may be read as going into the jar.</returns>
    public ImmutableArray<DraftStep> ServingSteps(IReadOnlySet<DraftStep> shown)
    {
        HashSet<string> named = [.. Draft.Steps.Where(step => shown.Contains(step) || step is { Section: DraftSection.Serving, Place: DraftPlace.Kept }).SelectMany(step => Mentions.Words(step.Text))];
        string[] foods = [.. _entries.Where(pair => pair.Key.Place == DraftPlace.Serving).SelectMany(pair => pair.Value).Select(entry => entry.Food).Distinct(StringComparer.Ordinal).Where(food => !Mentions.Words(food).Any(named.Contains))];
        return foods.Length == 0
            ? []
            : [new(rules["@serving-step"].Step.Replace("{food}", Joined(foods), StringComparison.Ordinal), DraftSection.Serving, added: true), new(rules["@serving-list"].Step, DraftSection.Serving, added: true)];
    }

    private HashSet<string> Staying() => [.. _entries.Where(pair => pair.Key.Place == DraftPlace.Kept).SelectMany(Mentions.Foods).SelectMany(Mentions.Words)];

    private static string Joined(string[] foods) => foods.Length == 1 ? foods[0] : $"{string.Join(", ", foods[..^1])} and {foods[^1]}";

    /// <summary>Treats every finding that asks for a change.</summary>
    /// <returns>Whether anything was changed.</returns>
    public bool Treat(VettingReport report)
    {
        int before = _changes.Count;
        Dictionary<int, DraftLine> lines = new(Draft.LineAt);
        Dictionary<int, DraftStep> steps = new(Draft.StepAt);
        foreach (Finding finding in report.Findings.Where(finding => finding.Level >= FindingLevel.Change).OrderBy(finding => finding.Rule == "thickener" ? 0 : 1))
        {
            AdaptRow row = finding.Level == FindingLevel.Stop ? rules["proportions"] : rules[finding.Rule];
            switch (row.Treatment)
            {
                case "ask":
                    Ask(finding.Rule, finding.Ingredient ?? string.Empty);
                    break;
                case "freeze":
                    Reasons.Add(new(finding.Ingredient ?? string.Empty, finding.Message, finding.Sources));
                    break;
                case "acid":
                    if (!PublishedAcid.Add(Draft, _changes, report, row))
                    {
                        Reasons.Add(new(finding.Ingredient ?? string.Empty, finding.Message, finding.Sources));
                    }

                    break;
                case "step" or "liquid":
                    break; // their steps stand in already; water is measured out at the end
                default:
                    foreach (Place place in finding.Places)
                    {
                        Move(finding, row, lines.GetValueOrDefault(place.Line), steps.GetValueOrDefault(place.Line));
                    }

                    break;
            }
        }

        RewriteSteps();
        return _changes.Count > before;
    }

    /// <summary>Says why there is no jar version, in the words of a row.</summary>
    public void Give(string rule) => Reasons.Add(new(string.Empty, rules[rule].Text, rules.Sources(rules[rule])));

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
                else if (line.Place != DraftPlace.Kept && entry is { ToTaste: false, Optional: false } && _changes.Exists(change => change.What == line.Text))
                {
                    Ask("@amount-out", line.Text);
                    return true;
                }
            }
        }

        if (gone > rules.LargestShareOut * all)
        {
            Give("@main-food");
            return true;
        }

        return report.Ingredients.IsEmpty;
    }

    /// <summary>Brings the list to the amounts of a published recipe.</summary>
    public void BringTo(FormulaComparison comparison)
    {
        AdaptRow row = rules["@formula"];
        ImmutableArray<SourceReference> source = [new(string.Empty, comparison.Source, string.Empty, comparison.Url)];
        foreach (FormulaAmount amount in comparison.Amounts)
        {
            DraftLine[] own = [.. Draft.Lines.Where(line => amount.Offsets.Contains(line.Offset))];
            if (own.Any(IsShared))
            {
                Ask("@shared-line", own.First(IsShared).Text);
                return;
            }

            if (own.Length == 0 && !amount.Required)
            {
                continue;
            }

            string before = string.Join("; ", own.Select(line => line.Text));
            if (own.Length == 0)
            {
                Draft.Lines.Add(new(amount.Line, null, -1));
            }
            else
            {
                own[0].Text = amount.Line;
                own[0].Place = DraftPlace.Kept;
                foreach (DraftLine line in own.Skip(1))
                {
                    line.Place = DraftPlace.Out;
                }
            }

            _changes.Add(new("amount", before, amount.Line, row.Text, source));
        }

        foreach (DraftLine line in Draft.Lines.Where(line => comparison.Extra.Contains(line.Offset)).ToArray())
        {
            MoveLine(line, rules["@formula-extra"], "leave-out", source);
        }

        RewriteSteps();
    }

    private void Ask(string rule, string what)
    {
        if (!Questions.Exists(note => note.What == what && note.Text == rules[rule].Text))
        {
            Questions.Add(new(what, rules[rule].Text, rules.Sources(rules[rule])));
        }
    }

    private bool IsShared(DraftLine line) => _entries.TryGetValue(line, out ImmutableArray<IngredientReport> entries) && entries.Length != 1;

    private void Move(Finding finding, AdaptRow row, DraftLine? line, DraftStep? step)
    {
        if (line is { Place: DraftPlace.Kept } && finding.Ingredient is not null && row.Treatment != "method")
        {
            MoveLine(line, row, row.Treatment, [.. finding.Sources]);
        }
        else if (step is { Place: DraftPlace.Kept, Added: false } && finding.Ingredient is null or { Length: > 0 })
        {
            MoveStep(step!, row, finding.Sources);
        }
        else if (line is null && step is null)
        {
            Reasons.Add(new(finding.Ingredient ?? string.Empty, finding.Message, finding.Sources));
        }
    }

    // A line with more than one food, or with one that was not read, is never split or dropped by guess.
    private void MoveLine(DraftLine line, AdaptRow row, string treatment, ImmutableArray<SourceReference> sources)
    {
        if (!_entries.TryGetValue(line, out ImmutableArray<IngredientReport> entries) || entries.Length != 1)
        {
            Ask("@shared-line", line.Text);
        }
        else if (!entries[0].Identified || entries[0].Alternatives.Any(other => other.FoodId is null && other.Traits.IsEmpty))
        {
            Ask("unidentified", line.Text);
        }
        else
        {
            line.Place = treatment == "leave-out" ? DraftPlace.Out : DraftPlace.Serving;
            _changes.Add(new(treatment, line.Text, string.Empty, row.Text, sources));
        }
    }

    private void MoveStep(DraftStep step, AdaptRow row, ImmutableArray<SourceReference> sources)
    {
        if (Mentioned().NamesKept(step.Text) && !(row.Treatment == "method" && JarOrder.IsPlain(step, Staying())))
        {
            Ask("@mixed", step.Text);
            return;
        }

        Go(step, row, sources);
    }

    private void Go(DraftStep step, AdaptRow row, ImmutableArray<SourceReference> sources)
    {
        step.Place = row.Treatment == "serve" ? DraftPlace.Serving : DraftPlace.Out;
        _changes.Add(new(row.Treatment, step.Text, string.Empty, row.Text, sources));
    }

    // Sentences follow the foods they speak of.
    private void RewriteSteps()
    {
        Mentions mentions = Mentioned();
        foreach (DraftStep step in Draft.Steps.Where(step => step is { Place: DraftPlace.Kept, Added: false, Section: not DraftSection.Serving } && mentions.NamesGone(step.Text)))
        {
            if (!mentions.NamesKept(step.Text))
            {
                AdaptRow row = rules[Mentioned(DraftPlace.Serving).NamesGone(step.Text) ? "@sentence" : "@sentence-out"];
                Go(step, row, rules.Sources(row));
            }
            else if (SentenceCut.Without(step.Text, mentions) is { } shorter)
            {
                _changes.Add(new("reworded", step.Text, shorter, rules["@sentence"].Text, rules.Sources(rules["@sentence"])));
                step.Text = shorter;
            }
            else
            {
                Ask("@mixed", step.Text);
            }
        }

        Draft.Steps.FindAll(step => step is { Place: DraftPlace.Kept, Added: false, Section: DraftSection.Method } && mentions.AddsUnnamed(step.Text)).ForEach(step => Ask("@unnamed", step.Text));
    }

    private Mentions Mentioned(DraftPlace? only = null) => Mentions.Of(_entries, _ownServing, only, rules);
}
