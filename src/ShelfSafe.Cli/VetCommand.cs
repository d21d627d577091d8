using System.CommandLine;
using ShelfSafe.Reports;

namespace ShelfSafe.Cli;

/// <summary>The command <c>vet</c>: its arguments and options, and nothing else.</summary>
internal sealed class VetCommand(Func<Stream> standardInput, Terminal terminal, Surroundings around, CancellationToken stop)
{
    private readonly Argument<string[]> _recipes = new("RECIPE")
    {
        Arity = ArgumentArity.OneOrMore,
        CustomParser = static result => [.. result.Tokens.Select(static token => token.Value)], // without reflection
        Description = "Files, folders (recipes, saved pages and JSON-LD files in them, at any depth), or - for standard input. A file whose name starts with a dash is written ./-name.",
    };

    private readonly Option<string> _format = new("--format")
    {
        HelpName = "text|markdown|html|jsonl|sarif",
        Description = "text for people (the default), markdown and html to print and hand out, jsonl for programs (one JSON object a recipe and line), sarif for editors and code hosts.",
        DefaultValueFactory = static _ => "text",
    };

    private readonly Option<string?> _kitchen = new("--kitchen") { HelpName = "FILE", Description = KitchenWords.FileHelp };
    private readonly Option<string?> _altitude = KitchenOptions.Altitude();
    private readonly Option<string?> _gauge = KitchenOptions.Gauge();
    private readonly Option<string?> _jar = KitchenOptions.Jar();
    private readonly Option<string?> _region = KitchenOptions.Region();
    private readonly Option<string?> _rules = new("--rules") { HelpName = "FOLDER", Description = "Rule pack to judge by, in place of the built-in one." };
    private readonly Option<string?> _aliases = new("--aliases") { HelpName = "FILE", Description = "Your own words for foods: a CSV file with the columns word,food." };
    private readonly Option<string?> _output = OutputFile.Option("Write the reports to a file: whole, or not at all.");
    private readonly Option<bool> _quiet = new("--quiet", "-q") { Description = "One line a recipe: file, outcome and what it means." };

    private readonly Option<string> _input = new("--input")
    {
        HelpName = "auto|markdown|text|html|json-ld|jsonl",
        Description = "What the input is; auto goes by the ending of the name, and for standard input by its first characters.",
        DefaultValueFactory = static _ => RecipeKinds.Auto,
    };

    private readonly Option<string[]> _include = new("--include") { HelpName = "GLOB", Description = "Of a folder take only these, such as \"*.md\" or \"soups/**\"; may be given again." };
    private readonly Option<string[]> _exclude = new("--exclude") { HelpName = "GLOB", Description = "Of a folder leave these out; may be given again." };
    private readonly Option<string?> _failOn = new("--fail-on") { HelpName = "stop|change|caution|note", Description = "Exit with 1 where a finding is of this level or a worse one, else with 0, whatever the verdict." };
    private readonly Option<bool> _summary = new("--summary") { Description = "At the end count outcomes and rules, on standard error." };

    /// <summary>Makes the command.</summary>
    public Command Build()
    {
        KitchenOptions.Limit(_format, ReportFormat.Known);
        KitchenOptions.Limit(_input, RecipeKinds.All);
        KitchenOptions.Limit(_failOn, VetTally.Levels);
        PathGlobs.Limit(_include);
        PathGlobs.Limit(_exclude);
        Command vet = new("vet", "Says whether and how a recipe could be put up in jars, with reasons and sources.")
        {
            _recipes, _format, _kitchen, _altitude, _gauge, _jar, _region, _rules, _aliases, _output, _quiet,
            _input, _include, _exclude, _failOn, _summary,
        };
        _recipes.Validators.Add(result => KitchenOptions.CheckDashes(result, vet));
        vet.SetAction(result => new VetRun(Read(result), standardInput, terminal, around, stop).Run(result.InvocationConfiguration.Output, result.InvocationConfiguration.Error));
        return vet;
    }

    private VetRequest Read(ParseResult result) => new(
        result.GetValue(_recipes) ?? [],
        result.GetValue(_format) ?? "text",
        result.GetValue(_kitchen),
        result.GetValue(_altitude),
        result.GetValue(_gauge),
        result.GetValue(_jar),
        result.GetValue(_region),
        result.GetValue(_rules),
        result.GetValue(_aliases),
        result.GetValue(_output),
        result.GetValue(_quiet),
        result.GetValue(_input) ?? RecipeKinds.Auto,
        result.GetValue(_include) ?? [],
        result.GetValue(_exclude) ?? [],
        result.GetValue(_failOn),
        result.GetValue(_summary));
}
