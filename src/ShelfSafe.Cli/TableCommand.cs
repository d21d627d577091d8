using System.CommandLine;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Reports;
using ShelfSafe.Verdict;

namespace ShelfSafe.Cli;

/// <summary>The command <c>table</c>: published processes for a cook who has no recipe in hand.</summary>
internal sealed class TableCommand(Terminal terminal)
{
    private static readonly string[] Methods = ["boiling-water", "pressure"];

    private readonly Argument<string[]> _food = new("FOOD") { Arity = ArgumentArity.OneOrMore, Description = "A food or a published product, for instance: green beans." };
    private readonly Option<string?> _method = new("--method") { HelpName = "boiling-water|pressure", Description = "Only this way of canning." };
    private readonly Option<string?> _altitude = new("--altitude") { HelpName = "\"1350 ft\"|\"410 m\"", Description = "Altitude above sea level, with its unit." };
    private readonly Option<string?> _gauge = new("--gauge") { HelpName = "dial|weighted", Description = "Gauge of the pressure canner." };
    private readonly Option<string?> _jar = new("--jar") { HelpName = "SIZE", Description = $"Jar size: {string.Join(", ", KitchenWords.Jars)}." };
    private readonly Option<string?> _region = new("--region") { HelpName = "CODE", Description = "Country whose words are used." };

    /// <summary>Makes the command.</summary>
    public Command Build()
    {
        _method.Validators.Add(static result => OneOf(result, Methods));
        _gauge.Validators.Add(static result => OneOf(result, KitchenWords.Gauges));
        _jar.Validators.Add(static result => OneOf(result, KitchenWords.Jars));
        _region.Validators.Add(static result => OneOf(result, KitchenWords.Regions));
        _altitude.Validators.Add(static result =>
        {
            if (result.Tokens.Count == 1 && !Altitude.TryRead(result.Tokens[0].Value, out _, out string wrong))
            {
                result.AddError($"--altitude: {wrong}");
            }
        });
        Command table = new("table", "Looks published processes up by food, jar, method and altitude.") { _food, _method, _altitude, _gauge, _jar, _region };
        table.SetAction(Run);
        return table;
    }

    private int Run(ParseResult result)
    {
        double? feet = result.GetValue(_altitude) is { } text && Altitude.TryRead(text, out double read, out _) ? read : null;
        string region = result.GetValue(_region) ?? string.Empty;
        Kitchen kitchen = new(feet, result.GetValue(_gauge), result.GetValue(_jar), region);
        ProcessAnswer answer = ProcessTable.Create(RulePack.Default, region).Find(string.Join(' ', result.GetValue(_food) ?? []), kitchen, result.GetValue(_method));
        new TableReport(Words.Read(), terminal.Style).Write(result.InvocationConfiguration.Output, answer, kitchen);
        return answer.Lines.IsEmpty ? ExitCode.Verdict : ExitCode.Permitted;
    }

    private static void OneOf(System.CommandLine.Parsing.OptionResult result, IReadOnlyList<string> allowed)
    {
        if (result.Tokens.Count == 1 && !allowed.Contains(result.Tokens[0].Value, StringComparer.Ordinal))
        {
            result.AddError($"{result.Option.Name}: \"{result.Tokens[0].Value}\" is not known; known: {string.Join(", ", allowed)}");
        }
    }
}
