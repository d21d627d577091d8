using System.CommandLine;
using ShelfSafe.Pack;
using ShelfSafe.Records;
using ShelfSafe.Reports;
using ShelfSafe.Reports.Batches;

namespace ShelfSafe.Cli;

/// <summary>The command <c>batch check</c>: what to do with the jar in the hand.</summary>
internal sealed class BatchCheckCommand(Terminal terminal, Func<DateOnly> today)
{
    private readonly Argument<string[]> _sign = new("SIGN") { Arity = ArgumentArity.ZeroOrMore, Description = "What you see on the jar, such as bulging; without it all signs are listed." };
    private readonly Option<string?> _lot = new("--lot") { HelpName = "LOT", Description = "Lot code of the jar, where you know it." };
    private readonly Option<DateOnly?> _date = BatchOptions.Date("Day on which you look at the jar; today without it.");
    private readonly Option<string?> _log = BatchOptions.Log();

    /// <summary>Makes the command.</summary>
    public Command Build()
    {
        Command check = new("check", "Says what published guidance asks you to do with a doubtful jar.") { _sign, _lot, _date, _log };
        check.SetAction(result => BatchCommand.Guard(result, () => Run(result)));
        return check;
    }

    private void Run(ParseResult result)
    {
        JarsInHand jars = new(RulePack.Default);
        JarText text = new(result.InvocationConfiguration.Output, Words.Read(), terminal.Style);
        string sign = string.Join(' ', result.GetValue(_sign) ?? []);
        if (sign.Length == 0)
        {
            text.WriteSigns(jars.Signs);
            return;
        }

        if (jars.Find(sign) is not { } card)
        {
            throw new BatchLogException($"sign \"{sign}\" is not known; nearest: {string.Join(", ", jars.Nearest(sign).Select(static near => near.Id))}. \"batch check\" lists all. Never taste a doubtful jar.");
        }

        BatchRecord? batch = null;
        if (result.GetValue(_lot) is { } lot)
        {
            using BatchLog log = BatchLog.Open(BatchOptions.Place(result.GetValue(_log), make: false));
            batch = log.Find(lot);
        }

        text.WriteAnswer(jars.Answer(card, batch, result.GetValue(_date) ?? today()));
    }
}
