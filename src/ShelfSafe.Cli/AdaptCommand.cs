using System.CommandLine;
using ShelfSafe.Changes;
using ShelfSafe.Reports;

namespace ShelfSafe.Cli;

/// <summary>The command <c>adapt</c>: the jar version of a recipe, or its freezer version.</summary>
internal sealed class AdaptCommand(Func<Stream> standardInput, Terminal terminal, Surroundings around)
{
    private readonly RecipeInput _input = new(standardInput, around);
    private readonly Argument<string> _recipe = new("RECIPE") { Description = "The recipe: a file, or - for standard input." };
    private readonly Option<string?> _to = FormulaChoice.Option("--to", "Bring it to the amounts of a published recipe, by its id or name.");
    private readonly Option<string?> _format = KitchenOptions.OneOf("--format", "markdown|text|html|jsonl", "markdown (the default, a recipe again), text, html to print, jsonl for programs.", AdaptReport.Formats);
    private readonly Option<string?> _output = OutputFile.Option("Write it to a file: whole, or not at all.");

    /// <summary>Makes the command.</summary>
    public Command Build()
    {
        Command adapt = new("adapt", "Writes the jar version of a recipe as Markdown, or the freezer version. Exit code 0: a jar version, or nothing to change; 1: none; 2: wrong use.") { _recipe, _to, _format, _output };
        _input.AddTo(adapt);
        adapt.SetAction(result => Run(result, message => App.Complain(result.InvocationConfiguration.Error, message)));
        return adapt;
    }

    private int Run(ParseResult result, Action<string> complain)
    {
        string path = result.GetValue(_recipe)!;
        string? file = result.GetValue(_output);
        if (!_input.IsFree(result, file, [path], complain) || _input.Setup(result, complain) is not { } setup || _input.Text(path, complain) is not { } text)
        {
            return ExitCode.Trouble;
        }

        RecipeAdapter adapter = RecipeAdapter.Create(setup.Vetter, setup.Rules);
        Adaptation adaptation;
        if (result.GetValue(_to) is { } formula)
        {
            if (FormulaChoice.Of(setup.Vetter, formula, complain) is not { } name)
            {
                return ExitCode.Trouble;
            }

            adaptation = adapter.AdaptTo(text, setup.Kitchen, name.Id);
        }
        else
        {
            adaptation = adapter.Adapt(text, setup.Kitchen);
        }

        bool written = OutputFile.Write(file, result.InvocationConfiguration.Output, complain, output => new AdaptReport(Words.Read()).Write(output, path, text, adaptation, result.GetValue(_format) ?? AdaptReport.Formats[0], terminal.Style));
        return !written ? ExitCode.Trouble
            : adaptation.Kind is AdaptationKind.Jar or AdaptationKind.AsWritten ? ExitCode.Permitted
            : ExitCode.Verdict;
    }
}
