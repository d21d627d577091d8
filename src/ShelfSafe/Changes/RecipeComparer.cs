using System.Collections.Immutable;
using ShelfSafe.Candidates;
using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Changes;

/// <summary>Compares two vetted recipes: what a kitchen change does to the jar.</summary>
/// <remarks>A change that may hide within a range ("2 onions" against "250 g onion") is no change of amount; it is told apart, with its bounds.</remarks>
public sealed class RecipeComparer
{
    private readonly Dictionary<string, FoodRow> _foods;
    private readonly Dictionary<string, SourceRow> _sources;
    private readonly ImmutableArray<ChangeRow> _rows;
    private readonly AmountChange _amounts;
    private readonly double _percent;
    private readonly double _unlabelled;

    private RecipeComparer(RulePack pack)
    {
        _foods = pack.Tables.Foods.ToDictionary(food => food.Id, StringComparer.Ordinal);
        _sources = pack.Tables.Sources.ToDictionary(source => source.Id, StringComparer.Ordinal);
        _rows = WorkTables.Of(pack).Changes;
        _amounts = new(pack.Tables.Limits["formula-rounding"]);
        _percent = pack.Tables.Limits["vinegar-percent"];
        _unlabelled = _percent - pack.Tables.Limits["unlabelled-vinegar-short"];
    }

    /// <summary>Prepares a comparer.</summary>
    /// <param name="pack">The rule pack that judged both recipes.</param>
    /// <exception cref="InvalidDataException">A table of the pack is wrong.</exception>
    public static RecipeComparer Create(RulePack pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        return new(pack);
    }

    /// <summary>Compares two reports of the same kitchen.</summary>
    public RecipeComparison Compare(VettingReport before, VettingReport after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        List<FoodGroup> old = FoodGroup.Of(before, _foods);
        List<FoodGroup> fresh = FoodGroup.Of(after, _foods);
        List<RawChange> found = [];
        List<FoodGroup> gone = [.. old.Where(group => !fresh.Exists(other => other.Key == group.Key))];
        List<FoodGroup> come = [.. fresh.Where(group => !old.Exists(other => other.Key == group.Key))];
        foreach (FoodGroup group in old)
        {
            if (fresh.Find(other => other.Key == group.Key) is { } same)
            {
                found.AddRange(Same(group, same));
            }
        }

        gone.RemoveAll(group => come.RemoveAll(other => other.Entries.Select(entry => entry.Text).SequenceEqual(group.Entries.Select(entry => entry.Text), StringComparer.Ordinal)) > 0); // the same words, read otherwise beside other foods
        Pair(gone, come, found);
        found.AddRange(gone.Select(group => new RawChange("left-out", group, null, null)));
        found.AddRange(come.Select(group => new RawChange("added", null, group, null)));
        RecipeComparison comparison = new(
            before,
            after,
            [.. found.Select(change => Judged(change, before, after)).OrderByDescending(change => change.Matters).ThenBy(change => change.AfterLine ?? change.BeforeLine)],
            Shares(before, after),
            Only(after, before),
            [.. Only(before, after).Where(finding => found.Any(change => change.Before is { } changed && IsAbout(finding, changed)) || !Keys(finding, before).Any(key => Left(after).Contains((key.Item1, key.Item3))))],
            !Rows(before).SetEquals(Rows(after)))
        {
            Unsure = [.. old.SelectMany(group => fresh.Where(other => other.Key == group.Key && !group.AtServing), (group, other) => (group, other, _amounts.Doubt(group, other)))
                .Where(doubt => doubt.Item3 is not null)
                .Select(doubt => new AmountDoubt(doubt.group.First.Text, doubt.other.First.Text, doubt.Item3!.Value))],
        };
        return comparison is { Changes.IsEmpty: true, Shares.IsEmpty: true, VerdictDiffers: false, ProcessDiffers: false, Unsure.IsEmpty: false }
            ? comparison with { NewFindings = [], GoneFindings = [], UnsureFindings = [.. comparison.NewFindings, .. comparison.GoneFindings] }
            : comparison;
    }

    private IEnumerable<RawChange> Same(FoodGroup before, FoodGroup after)
    {
        if (before.AtServing != after.AtServing)
        {
            yield return new(before.AtServing ? "into-jar" : "to-serving", before, after, null);
        }

        if (_amounts.Of(before, after) is { } factor)
        {
            yield return new((factor.Low + factor.High) / 2 > 1 || !factor.IsBounded ? "raised" : "cut", before, after, factor);
        }

        if (before.Food is { } food && food.Has("vinegar") && Strength(after) < Strength(before))
        {
            yield return new("label", before, after, null);
        }
    }

    // An unlabelled bottle counts as just below the strength of the tested recipes.
    private double Strength(FoodGroup group) => group.Entries.Select(entry => FormulaText.Percent(entry.Text) ?? _unlabelled).Min();

