namespace ShelfSafe.Cli;

/// <summary>What the cook asked of <c>vet</c>; options that were not given are <see langword="null"/>.</summary>
internal sealed record VetRequest(
    IReadOnlyList<string> Recipes,
    string Format,
    string? KitchenFile,
    string? Altitude,
    string? Gauge,
    string? Jar,
    string? Region,
    string? RulesFolder,
    string? AliasFile,
    string? OutputFile,
    bool Quiet,
    string Input,
    IReadOnlyList<string> Include,
    IReadOnlyList<string> Exclude,
    string? FailOn,
    bool Summary)
{
    /// <summary>Files that are read beside the recipes, each with what it is.</summary>
    /// <param name="around">Tells the usual place of the profile.</param>
    public IReadOnlyList<(string? Path, string What)> OtherFiles(Surroundings around) =>
        [(KitchenFile == KitchenWords.NoFile ? null : KitchenFile ?? around.KitchenFile, "the kitchen profile"), (AliasFile, "the word list")];
}
