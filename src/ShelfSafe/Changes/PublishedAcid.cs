using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Changes;

/// <summary>Puts the published acid of a plain pack into the list and before the filling, in the words of its own row; never into a mixture.</summary>
internal static class PublishedAcid
{
    /// <summary>Adds it once; answers <see langword="false"/> where no row of a plain pack names it.</summary>
    public static bool Add(Draft draft, List<AdaptChange> changes, VettingReport report, AdaptRow row, AdaptWords words)
    {
        if (changes.Exists(change => change.Kind == "acid"))
        {
            return true;
        }

        ProcessLine? process = report.ProcessAfterChanges.FirstOrDefault(line => line.Jar == "pint" && line.AcidAddition is { Length: > 0 } && !line.AcidAddition.StartsWith("recipe", StringComparison.Ordinal));
        if (report.Category?.Kind != "category" || process?.AcidAddition is not { } acid || acid.IndexOf(" or ", StringComparison.Ordinal) is not (> 0 and var end))
        {
            return false;
        }

        draft.Lines.Add(new($"{acid[..end]} for each pint jar", null, -1));
        int fill = draft.Steps.FindIndex(step => step is { Section: DraftSection.Method, Place: DraftPlace.Kept } && JarOrder.Begins(step, words));
        string[] jars = [.. report.ProcessAfterChanges.Where(line => line.AcidAddition?.Contains(" or ", StringComparison.Ordinal) == true)
            .DistinctBy(line => line.Jar)
            .Select(line => $"{line.AcidAddition![..line.AcidAddition!.IndexOf(" or ", StringComparison.Ordinal)]} into each {line.Jar} jar")];
        draft.Steps.Insert(Math.Max(fill, 0), new($"Put {string.Join(" or ", jars)}.", DraftSection.Method, added: true));
        changes.Add(new("acid", $"{acid[..end]} for each pint jar", string.Empty, row.Text, [new(string.Empty, process.Source, string.Empty, string.Empty)]));
        return true;
    }
}
