using System.Text;
using nietras.SeparatedValues;

namespace ShelfSafe.Tests.Published;

/// <summary>Reads a table of published figures that stands beside the tests.</summary>
internal static class PublishedTable
{
    public static List<Dictionary<string, string>> Read(string file)
    {
        using StreamReader stream = new(typeof(PublishedTable).Assembly.GetManifestResourceStream("Published/" + file)!, Encoding.UTF8);
        using SepReader reader = Sep.New(',').Reader(o => o with { Unescape = true }).FromText(stream.ReadToEnd());
        List<Dictionary<string, string>> rows = [];
        IReadOnlyList<string> header = reader.Header.ColNames;
        foreach (SepReader.Row row in reader)
        {
            Dictionary<string, string> values = new(StringComparer.Ordinal);
            for (int i = 0; i < header.Count; i++)
            {
                values[header[i]] = row[i].ToString();
            }

            rows.Add(values);
        }

        return rows;
    }
}
