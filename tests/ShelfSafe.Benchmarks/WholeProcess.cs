using System.Diagnostics;
using System.Runtime.InteropServices;
using System.Security.Cryptography;

namespace ShelfSafe.Benchmarks;

/// <summary>One run of a program as a whole process, as the operating system counts it. Linux alone.</summary>
/// <param name="Wall">From start to end.</param>
/// <param name="Processor">User and system time.</param>
/// <param name="Output">SHA-256 of what it wrote.</param>
internal sealed record WholeProcess(TimeSpan Wall, TimeSpan Processor, string Output)
{
    private const int Children = -1;
    private const int MemoryRuns = 5;

    private const string HighWater = "VmHWM:";

    /// <summary>Runs a program to its end; its exit code does not count, since a verdict may be one.</summary>
    /// <param name="program">Path.</param>
    /// <param name="arguments">Its arguments.</param>
    /// <param name="cores">How many cores the runtime may count, or 0 for all.</param>
    public static WholeProcess Run(string program, IEnumerable<string> arguments, int cores = 0)
    {
        ProcessStartInfo start = new(program, arguments) { RedirectStandardOutput = true };
        if (cores > 0)
        {
            start.Environment["DOTNET_PROCESSOR_COUNT"] = cores.ToString(System.Globalization.CultureInfo.InvariantCulture);
        }

        long before = Spent();
        Stopwatch clock = Stopwatch.StartNew();
        using Process process = Process.Start(start)!;
        byte[] hash = SHA256.HashData(process.StandardOutput.BaseStream);
        process.WaitForExit();
        return new(clock.Elapsed, TimeSpan.FromMicroseconds(Spent() - before), Convert.ToHexStringLower(hash));
    }

    /// <summary>Most memory that a program has held, MB, as /proc told while it ran; the greatest of a few runs.</summary>
    public static double LargestMegabytes(string program, IEnumerable<string> arguments)
    {
        long kilobytes = 0;
        for (int run = 0; run < MemoryRuns; run++)
        {
            using Process process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true })!;
            Task<byte[]> output = SHA256.HashDataAsync(process.StandardOutput.BaseStream).AsTask();
            while (!output.IsCompleted)
            {
                kilobytes = Math.Max(kilobytes, HighWaterOf(process.Id));
            }

            process.WaitForExit();
        }

        return kilobytes / 1024.0;
    }

    private static long HighWaterOf(int process)
    {
        try
        {
            string? line = File.ReadLines(FormattableString.Invariant($"/proc/{process}/status")).FirstOrDefault(static line => line.StartsWith(HighWater, StringComparison.Ordinal));
            return line is null ? 0 : long.Parse(line.AsSpan(HighWater.Length).TrimEnd("kB ").Trim(), System.Globalization.CultureInfo.InvariantCulture);
        }
        catch (IOException)
        {
            return 0; // it has ended meanwhile
        }
    }

    /// <summary>The middle one of several values.</summary>
    public static double Median(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        return sorted[sorted.Length / 2];
    }

    private static long Spent()
    {
        long[] usage = Usage();
        return ((usage[0] + usage[2]) * 1_000_000) + usage[1] + usage[3];
    }

    // Seconds and microseconds of user and of system time, and twelve figures more.
    private static long[] Usage()
    {
        long[] usage = new long[18];
        return GetResourceUsage(Children, usage) == 0 ? usage : throw new InvalidOperationException("getrusage failed");
    }

    [DllImport("libc", EntryPoint = "getrusage")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int GetResourceUsage(int who, [Out] long[] usage);
}
