using System.Collections.Immutable;
using System.Text.Json;
using ShelfSafe.Core;

namespace ShelfSafe.Cli;

/// <summary>Reads the values of a kitchen profile, each with its own form and range.</summary>
/// <param name="folder">Folder of the profile.</param>
/// <param name="today">The day, or <see langword="null"/>.</param>
internal sealed class KitchenKeys(string folder, DateOnly? today)
{
    private const int MostJars = 40; // far above any home canner

    /// <summary>All keys.</summary>
    public static IReadOnlyList<string> All { get; } = ["altitude", "canner", "gauge", "gaugeTested", "capacity", "jar", "country", "region", "units", "aliases"];

    /// <summary>Reads the value that follows a key into the profile.</summary>
    /// <returns>What is wrong and what would be right, or <see langword="null"/>.</returns>
    public string? Read(string key, ref Utf8JsonReader reader, ref KitchenFile profile)
    {
        reader.Read();
        if (key == "canner")
        {
            return Canners(ref reader, ref profile);
        }

        if (key == "capacity")
        {
            return Capacity(ref reader, ref profile);
        }

        return reader.TokenType == JsonTokenType.String ? Text(key, reader.GetString()!, ref profile) : $"\"{key}\" must be a text in double quotes, such as {Example(key)}";
    }

    private string? Text(string key, string value, ref KitchenFile profile)
    {
        switch (key)
        {
            case "altitude":
                bool read = Altitude.TryRead(value, out double feet, out string wrong);
                profile = profile with { AltitudeFeet = read ? feet : null };
                return read ? null : $"altitude: {wrong}";
            case "gauge":
                profile = profile with { Gauge = value };
                return Unknown(key, value, KitchenWords.Gauges);
            case "gaugeTested":
                return Day(value, ref profile);
            case "jar":
                profile = profile with { Jar = value };
                return Unknown(key, value, KitchenWords.Jars);
            case "country" or "region":
                profile = profile with { Country = value };
                return Unknown(key, value, KitchenWords.Countries);
            case "units":
                profile = profile with { Metric = value == "metric" };
                return Unknown(key, value, KitchenWords.Units);
            default:
                profile = profile with { Aliases = Path.Combine(folder, value) };
                return value.Length == 0 ? $"\"{key}\" is empty; name a file" : null;
        }
    }

    private string? Day(string value, ref KitchenFile profile)
    {
        if (!Days.TryRead(value, out DateOnly day))
        {
            return $"gaugeTested: \"{value}\" is no day; write year-month-day, such as \"2026-04-30\"";
        }

        profile = profile with { GaugeTested = day };
        return day > today ? $"gaugeTested: \"{value}\" is still to come; write the day of the last test" : null;
    }

    private static string? Canners(ref Utf8JsonReader reader, ref KitchenFile profile)
    {
        List<string> kinds = [];
        bool list = reader.TokenType == JsonTokenType.StartArray;
        while (!list || (reader.Read() && reader.TokenType != JsonTokenType.EndArray))
        {
            if (reader.TokenType != JsonTokenType.String)
            {
                return $"canner: a kind in double quotes, or a list of kinds; known: {string.Join(", ", KitchenWords.Canners)}";
            }

            string kind = reader.GetString()!;
            if (Unknown("canner", kind, KitchenWords.Canners) is { } problem)
            {
                return problem;
            }

            if (kinds.Contains(kind, StringComparer.Ordinal))
            {
                return $"canner: \"{kind}\" stands twice";
            }

            kinds.Add(kind);
            if (!list)
            {
                break;
            }
        }

        profile = profile with { Canners = [.. kinds] };
        return kinds.Count > 0 ? null : $"canner: the list is empty; known: {string.Join(", ", KitchenWords.Canners)}; leave the key out where you have none yet";
    }

    private static string? Capacity(ref Utf8JsonReader reader, ref KitchenFile profile)
    {
        if (reader.TokenType == JsonTokenType.Number)
        {
            if (Jars(ref reader, "capacity", out int any) is { } wrong)
            {
                return wrong;
            }

            profile = profile with { Capacity = new(any, ImmutableSortedDictionary<string, int>.Empty) };
            return null;
        }

        return reader.TokenType == JsonTokenType.StartObject
            ? CapacityBySize(ref reader, ref profile)
            : "capacity: a number of jars, or a number for each size, such as {\"pint\": 16, \"quart\": 7}";
    }

    private static string? CapacityBySize(ref Utf8JsonReader reader, ref KitchenFile profile)
    {
        ImmutableSortedDictionary<string, int>.Builder jars = ImmutableSortedDictionary.CreateBuilder<string, int>(StringComparer.Ordinal);
        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            string jar = reader.GetString()!;
            if (Unknown("capacity", jar, KitchenWords.Jars) is { } problem)
            {
                return problem;
            }

            reader.Read();
            if (Jars(ref reader, $"capacity of {jar}", out int count) is { } wrong)
            {
                return wrong;
            }

            if (!jars.TryAdd(jar, count))
            {
                return $"capacity: \"{jar}\" stands twice";
            }
        }

        profile = profile with { Capacity = new(null, jars.ToImmutable()) };
        return jars.Count > 0 ? null : "capacity: no size is told; write {\"pint\": 16, \"quart\": 7}";
    }

    private static string? Jars(ref Utf8JsonReader reader, string name, out int count)
    {
        count = 0;
        return reader.TokenType == JsonTokenType.Number && reader.TryGetInt32(out count) && count is >= 1 and <= MostJars
            ? null
            : FormattableString.Invariant($"{name}: a whole number of jars in one load, from 1 to {MostJars}");
    }

    private static string? Unknown(string key, string value, IReadOnlyList<string> allowed) =>
        allowed.Contains(value, StringComparer.Ordinal) ? null : $"{key}: {KitchenOptions.Unknown(value, allowed)}";

    private static string Example(string key) => key switch
    {
        "altitude" => "\"410 m\"",
        "gauge" => "\"dial\"",
        "gaugeTested" => "\"2026-04-30\"",
        "jar" => "\"pint\"",
        "units" => "\"metric\"",
        "aliases" => "\"words.csv\"",
        _ => "\"uk\"",
    };
}
