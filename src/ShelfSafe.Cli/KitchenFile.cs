using System.Text;
using System.Text.Json;

namespace ShelfSafe.Cli;

/// <summary>A kitchen profile as a file: <c>{"altitude": "410 m", "gauge": "weighted", "jar": "pint", "region": "uk", "aliases": "words.csv"}</c>.</summary>
/// <param name="AltitudeFeet">Altitude in feet, or <see langword="null"/>.</param>
/// <param name="Gauge">Gauge, or <see langword="null"/>.</param>
/// <param name="Jar">Usual jar, or <see langword="null"/>.</param>
/// <param name="Region">Country code, or <see langword="null"/>.</param>
/// <param name="Aliases">Path of the word list, taken from the profile's own folder, or <see langword="null"/>.</param>
internal sealed record KitchenFile(double? AltitudeFeet, string? Gauge, string? Jar, string? Region, string? Aliases)
{
    private static readonly string[] _keys = ["altitude", "gauge", "jar", "region", "aliases"];

    /// <summary>A profile that says nothing.</summary>
    public static KitchenFile Empty { get; } = new(null, null, null, null, null);

    /// <summary>Reads a profile strictly: an unknown, repeated or wrongly typed key is refused with its line.</summary>
    /// <param name="path">Path for messages.</param>
    /// <param name="text">The file.</param>
    /// <param name="wrong">What is wrong: file, line, and what would be right.</param>
    public static KitchenFile? Parse(string path, string text, out string wrong)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(text);
        Utf8JsonReader reader = new(bytes, new JsonReaderOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true });
        Dictionary<string, string> values = new(StringComparer.Ordinal);
        string? problem;
        try
        {
            problem = ReadObject(ref reader, values);
        }
        catch (JsonException broken)
        {
            wrong = FormattableString.Invariant($"{path}:{(broken.LineNumber ?? 0) + 1}: this is not JSON from here on; write {{\"altitude\": \"410 m\", \"gauge\": \"weighted\"}}");
            return null;
        }

        if (problem is not null)
        {
            wrong = FormattableString.Invariant($"{path}:{LineAt(bytes, reader.TokenStartIndex)}: {problem}");
            return null;
        }

        wrong = string.Empty;
        double? feet = values.TryGetValue("altitude", out string? altitude) && Altitude.TryRead(altitude, out double read, out _) ? read : null;
        string? aliases = values.TryGetValue("aliases", out string? list) ? Path.Combine(Path.GetDirectoryName(path) ?? string.Empty, list) : null;
        return new(feet, values.GetValueOrDefault("gauge"), values.GetValueOrDefault("jar"), values.GetValueOrDefault("region"), aliases);
    }

    private static string? ReadObject(ref Utf8JsonReader reader, Dictionary<string, string> values)
    {
        if (!reader.Read() || reader.TokenType != JsonTokenType.StartObject)
        {
            return "a profile is one JSON object, in braces";
        }

        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            string key = reader.GetString()!;
            if (!_keys.Contains(key, StringComparer.Ordinal))
            {
                return $"\"{key}\" is not known; known: {string.Join(", ", _keys)}";
            }

            if (!reader.Read() || reader.TokenType != JsonTokenType.String)
            {
                return $"\"{key}\" must be a text in double quotes";
            }

            string value = reader.GetString()!;
            if (!values.TryAdd(key, value))
            {
                return $"\"{key}\" stands twice";
            }

            if (Wrong(key, value) is { } problem)
            {
                return problem;
            }
        }

        return reader.Read() ? "something follows the closing brace" : null; // the reader itself refuses most of these
    }

    private static string? Wrong(string key, string value) => key switch
    {
        "altitude" => Altitude.TryRead(value, out _, out string wrong) ? null : $"altitude: {wrong}",
        "gauge" => Unknown(key, value, KitchenWords.Gauges),
        "jar" => Unknown(key, value, KitchenWords.Jars),
        "region" => Unknown(key, value, KitchenWords.Regions),
        _ => value.Length == 0 ? $"\"{key}\" is empty; name a file" : null,
    };

    private static string? Unknown(string key, string value, IReadOnlyList<string> allowed) =>
        allowed.Contains(value, StringComparer.Ordinal) ? null : $"{key}: \"{value}\" is not known; known: {string.Join(", ", allowed)}";

    private static int LineAt(ReadOnlySpan<byte> bytes, long offset) => bytes[..(int)Math.Min(offset, bytes.Length)].Count((byte)'\n') + 1;
}