    // A food that went and one that came of the same kitchen group are one swap.
    private static void Pair(List<FoodGroup> gone, List<FoodGroup> come, List<RawChange> found)
    {
        for (int i = gone.Count - 1; i >= 0; i--)
        {
            FoodGroup? swap = gone[i].Food is { } food
                ? come.Where(other => other.Food?.Group == food.Group)
                    .OrderByDescending(other => other.Food!.Traits.Count(food.Has))
                    .ThenBy(other => other.Key, StringComparer.Ordinal)
                    .FirstOrDefault()
                : null;
            if (swap is not null)
            {
                found.Add(new("swapped", gone[i], swap, null));
                come.Remove(swap);
                gone.RemoveAt(i);
            }
        }
    }

    private IngredientChange Judged(RawChange change, VettingReport before, VettingReport after)
    {
        ChangeRow row = _rows.First(row => Fits(row, change, before, after));

        // A table may call a kind of change harmless; a warning that the changed recipe gets for this very food outweighs it.
        Finding? warning = change.After is null ? null : Only(after, before).FirstOrDefault(finding => finding.Level >= FindingLevel.Change && IsAbout(finding, change.After));
        bool overruled = !row.Matters && warning is not null;
        return new(
            change.Kind,
            row.Matters || overruled,
            change.Before?.First.Text,
            change.After?.First.Text,
            change.Before?.First.Line,
            change.After?.First.Line,
            change.Factor,
            row.Id,
            overruled ? warning!.Why : row.Text,
            overruled ? warning!.Instead : row.Instead,
            overruled ? warning!.Sources : [.. row.Sources.Select(Source)]);
    }

    private static bool Fits(ChangeRow row, RawChange change, VettingReport before, VettingReport after) =>
        row.Kinds.Contains(change.Kind, StringComparer.Ordinal)
        && (change.Before is null || row.Takes(change.Before.Food))
        && (change.After is null || row.Takes(change.After.Food))
        && (row.When.IsEmpty || row.When.Contains(Names.Of(after.Acidity), StringComparer.Ordinal))
        && !row.Unless.Any(word => Has(before, word) || Has(after, word));

    private static bool Has(VettingReport report, string word) =>
        word == "formula" ? report.Category?.Kind == "formula" : report.Findings.Any(finding => finding.Rule == word);

    private static bool IsAbout(Finding finding, FoodGroup group) =>
        finding.Ingredient is not null && finding.Places.Any(place => group.Entries.Any(entry => entry.Line == place.Line));

    private SourceReference Source(string key) => _sources.TryGetValue(key, out SourceRow? row)
        ? new(row.Id, row.Title, row.Locator, row.Url)
        : new(string.Empty, key, string.Empty, string.Empty);

    private ImmutableArray<ShareChange> Shares(VettingReport before, VettingReport after)
    {
        (string, Interval?, Interval?)[] all =
        [
            ("solids", before.Measures.SolidsShare, after.Measures.SolidsShare),
            ("fat", before.Measures.FatShare, after.Measures.FatShare),
            ("acid", before.Measures.AcidShare, after.Measures.AcidShare),
            ("low-acid", before.Measures.LowAcidShare, after.Measures.LowAcidShare),
        ];
        return [.. all.Where(one => one is (_, { } left, { } right) && _amounts.Differs(left, right, overlap: false)).Select(one => new ShareChange(one.Item1, one.Item2!.Value, one.Item3!.Value))];
    }

    // Findings are the same where rule and food are, and the other is at least as grave; words and places may differ.
    private static ImmutableArray<Finding> Only(VettingReport report, VettingReport other)
    {
        HashSet<(string, FindingLevel, string)> known = [.. other.Findings.SelectMany(finding => Keys(finding, other))];
        return [.. report.Findings.Where(finding => finding.Level >= FindingLevel.Caution && !Keys(finding, report).Any(key => known.Any(one => one.Item1 == key.Item1 && one.Item2 >= key.Item2 && one.Item3 == key.Item3)))];
    }

    // A warning that is only milder, because more of another food lies beside, is not gone.
    private static HashSet<(string, string)> Left(VettingReport report) =>
        [.. report.Findings.Where(finding => finding.Level > FindingLevel.Note).SelectMany(finding => Keys(finding, report)).Select(key => (key.Item1, key.Item3))];

    private static IEnumerable<(string, FindingLevel, string)> Keys(Finding finding, VettingReport report)
    {
        if (finding.Ingredient is null)
        {
            return [(finding.Rule, finding.Level, string.Empty)];
        }

        string words = WordFolding.Key(finding.Ingredient);
        return report.Ingredients
            .Where(entry => finding.Places.Any(place => place.Line == entry.Line) && (words.Contains(WordFolding.Key(entry.Food), StringComparison.Ordinal) || report.Ingredients.Count(one => one.Line == entry.Line) == 1))
            .Select(entry => (finding.Rule, finding.Level, entry.FoodId ?? WordFolding.Key(entry.Food)))
            .DefaultIfEmpty((finding.Rule, finding.Level, words));
    }

    private static HashSet<string> Rows(VettingReport report) => [.. report.Process.Concat(report.ProcessAfterChanges).Select(line => line.RowId)];

    private sealed record RawChange(string Kind, FoodGroup? Before, FoodGroup? After, Interval? Factor);
}
