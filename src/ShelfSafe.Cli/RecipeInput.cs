using System.CommandLine;

namespace ShelfSafe.Cli;

/// <summary>The options of commands that work on single recipes: where the recipe is and for which kitchen.</summary>
/// <param name="standardInput">Opens standard input, for <c>-</c>.</param>
/// <param name="around">The day and the place of the cook's own profile.</param>
internal sealed class RecipeInput(Func<Stream> standardInput, Surroundings around)
{
    private readonly Option<string?> _kitchen = new("--kitchen") { HelpName = "FILE", Description = KitchenWords.FileHelp };
    private readonly Option<string?> _altitude = KitchenOptions.Altitude();
    private readonly Option<string?> _gauge = KitchenOptions.Gauge();
    private readonly Option<string?> _jar = KitchenOptions.Jar();
    private readonly Option<string?> _region = KitchenOptions.Region();
    private readonly Option<string?> _rules = new("--rules") { HelpName = "FOLDER", Description = "Rule pack to judge by, in place of the built-in one." };
    private readonly Option<string?> _aliases = new("--aliases") { HelpName = "FILE", Description = "Your own words for foods: a CSV file with the columns word,food." };

    /// <summary>Adds the kitchen options to a command.</summary>
    public void AddTo(Command command)
    {
        foreach (Option option in (ReadOnlySpan<Option>)[_kitchen, _altitude, _gauge, _jar, _region, _rules, _aliases])
        {
            command.Add(option);
        }
    }

    /// <summary>The vetter and kitchen that were asked for; complains and returns <see langword="null"/> where a file is wrong.</summary>
    public VetSetup? Setup(ParseResult result, Action<string> complain) => VetSetup.Read(Request(result), around, complain);

    /// <summary>Whether the output may be written: it is none of the files that are read.</summary>
    public bool IsFree(ParseResult result, string? output, IEnumerable<string> recipes, Action<string> complain) =>
        OutputFile.IsFree(output, recipes, Request(result).OtherFiles(around), complain);

    /// <summary>The text of a recipe; complains and returns <see langword="null"/> where it cannot be read.</summary>
    public string? Text(string path, Action<string> complain)
    {
        string? text = TextFile.Read(path, standardInput, out string wrong);
        if (text is null)
        {
            complain($"{(path == RecipePaths.StandardInput ? "standard input" : RecipePaths.Shown(path))}: {wrong}");
        }

        return text;
    }

    private VetRequest Request(ParseResult result) => new(
        [], "text", result.GetValue(_kitchen), result.GetValue(_altitude), result.GetValue(_gauge), result.GetValue(_jar), result.GetValue(_region),
        result.GetValue(_rules), result.GetValue(_aliases), null, Quiet: false, RecipeKinds.Auto, [], [], null, Summary: false);
}
