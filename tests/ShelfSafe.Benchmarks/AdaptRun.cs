using ShelfSafe.Changes;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Benchmarks;

/// <summary>Adapts the labelled recipes of a corpus folder and prints what came of them.</summary>
internal static class AdaptRun
{
    /// <summary>Reads <c>labels.jsonl</c> and <c>cases.jsonl</c> with the recipes beside them.</summary>
    public static int Run(string path, TextWriter output)
    {
        if (!Directory.Exists(path))
        {
            Console.Error.WriteLine($"{path}: no such folder");
            return 2;
        }

        RecipeVetter vetter = RecipeVetter.Create(RulePack.Default);
        RecipeAdapter adapter = RecipeAdapter.Create(vetter, RulePack.Default);
        Kitchen kitchen = new(AltitudeFeet: 410 / 0.3048, Gauge: "weighted");
        int wrong = 0;
        foreach ((string folder, string labels) in (ReadOnlySpan<(string, string)>)[("recipes", "labels.jsonl"), ("cases", "cases.jsonl")])
        {
            Dictionary<(string Label, AdaptationKind Kind), List<string>> counts = [];
            foreach (RecipeLabel label in CorpusLabels.Recipes(Path.Combine(path, labels)))
            {
                string file = Path.Combine(path, folder, label.File);
                if (File.Exists(file))
                {
                    wrong += Count(counts, label, adapter.Adapt(File.ReadAllText(file), kitchen));
                }
            }

            Print(folder, counts, output);
        }

        output.WriteLine($"jar versions of recipes labelled freeze-or-chill or tested-recipe-only: {wrong}");
        return wrong == 0 ? 0 : 1;
    }

    // Files an adaptation under its label; 1 where a recipe that must not be jarred got a jar version.
    private static int Count(Dictionary<(string Label, AdaptationKind Kind), List<string>> counts, RecipeLabel label, Adaptation done)
    {
        if (!counts.TryGetValue((label.Outcome, done.Kind), out List<string>? files))
        {
            counts[(label.Outcome, done.Kind)] = files = [];
        }

        files.Add($"{label.File} ({Names.Of(done.Before.Outcome)}): {Why(done)}");
        return done.Kind == AdaptationKind.Jar && label.Outcome is "freeze-or-chill" or "tested-recipe-only" ? 1 : 0;
    }

    private static void Print(string folder, Dictionary<(string Label, AdaptationKind Kind), List<string>> counts, TextWriter output)
    {
        output.WriteLine($"== {folder}");
        foreach (((string label, AdaptationKind kind), List<string> files) in counts.OrderBy(static pair => pair.Key.Label, StringComparer.Ordinal).ThenBy(static pair => pair.Key.Kind))
        {
            output.WriteLine($"{label}: {kind} {files.Count}");
            if (kind == AdaptationKind.Jar || label.EndsWith("after-changes", StringComparison.Ordinal))
            {
                files.ForEach(file => output.WriteLine($"    {file}"));
            }
        }
    }

    private static string Why(Adaptation done) => done.Kind switch
    {
        AdaptationKind.Jar => $"{done.Changes.Length} changes, {Names.Of(done.After!.Outcome)}",
        AdaptationKind.Question => string.Join(" | ", done.Questions.Select(static note => $"\"{note.What}\" {note.Text}")),
        AdaptationKind.Freezer => string.Join(" | ", done.Reasons.Take(2).Select(static note => note.Text)),
        AdaptationKind.AsWritten or AdaptationKind.Nothing => "-",
    };
}
