using System.CommandLine;
using ShelfSafe.Pack;
using ShelfSafe.Records;
using ShelfSafe.Reports;
using ShelfSafe.Reports.Batches;

namespace ShelfSafe.Cli;

/// <summary>The command <c>batch show</c>.</summary>
internal sealed class BatchShowCommand(Terminal terminal, Func<DateOnly> today)
{
    private readonly Argument<string> _lot = BatchOptions.Lot();
    private readonly Option<string?> _log = BatchOptions.Log();

    /// <summary>Makes the command.</summary>
    public Command Build()
    {
        Command show = new("show", "Shows one batch whole, with the recipe as it was.") { _lot, _log };
        show.SetAction(result => BatchCommand.Guard(result, () =>
        {
            using BatchLog log = BatchLog.Open(BatchOptions.Place(result.GetValue(_log), make: false));
            TextWriter output = result.InvocationConfiguration.Output;
            new BatchText(output, Words.Read(), terminal.Style, RulePack.Default).WriteBatch(log.Find(result.GetValue(_lot)!), today(), output);
        }));
        return show;
    }
}
