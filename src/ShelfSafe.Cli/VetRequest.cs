namespace ShelfSafe.Cli;

/// <summary>What the cook asked of <c>vet</c>; options that were not given are <see langword="null"/>.</summary>
internal sealed record VetRequest(
    IReadOnlyList<string> Recipes,
    bool AsJsonLines,
    string? KitchenFile,
    string? Altitude,
    string? Gauge,
    string? Jar,
    string? Region,
    string? RulesFolder,
    string? AliasFile,
    string? OutputFile,
    bool Quiet);
