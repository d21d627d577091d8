using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Reading;
using ShelfSafe.Verdict;

namespace ShelfSafe.Changes;

/// <summary>Writes the jar version of a recipe, or the freezer version where no change leads to a published process.</summary>
/// <remarks>
/// It only removes, moves to serving day, precooks, drains, skims, adds water, the dish's own broth or plain tomato juice, or adds the published acid of a plain row. Each draft is
/// vetted by the same vetter as any recipe; a draft that does not come out as the first report said is not given to the cook.
/// </remarks>
public sealed class RecipeAdapter
{
    private const string Untitled = "Recipe";
    private const int MostRounds = 6; // of treating or seasoning; each must bring a report nearer to its promise

    private readonly RecipeVetter _vetter;
    private readonly AdaptRules _rules;
    private readonly RecipeReader _reader = new();

    private RecipeAdapter(RecipeVetter vetter, RulePack pack) => (_vetter, _rules) = (vetter, new(pack));

    /// <summary>Prepares an adapter.</summary>
    /// <param name="vetter">The vetter that judges every draft.</param>
    /// <param name="pack">The pack it judges by.</param>
    /// <exception cref="InvalidDataException">A table of the pack is wrong.</exception>
    public static RecipeAdapter Create(RecipeVetter vetter, RulePack pack)
    {
        ArgumentNullException.ThrowIfNull(vetter);
        ArgumentNullException.ThrowIfNull(pack);
        return new(vetter, pack);
    }

    /// <summary>Adapts a recipe. Text never causes an exception.</summary>
    /// <param name="text">The recipe as it stands in the file.</param>
    /// <param name="kitchen">The kitchen it is for.</param>
    public Adaptation Adapt(string text, Kitchen kitchen)
    {
        ArgumentNullException.ThrowIfNull(text);
        VettingReport report = _vetter.Vet(text, kitchen);
        if (report.LacksRow)
        {
            return Freezer(report, [], [.. report.KitchenNotes.Take(1).Select(note => new AdaptNote(string.Empty, $"{note.Text} {note.Instead}", note.Sources))]);
        }

        switch (report.Outcome)
        {
            case Outcome.Pressure or Outcome.BoilingWater:
                return Plain(AdaptationKind.AsWritten, report);
            case Outcome.DryStorage or Outcome.NotAJarFood:
                return Plain(AdaptationKind.Nothing, report);
            case Outcome.PressureAfterChanges or Outcome.BoilingWaterAfterChanges:
                break;
            default:
                return WithTableFoods(text, report, kitchen) ?? NoProcess(report);
        }

        if (!report.Parts.IsEmpty)
        {
            return Freezer(report, [Note("@several")], []);
        }

        DraftEditor editor = new(_rules, DraftReader.Read(_reader.Read(text), Untitled));
        VettingReport copy = _vetter.Vet(editor.Draft.Print(), kitchen);
        if (!AdaptPromise.IsAlike(report, copy))
        {
            return Freezer(report, [Note("@copy")], []);
        }

        editor.Start(copy);
        VettingReport? after = Work(editor, copy, kitchen);
        return after is null ? Freezer(report, [.. editor.Log.Questions], [.. editor.Log.Reasons]) : Finish(editor, report, kitchen);
    }

    // What only the table sees may be all that bars a dish: "serve with avocado and lemons".
    private Adaptation? WithTableFoods(string text, VettingReport report, Kitchen kitchen)
    {
        if (!report.Parts.IsEmpty)
        {
            return null;
        }

        DraftEditor editor = new(_rules, DraftReader.Read(_reader.Read(text), Untitled));
        VettingReport copy = _vetter.Vet(editor.Draft.Print(), kitchen);
        if (!AdaptPromise.IsAlike(report, copy) || !editor.KeepForTable(copy))
        {
            return null;
        }

        copy = _vetter.Vet(editor.Draft.Print(), kitchen);
        if (AdaptPromise.Method(copy.Outcome).Length == 0)
        {
            return null;
        }

        editor.Start(copy);
        VettingReport? after = Work(editor, copy, kitchen);
        return (after is null ? Freezer(report, [.. editor.Log.Questions], [.. editor.Log.Reasons]) : Finish(editor, copy, kitchen)) with { Before = report };
    }

