using System.CommandLine;
using ShelfSafe.Pack;
using ShelfSafe.Records;
using ShelfSafe.Reports;
using ShelfSafe.Reports.Batches;

namespace ShelfSafe.Cli;

/// <summary>The command <c>batch labels</c>: a sheet to print, one label for each jar that is left.</summary>
internal sealed class BatchLabelsCommand
{
    private readonly Argument<string[]> _lots = new("LOT") { Arity = ArgumentArity.OneOrMore, Description = "Lot codes." };
    private readonly Option<string?> _format = KitchenOptions.OneOf("--format", "html|svg", "A page to print (the default) or a drawing.", LabelSheet.Formats);
    private readonly Option<string?> _output = OutputFile.Option("Write to a file: whole, or not at all.");
    private readonly Option<string?> _log = BatchOptions.Log();

    /// <summary>Makes the command.</summary>
    public Command Build()
    {
        Command labels = new("labels", "Writes labels to print, one for each jar that is left.") { _lots, _format, _output, _log };
        labels.SetAction(result => BatchCommand.Guard(result, () =>
        {
            string place = BatchOptions.Place(result.GetValue(_log), make: false);
            using BatchLog log = BatchLog.Open(place);
            List<BatchRecord> batches = [.. result.GetValue(_lots)!.Select(log.Find)];
            foreach (BatchRecord batch in batches.Where(static batch => batch.InStock == 0))
            {
                throw new BatchLogException($"{batch.Lot}: no jar is left to label");
            }

            string sheet = new LabelSheet(Words.Read(), RulePack.Default).Write(batches, result.GetValue(_format) ?? "html");
            BatchCommand.Write(sheet, result.GetValue(_output), place, result.InvocationConfiguration.Output);
        }));
        return labels;
    }
}
