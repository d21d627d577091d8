using System.Collections.Immutable;
using System.Diagnostics;
using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Hazards;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using ShelfSafe.Reading;
using ShelfSafe.Verdict;

namespace ShelfSafe.Benchmarks;

/// <summary>What matching all formulas, and looking up the rows of a process, cost beside a warm vet.</summary>
internal static class LookupRun
{
    private const int Rounds = 40;

    /// <summary>Prints the mean cost of each, in milliseconds a recipe.</summary>
    /// <param name="path">A folder of recipes.</param>
    /// <param name="output">Where to print.</param>
    public static int Run(string path, TextWriter output)
    {
        RulePack pack = RulePack.Default;
        List<PackFault> faults = [];
        LineWordTable words = new(pack.Text("units.csv"), pack.Text("line-words.csv"), faults);
        FoodCatalogue catalogue = FoodCatalogue.Create(pack, [], words, string.Empty);
        ReadTexts texts = new(catalogue, words);
        BatchRoom batches = new(pack, catalogue, words, texts, Weigher.Create(pack));
        FormulaRoom formulas = FormulaRoom.Create(pack, new HazardRoom(pack.Tables));
        IngredientReader reader = new(catalogue, words, texts);
        RecipeReader recipes = new();
        List<Batch> all = [];
        foreach (string file in Directory.EnumerateFiles(path, "*.md", SearchOption.AllDirectories).Order(StringComparer.Ordinal))
        {
            Recipe recipe = recipes.Read(File.ReadAllText(file));
            all.AddRange(recipe.Parts.Select(part => batches.Make(recipe, part, [.. part.Ingredients.SelectMany(line => reader.Read(line))])));
        }

        ImmutableArray<ProcessRow> rows = pack.Tables.Processes;
        Kitchen kitchen = new(AltitudeFeet: 1_345, Gauge: "weighted");
        ProcessRow[][] products = [.. rows.GroupBy(row => row.Product, StringComparer.Ordinal).Select(product => product.ToArray())];
        Print(output, "all formulas", all.Count, () => all.ForEach(batch => formulas.Of(formulas.Look(batch), [])));
        Print(output, "rows of a product", products.Length, () => Array.ForEach(products, product => ProcessSelector.Lines(product, kitchen)));
        return 0;
    }

    private static void Print(TextWriter output, string what, int count, Action work)
    {
        work();
        Stopwatch watch = Stopwatch.StartNew();
        for (int round = 0; round < Rounds; round++)
        {
            work();
        }

        output.WriteLine(FormattableString.Invariant($"{what}: {watch.Elapsed.TotalMilliseconds / Rounds / Math.Max(1, count):0.0000} ms each, {count} of them, mean of {Rounds} rounds"));
    }
}