    /// <summary>Brings a recipe to the proportions of a published one.</summary>
    /// <param name="text">The recipe as it stands in the file.</param>
    /// <param name="kitchen">The kitchen it is for.</param>
    /// <param name="formula">Id of the formula.</param>
    /// <exception cref="ArgumentException">No formula has the id.</exception>
    public Adaptation AdaptTo(string text, Kitchen kitchen, string formula)
    {
        ArgumentNullException.ThrowIfNull(text);
        VettingReport report = _vetter.Vet(text, kitchen);
        FormulaComparison comparison = _vetter.Against(text, formula) ?? throw new ArgumentException($"no formula is called {formula}", nameof(formula));
        if (!report.Parts.IsEmpty)
        {
            return Freezer(report, [Note("@several")], []) with { Formula = comparison };
        }

        DraftEditor editor = new(_rules, DraftReader.Read(_reader.Read(text), Untitled));
        editor.Start(_vetter.Vet(editor.Draft.Print(), kitchen));
        editor.BringTo(comparison);
        Adaptation done;
        if (editor.Log.IsStuck)
        {
            done = Freezer(report, [.. editor.Log.Questions], [.. editor.Log.Reasons]);
        }
        else
        {
            VettingReport first = _vetter.Vet(editor.Draft.Print(), kitchen);
            bool covered = first.Category?.Id == formula && AdaptPromise.Method(first.Outcome).Length > 0;
            VettingReport? after = covered ? Work(editor, first, kitchen, first) : null;
            done = after is null ? Freezer(report, [.. editor.Log.Questions], [.. editor.Log.Reasons, Note("@no-promise")]) : Finish(editor, first with { Title = report.Title }, kitchen) with { Before = report };
        }

        return done with { Formula = comparison, Changes = editor.Changes };
    }

    private static Adaptation Plain(AdaptationKind kind, VettingReport report) => new(kind, report, null, string.Empty, [], [], [], [], [], null);

    // Rounds of changes until nothing must change any more; null where that cannot be reached.
    private VettingReport? Work(DraftEditor editor, VettingReport report, Kitchen kitchen, VettingReport? promised = null)
    {
        promised ??= report;
        editor.AddSteps(promised);
        if (editor.Log.IsStuck)
        {
            return null;
        }

        if (!Treat(editor, kitchen))
        {
            return null;
        }

        editor.Arrange(promised);
        if (editor.Log.IsStuck || editor.TooMuchOut(promised))
        {
            return null;
        }

        VettingReport current = new HalfLiquid(_vetter, kitchen).Reach(editor, _vetter.Vet(editor.Draft.Print(), kitchen));
        for (int round = 0; round < MostRounds && editor.Season(current); round++)
        {
            current = _vetter.Vet(editor.Draft.Print(), kitchen);
        }

        return editor.Log.IsStuck || editor.TooMuchOut(promised) ? null : AdaptPromise.Keeps(promised, current) ? current : Failed(editor, current);
    }

    // Treats what the report names until nothing must change any more; false where no promise can be kept, of which the log tells the reason.
    private bool Treat(DraftEditor editor, Kitchen kitchen)
    {
        bool moved = true;
        for (int round = 0; round < MostRounds && moved; round++)
        {
            VettingReport current = _vetter.Vet(editor.Draft.Print(), kitchen);
            if (AdaptPromise.Method(current.Outcome).Length == 0)
            {
                _ = Failed(editor, current);
                return false;
            }

            moved = editor.Treat(current);
            if (editor.Log.IsStuck)
            {
                return false;
            }
        }

        return true;
    }

    // What still stands in the way is the reason; where nothing does, only the promise is missing.
    private static VettingReport? Failed(DraftEditor editor, VettingReport current)
    {
        editor.Leave(current, reasons: true);
        if (!editor.Log.IsStuck)
        {
            editor.Log.Give("@no-promise");
        }

        return null;
    }

