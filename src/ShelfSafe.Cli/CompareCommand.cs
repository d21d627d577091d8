using System.CommandLine;
using ShelfSafe.Changes;
using ShelfSafe.Reports;
using ShelfSafe.Verdict;

namespace ShelfSafe.Cli;

/// <summary>The command <c>compare</c>: what a kitchen change does, or a recipe beside a published formula.</summary>
internal sealed class CompareCommand(Func<Stream> standardInput, Terminal terminal, Surroundings around)
{
    private static readonly string[] Formats = ["text", "jsonl"];

    private readonly RecipeInput _input = new(standardInput, around);
    private readonly Argument<string> _before = new("BEFORE") { Description = "The recipe as it was: a file, or - for standard input." };
    private readonly Argument<string?> _after = new("AFTER") { Arity = ArgumentArity.ZeroOrOne, Description = "The recipe as it is now." };
    private readonly Option<string?> _with = FormulaChoice.Option("--with", "Compare with a published recipe instead, by its id or name.");
    private readonly Option<string?> _format = KitchenOptions.OneOf("--format", "text|jsonl", "text for people (the default), jsonl for programs.", Formats);

    /// <summary>Makes the command.</summary>
    public Command Build()
    {
        Command compare = new("compare", "Says what a kitchen change does to the jar. Exit code 0: no change that matters; 1: some; 2: wrong use.") { _before, _after, _with, _format };
        _input.AddTo(compare);
        compare.Validators.Add(result =>
        {
            bool second = result.GetValue(_after) is not null;
            if (second == result.GetValue(_with) is not null)
            {
                result.AddError(second ? "compare takes a second recipe or --with, not both" : "compare needs a second recipe, or --with and the name of a published one");
            }
        });
        compare.SetAction(result => Run(result, message => App.Complain(result.InvocationConfiguration.Error, message)));
        return compare;
    }

    private int Run(ParseResult result, Action<string> complain)
    {
        string before = result.GetValue(_before)!;
        if (_input.Setup(result, complain) is not { } setup || _input.Text(before, complain) is not { } text)
        {
            return ExitCode.Trouble;
        }

        return result.GetValue(_with) is { } formula
            ? With(result, setup, before, text, formula, complain)
            : Two(result, setup, before, text, complain);
    }

    private int Two(ParseResult result, VetSetup setup, string before, string text, Action<string> complain)
    {
        string after = result.GetValue(_after)!;
        if (_input.Text(after, complain) is not { } changed)
        {
            return ExitCode.Trouble;
        }

        RecipeComparison comparison = RecipeComparer.Create(setup.Rules).Compare(setup.Vetter.Vet(text, setup.Kitchen), setup.Vetter.Vet(changed, setup.Kitchen));
        TextWriter output = result.InvocationConfiguration.Output;
        if (result.GetValue(_format) == "jsonl")
        {
            CompareJson.Write(output, before, after, comparison);
        }
        else
        {
            new CompareText(Words.Read(), terminal.Style).Write(output, before, after, comparison);
        }

        return comparison.Matters ? ExitCode.Verdict : ExitCode.Permitted;
    }

    private int With(ParseResult result, VetSetup setup, string path, string text, string formula, Action<string> complain)
    {
        if (FormulaChoice.Of(setup.Vetter, formula, complain) is not { } name)
        {
            return ExitCode.Trouble;
        }

        FormulaComparison comparison = setup.Vetter.Against(text, name.Id)!;
        TextWriter output = result.InvocationConfiguration.Output;
        if (result.GetValue(_format) == "jsonl")
        {
            CompareJson.Write(output, path, comparison);
        }
        else
        {
            new CompareText(Words.Read(), terminal.Style).Write(output, path, setup.Vetter.Vet(text, setup.Kitchen).Title, comparison);
        }

        return comparison.Points.IsEmpty && comparison.Covers ? ExitCode.Permitted : ExitCode.Verdict;
    }
}
