namespace ShelfSafe.Pack;

/// <summary>A card cut into its title, its tables and its sections; rows and lines keep their line numbers.</summary>
/// <remarks>Known gap: reads only pipe tables and <c>##</c> headings, all that a card may hold.</remarks>
internal sealed class CardText
{
    private readonly Dictionary<string, string> _sections = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<string>> _paragraphs = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _lines = new(StringComparer.Ordinal);

    private CardText(string title) => Title = title;

    /// <summary>Text of the first heading.</summary>
    public string Title { get; private set; }

    /// <summary>Table rows with the section they stand in (empty before the first section), header and rule rows left out.</summary>
    public List<(string Section, string[] Header, string[] Cells, int Line)> Rows { get; } = [];

    /// <summary>Prose of each section, line ends as spaces, tables left out.</summary>
    public IReadOnlyDictionary<string, string> Sections => _sections;

    /// <summary>Prose of a section, or empty.</summary>
    public string Section(string name) => _sections.GetValueOrDefault(name, string.Empty);

    /// <summary>Prose of a section cut at empty lines and list marks; empty where the card has none.</summary>
    public IReadOnlyList<string> Paragraphs(string name) => _paragraphs.GetValueOrDefault(name) ?? [];

    /// <summary>Line of a section's heading, from 1; 1 where the card has none.</summary>
    public int LineOf(string name) => _lines.GetValueOrDefault(name, 1);

    /// <summary>Cuts a card; never fails.</summary>
    public static CardText Read(string text)
    {
        CardText card = new(string.Empty);
        string section = string.Empty;
        string[]? header = null;
        bool opens = true;
        int number = 0;
        foreach (ReadOnlySpan<char> raw in text.AsSpan().EnumerateLines())
        {
            number++;
            string line = raw.Trim().ToString();
            if (line.StartsWith('|'))
            {
                header = card.AddRow(section, header, Cells(line), number);
                continue;
            }

            header = null;
            if (line.StartsWith("## ", StringComparison.Ordinal))
            {
                section = line[3..].Trim();
                card._lines.TryAdd(section, number);
                opens = true;
            }
            else if (line.StartsWith("# ", StringComparison.Ordinal))
            {
                int comment = line.IndexOf("<!--", StringComparison.Ordinal);
                card.Title = (comment < 0 ? line[2..] : line[2..comment]).Trim();
            }
            else
            {
                opens = card.AddProse(section, line, opens);
            }
        }

        return card;
    }

    // The first row of a table is its header, which is answered for the rows that follow.
    private string[] AddRow(string section, string[]? header, string[] cells, int line)
    {
        if (header is not null && !IsRule(cells))
        {
            Rows.Add((section, header, cells, line));
        }

        return header ?? cells;
    }

    // Answers whether the next line opens a paragraph.
    private bool AddProse(string section, string line, bool opens)
    {
        if (line.Length == 0)
        {
            return true;
        }

        string before = _sections.GetValueOrDefault(section, string.Empty);
        _sections[section] = before.Length == 0 ? line : before + " " + line;
        AddToParagraph(section, line, opens);
        return false;
    }

    private void AddToParagraph(string section, string line, bool opens)
    {
        if (!_paragraphs.TryGetValue(section, out List<string>? own))
        {
            _paragraphs.Add(section, own = []);
        }

        if (opens || own.Count == 0 || line.StartsWith("- ", StringComparison.Ordinal))
        {
            own.Add(line);
        }
        else
        {
            own[^1] += " " + line;
        }
    }

    private static string[] Cells(string line)
    {
        // A check writes a|b without blanks, or escaped as in all pipe tables; a bar beside a blank parts the cells.
        List<string> cells = [];
        int start = 1;
        for (int i = 1; i < line.Length; i++)
        {
            bool parts = line[i - 1] == ' ' || i + 1 == line.Length || line[i + 1] == ' ';
            if (line[i] == '|' && line[i - 1] != '\\' && parts)
            {
                cells.Add(line[start..i].Replace("\\|", "|", StringComparison.Ordinal).Trim());
                start = i + 1;
            }
        }

        return [.. cells];
    }

    private static bool IsRule(string[] cells)
    {
        foreach (string cell in cells)
        {
            if (cell.Length == 0 || cell.AsSpan().TrimStart(':').TrimEnd(':').Trim('-').Length > 0)
            {
                return false;
            }
        }

        return true;
    }
}
