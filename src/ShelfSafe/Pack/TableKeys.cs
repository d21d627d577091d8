namespace ShelfSafe.Pack;

/// <summary>A table whose rows are found by the values of some columns; the build makes an index of each.</summary>
/// <param name="File">Path of the table.</param>
/// <param name="Header">Its columns in order.</param>
/// <param name="Keys">The columns that rows are found by.</param>
internal sealed record TableKeys(string File, string[] Header, params string[] Keys)
{
    /// <summary>The foods; their own index is that of their names.</summary>
    public static readonly TableKeys Foods = new(
        "foods.csv",
        ["id", "name", "group", "ph_low", "ph_high", "acidity", "traits", "acid_strength", "process", "bulk", "bulk_jars", "bulk_source", "minor_g_per_kg", "minor_source", "why_no", "source", "url", "status", "notes"]);

    /// <summary>The processes, by id and by product.</summary>
    public static readonly TableKeys Processes = new(
        "processes.csv",
        ["id", "guide", "product", "food_group", "acidity", "pack", "jar", "method", "minutes", "bw_minutes_by_altitude", "dial_psi_by_altitude", "weighted_psi_by_altitude", "headspace_in", "acid_addition", "conditions", "source", "url", "status"],
        "id",
        "product");

    /// <summary>The publications.</summary>
    public static readonly TableKeys Sources = new("sources.csv", ["id", "title", "locator", "url", "seen", "status"], "id");

    /// <summary>What a measure of a food weighs.</summary>
    public static readonly TableKeys Measures = new("measures.csv", ["food", "measure", "state", "low", "high", "source"], "food");

    /// <summary>Which published food stands for a food.</summary>
    public static readonly TableKeys Likes = new("food-composition.csv", ["food", "like", "basis", "state", "form"], "food");

    /// <summary>What foods are made of.</summary>
    public static readonly TableKeys Compositions = new(
        "composition.csv", ["food", "water", "protein", "fat", "carbohydrate", "fibre", "starch", "ash", "density", "source"], "food");

    /// <summary>How large a unit is.</summary>
    public static readonly TableKeys UnitFactors = new("unit-factors.csv", ["unit", "region", "kind", "low", "high", "source"], "unit");

    /// <summary>What a package weighs.</summary>
    public static readonly TableKeys Packages = new("packages.csv", ["group", "unit", "low", "high", "source"], "unit");

    /// <summary>Wide weights for a group of foods.</summary>
    public static readonly TableKeys GroupWeights = new(
        "group-weights.csv", ["group", "bulk_low", "bulk_high", "density_low", "density_high", "each_low", "each_high", "source"], "group");

    /// <summary>What guidance rejects, by the step fact that says it.</summary>
    public static readonly TableKeys UnsafeMethods = new(
        "unsafe-methods.csv", ["fact", "level", "level_dry", "message", "why", "instead", "source", "url", "status"], "fact");

    /// <summary>Kinds of dishes; those without words of the title are told by their foods.</summary>
    public static readonly TableKeys DishKinds = new("dish-kinds.csv", ["kind", "words", "foods", "unless", "not_a_jar", "source"], "words");

    /// <summary>The published formulas.</summary>
    public static readonly TableKeys Formulas = new("formulas.csv", ["id", "name", "kinds", "process_rows", "needs", "yield", "source", "url", "status"], "id");

    /// <summary>Foods of the formulas.</summary>
    public static readonly TableKeys FormulaSlots = new(
        "formula-slots.csv",
        ["formula", "slot", "foods", "role", "low", "high", "unit", "grams", "state", "label", "discarded", "per_jar", "swaps", "optional", "source"],
        "formula");

    /// <summary>Ordinary words.</summary>
    public static readonly TableKeys PlainWords = new("plain-words.csv", ["word"], "word");

    /// <summary>The fixed words of the reports.</summary>
    public static readonly TableKeys Words = new("words.csv", ["key", "text"], "key");

    /// <summary>Short lists of traits, groups, kinds and rules.</summary>
    public static readonly TableKeys Lists = new("lists.csv", ["list", "word", "source"], "list");

    /// <summary>Every table with an index.</summary>
    public static readonly TableKeys[] All =
        [Foods, Processes, Sources, Measures, Likes, Compositions, UnitFactors, Packages, GroupWeights, UnsafeMethods, DishKinds, Formulas, FormulaSlots, PlainWords, Words, Lists];
}
