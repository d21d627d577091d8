using System.Collections.Immutable;
using System.Globalization;
using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Changes;

/// <summary>The steps and the liquid that a jar version gets beside the cook's own: precooking, skimming, filling, the process.</summary>
internal sealed class AddedSteps(AdaptRules rules, Draft draft, AdaptLog log)
{
    private static readonly double LitresPerQuart = UnitFactors.Ratio("quart", "l")!.Value;

    private DraftLine? _liquid;
    private DraftStep? _stir;

    /// <summary>Steps of the recipe that name another headspace than the published process.</summary>
    public List<DraftStep> OtherHeadspace(VettingReport report)
    {
        string headspace = Headspace(report);
        return [.. draft.Steps.Where(step => step.Place == DraftPlace.Kept && NamesSpace(step) && !NamesInches(step.Text, headspace))];
    }

    /// <summary>Adds the steps that every jar version gets, and the cooking that the findings miss.</summary>
    public void Add(VettingReport report)
    {
        List<DraftStep> first = [];
        foreach (Finding finding in report.Findings.Where(finding => finding.Rule is "raw-start" or "unsoaked-beans" && finding.Level >= FindingLevel.Caution))
        {
            AdaptRow row = rules[finding.Rule];
            string food = finding.Ingredient ?? Names(report, "meat");
            DraftStep step = new(row.Step.Replace("{food}", food, StringComparison.Ordinal), DraftSection.Method, added: true);
            if (!first.Exists(other => other.Text == step.Text))
            {
                first.Add(step);
                log.Changes.Add(new("step", step.Text, string.Empty, row.Text, rules.Sources(row)));
            }
        }

        Skim(report);
        int at = draft.Steps.FindIndex(step => step.Section == DraftSection.Method);
        draft.Steps.InsertRange(Math.Max(at, 0), first);
        string headspace = Headspace(report);
        foreach (string id in (ReadOnlySpan<string>)[report.Category?.Id == "soup" ? "@soup-fill" : "@fill", "@close", $"@process-{Canner(report)}"])
        {
            AdaptRow row = rules[id];
            string text = row.Step.Replace("{headspace}", headspace, StringComparison.Ordinal);
            JarPart part = id == "@close" ? JarPart.Close : id.StartsWith("@process", StringComparison.Ordinal) ? JarPart.Process : JarPart.Fill;
            foreach (string sentence in text.Split(". ", StringSplitOptions.RemoveEmptyEntries))
            {
                draft.Steps.Add(new(sentence.EndsWith('.') ? sentence : sentence + ".", DraftSection.Method, added: true) { Part = part });
            }

            log.Change("step", text, string.Empty, id);
        }
    }

    /// <summary>Sets the added liquid.</summary>
    /// <param name="quarters">How much, in quarter litres.</param>
    /// <param name="food">Water, or the dish's own broth or tomato juice.</param>
    public void SetLiquid(int quarters, string food)
    {
        double litres = quarters * 0.25;
        string text = string.Create(CultureInfo.InvariantCulture, $"{Counted(Math.Round(litres, 2), "litre")} ({Counted(Math.Round(litres / LitresPerQuart, 1), "quart")}) {food}");
        if (_liquid is null)
        {
            _liquid = new(text, null, -1);
            _stir = new(string.Empty, DraftSection.Method, added: true);
            draft.Lines.Add(_liquid);
            int fill = draft.Steps.FindIndex(step => step.Part == JarPart.Fill);
            draft.Steps.Insert(Math.Max(fill, 0), _stir);
        }

        _liquid.Text = text;
        _stir!.Text = rules["@liquid"].Step.Replace("{liquid}", food, StringComparison.Ordinal);
    }

    /// <summary>Notes with the published process for one jar and how many jars it fills; empty where the altitude is not known.</summary>
    public ImmutableArray<DraftStep> ProcessNotes(VettingReport after)
    {
        string? jar = after.Measures.JarYield?.Jar;
        ProcessLine[] lines = [.. after.Process.Where(line => line.Jar == jar && line.Method == Canner(after)).OrderByDescending(line => line.Minutes)];
        if (after.Kitchen.AltitudeFeet is null || lines.Length == 0 || lines.Where(line => line.Minutes == lines[0].Minutes).Select(line => line.Psi).Distinct().Count() != 1)
        {
            return [];
        }

        string process = rules[$"@note-{Canner(after)}"].Step
            .Replace("{jar}", jar, StringComparison.Ordinal)
            .Replace("{minutes}", lines[0].Minutes.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal)
            .Replace("{psi}", lines[0].Psi?.ToString("0.##", CultureInfo.InvariantCulture), StringComparison.Ordinal);
        Interval jars = after.Measures.JarYield!.Jars;
        string count = rules["@note-jars"].Step
            .Replace("{jar}", jar, StringComparison.Ordinal)
            .Replace("{low}", jars.Low.ToString("0", CultureInfo.InvariantCulture), StringComparison.Ordinal)
            .Replace("{high}", jars.High.ToString("0", CultureInfo.InvariantCulture), StringComparison.Ordinal);
        DraftStep note = new(process, DraftSection.Notes, added: true);
        return jars.IsBounded ? [note, new(count, DraftSection.Notes, added: true)] : [note];
    }

