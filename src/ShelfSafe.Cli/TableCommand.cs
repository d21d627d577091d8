using System.CommandLine;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Reports;
using ShelfSafe.Verdict;

namespace ShelfSafe.Cli;

/// <summary>The command <c>table</c>: published processes for a cook who has no recipe in hand.</summary>
internal sealed class TableCommand(Terminal terminal, Surroundings around)
{
    private static readonly string[] Methods = ["boiling-water", "atmospheric-steam", "pressure"];

    private readonly Argument<string[]> _food = new("FOOD") { Arity = ArgumentArity.OneOrMore, Description = "A food or a published product, for instance: green beans." };
    private readonly Option<string?> _method = KitchenOptions.OneOf("--method", "boiling-water|atmospheric-steam|pressure", "Only this way of canning.", Methods);
    private readonly Option<string?> _kitchen = new("--kitchen") { HelpName = "FILE", Description = KitchenWords.FileHelp };
    private readonly Option<string?> _altitude = KitchenOptions.Altitude();
    private readonly Option<string?> _gauge = KitchenOptions.Gauge();
    private readonly Option<string?> _jar = KitchenOptions.Jar();
    private readonly Option<string?> _region = KitchenOptions.Region();

    /// <summary>Makes the command.</summary>
    public Command Build()
    {
        Command table = new("table", "Looks published processes up by food, jar, method and altitude.") { _food, _method, _kitchen, _altitude, _gauge, _jar, _region };
        _food.Validators.Add(result => KitchenOptions.CheckDashes(result, table));
        table.SetAction(Run);
        return table;
    }

    private int Run(ParseResult result)
    {
        if (VetSetup.Profile(result.GetValue(_kitchen), around, message => App.Complain(result.InvocationConfiguration.Error, message)) is not { } profile)
        {
            return ExitCode.Trouble;
        }

        Kitchen kitchen = VetSetup.KitchenOf(profile, around);
        double? feet = result.GetValue(_altitude) is { } text && Altitude.TryRead(text, out double read, out _) ? read : kitchen.AltitudeFeet;
        kitchen = kitchen with { AltitudeFeet = feet, Gauge = result.GetValue(_gauge) ?? kitchen.Gauge, Jar = result.GetValue(_jar) ?? kitchen.Jar, Region = result.GetValue(_region) ?? kitchen.Region };
        ProcessAnswer answer = ProcessTable.Create(RulePack.Default, KitchenWords.WordsOf(kitchen.Region)).Find(string.Join(' ', result.GetValue(_food) ?? []), kitchen, result.GetValue(_method));
        new TableReport(Words.Read(), terminal.Style).Write(result.InvocationConfiguration.Output, answer, kitchen);
        return answer.Lines.IsEmpty ? ExitCode.Verdict : ExitCode.Permitted;
    }
}
