using System.Collections.Immutable;
using System.Globalization;
using ShelfSafe.Candidates;
using ShelfSafe.Core;
using ShelfSafe.Hazards;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using ShelfSafe.Reading;
using ShelfSafe.Steps;

namespace ShelfSafe.Verdict;

/// <summary>Compares times, pressures and jars that a recipe prints with the published ones. A printed figure is never followed.</summary>
/// <param name="steam">What a steam canner takes, or <see langword="null"/>: up to it, its minutes are those of boiling water.</param>
internal sealed class OwnProcess(HazardRoom hazards, WordTable table, CannerRow? steam)
{
    private static readonly string[] Jars = ["half-pint", "pint", "pint-and-a-half", "quart", "half-gallon", "gallon"];

    /// <summary>One finding for each printed process, and one for a jar that no row covers.</summary>
    /// <param name="lead">The category or formula that leads, or <see langword="null"/>.</param>
    public IEnumerable<RawFinding> Find(Recipe recipe, Batch batch, Candidate? lead, Kitchen kitchen)
    {
        ImmutableArray<ProcessRow> rows = lead is { Judgement: not Judgement.Refuses } ? lead.Processes : [];
        if (RawInHotOnly(rows, batch, lead?.Kind == "category") is { } raw)
        {
            yield return raw;
        }

        // "Fill hot quarts. Process 25 minutes": a time without a jar is for the one jar that the recipe names.
        string? filled = batch.Printed.Select(static one => one.Jar).OfType<string>().Distinct(StringComparer.Ordinal).Take(2).ToArray() is [var only] ? only : null;
        foreach (PrintedProcess printed in batch.Printed)
        {
            string words = recipe.Text[printed.Span.Start..printed.Span.End].ReplaceLineEndings(" ");
            string? jar = printed.Jar ?? filled;
            if (Judged(printed, words, jar, batch, rows, lead, kitchen) is { } finding)
            {
                yield return finding;
            }
        }
    }

    private RawFinding? Judged(PrintedProcess printed, string words, string? jar, Batch batch, ImmutableArray<ProcessRow> rows, Candidate? lead, Kitchen kitchen)
    {
        bool figures = printed.Minutes is not null || printed.PressurePsi is not null;
        if (rows.IsEmpty)
        {
            return figures ? With(hazards.Raise("own-process", null, batch, printed.Span, words, FindingLevel.Caution), table["own-process.none"]) : null;
        }

        ImmutableArray<ProcessRow> fitting = Fitting(rows, jar, batch);
        if (!fitting.IsEmpty)
        {
            return figures ? Compare(printed, fitting, Fitting(lead!.Overruled, jar, batch), batch, kitchen, words) : null;
        }

        // Where no jar is printed, it is told where the jar stands.
        return printed.Jar is null ? null : LargestJar.In(hazards.Raise("jar-too-large", null, batch, printed.Span, words, FindingLevel.Change), rows, batch, table);
    }

    // A raw pack where only a hot pack was tested: the food starts colder than the time was set for. Steps that fill jars and
    // heat nothing before it are a raw pack too, whatever they call it. A text that says both is read at its worse.
    private RawFinding? RawInHotOnly(ImmutableArray<ProcessRow> rows, Batch batch, bool open)
    {
        if (rows.IsEmpty || !rows.All(row => row.Pack == "hot"))
        {
            return null;
        }

        StepFact? raw = batch.Fact("raw-pack");
        raw ??= !open || batch.Says(JarSteps.Heated) ? null : batch.Fact(JarSteps.Filled);
        return raw is null ? null : hazards.Raise("raw-start", null, batch, raw.Span, raw.Words, FindingLevel.Change);
    }

