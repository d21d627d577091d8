using ShelfSafe.Core;
using ShelfSafe.Verdict;

namespace ShelfSafe.Benchmarks;

/// <summary>One recipe file, its lines and its report.</summary>
internal sealed record VettedFile(string Name, string[] Lines, VettingReport Report)
{
    /// <summary>Reads and vets every Markdown file of a folder.</summary>
    public static Dictionary<string, VettedFile> ReadAll(string folder)
    {
        Dictionary<string, VettedFile> files = new(StringComparer.Ordinal);
        if (Directory.Exists(folder))
        {
            RecipeVetter vetter = RecipeVetter.Create(ShelfSafe.Pack.RulePack.Default);
            foreach (string path in Directory.EnumerateFiles(folder, "*.md").Order(StringComparer.Ordinal))
            {
                string text = File.ReadAllText(path);
                string name = Path.GetFileName(path);
                files.Add(name, new(name, text.ReplaceLineEndings("\n").Split('\n'), vetter.Vet(text, Kitchen.Unknown)));
            }
        }

        return files;
    }

    /// <summary>Whether a finding is about these words: they are its ingredient, or stand at one of its places.</summary>
    public bool IsAbout(Finding finding, string words)
    {
        if (finding.Ingredient is { } ingredient && (Has(ingredient, words) || (ingredient.Length > 2 && Has(words, ingredient))))
        {
            return true;
        }

        // A whole-recipe finding stands at line 1 and is about no words of its own.
        return !finding.Places.IsDefaultOrEmpty && finding.Places.Any(place => Touches(place, words, finding.Ingredient is null));
    }

    private static bool Has(string text, string words) => text.Contains(words, StringComparison.OrdinalIgnoreCase);

    private bool Touches(Place place, string words, bool overlap)
    {
        if (!overlap || place.Line > Lines.Length)
        {
            return false;
        }

        string line = Lines[place.Line - 1];
        int end = place.EndLine > place.Line ? line.Length : place.EndColumn - 1;
        for (int at = line.IndexOf(words, StringComparison.OrdinalIgnoreCase); at >= 0; at = line.IndexOf(words, at + 1, StringComparison.OrdinalIgnoreCase))
        {
            if (at < end && place.Column - 1 < at + words.Length)
            {
                return true;
            }
        }

        return false;
    }
}
