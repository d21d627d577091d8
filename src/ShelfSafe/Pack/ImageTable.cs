namespace ShelfSafe.Pack;

/// <summary>A table of the built-in pack: rows of string numbers, read one cell at a time.</summary>
/// <remarks>
/// Layout: number of columns, number of rows, the header, then for each row its line and its cells. A key column has a section of its
/// own, named "file:column": a map from each value to where its rows stand (their number, then each), counted from the section.
/// </remarks>
internal readonly struct ImageTable(PackImage image, string file, int at)
{
    /// <summary>Number of rows.</summary>
    public int Count => image.Int32(at + 4);

    private int Columns => image.Int32(at);

    /// <summary>Whether the columns are these, in this order.</summary>
    public bool HasHeader(string[] header)
    {
        if (header.Length != Columns)
        {
            return false;
        }

        for (int i = 0; i < header.Length; i++)
        {
            if (!image.Is(image.Int32(at + 8 + (4 * i)), header[i]))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Line of a row in the table it was made of.</summary>
    public int Line(int row) => image.Int32(Start(row));

    /// <summary>One cell.</summary>
    public string Cell(int row, int column) => image.String(image.Int32(Start(row) + 4 + (4 * column)));

    /// <summary>The index of a key column.</summary>
    public ImageIndex Index(string column) => new(image, image.Section($"{file}:{column}"));

    /// <summary>Writes a table as a section of its name, and an index for each key column.</summary>
    public static void Write(PackImageWriter writer, string name, string[] header, IReadOnlyList<(int Line, string[] Cells)> rows, IEnumerable<string> keys)
    {
        ImageSection section = new();
        section.Add(header.Length);
        section.Add(rows.Count);
        foreach (string column in header)
        {
            section.Add(writer.Id(column));
        }

        foreach ((int line, string[] cells) in rows)
        {
            section.Add(line);
            foreach (string cell in cells)
            {
                section.Add(writer.Id(cell));
            }
        }

        writer.Add(name, section);
        foreach (string key in keys)
        {
            int column = Array.IndexOf(header, key);
            WriteIndex(writer, $"{name}:{key}", [.. rows.Select((row, at) => (row.Cells[column], at)).GroupBy(static pair => pair.Item1, static pair => pair.at)]);
        }
    }

    private static void WriteIndex(PackImageWriter writer, string name, IReadOnlyList<IGrouping<string, int>> groups)
    {
        // The lists stand behind the map, whose length does not depend on where they are.
        ImageSection map = new();
        ImageMap.Write(writer, map, [.. groups.Select(static group => (group.Key, 0))]);
        ImageSection lists = new();
        List<(string, int)> places = [];
        foreach (IGrouping<string, int> group in groups)
        {
            places.Add((group.Key, map.Length + lists.Length));
            lists.Add(group.Count());
            foreach (int row in group)
            {
                lists.Add(row);
            }
        }

        ImageSection section = new();
        ImageMap.Write(writer, section, places);
        section.Add(lists.ToArray());
        writer.Add(name, section);
    }

    private int Start(int row) => at + 8 + (4 * Columns) + (4 * (Columns + 1) * row);
}

/// <summary>The index of a key column, see <see cref="ImageTable"/>.</summary>
internal readonly struct ImageIndex(PackImage image, int section)
{
    private readonly ImageMap _map = new(image, section);

    /// <summary>Whether a row has the value.</summary>
    public bool Has(ReadOnlySpan<char> value) => _map.Find(value) >= 0;

    /// <summary>The rows with a value, in the order of the table.</summary>
    public int[] Find(string value)
    {
        if (_map.Find(value) is not (int found and >= 0))
        {
            return [];
        }

        int list = section + _map.Value(found);
        int[] rows = new int[image.Int32(list)];
        for (int i = 0; i < rows.Length; i++)
        {
            rows[i] = image.Int32(list + 4 + (4 * i));
        }

        return rows;
    }
}
