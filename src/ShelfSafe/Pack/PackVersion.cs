namespace ShelfSafe.Pack;

/// <summary>Reads version and date of a pack from <c>pack.csv</c>.</summary>
internal static class PackVersion
{
    /// <summary>Version and date, empty where the file is missing.</summary>
    public static (string Version, string Date) Read(IReadOnlyDictionary<string, string> files)
    {
        string[] lines = files.GetValueOrDefault("pack.csv", string.Empty).Split('\n', StringSplitOptions.TrimEntries);
        string[] cells = lines.Length > 1 ? lines[1].Split(',') : [];
        return cells.Length == 2 ? (cells[0], cells[1]) : (string.Empty, string.Empty);
    }
}
