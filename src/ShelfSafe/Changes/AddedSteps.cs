using System.Collections.Immutable;
using System.Globalization;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Changes;

/// <summary>The steps and the water that a jar version gets beside the cook's own: precooking, filling, the process.</summary>
internal sealed class AddedSteps(AdaptRules rules, Draft draft, List<AdaptChange> changes)
{
    private DraftLine? _water;

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
                changes.Add(new("step", step.Text, string.Empty, row.Text, rules.Sources(row)));
            }
        }

        int at = draft.Steps.FindIndex(step => step.Section == DraftSection.Method);
        draft.Steps.InsertRange(Math.Max(at, 0), first);
        bool pressure = report.Outcome is Outcome.Pressure or Outcome.PressureAfterChanges;
        string headspace = Headspace(report);
        foreach (string id in (ReadOnlySpan<string>)[report.Category?.Id == "soup" ? "@soup-fill" : "@fill", "@close", pressure ? "@process-pressure" : "@process-boiling-water"])
        {
            AdaptRow row = rules[id];
            string text = row.Step.Replace("{headspace}", headspace, StringComparison.Ordinal);
            JarPart part = id == "@close" ? JarPart.Close : id.StartsWith("@process", StringComparison.Ordinal) ? JarPart.Process : JarPart.Fill;
            foreach (string sentence in text.Split(". ", StringSplitOptions.RemoveEmptyEntries))
            {
                draft.Steps.Add(new(sentence.EndsWith('.') ? sentence : sentence + ".", DraftSection.Method, added: true) { Part = part });
            }

            changes.Add(new("step", text, string.Empty, row.Text, rules.Sources(row)));
        }
    }

    /// <summary>Sets the added water, in quarter litres.</summary>
    public void SetWater(int quarters)
    {
        string text = (quarters * 0.25).ToString("0.##", CultureInfo.InvariantCulture) + " litres water";
        if (_water is null)
        {
            _water = new(text, null, -1);
            draft.Lines.Add(_water);
            int fill = draft.Steps.FindIndex(step => step.Added && step.Text.StartsWith(rules["@soup-fill"].Step[..10], StringComparison.Ordinal));
            draft.Steps.Insert(Math.Max(fill, 0), new(rules["@liquid"].Step, DraftSection.Method, added: true));
        }

        _water.Text = text;
    }

    /// <summary>Notes with the published process for one jar and how many jars it fills; empty where the altitude is not known.</summary>
    public ImmutableArray<DraftStep> ProcessNotes(VettingReport after)
    {
        string? jar = after.Measures.JarYield?.Jar;
        ProcessLine[] lines = [.. after.Process.Where(line => line.Jar == jar).OrderByDescending(line => line.Minutes)];
        if (after.Kitchen.AltitudeFeet is null || lines.Length == 0 || lines.Where(line => line.Minutes == lines[0].Minutes).Select(line => (line.Method, line.Psi)).Distinct().Count() != 1)
        {
            return [];
        }

        string process = rules[lines[0].Psi is null ? "@note-boiling-water" : "@note-pressure"].Step
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
        || (Says(step, "jar") && (Says(step, "top") || Says(step, "inch") || Says(step, "cm") || Says(step, "full") || Says(step, "neck")));

    private static bool NamesInches(string text, string inches)
    {
        string plain = text.Replace("½", "1/2", StringComparison.Ordinal).Replace("¼", "1/4", StringComparison.Ordinal).Replace("¾", "3/4", StringComparison.Ordinal);
        return plain.Contains($" {inches} in", StringComparison.Ordinal) || plain.Contains($" {inches}-in", StringComparison.Ordinal);
    }

    private static string Names(VettingReport report, string trait) =>
        report.Ingredients.FirstOrDefault(entry => entry.Traits.Contains(trait, StringComparer.Ordinal))?.Food ?? trait;

    /// <summary>The change that added water; empty where none was needed.</summary>
    public ImmutableArray<AdaptChange> Water => _water is null
        ? []
        : [new("liquid", _water.Text, string.Empty, rules["@liquid"].Text, rules.Sources(rules["@liquid"]))];

    // Of the longest time, which governs where the row of a covering liquid stands beside that of the food.
    private static string Headspace(VettingReport report)
    {
        ImmutableArray<ProcessLine> lines = report.Process.IsEmpty ? report.ProcessAfterChanges : report.Process;
        return Inches.Of(lines.IsEmpty ? 1 : lines.MaxBy(line => line.Minutes)!.HeadspaceInches);
    }
}
