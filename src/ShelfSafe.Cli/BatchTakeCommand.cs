using System.CommandLine;
using ShelfSafe.Pack;
using ShelfSafe.Records;
using ShelfSafe.Reports;
using ShelfSafe.Reports.Batches;

namespace ShelfSafe.Cli;

/// <summary>The command <c>batch take</c>: jars leave the shelf.</summary>
internal sealed class BatchTakeCommand(Terminal terminal, Func<DateOnly> today)
{
    private readonly Argument<string> _lot = BatchOptions.Lot();
    private readonly Argument<int?> _jars = new("N") { Arity = ArgumentArity.ExactlyOne, Description = "Jars taken out.", CustomParser = static result => BatchOptions.Whole(result, "N") };
    private readonly Option<DateOnly?> _date = BatchOptions.Date("Day on which they were taken out; today without it.");
    private readonly Option<string?> _log = BatchOptions.Log();

    /// <summary>Makes the command.</summary>
    public Command Build()
    {
        Command take = new("take", "Takes jars out, and says what to look for before they are opened.") { _lot, _jars, _date, _log };
        take.SetAction(result => BatchCommand.Guard(result, () =>
        {
            int jars = result.GetValue(_jars)!.Value;
            using BatchLog log = BatchLog.Open(BatchOptions.Place(result.GetValue(_log), make: false));
            BatchRecord batch = log.Take(result.GetValue(_lot)!, jars, result.GetValue(_date) ?? today());
            new BatchText(result.InvocationConfiguration.Output, Words.Read(), terminal.Style, RulePack.Default).WriteTaken(batch, jars);
        }));
        return take;
    }
}
