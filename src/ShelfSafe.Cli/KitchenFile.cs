using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using ShelfSafe.Core;

namespace ShelfSafe.Cli;

/// <summary>
/// A kitchen profile as a file: <c>{"altitude": "410 m", "canner": ["pressure", "boiling-water"], "gauge": "dial", "gaugeTested": "2026-04-30",
/// "capacity": {"pint": 16, "quart": 7}, "jar": "pint", "country": "uk", "units": "metric", "aliases": "words.csv"}</c>; every key may be left out.
/// </summary>
internal sealed record KitchenFile
{
    /// <summary>A profile that says nothing.</summary>
    public static KitchenFile Empty { get; } = new();

    /// <summary>Altitude in feet, or <see langword="null"/>.</summary>
    public double? AltitudeFeet { get; init; }

    /// <summary>Kinds of canner; empty where they are not told.</summary>
    public ImmutableArray<string> Canners { get; init; } = [];

    /// <summary>Gauge, or <see langword="null"/>.</summary>
    public string? Gauge { get; init; }

    /// <summary>Day of the last gauge test, or <see langword="null"/>.</summary>
    public DateOnly? GaugeTested { get; init; }

    /// <summary>Jars in a load, or <see langword="null"/>.</summary>
    public CannerCapacity? Capacity { get; init; }

    /// <summary>Usual jar, or <see langword="null"/>.</summary>
    public string? Jar { get; init; }

    /// <summary>Country code, or <see langword="null"/>.</summary>
    public string? Country { get; init; }

    /// <summary>Whether metric figures are shown as well.</summary>
    public bool Metric { get; init; }

    /// <summary>Path of the word list, taken from the profile's own folder, or <see langword="null"/>.</summary>
    public string? Aliases { get; init; }

    /// <summary>The file as it was found or named, or <see langword="null"/>.</summary>
    public string? Path { get; init; }

    /// <summary>Reads a profile strictly: an unknown, repeated or wrong key is refused with its line.</summary>
    /// <param name="path">Path for messages.</param>
    /// <param name="text">The file.</param>
    /// <param name="today">The day, so that no gauge was tested after it; <see langword="null"/> for no such check.</param>
    /// <param name="wrong">What is wrong: file, line, and what would be right.</param>
    public static KitchenFile? Parse(string path, string text, DateOnly? today, out string wrong)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(text);
        Utf8JsonReader reader = new(bytes, new JsonReaderOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true });
        KitchenFile profile = new() { Path = path };
        string? problem;
        try
        {
            problem = ReadObject(ref reader, new(System.IO.Path.GetDirectoryName(path) ?? string.Empty, today), ref profile);
        }
        catch (JsonException broken)
        {
            wrong = FormattableString.Invariant($"{path}:{(broken.LineNumber ?? 0) + 1}: this is not JSON from here on; write {{\"altitude\": \"410 m\", \"gauge\": \"weighted\"}}");
            return null;
        }

        catch (InvalidOperationException)
        {
            // Half of a surrogate pair, written as an escape: JSON in form, but no text.
            problem = "these words hold an escape that is no letter";
        }

        wrong = problem is null ? string.Empty : FormattableString.Invariant($"{path}:{LineAt(bytes, reader.TokenStartIndex)}: {problem}");
        return problem is null ? profile : null;
    }

    private static string? ReadObject(ref Utf8JsonReader reader, KitchenKeys keys, ref KitchenFile profile)
    {
        if (!reader.Read() || reader.TokenType != JsonTokenType.StartObject)
        {
            return "a profile is one JSON object, in braces";
        }

        HashSet<string> seen = new(StringComparer.Ordinal);
        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            string key = reader.GetString()!;
            if (!KitchenKeys.All.Contains(key, StringComparer.Ordinal))
            {
                return KitchenOptions.Unknown(key, KitchenKeys.All);
            }

            if (!seen.Add(key))
            {
                return $"\"{key}\" stands twice";
            }

            if (seen.Contains("country") && seen.Contains("region"))
            {
                return "\"country\" and \"region\" mean the same; keep country";
            }

            if (keys.Read(key, ref reader, ref profile) is { } problem)
            {
                return problem;
            }
        }

        return reader.Read() ? "something follows the closing brace" : null; // the reader itself refuses most of these
    }

    private static int LineAt(ReadOnlySpan<byte> bytes, long offset) => bytes[..(int)Math.Min(offset, bytes.Length)].Count((byte)'\n') + 1;
}
