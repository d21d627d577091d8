using System.CommandLine;
using ShelfSafe.Pack;
using ShelfSafe.Records;
using ShelfSafe.Reports;
using ShelfSafe.Reports.Batches;

namespace ShelfSafe.Cli;

/// <summary>The command <c>batch seal</c>: records what the lids told after 12 to 24 hours.</summary>
internal sealed class BatchSealCommand(Terminal terminal, Func<DateOnly> today)
{
    private readonly Argument<string> _lot = BatchOptions.Lot();
    private readonly Option<int?> _whole = BatchOptions.Whole("--sealed", "Jars that sealed.");
    private readonly Option<int?> _failed = BatchOptions.Whole("--failed", "Jars that did not seal or broke.");
    private readonly Option<string?> _log = BatchOptions.Log();

    /// <summary>Both counts, where one is told and the other follows from all jars.</summary>
    public static (int? Whole, int? Failed) Both(int? whole, int? failed, int jars) =>
        whole is null && failed is null ? (null, null) : (whole ?? (jars - failed), failed ?? (jars - whole));

    /// <summary>Makes the command.</summary>
    public Command Build()
    {
        Command seal = new("seal", "Records how many jars sealed.") { _lot, _whole, _failed, _log };
        seal.SetAction(result => BatchCommand.Guard(result, () =>
        {
            if (result.GetValue(_whole) is null && result.GetValue(_failed) is null)
            {
                throw new BatchLogException("tell how many jars sealed or failed: --sealed N --failed N");
            }

            using BatchLog log = BatchLog.Open(BatchOptions.Place(result.GetValue(_log), make: false));
            string lot = result.GetValue(_lot)!;
            (int? whole, int? failed) = Both(result.GetValue(_whole), result.GetValue(_failed), log.Find(lot).Jars);
            BatchRecord batch = log.Seal(lot, whole!.Value, failed!.Value);
            new BatchText(result.InvocationConfiguration.Output, Words.Read(), terminal.Style, RulePack.Default).WriteSealed(batch, today());
        }));
        return seal;
    }
}
