using BenchmarkDotNet.Attributes;
using Markdig;
using Markdig.Syntax;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Reports;
using ShelfSafe.Verdict;

namespace ShelfSafe.Benchmarks;

/// <summary>Vetting one recipe of ordinary size, beside a bare Markdown parse of it.</summary>
[MemoryDiagnoser]
public class VetBenchmarks
{
    private const string Stew = """
        # Stew of the harvest hall

        For 12 bowls.

        ## Ingredients

        - 1 kg venison shoulder, cut in cubes
        - 2 large onions, chopped
        - 4 carrots, sliced
        - 2 tbsp flour
        - 500 g dried chickpeas, soaked overnight
        - 2 l venison stock
        - 1 tsp juniper berries
        - salt and pepper to taste

        ## Steps

        1. Brown the meat and pour off the fat.
        2. Add onions and carrots, dust with the flour and stir.
        3. Add chickpeas and stock and simmer for two hours.
        """;

    private readonly RecipeVetter _vetter = RecipeVetter.Create(RulePack.Default);
    private readonly MarkdownPipeline _pipeline = new MarkdownPipelineBuilder().UsePreciseSourceLocation().UsePipeTables().UseYamlFrontMatter().Build();
    private readonly JsonLinesReport _json = new();

    /// <summary>The bare parse.</summary>
    [Benchmark(Baseline = true)]
    public MarkdownDocument Parse() => Markdown.Parse(Stew, _pipeline);

    /// <summary>The verdict alone.</summary>
    [Benchmark]
    public VettingReport Vet() => _vetter.Vet(Stew, Kitchen.Unknown);

    /// <summary>The verdict and its line of JSON.</summary>
    [Benchmark]
    public void VetToJsonLines() => _json.Write(TextWriter.Null, "stew.md", _vetter.Vet(Stew, Kitchen.Unknown));
}
