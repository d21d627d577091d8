using System.Collections.Immutable;
using ShelfSafe.Core;

namespace ShelfSafe.Verdict;

/// <summary>The finished verdict on one recipe: everything a report prints, in the shape of the published JSON.</summary>
/// <param name="Title">Title of the recipe, or <see langword="null"/>.</param>
/// <param name="Acidity">Acidity class of the leading part.</param>
/// <param name="Outcome">Outcome of the leading part.</param>
/// <param name="Category">Nearest tested category or formula, or <see langword="null"/>.</param>
/// <param name="Reasons">How the outcome was reached, one plain sentence a step.</param>
/// <param name="Findings">All findings, worst level first, then by place.</param>
/// <param name="Ingredients">One entry a food, in reading order.</param>
/// <param name="Measures">Shares and jar yield.</param>
/// <param name="Nearest">Up to three published formulas near this recipe.</param>
/// <param name="Process">Processes that cover the recipe as written; empty unless the outcome says so.</param>
/// <param name="ProcessAfterChanges">Processes that cover it once the changes are made.</param>
/// <param name="Storage">Fridge days and freezer months where published; empty for outcomes that need none.</param>
/// <param name="Parts">The dishes of the file, where it holds several; else empty.</param>
/// <param name="Pack">The rule pack that judged.</param>
/// <param name="Kitchen">The kitchen it was judged for.</param>
public sealed record VettingReport(
    string? Title,
    Acidity Acidity,
    Outcome Outcome,
    CategoryReport? Category,
    ImmutableArray<string> Reasons,
    ImmutableArray<Finding> Findings,
    ImmutableArray<IngredientReport> Ingredients,
    MeasuresReport Measures,
    ImmutableArray<NearestFormula> Nearest,
    ImmutableArray<ProcessLine> Process,
    ImmutableArray<ProcessLine> ProcessAfterChanges,
    ImmutableArray<StorageAdvice> Storage,
    ImmutableArray<PartReport> Parts,
    PackIdentity Pack,
    Kitchen Kitchen)
{
    /// <summary>What must be said of the kitchen before all: altitude, canners, gauge, country.</summary>
    public ImmutableArray<KitchenNote> KitchenNotes { get; init; } = [];

    /// <summary>Whether published rows cover the recipe, as written or after changes, but none is for this kitchen's jar, gauge, altitude and canners.</summary>
    public bool LacksRow => Outcome is Outcome.Pressure or Outcome.BoilingWater or Outcome.PressureAfterChanges or Outcome.BoilingWaterAfterChanges
        && Process.IsDefaultOrEmpty && ProcessAfterChanges.IsDefaultOrEmpty;

    /// <summary>How the recipe itself fills its jars: <c>hot</c>, <c>raw</c>, or <see langword="null"/> where its steps do not say, or say both.</summary>
    public string? OwnPack { get; init; }

    /// <summary>The freezer version, where this kitchen should take it first: it has no canner for the process, or its authority advises against it; else empty.</summary>
    public ImmutableArray<FreezingStep> FreezerFirst { get; init; } = [];

    /// <summary>Methods of the processes shown that the kitchen's canners do; empty where its canners were not told or do none.</summary>
    public ImmutableArray<string> UsableMethods { get; init; } = [];
}

/// <summary>A place in the file: lines and columns from 1, the end column exclusive, columns in UTF-16 units.</summary>
/// <param name="Line">Line of the first character, from 1.</param>
/// <param name="Column">Column of the first character, from 1.</param>
/// <param name="EndLine">Line of the end, from 1.</param>
/// <param name="EndColumn">Column just behind the last character, from 1.</param>
public sealed record Place(int Line, int Column, int EndLine, int EndColumn);

/// <summary>A published source.</summary>
/// <param name="Id">Key of <c>rules/sources.csv</c>, or empty where the row carries its source as text.</param>
/// <param name="Title">Name of the publication, or the whole source where it has no key.</param>
/// <param name="Locator">Page or section, or empty.</param>
/// <param name="Url">Where it was read, or empty.</param>
public sealed record SourceReference(string Id, string Title, string Locator, string Url)
{
    /// <summary>Title and locator in one line.</summary>
    public string Text { get; } = Locator.Length == 0 ? Title : $"{Title}, {Locator}";
}

/// <summary>One finding: what is there, why it matters, what to do instead, where it stands in the recipe, and who says so.</summary>
/// <param name="Rule">Rule id: a card of <c>rules/hazards/</c>; never renamed.</param>
/// <param name="Level">How grave: of one thing in several places the worst.</param>
/// <param name="Ingredient">The recipe's own words, or <see langword="null"/> for a finding about steps or the whole recipe.</param>
/// <param name="Places">Where, at least one, in the order of the file.</param>
/// <param name="Message">What is there, one plain sentence with the recipe's own words.</param>
/// <param name="Why">Why it matters.</param>
/// <param name="Instead">What to do instead; it never invents a process.</param>
/// <param name="Sources">Who says so, as the card names them.</param>
/// <param name="Part">Name of the dish it belongs to, or <see langword="null"/>.</param>
public sealed record Finding(
    string Rule,
    FindingLevel Level,
    string? Ingredient,
    ImmutableArray<Place> Places,
    string Message,
    string Why,
    string Instead,
    ImmutableArray<SourceReference> Sources,
    string? Part = null);

