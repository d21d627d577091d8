using System.Collections.Immutable;
using Microsoft.Data.Sqlite;
using ShelfSafe.Records;
using ShelfSafe.Tests.Cli;
using Xunit;

namespace ShelfSafe.Tests.Records;

public sealed class BatchLogTests : IDisposable
{
    private readonly Kitchenette _kitchen = new();

    private string LogFile => _kitchen.Path("batches.db");

    public void Dispose() => _kitchen.Dispose();

    [Fact]
    public void Add_AnyBatch_ComesBackWholeFromAnotherConnection()
    {
        string soup;
        string chowder;
        using (BatchLog log = BatchLog.Open(LogFile, create: true))
        {
            soup = log.Add(SampleBatch.Soup);
            chowder = log.Add(SampleBatch.Chowder);
        }

        using BatchLog again = BatchLog.Open(LogFile);

        Same(SampleBatch.Soup with { Lot = "2024-10-03-A" }, again.Find(soup));
        Same(SampleBatch.Chowder with { Lot = "2024-10-03-B" }, again.Find(chowder.ToLowerInvariant()));
        Assert.Equal("ok", again.Integrity());
    }

    [Fact]
    public void Add_ManyOfADayFromTwoConnections_EachGetsItsOwnLot()
    {
        BatchLog.Open(LogFile, create: true).Dispose();
        string[] lots = [.. Enumerable.Range(0, 2).AsParallel().WithDegreeOfParallelism(2).SelectMany(_ =>
        {
            using BatchLog log = BatchLog.Open(LogFile);
            return Enumerable.Range(0, 25).Select(_ => log.Add(SampleBatch.Soup)).ToArray();
        })];

        Assert.Equal(50, lots.Distinct(StringComparer.Ordinal).Count());
        using BatchLog all = BatchLog.Open(LogFile);
        Assert.Equal(50, all.All().Length);
        Assert.Contains("2024-10-03-AA", lots); // after A to Z without I, O and Q
    }

    [Fact]
    public void Open_AnOlderSchema_IsMigratedAfterACopyBesideIt()
    {
        using (BatchLog old = BatchLog.Open(LogFile, create: true, BatchSchema.Steps[..1], null))
        {
            old.Add(SampleBatch.Chowder);
        }

        File.WriteAllText(LogFile + ".v1.bak", "an older copy"); // is kept
        using (BatchLog log = BatchLog.Open(LogFile))
        {
            Same(SampleBatch.Chowder with { Lot = "2024-10-03-A" }, log.Find("2024-10-03-A"));
            Assert.Equal(2, log.Take("2024-10-03-A", 1, SampleBatch.Day).InStock);
        }

        Assert.Equal("an older copy", File.ReadAllText(LogFile + ".v1.bak"));
        Assert.Equal(1L, Ask(LogFile + ".v1.2.bak", "PRAGMA user_version"));
        Assert.Equal(1L, Ask(LogFile + ".v1.2.bak", "SELECT count(*) FROM batches"));
        Assert.Equal((long)BatchSchema.Steps.Length, Ask(LogFile, "PRAGMA user_version"));
    }

    [Fact]
    public void Open_ANewerSchema_IsRefusedAndLeftAsItWas()
    {
        BatchLog.Open(LogFile, create: true, [.. BatchSchema.Steps, "CREATE TABLE cellars (id INTEGER PRIMARY KEY)"], null).Dispose();
        byte[] before = File.ReadAllBytes(LogFile);

        BatchLogException trouble = Assert.Throws<BatchLogException>(() => BatchLog.Open(LogFile, create: true));

        Assert.Contains("newer version", trouble.Message, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(LogFile));
    }

    [Fact]
    public void Open_AnotherProgramsDatabase_IsRefusedAndLeftAsItWas()
    {
        Ask(LogFile, "CREATE TABLE birds (id INTEGER); SELECT 1", SqliteOpenMode.ReadWriteCreate);
        byte[] before = File.ReadAllBytes(LogFile);

        Assert.Contains("no batch log", Assert.Throws<BatchLogException>(() => BatchLog.Open(LogFile, create: true)).Message, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(LogFile));
    }

