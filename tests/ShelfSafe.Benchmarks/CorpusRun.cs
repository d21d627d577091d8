using ShelfSafe.Verdict;

namespace ShelfSafe.Benchmarks;

/// <summary>Vets a folder of labelled recipes and prints how far reports and labels agree.</summary>
internal static class CorpusRun
{
    /// <summary>Reads <c>recipes/</c>, <c>cases/</c> and the label files of a corpus folder.</summary>
    public static int Run(string path, TextWriter output)
    {
        if (!Directory.Exists(path))
        {
            Console.Error.WriteLine($"{path}: no such folder");
            return 2;
        }

        Dictionary<string, VettedFile> recipes = VettedFile.ReadAll(Path.Combine(path, "recipes"));
        Dictionary<string, VettedFile> cases = VettedFile.ReadAll(Path.Combine(path, "cases"));
        PrintIdentified("recipes", recipes.Values, output);
        PrintIdentified("cases", cases.Values, output);
        LineScore lines = new();
        foreach (LineLabel label in CorpusLabels.Lines(Path.Combine(path, "ingredient-lines.jsonl")))
        {
            if (recipes.TryGetValue(label.File, out VettedFile? file))
            {
                lines.Add(label, file);
            }
        }

        lines.Print(output);
        Score("recipes", Path.Combine(path, "labels.jsonl"), recipes, output);
        Score("cases", Path.Combine(path, "cases.jsonl"), cases, output);
        return 0;
    }

    private static void Score(string title, string labels, Dictionary<string, VettedFile> files, TextWriter output)
    {
        RecipeScore score = new();
        foreach (RecipeLabel label in CorpusLabels.Recipes(labels))
        {
            if (files.TryGetValue(label.File, out VettedFile? file))
            {
                score.Add(label, file);
            }
            else
            {
                output.WriteLine($"  {label.File}: labelled, but not in the folder");
            }
        }

        score.Print(title, output);
    }

    private static void PrintIdentified(string title, IEnumerable<VettedFile> files, TextWriter output)
    {
        int lines = 0;
        List<string> unread = [];
        List<string> empty = [];
        Dictionary<string, int> outcomes = new(StringComparer.Ordinal);
        foreach (VettedFile file in files)
        {
            string outcome = Core.Names.Of(file.Report.Outcome);
            outcomes[outcome] = outcomes.GetValueOrDefault(outcome) + 1;
            if (file.Report.Ingredients.Length == 0)
            {
                empty.Add(file.Name);
            }

            foreach (IGrouping<(int Line, string Text), IngredientReport> line in file.Report.Ingredients.GroupBy(static entry => (entry.Line, entry.Text)))
            {
                lines++;
                unread.AddRange(line.Where(static entry => !entry.Identified).Take(1).Select(entry => $"{file.Name}:{entry.Line}: \"{entry.Text}\" ({entry.Food})"));
            }
        }

        output.WriteLine($"== {title}: {lines} ingredient lines, {lines - unread.Count} identified ({RecipeScore.Share(lines - unread.Count, lines)})");
        output.WriteLine($"outcomes: {string.Join(", ", outcomes.OrderByDescending(static pair => pair.Value).Select(static pair => $"{pair.Key} {pair.Value}"))}");
        RecipeScore.List("unread", unread, output);
        RecipeScore.List("no ingredients", empty, output);
        output.WriteLine();
    }
}
