namespace ShelfSafe.Cli;

/// <summary>What was asked of <c>why</c>; options that were not given are <see langword="null"/>.</summary>
/// <param name="Topic">Topic, rule or food; empty for the list of lessons.</param>
internal sealed record WhyRequest(
    string Topic,
    string? RecipeFile,
    string Format,
    string? OutputFile,
    string? KitchenFile,
    string? Altitude,
    string? Jar,
    string? Region,
    string? RulesFolder)
{
    /// <summary>The same kitchen, rules and recipe as <c>vet</c> would be asked for.</summary>
    public VetRequest AsVet() => new(
        RecipeFile is { } file ? [file] : [], "text", KitchenFile, Altitude, null, Jar, Region, RulesFolder, null, null, false, RecipeKinds.Auto, [], [], null, false);
}
