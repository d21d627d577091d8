using System.Collections.Immutable;
using System.Globalization;
using ShelfSafe.Core;
using ShelfSafe.Verdict;

namespace ShelfSafe.Reports;

/// <summary>The single lines that every report for people carries.</summary>
internal static class ReportHead
{
    /// <summary>The rule pack in one line.</summary>
    public static string Pack(Words words, PackIdentity pack) =>
        words.With("pack.line", pack.Version, pack.Date, pack.Sha256.Length > 12 ? pack.Sha256[..12] : pack.Sha256);

    /// <summary>The verdict in words; where no published row is for this kitchen, it says so at once, and a dish without a freezer time is not sent to the freezer.</summary>
    public static string Verdict(Words words, VettingReport report)
    {
        bool chill = report is { Outcome: Outcome.FreezeOrChill, Storage.IsDefaultOrEmpty: false } && report.Storage.All(advice => advice.Where == "fridge");
        string verdict = words[chill ? "outcome.chill-only" : $"outcome.{Names.Of(report.Outcome)}"];
        return report.LacksRow ? $"{verdict} {words["outcome.no-row"]}" : verdict;
    }

    /// <summary>A dish of a file that holds several: its name, its lines and what is open to it.</summary>
    public static string Part(Words words, PartReport part)
    {
        string lines = words.With("label.lines", string.Create(CultureInfo.InvariantCulture, $"{part.Line}-{part.EndLine}"));
        return $"{part.Name} ({lines}): {words[$"outcome.{Names.Of(part.Outcome)}"]}";
    }

    /// <summary>Fridge days and freezer months; words that hold for both stand once, behind the last.</summary>
    public static IEnumerable<(StorageAdvice Advice, string Text)> Storage(ImmutableArray<StorageAdvice> all)
    {
        for (int i = 0; i < (all.IsDefault ? 0 : all.Length); i++)
        {
            StorageAdvice advice = all[i];
            bool again = i + 1 < all.Length && all[i + 1].Text == advice.Text && advice.Span.Length > 0;
            string text = again ? string.Empty : advice.Text;
            yield return (advice, text.Length == 0 ? advice.Span + (again ? "." : string.Empty) : advice.Span.Length == 0 ? text : $"{advice.Span}. {text}");
        }
    }

    /// <summary>Product, method and pack of a process.</summary>
    public static string Process(Words words, ProcessLine line) => string.Join(
        ", ",
        new[] { line.Product, words.Named("method", line.Method), words.Named("pack", line.Pack) }.Where(static piece => piece.Length > 0));

    /// <summary>The processes that the outcome lets a cook see, and the key of their heading; none for any other outcome.</summary>
    public static (string Heading, ImmutableArray<ProcessLine> Lines) Processes(VettingReport report) => report.Outcome switch
    {
        Outcome.BoilingWater or Outcome.Pressure => ("heading.process", report.Process),
        Outcome.BoilingWaterAfterChanges or Outcome.PressureAfterChanges => ("heading.process-after-changes", report.ProcessAfterChanges),
        Outcome.CannotTell or Outcome.TestedRecipeOnly or Outcome.FreezeOrChill or Outcome.DryStorage or Outcome.NotAJarFood => (string.Empty, []),
    };

    /// <summary>How the directions of some processes end: what must be followed for each method among them.</summary>
    public static IEnumerable<string> Follow(Words words, ImmutableArray<ProcessLine> lines, bool metric)
    {
        if (metric)
        {
            yield return words["metric.note"];
        }

        if (lines.Any(static line => line.Psi is not null))
        {
            yield return words["process.follow"];
        }
        else if (lines.Any(static line => line.Method == "boiling-water"))
        {
            yield return words["process.follow-boiling"];
        }

        if (lines.Any(static line => line.Method == "atmospheric-steam"))
        {
            yield return words["process.follow-steam"];
        }
    }

    /// <summary>The freezer plan that this kitchen should take first: heading of each part and its steps; empty for other kitchens.</summary>
    public static IEnumerable<(string Heading, IReadOnlyList<FreezingStep> Steps)> Freezer(Words words, VettingReport report) =>
        report.FreezerFirst.GroupBy(static step => step.Part, StringComparer.Ordinal).Select(part => (words[$"freezing.{part.Key}"], (IReadOnlyList<FreezingStep>)[.. part]));

    /// <summary>Processes that share product, method and pack, and so a table.</summary>
    public static IEnumerable<ImmutableArray<ProcessLine>> Groups(ImmutableArray<ProcessLine> lines) =>
        lines.GroupBy(static line => (line.Product, line.Method, line.Pack)).Select(static group => group.ToImmutableArray());

