using System.Collections.Immutable;
using System.Globalization;
using ShelfSafe.Core;
using ShelfSafe.Pack;

namespace ShelfSafe.Verdict;

/// <summary>A sentence about the cook's own kitchen: its altitude, canners, gauge or country.</summary>
/// <param name="Id">Row of <c>rules/kitchen-notes.csv</c>, or <c>country</c>.</param>
/// <param name="Instead">What to do.</param>
public sealed record KitchenNote(string Id, string Text, string Instead, ImmutableArray<SourceReference> Sources);

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
/// <param name="tables">The tables about the kitchen.</param>
/// <param name="source">Looks a source up by its key.</param>
internal sealed class KitchenAdvice(KitchenTables tables, Func<string, SourceReference> source)
{
    private const string Steam = "atmospheric-steam";
    private const string Pressure = "pressure";

    /// <summary>What a steam canner may take in this kitchen, or <see langword="null"/> where it has none.</summary>
    /// <param name="kitchen">The kitchen.</param>
    /// <param name="asked">Whether steam was asked for by name.</param>
    public SteamRule? SteamFor(Kitchen kitchen, bool asked = false)
    {
        if (!(asked || kitchen.Canners.Contains(Steam)) || tables.Row(Steam, Steam) is not { Does: "yes" } row)
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
    /// <param name="lines">The lines.</param>
    /// <param name="anyRow">Whether rows cover the product at all.</param>
    public KitchenReading Of(Kitchen kitchen, ImmutableArray<ProcessLine> lines, bool anyRow)
    {
        List<KitchenNote> notes = [];
        if (anyRow && kitchen.AltitudeFeet is null)
        {
            notes.Add(Note("altitude-missing"));
        }
        else if (anyRow && lines.IsEmpty)
        {
            notes.Add(Note("beyond-table"));
        }

        ImmutableArray<string> needed = [.. lines.Select(line => line.Method).Distinct(StringComparer.Ordinal)];
        ImmutableArray<string> able = [.. needed.Where(method => kitchen.Canners.Any(canner => tables.Row(canner, method) is { Does: "yes" }))];
        bool lacks = !kitchen.Canners.IsEmpty && !needed.IsEmpty && able.IsEmpty;
        bool untested = kitchen.Canners.Any(canner => needed.Any(method => tables.Row(canner, method) is { Does: "untested" }));
        if (lacks)
        {
            notes.Add(Note(untested ? "electric" : needed.Contains("boiling-water") ? "no-boiling-water-canner" : "no-pressure-canner"));
        }
        else if (untested)
        {
            notes.Add(Note("electric-beside"));
        }

        if (kitchen.Canners.Contains(Steam) && needed.Contains("boiling-water") && !(lacks && untested))
        {
            notes.Add(Note(needed.Contains(Steam) ? "steam" : "no-steam"));
        }

        bool pressure = needed.Contains(Pressure);
        if (pressure && (kitchen.Canners.IsEmpty || able.Contains(Pressure)) && GaugeNote(kitchen) is { } gauge)
        {
            notes.Add(gauge);
        }

        bool lowAcid = pressure && !needed.Contains("boiling-water");
        CountryRow? country = tables.Countries.FirstOrDefault(row => row.Code == kitchen.Region);
        if (lowAcid && kitchen.Region.Length > 0 && country is not { LowAcid: "pressure-canner" })
        {
            notes.Add(country is null ? Note("country-unknown") : new("country", country.Text, country.Instead, [.. country.Sources.Select(source)]));
        }

        return new(lacks && untested ? [] : lines, [.. notes], able, lacks || (lowAcid && country is { LowAcid: "against" }));
    }

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
        string day = tested.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        return kitchen.AsOf is { } today && tested.AddYears(1) < today
            ? due with { Text = due.Text.Replace("{day}", day, StringComparison.Ordinal) }
            : null;
    }

    private KitchenNote Note(string id)
    {
        KitchenNoteRow row = tables.Notes.FirstOrDefault(row => row.Id == id)
            ?? throw new InvalidDataException($"kitchen-notes.csv: the row \"{id}\" is missing");
        return new(id, row.Text, row.Instead, [.. row.Sources.Select(source)]);
    }
}
