namespace ShelfSafe.Pack;

/// <summary>The files of the built-in pack: tables cut into cells, cards as they stand.</summary>
/// <param name="image">The image.</param>
internal sealed class ImageFiles(PackImage image) : PackFiles
{
    private const string CardSection = "cards";
    private const string AboutSection = "about";

    private readonly ImageMap _cards = new(image, image.Section(CardSection));

    /// <summary>The image itself, for the indexes that other rooms keep in it.</summary>
    public PackImage Image => image;

    /// <summary>Version, date and SHA-256 of the pack, as the build found them.</summary>
    public (string Version, string Date, string Sha256) About
    {
        get
        {
            int at = image.Section(AboutSection);
            return (image.String(image.Int32(at)), image.String(image.Int32(at + 4)), image.String(image.Int32(at + 8)));
        }
    }

    /// <inheritdoc/>
    public override IEnumerable<string> Cards => Enumerable.Range(0, _cards.Count).Select(index => _cards.Key(index));

    /// <inheritdoc/>
    public override PackText this[string path]
    {
        get
        {
            if (_cards.Find(path) is int card and >= 0)
            {
                return image.String(_cards.Value(card));
            }

            int table = image.Section(path);
            return table < 0 ? string.Empty : new PackText(new ImageTable(image, path, table));
        }
    }

    /// <inheritdoc/>
    public override bool Has(string path) => _cards.Find(path) >= 0 || image.Section(path) >= 0;

    /// <summary>Writes the files of a pack that was found to be without fault.</summary>
    /// <param name="files">Texts by path.</param>
    /// <param name="writer">Takes them.</param>
    /// <exception cref="InvalidDataException">A table has a fault of form.</exception>
    public static void Write(IReadOnlyDictionary<string, string> files, PackImageWriter writer)
    {
        List<(string, int)> cards = [];
        foreach (string path in files.Keys.Order(StringComparer.Ordinal))
        {
            if (path.EndsWith(".csv", StringComparison.Ordinal))
            {
                WriteTable(path, files[path], writer);
            }
            else
            {
                cards.Add((path, writer.Id(files[path])));
            }
        }

        ImageSection section = new();
        ImageMap.Write(writer, section, cards);
        writer.Add(CardSection, section);
        (string version, string date) = PackVersion.Read(files.GetValueOrDefault("pack.csv", string.Empty));
        ImageSection about = new();
        about.Add(writer.Id(version));
        about.Add(writer.Id(date));
        about.Add(writer.Id(PackVersion.Hash(files)));
        writer.Add(AboutSection, about);
    }

    private static void WriteTable(string path, string text, PackImageWriter writer)
    {
        string[] header = text[..text.AsSpan().IndexOfAny('\r', '\n')].TrimStart('\uFEFF').Split(',');
        List<(int, string[])> rows = [];
        List<PackFault> faults = [];
        CsvTable.Read(
            path,
            text,
            header,
            row =>
            {
                rows.Add((row.Line, [.. header.Select(row.Text)]));
                return string.Empty;
            },
            faults);
        if (faults.Count > 0)
        {
            throw new InvalidDataException(faults[0].ToString());
        }

        ImageTable.Write(writer, path, header, rows, Array.Find(TableKeys.All, table => table.File == path)?.Keys ?? []);
    }
}