    /// <summary>What the published row of the governing time asks beside it, such as sterile jars; empty where it asks nothing, and for soups, whose own directions govern.</summary>
    public ImmutableArray<DraftStep> ConditionNotes(VettingReport after)
    {
        string conditions = after.Category?.Id == "soup" ? string.Empty
            : after.Process.Where(line => line.Jar == after.Measures.JarYield?.Jar).MaxBy(line => line.Minutes)?.Conditions.TrimEnd('.') ?? string.Empty;
        return conditions.Length == 0 ? [] : [new(rules["@note-conditions"].Step.Replace("{conditions}", conditions, StringComparison.Ordinal), DraftSection.Notes, added: true)];
    }

    /// <summary>Whether a sentence holds every one of the words.</summary>
    public static bool Says(DraftStep step, params ReadOnlySpan<string> words)
    {
        string[] own = [.. Mentions.Words(step.Text)];
        foreach (string word in words)
        {
            if (!own.Contains(word, StringComparer.Ordinal))
            {
                return false;
            }
        }

        return true;
    }

    // "Leave a finger of space", "fill the jars to the brim", "half an inch below the rim": each speaks of the headspace. "Wipe the rims" does not.
    private static bool NamesSpace(DraftStep step) =>
        Says(step, "headspace") || Says(step, "space") || Says(step, "brim") || (Says(step, "rim") && !Says(step, "wipe"))
        || (Says(step, "jar") && ((Says(step, "top") && !step.Text.Contains("top up", StringComparison.OrdinalIgnoreCase)) || Says(step, "inch") || Says(step, "cm") || Says(step, "full") || Says(step, "neck")));

    private static string Counted(double amount, string unit) => string.Create(CultureInfo.InvariantCulture, $"{amount} {unit}{(amount > 1 ? "s" : string.Empty)}");

    private static bool NamesInches(string text, string inches)
    {
        string plain = text.Replace("½", "1/2", StringComparison.Ordinal).Replace("¼", "1/4", StringComparison.Ordinal).Replace("¾", "3/4", StringComparison.Ordinal);
        return plain.Contains($" {inches} in", StringComparison.Ordinal) || plain.Contains($" {inches}-in", StringComparison.Ordinal);
    }

    private static string Names(VettingReport report, string trait) =>
        report.Ingredients.FirstOrDefault(entry => entry.Traits.Contains(trait, StringComparer.Ordinal))?.Food ?? trait;

    /// <summary>The change that added liquid; empty where none was needed.</summary>
    public ImmutableArray<AdaptChange> Liquid => _liquid is null
        ? []
        : [new("liquid", _liquid.Text, string.Empty, rules["@liquid"].Text, rules.Sources(rules["@liquid"]))];

    // Only where the steps are silent about the fat: a step that leaves it in is the cook's to change.
    private void Skim(VettingReport report)
    {
        if (report.Findings.Any(finding => finding is { Rule: "fat", Ingredient: null, Level: >= FindingLevel.Change } && finding.Places.All(place => !draft.StepAt.ContainsKey(place.Line))))
        {
            int jars = draft.Steps.FindIndex(step => step is { Section: DraftSection.Method, Place: DraftPlace.Kept } && JarOrder.Begins(step, rules.Words));
            int end = draft.Steps.FindLastIndex(step => step.Section == DraftSection.Method) + 1;
            draft.Steps.Insert(jars < 0 ? end : jars, new(rules["@skim"].Step, DraftSection.Method, added: true));
            log.Change("step", rules["@skim"].Step, string.Empty, "@skim");
        }
    }

    // The canner that the steps speak of: that of the process, or the steam canner of a kitchen that has no other for it.
    private static string Canner(VettingReport report) => report.Outcome is Outcome.Pressure or Outcome.PressureAfterChanges ? "pressure"
        : report.UsableMethods is ["atmospheric-steam"] ? "atmospheric-steam"
        : "boiling-water";

    // Of the longest time, which governs where the row of a covering liquid stands beside that of the food.
    private static string Headspace(VettingReport report)
    {
        ImmutableArray<ProcessLine> lines = report.Process.IsEmpty ? report.ProcessAfterChanges : report.Process;
        return Inches.Of(lines.IsEmpty ? 1 : lines.MaxBy(line => line.Minutes)!.HeadspaceInches);
    }
}
