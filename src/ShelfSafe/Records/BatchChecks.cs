using System.Globalization;
using ShelfSafe.Core;

namespace ShelfSafe.Records;

/// <summary>What must hold for every batch, typed in or imported.</summary>
public static class BatchChecks
{
    /// <summary>Most jars that one batch may have; more is a slip of the hand.</summary>
    public const int MostJars = 10_000;

    private const int MostMinutes = 10_000;
    private const int MostPsi = 1_000;
    private const int EarliestYear = 1900;
    private const double LowestFeet = -1_500;
    private const double HighestFeet = 20_000;

    private static readonly string[] _methods = ["boiling-water", "atmospheric-steam", "pressure"];
    private static readonly string[] _packs = ["hot", "raw"];

    /// <summary>Words for the method.</summary>
    public static IReadOnlyList<string> Methods => _methods;

    /// <summary>Words for the pack.</summary>
    public static IReadOnlyList<string> Packs => _packs;

    /// <summary>The first thing that is wrong with a batch, in one line; <see langword="null"/> where nothing is.</summary>
    /// <param name="batch">The batch.</param>
    public static string? Wrong(BatchRecord batch)
    {
        ArgumentNullException.ThrowIfNull(batch);
        return batch.Date.Year < EarliestYear ? "the date is too long ago; write it as year-month-day, such as 2026-10-03"
            : batch.Jars is < 1 or > MostJars ? Line($"{batch.Jars} jars: a batch has from 1 to {MostJars} jars")
            : batch.Title.Trim().Length == 0 ? "the title is empty"
            : batch.AltitudeFeet is { } feet && !(feet is >= LowestFeet and <= HighestFeet) ? Line($"the altitude is from {LowestFeet} to {HighestFeet} ft; no kitchen stands lower or higher")
            : WrongProcess(batch.Process) ?? WrongSeals(batch) ?? WrongTakings(batch);
    }

    /// <summary>What is wrong with the process, or <see langword="null"/>.</summary>
    /// <param name="used">The process used.</param>
    public static string? WrongProcess(ProcessUsed used)
    {
        ArgumentNullException.ThrowIfNull(used);
        return Unknown("method", used.Method, _methods)
            ?? Unknown("jar", used.Jar, JarSizes.All)
            ?? Unknown("pack", used.Pack, _packs)
            ?? Unknown("gauge", used.Gauge, Gauges.All)
            ?? (used.Minutes is < 1 or > MostMinutes ? Line($"{used.Minutes} minutes: a time is from 1 to {MostMinutes} minutes")
                : used.Psi is { } psi && !(psi is > 0 and <= MostPsi) ? Line($"{psi} pounds: a pressure is above 0 and at most {MostPsi} pounds")
                : used.Psi is not null && used.Method != "pressure" ? "a pressure needs the method pressure; boiling water and open steam have none"
                : used.Gauge is not null && used.Method != "pressure" ? "a gauge needs the method pressure; boiling water and open steam have none"
                : null);
    }

    /// <summary>A line in the one culture of all records.</summary>
    internal static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static string? WrongSeals(BatchRecord batch) =>
        batch.Sealed is null && batch.Failed is null ? null
        : batch.Sealed is not { } whole || batch.Failed is not { } failed ? "sealed and failed jars belong together; give both or none"
        : whole < 0 || failed < 0 ? Line($"{whole} sealed and {failed} failed: neither can be below 0")
        : (long)whole + failed != batch.Jars ? Line($"{whole} sealed and {failed} failed do not make {batch.Jars} jars; a broken jar counts as failed")
        : null;

    private static string? WrongTakings(BatchRecord batch)
    {
        long taken = 0;
        foreach (Taking taking in batch.Takings.IsDefault ? [] : batch.Takings)
        {
            if (taking.Jars < 1)
            {
                return Line($"{taking.Jars} jars taken out: at least 1");
            }

            if (taking.Date < batch.Date)
            {
                return Line($"jars taken out on {Days.Of(taking.Date)}, before they were put up on {Days.Of(batch.Date)}");
            }

            taken += taking.Jars;
        }

        int held = batch.Sealed ?? batch.Jars;
        return taken > held ? Line($"{taken} jars taken out, but the batch has only {held}") : null;
    }

    private static string? Unknown(string what, string? word, IReadOnlyList<string> known) =>
        word is null || known.Contains(word, StringComparer.Ordinal) ? null : $"{what} \"{word}\" is not known; known: {string.Join(", ", known)}";
}
