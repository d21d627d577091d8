using System.CommandLine;
using System.CommandLine.Completions;
using ShelfSafe.Changes;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Cli;

/// <summary>Finds the published recipe that a cook names.</summary>
internal static class FormulaChoice
{
    /// <summary>An option that names a published recipe; a shell completes its id.</summary>
    public static Option<string?> Option(string name, string description)
    {
        Option<string?> option = new(name) { HelpName = "FORMULA", Description = description };
        option.CompletionSources.Add(static _ => RecipeVetter.Create(RulePack.Default).Formulas.Select(static formula => new CompletionItem(formula.Id)));
        return option;
    }

    /// <summary>The formula; complains with the nearest name and returns <see langword="null"/> where there is none of that name.</summary>
    public static FormulaName? Of(RecipeVetter vetter, string words, Action<string> complain)
    {
        FormulaName? exact = NearestName.Exact(vetter.Formulas, words);
        if (exact is null)
        {
            string nearest = NearestName.Nearest(vetter.Formulas, words) is { } name ? $"; nearest: \"{name.Name}\" ({name.Id})" : string.Empty;
            complain($"no published recipe is called \"{words}\"{nearest}");
        }

        return exact;
    }
}
