namespace ShelfSafe.Pack;

/// <summary>One row of <c>rules/food-aliases.csv</c>: a word and the food it means in a region.</summary>
/// <param name="Alias">The word.</param>
/// <param name="Food">Id of the food it means.</param>
/// <param name="Region">Country code in lower case, or empty for everywhere.</param>
/// <param name="Source">Where the word was found.</param>
/// <param name="Line">Line in the table, from 1.</param>
public sealed record AliasRow(string Alias, string Food, string Region, string Source, int Line);
