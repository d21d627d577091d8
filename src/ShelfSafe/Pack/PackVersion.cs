using System.Security.Cryptography;
using System.Text;

namespace ShelfSafe.Pack;

/// <summary>What tells one pack from another.</summary>
internal static class PackVersion
{
    /// <summary>Version and date from the text of <c>pack.csv</c>, empty where it is missing.</summary>
    public static (string Version, string Date) Read(string text)
    {
        string[] lines = text.Split('\n', StringSplitOptions.TrimEntries);
        string[] cells = lines.Length > 1 ? lines[1].Split(',') : [];
        return cells.Length == 2 ? (cells[0], cells[1]) : (string.Empty, string.Empty);
    }

    /// <summary>SHA-256 over all files in ordinal order of their paths, lower-case hexadecimal.</summary>
    public static string Hash(IReadOnlyDictionary<string, string> files)
    {
        using IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (string name in files.Keys.Order(StringComparer.Ordinal))
        {
            hash.AppendData(Encoding.UTF8.GetBytes(name));
            hash.AppendData([0]);
            hash.AppendData(Encoding.UTF8.GetBytes(files[name]));
            hash.AppendData([0]);
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }
}
