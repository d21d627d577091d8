using System.Collections.Immutable;
using System.Globalization;
using ShelfSafe.Core;
using ShelfSafe.Pack;

namespace ShelfSafe.Verdict;

/// <summary>A sentence about the cook's own kitchen: its altitude, canners, gauge or country.</summary>
/// <param name="Id">Row of <c>rules/kitchen-notes.csv</c>, or <c>country</c>.</param>
/// <param name="Text">What is so, one or two sentences.</param>
/// <param name="Instead">What to do.</param>
/// <param name="Sources">Publications that it rests on.</param>
public sealed record KitchenNote(string Id, string Text, string Instead, ImmutableArray<SourceReference> Sources)
{
    /// <summary>Id of the note that tells what the country's food authority advises; its text is that of the country.</summary>
    internal const string OfCountry = "country";
}

/// <summary>What a kitchen makes of some published processes.</summary>
/// <param name="Lines">The lines that are left; none where no published time fits the only appliance.</param>
/// <param name="Notes">What must be said of the kitchen, in this order.</param>
/// <param name="Methods">Methods that its canners do; empty where they were not told.</param>
/// <param name="FreezerFirst">Whether the freezer plan goes before the times.</param>
internal sealed record KitchenReading(ImmutableArray<ProcessLine> Lines, ImmutableArray<KitchenNote> Notes, ImmutableArray<string> Methods, bool FreezerFirst);

/// <summary>What an atmospheric steam canner may take.</summary>
/// <param name="Row">Longest process and largest jar.</param>
/// <param name="Note">The limits in words, shown with each line.</param>
internal sealed record SteamRule(CannerRow Row, string Note);

/// <summary>Holds published processes against the canners, the gauge and the country of a kitchen. It takes away or warns, and never adds a time.</summary>
/// <param name="pack">The tables of the pack.</param>
/// <param name="source">Looks a source up by its key.</param>
internal sealed class KitchenAdvice(PackTables pack, Func<string, SourceReference> source)
{
    private readonly KitchenTables _tables = pack.Kitchen;

    private const string BoilingWater = "boiling-water";
    private const string Steam = "atmospheric-steam";
    private const string Pressure = "pressure";

    /// <summary>What a steam canner may take in this kitchen, or <see langword="null"/> where it has none.</summary>
    /// <param name="kitchen">The kitchen.</param>
    /// <param name="asked">Whether steam was asked for by name.</param>
    public SteamRule? SteamFor(Kitchen kitchen, bool asked = false)
    {
        if (!(asked || kitchen.Canners.Contains(Steam)) || _tables.Row(Steam, Steam) is not { Does: "yes" } row)
        {
            return null;
        }

        KitchenNote limit = Note("steam-limit");
        return new(row, $"{limit.Text} {limit.Instead}"
            .Replace("{most}", row.MostMinutes.ToString("0", CultureInfo.InvariantCulture), StringComparison.Ordinal)
            .Replace("{jar}", row.LargestJar, StringComparison.Ordinal));
    }

    /// <summary>Reads the kitchen for the lines that its altitude, gauge and jar left.</summary>
    /// <param name="kitchen">The kitchen.</param>
    /// <param name="linesOf">The lines of the product for a kitchen: this one, or one that differs in its jar or gauge.</param>
    /// <param name="methods">Methods of the rows that cover the product, whether a line is left of them or not.</param>
    public KitchenReading Of(Kitchen kitchen, Func<Kitchen, ImmutableArray<ProcessLine>> linesOf, IEnumerable<string> methods)
    {
        ImmutableArray<ProcessLine> lines = linesOf(kitchen);
        ImmutableArray<string> needed = Needed(lines, methods);
        if (needed.IsEmpty)
        {
            return new(lines, [], [], FreezerFirst: false);
        }

        KitchenNote? gap = lines.IsEmpty ? GapNote(kitchen, linesOf) : null;
        ImmutableArray<string> able = needed.RemoveAll(method => !kitchen.Canners.Any(canner => _tables.Row(canner, method) is { Does: "yes" }));
        bool lacks = !kitchen.Canners.IsEmpty && able.IsEmpty;
        bool untested = kitchen.Canners.Any(canner => needed.Any(method => _tables.Row(canner, method) is { Does: "untested" }));
        bool lowAcid = needed.Contains(Pressure) && !needed.Contains(BoilingWater);
        CountryRow? country = _tables.Countries.FirstOrDefault(row => row.Code == kitchen.Region);
        KitchenNote?[] notes =
        [
            gap,
            AltitudeNote(kitchen, lines),
            CannerNote(needed, lacks, untested),
            kitchen.Canners.Contains(Steam) && needed.Contains(BoilingWater) && !(lacks && untested) ? Note(needed.Contains(Steam) ? "steam" : "no-steam") : null,
            needed.Contains(Pressure) && (kitchen.Canners.IsEmpty || able.Contains(Pressure)) ? GaugeNote(kitchen) : null,
            lowAcid ? CountryNote(kitchen, country) : null,
        ];
        return new(lacks && untested ? [] : lines, [.. notes.OfType<KitchenNote>()], able, lacks || gap is { Id: not "beyond-jar" } || (lowAcid && country is { LowAcid: "against" }));
    }

