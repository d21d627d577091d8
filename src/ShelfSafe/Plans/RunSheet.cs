using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Verdict;

namespace ShelfSafe.Plans;

/// <summary>The run sheet of one session: what to do, in order, for every recipe and canner load.</summary>
/// <param name="Recipes">The recipes in the order of the work.</param>
/// <param name="Before">What to have ready before all.</param>
/// <param name="After">What to do once the jars are out.</param>
/// <param name="Timetable">The work by the minute, counted with the longest times.</param>
/// <param name="LongestMinutes">Minutes from the first work at the stove, soaking left out, until the last jar is out.</param>
public sealed record RunSheet(
    ImmutableArray<PlannedRecipe> Recipes,
    ImmutableArray<RunSheetStep> Before,
    ImmutableArray<RunSheetStep> After,
    ImmutableArray<TimetableEntry> Timetable,
    int LongestMinutes)
{
    /// <summary>What must be said of the kitchen before the work: gauge, canners, country.</summary>
    public ImmutableArray<KitchenNote> KitchenNotes { get; init; } = [];

    /// <summary>Whether it is more than one day's work, by <c>longest-session</c> of <c>rules/limits.csv</c>.</summary>
    public bool TooLong { get; init; }

    /// <summary>Whether metric figures follow the published ones in brackets.</summary>
    public bool Metric { get; init; }
}

/// <summary>One recipe of the session.</summary>
/// <param name="Title">Its title, or its file where it has none.</param>
/// <param name="Process">The one published row that governs: this jar, pack, gauge and altitude.</param>
/// <param name="Jars">Jars it fills; the high end infinite where it cannot be told.</param>
/// <param name="Loads">Canner loads; the high end infinite likewise.</param>
/// <param name="Prepare">Soaking, pre-cooking and the like, in order.</param>
/// <param name="Fill">Filling and closing the jars.</param>
/// <param name="Canner">The work at the canner, load by load.</param>
/// <param name="Trouble">What to do if the pressure or the boil falls.</param>
public sealed record PlannedRecipe(
    string Title,
    ProcessLine Process,
    Interval Jars,
    Interval Loads,
    ImmutableArray<RunSheetStep> Prepare,
    ImmutableArray<RunSheetStep> Fill,
    ImmutableArray<RunSheetStep> Canner,
    ImmutableArray<RunSheetStep> Trouble);

/// <summary>One step.</summary>
/// <param name="Id">Row of <c>rules/run-sheet.csv</c>.</param>
/// <param name="Text">What to do, its figures filled in.</param>
/// <param name="Minutes">Minutes it takes, or <see langword="null"/> where it takes none of its own.</param>
/// <param name="Source">Document and page, or common practice.</param>
/// <param name="Url">Where it was read, or empty.</param>
public sealed record RunSheetStep(string Id, string Text, Interval? Minutes, string Source, string Url);

/// <summary>One line of the timetable.</summary>
/// <param name="Start">Minutes after the first work at the stove; below 0 for soaking before it.</param>
/// <param name="Minutes">Longest minutes it takes.</param>
/// <param name="Recipe">Title of the recipe, or empty for all.</param>
/// <param name="Load">Number of its canner load from 1, or 0.</param>
/// <param name="Text">What is done.</param>
public sealed record TimetableEntry(int Start, int Minutes, string Recipe, int Load, string Text);