/// <summary>The tested category or formula that the recipe comes nearest to.</summary>
/// <param name="Id">Name of the card in <c>rules/categories/</c>, or id of the formula.</param>
/// <param name="Name">Its name in plain words.</param>
/// <param name="Kind"><c>category</c> or <c>formula</c>.</param>
/// <param name="Differences">Yours beside tested; empty where nothing could be compared.</param>
public sealed record CategoryReport(string Id, string Name, string Kind, ImmutableArray<Difference> Differences);

/// <summary>One row of the comparison with the tested process.</summary>
/// <param name="What">The food, or the share, that is compared.</param>
/// <param name="Unit">Unit of both amounts; <c>share</c> and the like run from 0 to 1.</param>
/// <param name="Yours">The recipe's amount at the scale at which both are compared.</param>
/// <param name="Tested">Tested amount; the high end infinite where the formula sets no upper limit.</param>
/// <param name="Allowed">Whether yours lies within what was tested, read at its worse end.</param>
public sealed record Difference(string What, string Unit, Interval Yours, Interval Tested, bool Allowed);

/// <summary>One food of the ingredient list as the report shows it.</summary>
/// <param name="Line">Line from 1.</param>
/// <param name="Text">The whole ingredient line, without its list mark and Markdown marks.</param>
/// <param name="Amount">The first measure printed, or <see langword="null"/> where none is; its high end infinite for "or more".</param>
/// <param name="Measures">Every printed measure in its order, the first included.</param>
/// <param name="Package">Size of one package in "2 (14 oz) cans", or <see langword="null"/>.</param>
/// <param name="Food">The food in plain singular words as the recipe names it; the unread words where it is unidentified.</param>
/// <param name="FoodId">Id in the food table; <see langword="null"/> when unidentified or a word with two meanings.</param>
/// <param name="Preparation">How it is cut or prepared, or <see langword="null"/>.</param>
/// <param name="Optional">Whether it may be left out; it counts as in.</param>
/// <param name="ToTaste">Whether it has no amount but "to taste" and the like.</param>
/// <param name="Alternatives">The other sides of an either-or, each of which counts as in.</param>
/// <param name="SharesAmountWith">The food of the same line whose amount it shares, or <see langword="null"/>.</param>
/// <param name="Grams">Edible grams, or <see langword="null"/> where nothing can be said.</param>
/// <param name="Traits">Traits of every food that it may be (<c>rules/README.md</c>).</param>
/// <param name="Identified">Whether it is a food of the table, or a choice of such foods.</param>
/// <param name="OnTheCooksWord">Whether only the cook's own word list says which food it is.</param>
/// <param name="Part">Name of its dish where the file holds several, else <see langword="null"/>.</param>
public sealed record IngredientReport(
    int Line,
    string Text,
    Amount? Amount,
    ImmutableArray<Amount> Measures,
    Amount? Package,
    string Food,
    string? FoodId,
    string? Preparation,
    bool Optional,
    bool ToTaste,
    ImmutableArray<AlternativeReport> Alternatives,
    string? SharesAmountWith,
    Interval? Grams,
    ImmutableArray<string> Traits,
    bool Identified,
    bool OnTheCooksWord,
    string? Part);

/// <summary>The other side of an either-or.</summary>
/// <param name="Food">The food as the recipe names it.</param>
/// <param name="FoodId">Its id, or <see langword="null"/> when unidentified.</param>
/// <param name="Traits">Its traits.</param>
public sealed record AlternativeReport(string Food, string? FoodId, ImmutableArray<string> Traits);

/// <summary>The batch in numbers, foods at serving left out; a share is 0 to 1. All are <see langword="null"/> where no ingredient could be read.</summary>
/// <param name="SolidsShare">Share by volume of what does not run like water.</param>
/// <param name="FatShare">Share by mass of foods that are mostly fat.</param>
/// <param name="AcidShare">Share by mass of foods whose whole published range lies at or below pH 4.6.</param>
/// <param name="LowAcidShare">Share by mass of low-acid foods, water left out, unidentified ones counted in.</param>
/// <param name="TotalGrams">Mass of the whole batch, g; the high end infinite where an amount is unknown.</param>
/// <param name="TotalMillilitres">Volume of the whole batch, ml, air gaps left out; the high end infinite likewise.</param>
/// <param name="JarYield">Jars it fills, or <see langword="null"/> without a process or a known volume.</param>
public sealed record MeasuresReport(
    Interval? SolidsShare,
    Interval? FatShare,
    Interval? AcidShare,
    Interval? LowAcidShare,
    Interval? TotalGrams,
    Interval? TotalMillilitres,
    JarYieldReport? JarYield);

