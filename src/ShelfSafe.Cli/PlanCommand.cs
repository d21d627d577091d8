using System.CommandLine;
using System.Globalization;
using ShelfSafe.Plans;
using ShelfSafe.Reports;
using ShelfSafe.Verdict;

namespace ShelfSafe.Cli;

/// <summary>The command <c>plan</c>: the run sheet of a session in this kitchen.</summary>
internal sealed class PlanCommand(Func<Stream> standardInput, Surroundings around)
{
    private readonly RecipeInput _input = new(standardInput, around);
    private readonly Argument<string[]> _recipes = new("RECIPE") { Arity = ArgumentArity.OneOrMore, Description = "The recipes of one session: files, or - for standard input." };
    private readonly Option<string?> _start = Time("--start", "When the work at the stove starts.");
    private readonly Option<string?> _supper = Time("--supper", "When the last jar must be out.");
    private readonly Option<string?> _format = KitchenOptions.OneOf("--format", "text|markdown|html", "text (the default), markdown or html to print.", PlanReport.Formats);
    private readonly Option<string?> _output = OutputFile.Option("Write it to a file: whole, or not at all.");

    /// <summary>Makes the command.</summary>
    public Command Build()
    {
        Command plan = new("plan", "Writes the run sheet for recipes with a published process. Exit code 0: written; 1: a recipe has no process as written; 2: wrong use.") { _recipes, _start, _supper, _format, _output };
        _input.AddTo(plan);
        plan.Validators.Add(result =>
        {
            if (result.GetValue(_start) is not null && result.GetValue(_supper) is not null)
            {
                result.AddError("plan takes --start or --supper, not both");
            }
        });
        plan.SetAction(result => Run(result, message => App.Complain(result.InvocationConfiguration.Error, message)));
        return plan;
    }

    private static Option<string?> Time(string name, string description)
    {
        Option<string?> option = new(name) { HelpName = "HH:MM", Description = description };
        option.Validators.Add(result =>
        {
            if (result.Tokens.Count == 1 && Minutes(result.Tokens[0].Value) is null)
            {
                result.AddError($"{name}: \"{result.Tokens[0].Value}\" is no time of day; write it like 14:00");
            }
        });
        return option;
    }

    private static int? Minutes(string? text) =>
        text?.Split(':') is [{ Length: 1 or 2 } hours, { Length: 2 } minutes]
        && int.TryParse(hours, NumberStyles.None, CultureInfo.InvariantCulture, out int hour)
        && int.TryParse(minutes, NumberStyles.None, CultureInfo.InvariantCulture, out int minute)
        && hour < 24 && minute < 60
            ? (hour * 60) + minute
            : null;

    private int Run(ParseResult result, Action<string> complain)
    {
        if (!_input.IsFree(result, result.GetValue(_output), result.GetValue(_recipes) ?? [], complain) || _input.Setup(result, complain) is not { } setup)
        {
            return ExitCode.Trouble;
        }

        List<(string, VettingReport)> recipes = [];
        int worst = ExitCode.Permitted;
        foreach (string path in result.GetValue(_recipes) ?? [])
        {
            if (_input.Text(path, complain) is not { } text)
            {
                return ExitCode.Trouble;
            }

            VettingReport report = setup.Vetter.Vet(text, setup.Kitchen);
            string problem = PlanChoice.Of(report).Problem;
            if (problem.Length > 0)
            {
                complain($"{path}: {PlanWords.Problem(Words.Read(), problem, report)}");
                worst = Math.Max(worst, problem is "no-process" or "canner" or "no-row" ? ExitCode.Verdict : ExitCode.Trouble);
            }

            recipes.Add((report.Title ?? path, report));
        }

        if (worst != ExitCode.Permitted)
        {
            return worst;
        }

        RunSheet sheet = RunSheetBuilder.Create(setup.Rules).Build(recipes);
        int? start = Minutes(result.GetValue(_start)) ?? (Minutes(result.GetValue(_supper)) is { } supper ? supper - sheet.LongestMinutes : null);
        bool written = OutputFile.Write(result.GetValue(_output), result.InvocationConfiguration.Output, complain, output => new PlanReport(Words.Read()).Write(output, sheet, start, result.GetValue(_format) ?? "text"));
        return written ? ExitCode.Permitted : ExitCode.Trouble;
    }
}
