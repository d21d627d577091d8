using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using ShelfSafe.Core;

namespace ShelfSafe.Reports;

/// <summary>The small pieces that every object of the JSON report is made of.</summary>
internal static class JsonWriting
{
    private const double LargestWhole = 1e15; // above, a double is written with an exponent
    private const double LargestScaled = 1e10; // below, four decimals are fewer than the fifteen digits a double keeps
    private const double Scale = 10_000;

    /// <summary>Writes a list of objects; a list that was never set is written as empty.</summary>
    public static void WriteList<T>(this Utf8JsonWriter json, JsonEncodedText name, ImmutableArray<T> items, Action<Utf8JsonWriter, T> write)
    {
        json.WriteStartArray(name);
        if (!items.IsDefault)
        {
            foreach (T item in items)
            {
                write(json, item);
            }
        }

        json.WriteEndArray();
    }

    /// <summary>Writes a list of texts; a list that was never set is written as empty.</summary>
    public static void WriteTexts(this Utf8JsonWriter json, JsonEncodedText name, ImmutableArray<string> items) =>
        json.WriteList(name, items, static (writer, item) => writer.WriteStringValue(WellFormed(item)));

    /// <summary>Writes a text, or null.</summary>
    public static void WriteText(this Utf8JsonWriter json, JsonEncodedText name, string? text)
    {
        if (text is null)
        {
            json.WriteNull(name);
        }
        else
        {
            json.WriteString(name, WellFormed(text));
        }
    }

    /// <summary>Writes a range as low and high, or null where nothing can be said.</summary>
    public static void WriteRange(this Utf8JsonWriter json, JsonEncodedText name, Interval? range)
    {
        if (range is not { } known)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteRounded(JsonNames.Low, known.Low);
        json.WriteRounded(JsonNames.High, known.High);
        json.WriteEndObject();
    }

    /// <summary>Writes a number to at most four decimals, fewer the larger it is; what is not finite is null.</summary>
    /// <remarks>Nearest, half away from zero: the figures that decide are compared before they come here.</remarks>
    public static void WriteRounded(this Utf8JsonWriter json, JsonEncodedText name, double value)
    {
        if (!double.IsFinite(value))
        {
            json.WriteNull(name);
            return;
        }

        WriteShort(json, name, Math.Round(value, Decimals(Math.Abs(value)), MidpointRounding.AwayFromZero));
    }

    /// <summary>Writes a printed amount to four decimals whatever its size, so that a third stays a third.</summary>
    public static void WriteAmountValue(this Utf8JsonWriter json, JsonEncodedText name, double value)
    {
        if (double.IsFinite(value))
        {
            WriteShort(json, name, Math.Round(value, 4, MidpointRounding.AwayFromZero));
        }
        else
        {
            json.WriteNull(name);
        }
    }

    // A whole number is written as one: the same digits, found faster, and no "-0".
    private static void WriteShort(Utf8JsonWriter json, JsonEncodedText name, double rounded)
    {
        double scaled = Math.Round(rounded * Scale);
        if (rounded == Math.Truncate(rounded) && Math.Abs(rounded) < LargestWhole)
        {
            json.WriteNumber(name, (long)rounded);
        }
        else if (Math.Abs(rounded) < LargestScaled && scaled / Scale == rounded)
        {
            json.WriteNumber(name, OfScaled((long)scaled));
        }
        else
        {
            json.WriteNumber(name, rounded);
        }
    }

    // Four decimals without their noughts, as the shortest digits of the same number.
    private static decimal OfScaled(long scaled)
    {
        byte decimals = 4;
        while (scaled % 10 == 0 && decimals > 0)
        {
            (scaled, decimals) = (scaled / 10, (byte)(decimals - 1));
        }

        long size = Math.Abs(scaled);
        return new((int)size, (int)(size >> 32), 0, scaled < 0, decimals);
    }

    private static int Decimals(double size) => size switch
    {
        < 10 => 4,
        < 100 => 2,
        < 1_000 => 1,
        _ => 0,
    };

    /// <summary>Replaces halves of surrogate pairs, which a recipe may hold and JSON may not.</summary>
    private static string WellFormed(string text) =>
        text.AsSpan().ContainsAnyInRange('\uD800', '\uDFFF') ? Rebuilt(text) : text;

    private static string Rebuilt(string text)
    {
        StringBuilder built = new(text.Length);
        foreach (Rune rune in text.EnumerateRunes())
        {
            built.Append(rune.ToString());
        }

        return built.ToString();
    }
}