    private static ImmutableArray<string> Needed(ImmutableArray<ProcessLine> lines, IEnumerable<string> methods)
    {
        List<string> needed = [];
        void Add(string method)
        {
            if (!needed.Contains(method))
            {
                needed.Add(method);
            }
        }

        foreach (ProcessLine line in lines)
        {
            Add(line.Method);
        }

        foreach (string method in lines.IsEmpty ? methods : [])
        {
            Add(method);
        }

        return [.. needed];
    }

    // What the authority of the country says of low-acid food in jars, where it says anything against it.
    private KitchenNote? CountryNote(Kitchen kitchen, CountryRow? country) =>
        kitchen.Region.Length == 0 || country is { LowAcid: "pressure-canner" } ? null
        : country is null ? Note("country-unknown")
        : new(KitchenNote.OfCountry, country.Text, country.Instead, [.. country.Sources.Select(source)]);

    // Why no row is left, and what the table does list: another jar, another gauge, or nothing at this altitude.
    private KitchenNote GapNote(Kitchen kitchen, Func<Kitchen, ImmutableArray<ProcessLine>> linesOf)
    {
        ImmutableArray<ProcessLine> anyJar = kitchen.Jar is null ? [] : linesOf(kitchen with { Jar = null });
        if (!anyJar.IsEmpty)
        {
            return Filled("beyond-jar", kitchen, anyJar.Select(line => line.Jar));
        }

        ImmutableArray<ProcessLine> anyGauge = kitchen.Gauge is null ? [] : linesOf(kitchen with { Gauge = null });
        return anyGauge.IsEmpty ? Note("beyond-table") : Filled("beyond-gauge", kitchen, anyGauge.Select(line => line.Gauge).OfType<string>());
    }

    private KitchenNote Filled(string id, Kitchen kitchen, IEnumerable<string> listed)
    {
        KitchenNote note = Note(id);
        return note with
        {
            Text = note.Text.Replace("{jar}", kitchen.Jar, StringComparison.Ordinal).Replace("{gauge}", kitchen.Gauge, StringComparison.Ordinal),
            Instead = note.Instead.Replace("{listed}", string.Join(", ", listed.Distinct(StringComparer.Ordinal)), StringComparison.Ordinal),
        };
    }

    // Who asks for steam by name and lists no steam canner only looks it up: nothing is missing.
    private KitchenNote? CannerNote(ImmutableArray<string> needed, bool lacks, bool untested) => (lacks, untested) switch
    {
        (true, true) => Note("electric"),
        (false, true) => Note("electric-beside"),
        (true, false) when needed.Contains(BoilingWater) => Note("no-boiling-water-canner"),
        (true, false) when needed.Contains(Pressure) => Note("no-pressure-canner"),
        _ => null,
    };

    private KitchenNote? AltitudeNote(Kitchen kitchen, ImmutableArray<ProcessLine> lines) =>
        kitchen.AltitudeFeet is not { } feet ? Note("altitude-missing")
        : lines.IsEmpty ? null // told by the gap
        : Math.Ceiling(feet) > pack.Limits["table-top-feet"] ? Note("very-high")
        : null;

    // A weight needs no test; a gauge that was not told is asked for elsewhere.
    private KitchenNote? GaugeNote(Kitchen kitchen)
    {
        if (kitchen.Gauge != "dial")
        {
            return null;
        }

        if (kitchen.GaugeTested is not { } tested)
        {
            return Note("gauge-untested");
        }

        KitchenNote due = Note("gauge-due");
        string day = Days.Of(tested);
        return kitchen.AsOf is { } today && tested.AddYears(1) < today
            ? due with { Text = due.Text.Replace("{day}", day, StringComparison.Ordinal) }
            : null;
    }

    private KitchenNote Note(string id)
    {
        KitchenNoteRow row = _tables.Notes.FirstOrDefault(row => row.Id == id)
            ?? throw new InvalidDataException($"kitchen-notes.csv: the row \"{id}\" is missing");
        return new(id, row.Text, row.Instead, [.. row.Sources.Select(source)]);
    }
}
