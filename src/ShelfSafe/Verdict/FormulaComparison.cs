using System.Collections.Immutable;

namespace ShelfSafe.Verdict;

/// <summary>A published formula by id and name.</summary>
/// <param name="Id">Id in <c>rules/formulas.csv</c>.</param>
/// <param name="Name">Its published name.</param>
public sealed record FormulaName(string Id, string Name);

/// <summary>A recipe beside one published formula.</summary>
/// <param name="Id">Id of the formula.</param>
/// <param name="Name">Its published name.</param>
/// <param name="Source">Document and page.</param>
/// <param name="Url">Where it was read.</param>
/// <param name="Covers">Whether the formula covers the recipe, at most with a bottle or jar to name.</param>
/// <param name="Differences">Yours beside tested; empty where nothing could be measured.</param>
/// <param name="Points">What keeps the recipe from the formula, one point each.</param>
/// <param name="Amounts">The formula at the scale of the recipe's main food.</param>
/// <param name="Extra">Offsets in the file of ingredient lines that the formula does not have, dry seasonings and salt aside.</param>
public sealed record FormulaComparison(
    string Id,
    string Name,
    string Source,
    string Url,
    bool Covers,
    ImmutableArray<Difference> Differences,
    ImmutableArray<FormulaPoint> Points,
    ImmutableArray<FormulaAmount> Amounts,
    ImmutableArray<int> Extra);

/// <summary>One point of difference.</summary>
/// <param name="Rule">Rule id.</param>
/// <param name="Ingredient">The recipe's words, or <see langword="null"/>.</param>
/// <param name="Message">What differs.</param>
/// <param name="Instead">What to do about it.</param>
public sealed record FormulaPoint(string Rule, string? Ingredient, string Message, string Instead);

/// <summary>One food of a formula at the scale of the recipe.</summary>
/// <param name="Name">The food.</param>
/// <param name="Line">Amount and food in words.</param>
/// <param name="Offsets">Offsets in the file of the ingredient lines that stand for it; empty where it is missing.</param>
/// <param name="Required">Whether the formula needs it.</param>
public sealed record FormulaAmount(string Name, string Line, ImmutableArray<int> Offsets, bool Required)
{
    /// <summary>Whether its amount may vary, as that of dry spices.</summary>
    public bool Free { get; init; }
}
