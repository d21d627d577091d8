using System.CommandLine;
using ShelfSafe.Records;

namespace ShelfSafe.Cli;

/// <summary>The command <c>batch export</c>.</summary>
internal sealed class BatchExportCommand
{
    private readonly Option<string?> _format = KitchenOptions.OneOf("--format", "jsonl|csv", "One JSON object a batch and line (the default), or a table.", BatchExchange.Formats);
    private readonly Option<string?> _output = OutputFile.Option("Write to a file: whole, or not at all.");
    private readonly Option<string?> _log = BatchOptions.Log();

    /// <summary>Makes the command.</summary>
    public Command Build()
    {
        Command export = new("export", "Writes all batches out, for another program or another log.") { _format, _output, _log };
        export.SetAction(result => BatchCommand.Guard(result, () =>
        {
            string place = BatchOptions.Place(result.GetValue(_log), make: false);
            using BatchLog log = BatchLog.Open(place);
            string text = BatchExchange.Write(log.All(), result.GetValue(_format) ?? "jsonl");
            BatchCommand.Write(text, result.GetValue(_output), place, result.InvocationConfiguration.Output);
        }));
        return export;
    }
}
