using System.Collections.Immutable;
using System.CommandLine;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Records;
using ShelfSafe.Reports;
using ShelfSafe.Reports.Batches;
using ShelfSafe.Verdict;

namespace ShelfSafe.Cli;

/// <summary>The command <c>batch import</c>: all batches of a file, or none.</summary>
/// <remarks>
/// A file cannot grant itself a shelf date: each batch that says it was put up by a published process is judged again,
/// by its own recipe, kitchen and process and the rules of today, and counts only if both agree.
/// </remarks>
internal sealed class BatchImportCommand(Func<Stream> standardInput, Terminal terminal, Func<DateOnly> today)
{
    private const int MostFaults = 20;

    private readonly Argument<string> _file = new("FILE") { Description = "A file of batch export, or - for standard input." };
    private readonly Option<string?> _format = KitchenOptions.OneOf("--format", "jsonl|csv", "What the file is; without it, by the ending of its name.", BatchExchange.Formats);
    private readonly Option<string?> _log = BatchOptions.Log();

    /// <summary>Makes the command.</summary>
    public Command Build()
    {
        Command import = new("import", "Takes batches of an export in: all or none, and none is ever overwritten.") { _file, _format, _log };
        import.SetAction(result => BatchCommand.Guard(result, () => Run(result)));
        return import;
    }

    private static ImmutableArray<BatchRecord> Judged(ImmutableArray<ImportRow> rows)
    {
        Dictionary<string, RecipeVetter> vetters = new(StringComparer.Ordinal);
        return [.. rows.Select(row => row.Batch.Published ? Judged(row.Batch, vetters) : row.Batch)];
    }

    private static BatchRecord Judged(BatchRecord batch, Dictionary<string, RecipeVetter> vetters)
    {
        if (!vetters.TryGetValue(batch.Region, out RecipeVetter? vetter))
        {
            vetters[batch.Region] = vetter = RecipeVetter.Create(RulePack.Default, batch.Region);
        }

        Kitchen kitchen = new(batch.AltitudeFeet, batch.Process.Gauge, batch.Process.Jar, batch.Region) { Canners = BatchAddCommand.CannersOf(batch.Process, []) };
        PublishedAnswer answer = PublishedJudge.Judge(vetter.Vet(batch.Recipe, kitchen, batch.PlainText), batch.Process, RulePack.Default);
        return answer.Published
            ? batch with { Process = answer.Process, Boil = batch.Boil || answer.Boil }
            : batch with { Process = answer.Process, Boil = batch.Boil || answer.Boil, Published = false };
    }

    private void Run(ParseResult result)
    {
        string path = result.GetValue(_file)!;
        if (TextFile.Read(path, standardInput, out string wrong) is not { } text)
        {
            throw new BatchLogException($"{path}: {wrong}");
        }

        ImmutableArray<ImportRow> rows = BatchExchange.Read(text, result.GetValue(_format) ?? Format(path), out ImmutableArray<ImportFault> faults);
        Stop(result, path, faults);
        Stop(result, path, [.. rows.Where(row => row.Batch.Date > today()).Select(row => new ImportFault(row.Line, FormattableString.Invariant($"lot {row.Batch.Lot} is dated {Days.Of(row.Batch.Date)}, which is yet to come")))]);
        ImmutableArray<BatchRecord> batches = Judged(rows);
        using BatchLog log = BatchLog.Open(BatchOptions.Place(result.GetValue(_log), make: true), create: true);
        ImmutableArray<string> known = log.Import(batches);
        Stop(result, path, [.. rows.Where(row => known.Contains(row.Batch.Lot, StringComparer.Ordinal)).Select(static row => new ImportFault(row.Line, $"lot {row.Batch.Lot} stands in the log already; nothing is overwritten"))]);
        Words words = Words.Read();
        string[] lowered = [.. rows.Zip(batches).Where(static pair => pair.First.Batch.Published && !pair.Second.Published).Select(static pair => pair.Second.Lot)];
        new BatchText(result.InvocationConfiguration.Output, words, terminal.Style, RulePack.Default).WriteImported(batches.Length, lowered);
    }

    private static string Format(string path) =>
        string.Equals(Path.GetExtension(path), ".csv", StringComparison.OrdinalIgnoreCase) ? "csv" : "jsonl";

    // Each broken row is told by its line; the last line says that nothing was changed.
    private static void Stop(ParseResult result, string path, ImmutableArray<ImportFault> faults)
    {
        foreach (ImportFault fault in faults.Take(MostFaults))
        {
            App.Complain(result.InvocationConfiguration.Error, FormattableString.Invariant($"{path}:{fault.Line}: {fault.Message}"));
        }

        if (!faults.IsEmpty)
        {
            throw new BatchLogException(FormattableString.Invariant($"{path}: {faults.Length} broken {(faults.Length == 1 ? "row" : "rows")}; nothing was taken in"));
        }
    }
}
