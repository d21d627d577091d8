using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;
using ShelfSafe.Records;
using ShelfSafe.Tests.Cli;
using Xunit;

namespace ShelfSafe.Tests.Records;

/// <summary>Kills a writing process at 200 random moments: what was acknowledged is there, and the file is sound.</summary>
public sealed class BatchKillTests : IDisposable
{
    private const int Lanes = 4; // each with a log of its own, so that the test is not bound by the start of processes
    private const int RoundsOfALane = 50;
    private const int ImportSize = 20; // as in the writer
    private const int LongestWaitMs = 20;
    private const int MostAwaited = 5;

    private readonly Kitchenette _kitchen = new();

    public void Dispose() => _kitchen.Dispose();

    [Fact]
    public async Task Write_KilledAt200RandomMoments_KeepsAllThatWasAcknowledged()
    {
        int[] cutShort = await Task.WhenAll(Enumerable.Range(0, Lanes).Select(lane => Task.Run(() => Lane(lane))));

        // Some of the kills must have come in the middle of a write, or the test would prove nothing.
        Assert.True(cutShort.Sum() > 0);
    }

    private int Lane(int lane)
    {
        Random random = new(lane); // a fixed seed
        string file = _kitchen.Path($"lane{lane}.db");
        HashSet<string> acknowledged = new(StringComparer.Ordinal);
        int cutShort = 0;
        for (int round = 0; round < RoundsOfALane; round++)
        {
#pragma warning disable CA5394 // A repeatable choice of moments; nothing secret hangs on it.
            acknowledged.UnionWith(WriteAndKill(file, round, random.Next(MostAwaited), random.Next(LongestWaitMs)));
#pragma warning restore CA5394
            cutShort += File.Exists(file + "-journal") ? 1 : 0;
            using BatchLog log = BatchLog.Open(file);
            Assert.Equal("ok", log.Integrity());
            BatchRecord[] held = [.. log.All()];
            Assert.Empty(acknowledged.Except(held.Select(static batch => batch.Lot), StringComparer.Ordinal));
            Assert.All(held.Where(static batch => batch.Date.Year < 2010).GroupBy(static batch => batch.Date), static import => Assert.Equal(0, import.Count() % ImportSize));
        }

        Assert.True(acknowledged.Count > RoundsOfALane, $"only {acknowledged.Count} batches were acknowledged");
        return cutShort;
    }

    // The moment is some acknowledged batches and some milliseconds after the start, so that a slow machine is killed in its writes too.
    private static List<string> WriteAndKill(string file, int round, int awaited, int waitMs)
    {
        ProcessStartInfo start = new(Dotnet()) { RedirectStandardOutput = true, UseShellExecute = false };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "ShelfSafe.BatchWriter.dll"));
        start.ArgumentList.Add(file);
        start.ArgumentList.Add(round.ToString(CultureInfo.InvariantCulture));
        using Process writer = Process.Start(start)!;
        Assert.Equal("ready", writer.StandardOutput.ReadLine());
        List<string> told = [.. Enumerable.Range(0, awaited).Select(_ => writer.StandardOutput.ReadLine()!)];
        Thread.Sleep(waitMs);
        writer.Kill(); // SIGKILL, or its like on Windows
        writer.WaitForExit();
        string[] lines = writer.StandardOutput.ReadToEnd().Split('\n');
        return [.. told, .. lines[..^1]]; // what stands after the last line end was not said to its end
    }

    private static string Dotnet()
    {
        string root = Path.GetFullPath(Path.Combine(RuntimeEnvironment.GetRuntimeDirectory(), "..", "..", ".."));
        return Path.Combine(root, OperatingSystem.IsWindows() ? "dotnet.exe" : "dotnet");
    }
}
