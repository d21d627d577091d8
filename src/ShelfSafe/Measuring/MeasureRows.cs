using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Pack;

namespace ShelfSafe.Measuring;

/// <summary>One row of <c>rules/measures.csv</c>: what one measure of a food weighs.</summary>
/// <param name="Food">Id of the food, or of the composition row that stands for it.</param>
/// <param name="Measure">Cup, spoon or counted measure, with its size where it has one (<c>each-large</c>).</param>
/// <param name="State">Cut that the row is for, or empty for any cut.</param>
/// <param name="Grams">Edible grams of one measure; for <c>juice</c> also its millilitres.</param>
internal sealed record MeasureRow(string Food, string Measure, string State, Interval Grams);

/// <summary>One row of <c>rules/unit-factors.csv</c>.</summary>
/// <param name="Region">Country code in lower case, or empty where the country is not known: then all national sizes.</param>
/// <param name="IsMass">Whether the factor is grams; else millilitres.</param>
/// <param name="Factor">Grams or millilitres of one unit.</param>
internal sealed record UnitFactorRow(string Unit, string Region, bool IsMass, Interval Factor);

/// <summary>One row of <c>rules/packages.csv</c>: the wide default weight of a counted unit for a food group.</summary>
/// <param name="Group">Food group, or <c>*</c> for any.</param>
/// <param name="Grams">Grams of one.</param>
internal sealed record PackageRow(string Group, string Unit, Interval Grams);

/// <summary>One row of <c>rules/group-weights.csv</c>: wide defaults for foods without a row of their own.</summary>
/// <param name="Bulk">Scooped density, g/ml, air gaps counted.</param>
/// <param name="Density">Density in the pot, g/ml, air gaps left out.</param>
/// <param name="Each">Grams of one, of any size.</param>
internal sealed record GroupWeightRow(string Group, Interval Bulk, Interval Density, Interval Each);

/// <summary>One row of <c>rules/food-composition.csv</c>: which published food stands for a food of the table.</summary>
/// <param name="Like">Id in the composition and measure tables, or empty where only the form is known.</param>
/// <param name="IsNear">Whether it is only the nearest food, so that its weights are widened.</param>
/// <param name="State"><c>dry</c>, <c>cooked</c>, <c>canned</c>, <c>frozen</c>, <c>liquid</c>, or empty for the food as bought.</param>
/// <param name="Pours">Whether the food fills a measure without air gaps.</param>
internal sealed record LikeRow(string Food, string Like, bool IsNear, string State, bool Pours);

/// <summary>One row of <c>rules/yields.csv</c>: what is left of a gram when a food changes its state.</summary>
/// <param name="Group">Food group, or <c>*</c>.</param>
/// <param name="Food">Food id, or <c>*</c> for the whole group.</param>
/// <param name="From"><c>raw</c>, <c>dry</c> or <c>canned</c>.</param>
/// <param name="To"><c>cooked</c>, <c>soaked</c> or <c>drained</c>.</param>
/// <param name="Factor">Grams after for each gram before.</param>
public sealed record YieldRow(string Group, string Food, string From, string To, Interval Factor, string Source);

/// <summary>One row of <c>rules/jars.csv</c>.</summary>
/// <param name="Jar"><c>half-pint</c>, <c>pint</c>, <c>pint-and-a-half</c>, <c>quart</c> or <c>half-gallon</c>.</param>
/// <param name="BrimMillilitres">Nominal volume, ml.</param>
/// <param name="MillilitresPerInch">Volume of each inch below the rim, narrow to wide mouth, ml.</param>
/// <param name="Load">Jars in one load of a canner that takes 7 quarts.</param>
public sealed record JarRow(string Jar, double BrimMillilitres, Interval MillilitresPerInch, Interval Load, string Source);

/// <summary>One row of <c>rules/jar-weights.csv</c>: how much food a quart jar of a plain pack takes, the liquid in its gaps left out.</summary>
/// <param name="Product">Product of <c>rules/processes.csv</c>.</param>
/// <param name="PoundsAQuart">Pounds of fresh food for one quart jar, from the published yield of a bushel.</param>
public sealed record JarWeightRow(string Product, Interval PoundsAQuart, string Source);

/// <summary>What 100 g of a food is made of, g; <see langword="null"/> where it is not published, which is never zero.</summary>
/// <param name="Water">Water, g.</param>
/// <param name="Protein">Protein, g.</param>
/// <param name="Fat">Fat, g.</param>
/// <param name="Carbohydrate">Carbohydrate, starch and fibre counted in, g.</param>
/// <param name="Fibre">Fibre, g.</param>
/// <param name="Starch">Starch, g.</param>
/// <param name="Ash">Ash, g.</param>
/// <param name="Density">Density without air, g/ml, from the composition.</param>
/// <param name="Source">Key of the source tables with the food's number there.</param>
public sealed record Composition(
    Interval? Water,
    Interval? Protein,
    Interval? Fat,
    Interval? Carbohydrate,
    Interval? Fibre,
    Interval? Starch,
    Interval? Ash,
    Interval? Density,
    string Source);

/// <summary>The typed measure tables of a rule pack, as they stand.</summary>
internal sealed record MeasureTables(
    RowTable<MeasureRow> Measures,
    RowTable<UnitFactorRow> Units,
    RowTable<PackageRow> Packages,
    RowTable<GroupWeightRow> Groups,
    RowTable<LikeRow> Likes,
    RowTable<Composition> Compositions,
    ImmutableArray<YieldRow> Yields,
    ImmutableArray<JarRow> Jars,
    ImmutableArray<JarWeightRow> JarWeights);