    /// <summary>Acid to add, conditions and notes of a table of processes, each once.</summary>
    public static IEnumerable<string> Notes(Words words, ImmutableArray<ProcessLine> lines)
    {
        IEnumerable<string> acid = Once(lines.Select(static line => line.AcidAddition)).Select(text => words.With("process.acid", text));
        IEnumerable<string> conditions = Once(lines.Select(static line => line.Conditions)).Select(text => words.With("process.note", text));
        IEnumerable<string> overruled = Once(lines.SelectMany(line => line.Overruled.Select(other => $"{other.Product}, {words.Named("jar", line.Jar)}, {words.With("process.min", other.Minutes)} ({other.Source})")))
            .Select(text => words.With("process.overruled", text));
        return [.. acid, .. conditions, .. Once(lines.Select(static line => line.Note)).Select(text => words.With("process.note", text)), .. overruled];
    }

    /// <summary>Where a finding stands, such as "line 3" or "lines 3, 9".</summary>
    public static string Where(Words words, SortedSet<int> lines) => words.With(
        lines.Count == 1 ? "label.line" : "label.lines",
        string.Join(", ", lines.Select(static line => line.ToString(CultureInfo.InvariantCulture))));

    /// <summary>How much the batch makes, line by line; empty where the recipe may not be put up.</summary>
    public static IEnumerable<string> Yield(Words words, VettingReport report)
    {
        const double MillilitresPerLitre = 1_000;
        if (report.Process.IsDefaultOrEmpty && report.ProcessAfterChanges.IsDefaultOrEmpty)
        {
            yield break;
        }

        if (report.Measures.TotalMillilitres is { IsBounded: true } volume)
        {
            string low = TextNumbers.Short(volume.Low / MillilitresPerLitre);
            string high = TextNumbers.Short(volume.High / MillilitresPerLitre);
            yield return low == high ? words.With("yield.volume-one", low) : words.With("yield.volume", low, high);
        }

        if (report.Measures.JarYield is { } yield)
        {
            string jar = words.Named("jar", yield.Jar);
            yield return yield.Jars.IsBounded
                ? words.With("yield.jars", TextNumbers.Whole(yield.Jars.Low), TextNumbers.Whole(yield.Jars.High), jar)
                : words.With("yield.jars-at-least", TextNumbers.Whole(yield.Jars.Low), jar);
            if (yield.ByPublishedWeight)
            {
                yield return words["yield.packed"];
            }

            yield return yield.JarsALoad is { } load
                ? words.With("yield.loads-yours", TextNumbers.Range(load, string.Empty, words), TextNumbers.Range(yield.Loads, string.Empty, words), TextNumbers.Short(yield.RemainderMillilitres.High / MillilitresPerLitre))
                : words.With("yield.loads", TextNumbers.Range(yield.Loads, string.Empty, words), TextNumbers.Short(yield.RemainderMillilitres.High / MillilitresPerLitre), TextNumbers.Range(yield.Load, string.Empty, words));
        }
    }

    /// <summary>The kitchen in one line.</summary>
    public static string Kitchen(Words words, Kitchen kitchen)
    {
        List<string> pieces = [];
        pieces.Add(kitchen.AltitudeFeet is { } feet
            ? words.With("kitchen.altitude", TextNumbers.Whole(feet), TextNumbers.Whole(feet * TextNumbers.MetresPerFoot))
            : words["kitchen.no-altitude"]);
        if (kitchen.Gauge is { } gauge)
        {
            pieces.Add(words.Named("gauge", gauge));
        }

        pieces.Add(kitchen.Jar is { } jar ? words.Named("jar", jar) : words["kitchen.any-jar"]);
        if (!kitchen.Canners.IsEmpty)
        {
            pieces.Add(words.With("kitchen.canners", string.Join(", ", kitchen.Canners.Select(canner => words.Named("canner", canner)))));
        }

        if (kitchen.GaugeTested is { } tested)
        {
            pieces.Add(words.With("kitchen.gauge-tested", Days.Of(tested)));
        }

        if (kitchen.Region.Length > 0)
        {
            pieces.Add(words.With("kitchen.region", kitchen.Region));
        }

        if (kitchen.File is { } file)
        {
            pieces.Add(words.With("kitchen.file", file));
        }

        return string.Join(", ", pieces);
    }

    // A list and no chain: native code resolves a chain over a chain at run time, which costs a cold start 20 to 80 microseconds.
    private static List<string> Once(IEnumerable<string?> texts)
    {
        List<string> once = [];
        foreach (string? text in texts)
        {
            if (!string.IsNullOrEmpty(text) && !once.Contains(text))
            {
                once.Add(text);
            }
        }

        return once;
    }
}
