using System.Collections.Immutable;
using System.Globalization;
using ShelfSafe.Records;
using Xunit;

namespace ShelfSafe.Tests.Records;

public class BatchExchangeTests
{
    private static readonly BatchRecord[] _batches = [SampleBatch.Soup with { Lot = "2024-10-03-A" }, SampleBatch.Chowder with { Lot = "2024-10-03-B" }];

    [Theory]
    [InlineData("jsonl", "tr-TR")]
    [InlineData("jsonl", "de-DE")]
    [InlineData("csv", "tr-TR")]
    [InlineData("csv", "de-DE")]
    public void Write_ThenRead_GivesTheSameBatchesInEveryCulture(string format, string culture)
    {
        string invariant = BatchExchange.Write(_batches, format);
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal(invariant, BatchExchange.Write(_batches, format));
            ImmutableArray<ImportRow> rows = BatchExchange.Read("\uFEFF" + invariant, format, out ImmutableArray<ImportFault> faults);

            Assert.Empty(faults);
            Assert.Equal(2, rows.Length);
            BatchLogTests.Same(_batches[0], rows[0].Batch);
            BatchLogTests.Same(_batches[1], rows[1].Batch);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Write_ATextThatASpreadsheetWouldRun_IsGuarded()
    {
        Assert.Contains(",'=1+1 is no formula here\n", BatchExchange.Write(_batches, "csv"), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_BrokenJsonLines_NamesEachByItsLine()
    {
        string good = BatchExchange.Write(_batches, "jsonl");
        string[] lines = good.TrimEnd('\n').Split('\n');
        string broken = string.Join('\n', lines[0], "{", lines[1].Replace("\"jars\":3", "\"jars\":-3", StringComparison.Ordinal), "", lines[0], lines[1].Replace("2024-10-03-B", "2024-10-04-B", StringComparison.Ordinal), lines[1].Replace("\"jars\":3", "\"jars\":\"3\"", StringComparison.Ordinal), lines[1].Replace("\"notes\"", "\"note\"", StringComparison.Ordinal));

        BatchExchange.Read(broken, "jsonl", out ImmutableArray<ImportFault> faults);

        Assert.Equal([2, 3, 5, 6, 7, 8], faults.Select(static fault => fault.Line));
    }

    [Fact]
    public void Read_BrokenCsv_NamesTheLineOnWhichTheRowBegins()
    {
        string good = BatchExchange.Write(_batches, "csv");

        // The soup's recipe has four line breaks, so its row takes lines 2 to 6 and the chowder's begins on line 7.
        string broken = good.Replace("chowder", "chowder,more", StringComparison.Ordinal) + "2024-10-03-C,\"open\n";
        BatchExchange.Read(broken, "csv", out ImmutableArray<ImportFault> faults);

        int second = good[..good.IndexOf("2024-10-03-B", StringComparison.Ordinal)].ReplaceLineEndings("\n").Count(static sign => sign == '\n') + 1;
        Assert.Equal(2, faults.Length);
        Assert.Equal(second, faults[0].Line);
        Assert.Contains("left open", faults[1].Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("csv", "")]
    [InlineData("csv", "lot,date\n")]
    [InlineData("jsonl", "[]")]
    [InlineData("jsonl", "{\"lot\":\"2024-10-03-A\"}")]
    public void Read_AnotherFile_IsAFault(string format, string text)
    {
        ImmutableArray<ImportRow> rows = BatchExchange.Read(text, format, out ImmutableArray<ImportFault> faults);

        Assert.Empty(rows);
        Assert.Single(faults);
    }
}
