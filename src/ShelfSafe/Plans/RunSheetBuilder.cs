using System.Collections.Immutable;
using System.Globalization;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Plans;

/// <summary>Writes the run sheet of a session from the rows of the pack; nothing about the work stands in code.</summary>
public sealed class RunSheetBuilder
{
    private readonly ImmutableArray<RunSheetRow> _rows;
    private readonly Dictionary<string, FoodRow> _foods;
    private readonly double _longestHours;

    private RunSheetBuilder(RulePack pack)
    {
        _rows = WorkTables.Of(pack).RunSheet;
        _longestHours = pack.Tables.Limits["longest-session"];
        _foods = pack.Tables.Foods.ToDictionary(food => food.Id, StringComparer.Ordinal);
    }

    /// <summary>Prepares a builder.</summary>
    /// <exception cref="InvalidDataException">A table of the pack is wrong.</exception>
    public static RunSheetBuilder Create(RulePack pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        return new(pack);
    }

    /// <summary>The run sheet of one session.</summary>
    /// <param name="recipes">Titles and reports; every report must have a row by <see cref="PlanChoice.Of"/>.</param>
    /// <exception cref="ArgumentException">A report has no row, or there is no report.</exception>
    public RunSheet Build(IReadOnlyList<(string Title, VettingReport Report)> recipes)
    {
        ArgumentNullException.ThrowIfNull(recipes);
        if (recipes.Count == 0)
        {
            throw new ArgumentException("a session has a recipe", nameof(recipes));
        }

        // What is ready first goes into the canner first, so that it never stands idle while beans boil.
        ImmutableArray<PlannedRecipe> planned =
        [
            .. recipes.Select(recipe => Planned(recipe.Title, recipe.Report))
                .OrderBy(recipe => Timetable.Longest(recipe.Prepare, soaking: false))
                .ThenBy(recipe => recipe.Process.Method, StringComparer.Ordinal)
                .ThenBy(recipe => recipe.Title, StringComparer.Ordinal),
        ];
        ImmutableArray<RunSheetStep> before = Shared(recipes, "before");
        (ImmutableArray<TimetableEntry> entries, int longest) = Timetable.Of(before, planned);
        return new(planned, before, Shared(recipes, "after"), entries, longest)
        {
            KitchenNotes = [.. recipes.SelectMany(recipe => recipe.Report.KitchenNotes).DistinctBy(note => note.Id)],
            Metric = recipes[0].Report.Kitchen.Metric,
            TooLong = longest > _longestHours * 60,
        };
    }

    private PlannedRecipe Planned(string title, VettingReport report)
    {
        ProcessLine process = PlanChoice.Of(report).Process ?? throw new ArgumentException($"{title} has no process for this kitchen", nameof(report));
        bool known = report.Measures.JarYield is { } yield && yield.Jar == process.Jar;
        return new(
            title,
            process,
            known ? report.Measures.JarYield!.Jars : Interval.Unknown,
            known ? report.Measures.JarYield!.Loads : Interval.Unknown,
            Steps(report, process, "prepare"),
            Steps(report, process, "fill"),
            Steps(report, process, "canner"),
            Steps(report, process, "trouble"));
    }

    // Steps of all recipes, each said once.
    private ImmutableArray<RunSheetStep> Shared(IReadOnlyList<(string Title, VettingReport Report)> recipes, string part) =>
    [
        .. recipes.SelectMany(recipe => Steps(recipe.Report, PlanChoice.Of(recipe.Report).Process!, part, Jars(recipes)))
            .DistinctBy(step => (step.Id, step.Text))
            .OrderBy(step => Order(step.Id)),
    ];

    // Jars of each size over all recipes: nobody counts them three times. The high end is infinite where one of them is not known.
    private static Dictionary<string, double> Jars(IReadOnlyList<(string Title, VettingReport Report)> recipes) => recipes
        .Select(recipe => (PlanChoice.Of(recipe.Report).Process!.Jar, Yield: recipe.Report.Measures.JarYield))
        .GroupBy(pair => pair.Jar, StringComparer.Ordinal)
        .ToDictionary(group => group.Key, group => group.Sum(pair => pair.Yield is { } known && known.Jar == pair.Jar ? known.Jars.High : double.PositiveInfinity), StringComparer.Ordinal);

    private int Order(string id)
    {
        for (int i = 0; i < _rows.Length; i++)
        {
            if (_rows[i].Id == id)
            {
                return i;
            }
        }

        return _rows.Length;
    }

    private ImmutableArray<RunSheetStep> Steps(VettingReport report, ProcessLine process, string part, IReadOnlyDictionary<string, double>? jars = null)
    {
        StepTest test = new(report, process, _foods);
        return [.. _rows.Where(row => row.Part == part && test.Takes(row)).Select(row => Step(row, report, process, test, jars))];
    }

    private static RunSheetStep Step(RunSheetRow row, VettingReport report, ProcessLine process, StepTest test, IReadOnlyDictionary<string, double>? jars)
    {
        Interval? minutes = row.MinutesMost is not { } most ? null
            : double.IsInfinity(most) ? Interval.Exactly(process.Minutes)
            : new(row.Minutes ?? most, most);
        string text = Measures(row.Text, report.Kitchen.Metric)
            .Replace("{minutes}", process.Minutes.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal)
            .Replace("{psi}", process.Psi?.ToString("0.##", CultureInfo.InvariantCulture) ?? string.Empty, StringComparison.Ordinal)
            .Replace("{kilopascals}", process.Psi is { } psi ? MetricUnits.Kilopascals(psi).ToString("0", CultureInfo.InvariantCulture) : string.Empty, StringComparison.Ordinal)
            .Replace("{millimetres}", MetricUnits.Millimetres(process.HeadspaceInches).ToString("0", CultureInfo.InvariantCulture), StringComparison.Ordinal)
            .Replace("{gauge}", process.Gauge ?? string.Empty, StringComparison.Ordinal)
            .Replace("{headspace}", Inches.Of(process.HeadspaceInches), StringComparison.Ordinal)
            .Replace("{jar}", process.Jar, StringComparison.Ordinal)
            .Replace("{jars}", jars is not null && double.IsFinite(jars[process.Jar]) ? jars[process.Jar].ToString("0", CultureInfo.InvariantCulture) : "the", StringComparison.Ordinal)
            .Replace("{acid}", process.AcidAddition ?? string.Empty, StringComparison.Ordinal)
            .Replace("{conditions}", process.Conditions.TrimEnd('.'), StringComparison.Ordinal)
            .Replace("{foods}", test.Foods(row), StringComparison.Ordinal);
        // What comes from the process row has the source of that row.
        bool own = row.Text.Contains("{conditions}", StringComparison.Ordinal) || row.Text.Contains("{acid}", StringComparison.Ordinal);
        return new(row.Id, text, minutes, own ? process.Source : row.Source, own ? string.Empty : row.Url);
    }
    // Square brackets of a row hold the metric figure: for a kitchen that asks for it, and only for that.
    private static string Measures(string text, bool metric)
    {
        int open;
        while ((open = text.IndexOf('[', StringComparison.Ordinal)) >= 0 && text.IndexOf(']', open) is > 0 and var close)
        {
            text = text[..open] + (metric ? text[(open + 1)..close] : string.Empty) + text[(close + 1)..];
        }

        return text;
    }
}