    // The steps for the table that the whole is still covered with.
    private HashSet<DraftStep> Served(DraftEditor editor, VettingReport promised, Kitchen kitchen)
    {
        HashSet<DraftStep> shown = [];
        foreach (DraftStep step in editor.Draft.Steps.Where(step => step.Place == DraftPlace.Serving))
        {
            shown.Add(step);
            if (!AdaptPromise.Keeps(promised, _vetter.Vet(editor.Draft.Print(shown.Contains), kitchen)))
            {
                shown.Remove(step);
            }
        }

        return shown;
    }

    // The last word has the whole text as the cook gets it.
    private Adaptation Finish(DraftEditor editor, VettingReport promised, Kitchen kitchen)
    {
        HashSet<DraftStep> shown = Served(editor, promised, kitchen);
        foreach (DraftStep serving in editor.ServingSteps(shown))
        {
            if (Holds([serving]))
            {
                break;
            }
        }

        // The list of changes holds them all the same where the recipe cannot.
        VettingReport judged = _vetter.Vet(editor.Draft.Print(shown.Contains), kitchen);
        Holds(editor.Added.ProcessNotes(judged));
        Holds(editor.Added.ConditionNotes(judged));

        string recipe = editor.Draft.Print(shown.Contains);
        VettingReport after = _vetter.Vet(recipe, kitchen);
        if (!AdaptPromise.Keeps(promised, after))
        {
            return Freezer(promised, [], [Note("@no-promise")]);
        }

        ImmutableArray<string> hidden = [.. editor.Draft.Steps.Where(step => step.Place == DraftPlace.Serving && !shown.Contains(step)).Select(step => step.Text)];
        return new(AdaptationKind.Jar, promised, after, recipe, editor.Changes, hidden, [], [], [], null);

        // Adds steps, and takes them back where the whole is no longer covered with them.
        bool Holds(ImmutableArray<DraftStep> steps)
        {
            editor.Draft.Steps.AddRange(steps);
            bool holds = AdaptPromise.Keeps(promised, _vetter.Vet(editor.Draft.Print(shown.Contains), kitchen));
            if (!holds)
            {
                editor.Draft.Steps.RemoveAll(steps.Contains);
            }

            return holds;
        }
    }

    private AdaptNote Note(string rule) => new(string.Empty, _rules[rule].Text, _rules.Sources(_rules[rule]));

    private Adaptation NoProcess(VettingReport report)
    {
        ImmutableArray<AdaptNote> questions =
        [
            .. report.Findings
                .Where(finding => finding.Level >= FindingLevel.Change && report.Outcome == Outcome.CannotTell && _rules[finding.Rule].Treatment == "ask")
                .Select(finding => new AdaptNote(finding.Ingredient ?? string.Empty, _rules[finding.Rule].Text, finding.Sources)),
        ];
        return Freezer(report, questions, []);
    }

    private Adaptation Freezer(VettingReport report, ImmutableArray<AdaptNote> questions, ImmutableArray<AdaptNote> reasons) => new(
        questions.Length > 0 ? AdaptationKind.Question : AdaptationKind.Freezer,
        report,
        null,
        string.Empty,
        [],
        [],
        questions,
        questions.Length > 0 || reasons.Length > 0 ? reasons : Own(report),
        _rules.Freezing(report),
        null);

    // The reasons are the report's own: what stops it, else what no change mends, else everything that would have to go and the conclusion from it.
    private ImmutableArray<AdaptNote> Own(VettingReport report)
    {
        Finding[] bars = [.. report.Findings.Where(finding => finding.Level == FindingLevel.Stop)];
        bars = bars.Length > 0 ? bars : [.. report.Findings.Where(finding => finding.Level == FindingLevel.Change && _rules.For(finding).Treatment == "freeze")];
        bool single = bars.Length > 0;
        bars = single ? bars : [.. report.Findings.Where(finding => finding.Level == FindingLevel.Change && _rules[finding.Rule].Treatment != "liquid")];
        IEnumerable<AdaptNote> conclusion = report.Reasons.Skip(1).Take(report.Reasons.Length - 2).Select(static reason => new AdaptNote(string.Empty, reason, []));
        return
        [
            .. bars.Select(static finding => new AdaptNote(string.Empty, finding.Message, finding.Sources)).Concat(single ? [] : conclusion).DistinctBy(static note => note.Text),
        ];
    }
}
