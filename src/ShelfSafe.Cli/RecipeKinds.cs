namespace ShelfSafe.Cli;

/// <summary>What an input can be, and how that is told from its name or its first characters.</summary>
internal static class RecipeKinds
{
    /// <summary>To be told from name or content.</summary>
    public const string Auto = "auto";

    /// <summary>Markdown.</summary>
    public const string Markdown = "markdown";

    /// <summary>Plain text.</summary>
    public const string Text = "text";

    /// <summary>A saved web page.</summary>
    public const string Html = "html";

    /// <summary>A file of schema.org data.</summary>
    public const string JsonLd = "json-ld";

    /// <summary>One JSON object a line.</summary>
    public const string JsonLines = "jsonl";

    /// <summary>All, as the option takes them.</summary>
    public static IReadOnlyList<string> All { get; } = [Auto, Markdown, Text, Html, JsonLd, JsonLines];

    /// <summary>The kind that a file's ending tells; Markdown where it tells nothing.</summary>
    public static string OfName(string path) => Path.GetExtension(path).ToUpperInvariant() switch
    {
        ".TXT" => Text,
        ".HTML" or ".HTM" or ".XHTML" => Html,
        ".JSON" or ".JSONLD" => JsonLd,
        ".JSONL" or ".NDJSON" => JsonLines,
        _ => Markdown,
    };

    /// <summary>The kind that the first characters tell: a page, JSON, else Markdown.</summary>
    /// <remarks>A Markdown recipe may start with a bracket or a tag, so only what is beyond doubt is taken for something else.</remarks>
    public static string OfContent(string text)
    {
        ReadOnlySpan<char> start = text.AsSpan().TrimStart('\uFEFF').TrimStart();
        if (start.StartsWith("<!doctype html", StringComparison.OrdinalIgnoreCase) || start.StartsWith("<html", StringComparison.OrdinalIgnoreCase))
        {
            return Html;
        }

        ReadOnlySpan<char> inner = start.IsEmpty ? start : start[1..].TrimStart();
        return (start is ['{', ..] && inner is ['"', ..]) || (start is ['[', ..] && inner is ['{', ..]) ? JsonLd : Markdown;
    }
}
