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
    private readonly Option<string?> _method = KitchenOptions.OneOf("--method", "boiling-water|pressure", "Only this way of canning.", Methods);
    private readonly Option<string?> _altitude = KitchenOptions.Altitude();
    private readonly Option<string?> _gauge = KitchenOptions.Gauge();
    private readonly Option<string?> _jar = KitchenOptions.Jar();
    private readonly Option<string?> _region = KitchenOptions.Region();

    /// <summary>Makes the command.</summary>
    public Command Build()
    {
        Command table = new("table", "Looks published processes up by food, jar, method and altitude.") { _food, _method, _altitude, _gauge, _jar, _region };
        _food.Validators.Add(result => KitchenOptions.CheckDashes(result, table));
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
}