    private RawFinding Compare(PrintedProcess printed, ImmutableArray<ProcessRow> rows, ImmutableArray<ProcessRow> overruled, Batch batch, Kitchen kitchen, string words)
    {
        // A steam canner has the minutes of boiling water, as far as it was tested.
        bool steamed = printed.Method == "atmospheric-steam" && steam is { Does: "yes" } && !(printed.Minutes?.High > steam.MostMinutes);
        printed = steamed ? printed with { Method = "boiling-water" } : printed;
        bool method = printed.Method is null || rows.Any(row => row.Method == printed.Method);
        // Where the text tells to add something for the altitude, its figure is the one for low ground.
        Kitchen meant = batch.Says("altitude-named") ? kitchen with { AltitudeFeet = null } : kitchen;
        // Of several products in one jar each has its own time: the shortest is not enough.
        bool met = method && rows.GroupBy(row => row.Product, StringComparer.Ordinal).All(product => product.Any(row => (printed.Method is null || row.Method == printed.Method) && Meets(printed, row, meant)));
        // The shorter of two published times is no guess; the longer one is shown beside it.
        bool shorter = !met && method && overruled.Any(row => Meets(printed, row, meant));
        RawFinding raised = hazards.Raise("own-process", null, batch, printed.Span, words, met ? FindingLevel.Note : shorter ? FindingLevel.Caution : FindingLevel.Change);
        return With(raised, Published(rows, kitchen));
    }

    /// <summary>The finding with the published figures in its message.</summary>
    public static RawFinding With(RawFinding finding, string published) =>
        finding with { Message = finding.Message.Replace("{published}", published, StringComparison.Ordinal) };

    // The rows of the printed jar, else of the next larger one; of the recipe's own pack where it names one.
    private static ImmutableArray<ProcessRow> Fitting(ImmutableArray<ProcessRow> rows, string? jar, Batch batch)
    {
        int wanted = jar is null ? 0 : Array.IndexOf(Jars, jar);
        int next = rows.Select(row => Array.IndexOf(Jars, row.Jar)).Where(own => own >= wanted).DefaultIfEmpty(-1).Min();
        ImmutableArray<ProcessRow> fitting = jar is null ? rows : [.. rows.Where(row => Array.IndexOf(Jars, row.Jar) == next)];
        string? pack = batch.Says("hot-pack") == batch.Says("raw-pack") ? null : batch.Says("hot-pack") ? "hot" : "raw";
        return pack is not null && fitting.Any(row => row.Pack == pack) ? [.. fitting.Where(row => row.Pack == pack)] : fitting;
    }

    // Without an altitude a printed figure is held against the lowest band; the report asks for the altitude anyway.
    private static bool Meets(PrintedProcess printed, ProcessRow row, Kitchen kitchen)
    {
        bool minutes = printed.Minutes is not { } own || own.Low >= (row.Method == "pressure" ? row.Minutes : Least(row.BoilingWater, kitchen));
        bool pressure = printed.PressurePsi is not { } psi || row.Method != "pressure" || psi >= Math.Min(Least(row.Dial, kitchen), Least(row.Weighted, kitchen));
        return minutes && pressure;
    }

    private static double Least(ImmutableArray<AltitudeBand> bands, Kitchen kitchen)
    {
        double least = double.PositiveInfinity;
        foreach (AltitudeBand band in bands)
        {
            bool here = kitchen.AltitudeFeet is not { } feet || (Math.Ceiling(feet) >= band.FromFeet && Math.Ceiling(feet) <= band.ToFeet);
            least = here ? Math.Min(least, band.Figure) : least;
        }

        return least;
    }

    private string Published(ImmutableArray<ProcessRow> rows, Kitchen kitchen)
    {
        ProcessRow row = rows[0];
        double minutes = row.Method == "pressure" ? row.Minutes : Least(row.BoilingWater, kitchen);
        string time = double.IsFinite(minutes) ? table.With("own-process.minutes", minutes.ToString("0", CultureInfo.InvariantCulture)) : table["own-process.no-time"];
        return table.With($"own-process.{row.Method}", time, row.Jar);
    }
}