    [Fact]
    public void Write_OnAFullDisk_SaysSoAndChangesNothing()
    {
        using (BatchLog log = BatchLog.Open(LogFile, create: true))
        {
            log.Add(SampleBatch.Soup);
        }

        using (BatchLog full = BatchLog.Open(LogFile, create: false, BatchSchema.Steps, mostPages: 20))
        {
            BatchRecord large = SampleBatch.Soup with { Recipe = new string('x', 500_000) };
            Assert.Contains("disk is full", Assert.Throws<BatchLogException>(() => full.Add(large)).Message, StringComparison.Ordinal);
            Assert.Contains("disk is full", Assert.Throws<BatchLogException>(() => full.Import([SampleBatch.Chowder with { Lot = "2024-10-03-X" }, large with { Lot = "2024-10-03-Y" }])).Message, StringComparison.Ordinal);
        }

        using BatchLog again = BatchLog.Open(LogFile);
        Assert.Single(again.All());
        Assert.Equal("ok", again.Integrity());
    }

#pragma warning disable CA1849 // SQLite's asynchronous calls block all the same.
    [Fact]
    public async Task Change_WhileAnotherHoldsTheFile_WaitsForIt()
    {
        using BatchLog log = BatchLog.Open(LogFile, create: true);
        using SqliteConnection other = new($"Data Source={LogFile};Pooling=False");
        other.Open();
        SqliteTransaction held = other.BeginTransaction(deferred: false);
        Task<string> waiting = Task.Run(() => log.Add(SampleBatch.Soup), TestContext.Current.CancellationToken);

        await Task.Delay(200, TestContext.Current.CancellationToken);
        Assert.False(waiting.IsCompleted);
        held.Rollback();
        held.Dispose();

        Assert.Equal("2024-10-03-A", await waiting);
    }
#pragma warning restore CA1849

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(4)] // 6 sealed, 3 taken out: 3 are there
    public void Take_MoreThanThereAreOrLessThanOne_ChangesNothing(int jars)
    {
        using BatchLog log = BatchLog.Open(LogFile, create: true);
        string lot = log.Add(SampleBatch.Soup);

        Assert.Throws<BatchLogException>(() => log.Take(lot, jars, SampleBatch.Day));
        Assert.Equal(3, log.Find(lot).InStock);
        Assert.Equal(0, log.Take(lot, 3, SampleBatch.Day).InStock);
    }

    [Theory]
    [InlineData(6, 2)] // more than there were
    [InlineData(-1, 8)]
    [InlineData(2, 5)] // 3 were taken out already
    public void Seal_CountsThatDoNotFit_ChangeNothing(int whole, int failed)
    {
        using BatchLog log = BatchLog.Open(LogFile, create: true);
        string lot = log.Add(SampleBatch.Soup);

        Assert.Throws<BatchLogException>(() => log.Seal(lot, whole, failed));
        Assert.Equal((6, 1), (log.Find(lot).Sealed, log.Find(lot).Failed));
    }

    [Fact]
    public void Import_ALotThatStandsThere_TakesNothingInAndNamesIt()
    {
        using BatchLog log = BatchLog.Open(LogFile, create: true);
        string lot = log.Add(SampleBatch.Soup);

        ImmutableArray<string> known = log.Import([SampleBatch.Chowder with { Lot = "2024-10-03-C" }, SampleBatch.Chowder with { Lot = lot }]);

        Assert.Equal([lot], known);
        Same(SampleBatch.Soup with { Lot = lot }, Assert.Single(log.All()));
    }

    [Theory]
    [InlineData(1, "2024-10-03-A")]
    [InlineData(8, "2024-10-03-H")]
    [InlineData(9, "2024-10-03-J")]
    [InlineData(23, "2024-10-03-Z")]
    [InlineData(24, "2024-10-03-AA")]
    [InlineData(553, "2024-10-03-AAA")]
    public void LotCode_AnyNumber_ReadsBack(int number, string code)
    {
        Assert.Equal(code, LotCode.Of(SampleBatch.Day, number));
        Assert.True(LotCode.TryRead(code, out DateOnly day, out int read));
        Assert.Equal((SampleBatch.Day, number), (day, read));
    }

    internal static void Same(BatchRecord expected, BatchRecord actual)
    {
        Assert.Equal(expected.Takings, actual.Takings);
        Assert.Equal(expected with { Takings = [] }, actual with { Takings = [] });
    }

    private static object? Ask(string file, string sql, SqliteOpenMode mode = SqliteOpenMode.ReadOnly)
    {
        using SqliteConnection connection = new(new SqliteConnectionStringBuilder { DataSource = file, Mode = mode, Pooling = false }.ToString());
        connection.Open();
        using SqliteCommand command = connection.CreateCommand();
#pragma warning disable CA2100 // The tests' own statements.
        command.CommandText = sql;
#pragma warning restore CA2100
        return command.ExecuteScalar();
    }
}
