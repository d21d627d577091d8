using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Verdict;

namespace ShelfSafe.Reports;

/// <summary>The cells of the tables that every report for people shows: yours beside tested, and the published process.</summary>
internal sealed class ReportTables(Words words)
{
    /// <summary>Heads of the comparison.</summary>
    public ImmutableArray<string> ComparisonHeader { get; } =
        [words["comparison.what"], words["comparison.yours"], words["comparison.tested"], words["comparison.allowed"]];

    /// <summary>Yours beside tested, one row a difference.</summary>
    public IReadOnlyList<ImmutableArray<string>> ComparisonRows(CategoryReport category) =>
    [
        .. category.Differences.Select(difference => ImmutableArray.Create(
            difference.What,
            TextNumbers.Range(difference.Yours, difference.Unit, words),
            Tested(difference),
            words[difference.Allowed ? "comparison.yes" : "comparison.no"])),
    ];

    /// <summary>One row a printed process, each once.</summary>
    /// <param name="lines">The lines.</param>
    /// <param name="metric">Whether metric figures follow the published ones in brackets.</param>
    public IReadOnlyList<ImmutableArray<string>> ProcessRows(ImmutableArray<ProcessLine> lines, bool metric) =>
        [.. lines.Select(line => Row(line, metric)).Distinct(RowComparer.Instance)];

    /// <summary>Heads of the process table.</summary>
    public ImmutableArray<string> ProcessHeader(bool pressure) => pressure
        ? [words["process.jar"], words["process.minutes"], words["process.gauge"], words["process.pressure"], words["process.band"], words["process.headspace"]]
        : [words["process.jar"], words["process.minutes"], words["process.band"], words["process.headspace"]];

    private ImmutableArray<string> Row(ProcessLine line, bool metric)
    {
        string jar = words.Named("jar", line.Jar);
        string minutes = words.With("process.min", line.Minutes);
        string headspace = words.With("process.inch", Inches.Of(line.HeadspaceInches)) + (metric ? MetricFigures.Headspace(words, line.HeadspaceInches) : string.Empty);
        string band = Band(line.AltitudeFeet) + (metric ? MetricFigures.Band(words, line.AltitudeFeet) : string.Empty);
        return line.Psi is { } psi
            ? [jar, minutes, line.Gauge is { } gauge ? words.Named("gauge", gauge) : string.Empty, words.With("process.psi", TextNumbers.Short(psi)) + (metric ? MetricFigures.Pressure(words, psi) : string.Empty), band, headspace]
            : [jar, minutes, band, headspace];
    }

    private string Band(Interval feet)
    {
        if (!feet.IsBounded)
        {
            return feet.Low > 0 ? words.With("process.band-from", TextNumbers.Whole(feet.Low)) : words["process.band-any"];
        }

        return feet.Low > 0
            ? words.With("process.band-between", TextNumbers.Whole(feet.Low), TextNumbers.Whole(feet.High))
            : words.With("process.band-to", TextNumbers.Whole(feet.High));
    }

    private string Tested(Difference difference)
    {
        if (difference.Tested.IsBounded && difference.Tested.Low <= 0 && difference.Tested.High > 0)
        {
            Interval most = Interval.Exactly(difference.Tested.High);
            return words.With("comparison.at-most", TextNumbers.Range(most, difference.Unit, words));
        }

        return TextNumbers.Range(difference.Tested, difference.Unit, words);
    }

    private sealed class RowComparer : IEqualityComparer<ImmutableArray<string>>
    {
        public static RowComparer Instance { get; } = new();

        public bool Equals(ImmutableArray<string> x, ImmutableArray<string> y) => x.SequenceEqual(y);

        public int GetHashCode(ImmutableArray<string> row) => row.Aggregate(0, static (hash, cell) => HashCode.Combine(hash, cell));
    }
}
