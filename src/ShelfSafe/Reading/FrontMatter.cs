using ShelfSafe.Core;

namespace ShelfSafe.Reading;

/// <summary>The flat <c>key: value</c> lines that may stand above a recipe between two lines of dashes.</summary>
/// <remarks>Nested values are not read, but for dashed lists under a key of the recipe itself ("ingredients", "steps").</remarks>
internal sealed class FrontMatter
{
    private const int LongestBlock = 200_000;

    /// <summary>The title, or <see langword="null"/>.</summary>
    public string? Title { get; private set; }

    /// <summary>Servings or yield as "key: value", or <see langword="null"/>.</summary>
    public string? Yield { get; private set; }

    /// <summary>What it says that belongs to the recipe: description, notes, lists of foods and steps.</summary>
    public List<Row> Rows { get; } = [];

    /// <summary>Number of lists read.</summary>
    public int Blocks { get; private set; }

    /// <summary>Offset of the text after it.</summary>
    public int End { get; private set; }

    /// <summary>Reads the front matter that starts at <paramref name="start"/>, if one does.</summary>
    public static FrontMatter Read(string text, int start)
    {
        FrontMatter front = new() { End = start };
        int at = NextLine(text, start, out int end);
        ReadOnlySpan<char> fence = text.AsSpan(start, end - start).TrimEnd();
        if (fence is not ("---" or "+++"))
        {
            return front;
        }

        int first = at;
        while (at < text.Length && at - start < LongestBlock)
        {
            int from = at;
            at = NextLine(text, from, out end);
            ReadOnlySpan<char> line = text.AsSpan(from, end - from).TrimEnd();
            if (line.SequenceEqual(fence) || line is "...")
            {
                front.End = at;
                front.ReadLines(text, first, from);
                return front;
            }
        }

        return front;
    }

    private void ReadLines(string text, int at, int stop)
    {
        SourceText source = SourceText.From(text, 0, raw: true);
        bool inList = false;
        while (at < stop)
        {
            int from = at;
            at = NextLine(text, from, out int end);
            ReadOnlySpan<char> line = text.AsSpan(from, end - from);
            int indent = line.Length - line.TrimStart().Length;
            if (line.TrimStart().StartsWith("- "))
            {
                if (inList)
                {
                    Add(source, RowKind.Item, text, from + indent + 2, end);
                }

                continue;
            }

            int colon = line.IndexOfAny(':', '=');
            if (colon > 0 && indent == 0)
            {
                inList = Take(source, text, from, from + colon, end);
            }
        }
    }

    private bool Take(SourceText source, string text, int from, int colon, int end)
    {
        string key = text[from..colon].Trim().ToLowerInvariant();
        string value = text[(colon + 1)..end].Trim().Trim('"', '\'').Trim();
        switch (key)
        {
            case "title" or "name":
                Title ??= value.Length > 0 ? value : null;
                return false;
            case "servings" or "serves" or "yield" or "yields" or "makes" or "portions" or "serving" or "recipeyield" or "recipe_yield":
                Yield ??= value.Length > 0 ? $"{key}: {value}" : null;
                return false;
            case "description" or "summary" or "intro" or "introduction" or "subtitle" or "notes" or "note" or "tips" or "tip" or "variation" or "variations"
                or "extra" or "extras" or "added" or "addition" or "additions" or "comment" or "comments" or "remark" or "remarks" or "method" or "directions" or "instructions":
                Blocks++;
                Add(source, RowKind.Heading, text, from, colon);
                Add(source, RowKind.Paragraph, text, colon + 1, end);
                return true;
            case "ingredients" or "steps":
                Blocks++;
                Add(source, RowKind.Heading, text, from, colon);
                return true;
            default:
                return false;
        }
    }

    private void Add(SourceText source, RowKind kind, string text, int from, int end)
    {
        while (from < end && (TextMarks.IsBlank(text[from]) || text[from] is '"' or '\'' or '|' or '>'))
        {
            from++;
        }

        while (end > from && (TextMarks.IsBlank(text[end - 1]) || text[end - 1] is '"' or '\''))
        {
            end--;
        }

        MappedTextBuilder builder = new(source);
        builder.AddBody(from, end);
        MappedText words = builder.Build();
        if (words.Text.Length > 0)
        {
            Rows.Add(new()
            {
                Kind = kind,
                Text = words,
                Level = kind == RowKind.Heading ? 6 : 0,
                Block = kind == RowKind.Item ? Blocks : 0,
                Depth = kind == RowKind.Item ? 1 : 0,
            });
        }
    }

    private static int NextLine(string text, int start, out int end)
    {
        int length = text.AsSpan(start).IndexOfAny('\n', '\r');
        end = length < 0 ? text.Length : start + length;
        return end + 1 < text.Length && text[end] == '\r' && text[end + 1] == '\n' ? end + 2 : Math.Min(end + 1, text.Length);
    }
}