/// <summary>How many jars of a size the batch fills.</summary>
/// <param name="Jar">Size of the jar: the kitchen's own where the process has it, else the pint, else the smallest.</param>
/// <param name="Jars">Full jars at least; at most all jars, the last part-filled one counted.</param>
/// <param name="Loads">Canner loads.</param>
/// <param name="RemainderMillilitres">What may be left for a last, part-filled jar, ml.</param>
/// <param name="HeadspaceInches">Headspace of the published process, inches.</param>
/// <param name="JarsALoad">Jars in one load of the cook's own canner, or <see langword="null"/> where loads are those of a canner that takes seven quarts.</param>
public sealed record JarYieldReport(string Jar, Interval Jars, Interval Loads, Interval RemainderMillilitres, double HeadspaceInches, Interval? JarsALoad = null)
{
    /// <summary>Whether the jars were counted by the published weight of a plain pack, so that the covering liquid only fills its gaps.</summary>
    public bool ByPublishedWeight { get; init; }

    /// <summary>Jars of this size in one load, by whichever canner <see cref="Loads"/> counts with.</summary>
    public Interval Load { get; init; }
}

/// <summary>A published formula near the recipe and the swap it needs.</summary>
/// <param name="Id">Id of the formula.</param>
/// <param name="Name">Its name.</param>
/// <param name="Swap">What the cook would leave out and take, in plain words.</param>
/// <param name="ScaledIngredients">Its foods and amounts at the scale of the recipe's main food; empty where that has no amount.</param>
/// <param name="Source">Document and page.</param>
public sealed record NearestFormula(string Id, string Name, string Swap, ImmutableArray<string> ScaledIngredients, string Source);

/// <summary>One published process for one jar, pack, method, gauge and altitude band.</summary>
/// <param name="RowId">Id of its row in <c>rules/processes.csv</c>.</param>
/// <param name="Product">Product as the table names it.</param>
/// <param name="Method"><c>boiling-water</c>, <c>atmospheric-steam</c> or <c>pressure</c>.</param>
/// <param name="Jar"><c>half-pint</c>, <c>pint</c>, <c>pint-and-a-half</c>, <c>quart</c> or <c>half-gallon</c>.</param>
/// <param name="Pack"><c>hot</c> or <c>raw</c>.</param>
/// <param name="Minutes">Process time at this altitude, as printed.</param>
/// <param name="Gauge"><c>dial</c>, <c>weighted</c>, or <see langword="null"/> without pressure.</param>
/// <param name="Psi">Gauge pressure in pounds a square inch, or <see langword="null"/> without pressure.</param>
/// <param name="AltitudeFeet">The printed band; the high end infinite where the table prints none.</param>
/// <param name="HeadspaceInches">Headspace, inches.</param>
/// <param name="AcidAddition">Acid to add to each jar, as printed, or <see langword="null"/>.</param>
/// <param name="Conditions">Further conditions of the row, or empty.</param>
/// <param name="Source">Document and page.</param>
/// <param name="Note">What is said of this line, such as the jar it was printed for, or <see langword="null"/>.</param>
/// <param name="Overruled">Rows for the same jar with a shorter time, which do not govern.</param>
public sealed record ProcessLine(
    string RowId,
    string Product,
    string Method,
    string Jar,
    string Pack,
    int Minutes,
    string? Gauge,
    double? Psi,
    Interval AltitudeFeet,
    double HeadspaceInches,
    string? AcidAddition,
    string Conditions,
    string Source,
    string? Note,
    ImmutableArray<OverruledProcess> Overruled);

/// <summary>A published row for the same jar whose time is shorter, and which therefore does not govern.</summary>
/// <param name="RowId">Id of the row.</param>
/// <param name="Product">Product as the table names it.</param>
/// <param name="Minutes">Its time, shorter than the one that governs.</param>
/// <param name="Source">Document and page.</param>
public sealed record OverruledProcess(string RowId, string Product, int Minutes, string Source);

/// <summary>How long the dish keeps cold, as published.</summary>
/// <param name="Where"><c>fridge</c> or <c>freezer</c>.</param>
/// <param name="Span">Printed span in plain words, such as "3 to 4 days".</param>
/// <param name="Text">What it holds for and how, in plain words.</param>
/// <param name="Source">Document and page.</param>
public sealed record StorageAdvice(string Where, string Span, string Text, string Source);

/// <summary>One dish of a file that holds several.</summary>
/// <param name="Name">Its heading, or empty.</param>
/// <param name="Line">First line, from 1.</param>
/// <param name="EndLine">Last line, from 1, counted in.</param>
/// <param name="Acidity">Its own acidity class.</param>
/// <param name="Outcome">Its own outcome; the worst of those that are jar food leads the report.</param>
public sealed record PartReport(string Name, int Line, int EndLine, Acidity Acidity, Outcome Outcome);

/// <summary>Which rule pack judged.</summary>
/// <param name="Version">Version of <c>rules/pack.csv</c>.</param>
/// <param name="Date">Its date, year-month-day.</param>
/// <param name="Sha256">SHA-256 over all its files, lower-case hexadecimal.</param>
public sealed record PackIdentity(string Version, string Date, string Sha256);
