using ShelfSafe.Pack;

namespace ShelfSafe.Foods;

/// <summary>Writes the section that <see cref="LineWordTable"/> reads.</summary>
/// <remarks>
/// Layout: where its parts begin, counted from the section. The unit words, each with its unit; the first words of units of three words; the
/// kinds, each with where its words begin; the first words of tails, each with where their list begins (their number, then each by its
/// number); the tails by number (how many, then each); the words that do not change which food is meant, and those for cuts, folded as keys.
/// </remarks>
internal static class LineWordWriter
{
    /// <summary>Name of the section.</summary>
    public const string Section = "line-words";

    private const int Parts = 7;

    /// <summary>Reads both tables and adds the section to an image; what is wrong is reported.</summary>
    public static void Write(PackText units, PackText words, List<PackFault> faults, PackImageWriter writer)
    {
        Dictionary<string, int> unitWords = new(StringComparer.Ordinal);
        CsvTable.Read("units.csv", units, ["word", "unit", "kind", "factor", "region", "source"], row =>
        {
            unitWords[row.Text("word")] = writer.Id(row.Text("unit"));
            return string.Empty;
        }, faults);
        Dictionary<string, List<string>> kinds = new(StringComparer.Ordinal);
        CsvTable.Read("line-words.csv", words, ["word", "kind", "source"], row =>
        {
            (kinds.TryGetValue(row.Text("kind"), out List<string>? own) ? own : kinds[row.Text("kind")] = []).Add(row.Text("word"));
            return string.Empty;
        }, faults);
        List<string> Of(string kind) => kinds.GetValueOrDefault(kind, []);

        ImageParts parts = new(Parts);
        List<(string, int)> places = [];
        foreach ((string kind, List<string> own) in kinds)
        {
            places.Add((kind, parts.Here));
            ImageMap.Write(writer, parts.Body, Plain(own));
        }

        List<(string, int)> tails = Tails(Of("tail"), parts);
        parts.Map(writer, [.. unitWords.Select(pair => (pair.Key, pair.Value))]);
        parts.Map(writer, Plain(unitWords.Keys.Where(word => word.AsSpan().Count(' ') == 2).Select(FirstWord)));
        parts.Map(writer, places);
        parts.Map(writer, tails);
        parts.Begin();
        parts.Body.Add([.. Of("tail").Select(writer.Id)]);
        parts.Map(writer, Plain(Of("filler").Concat(Of("size")).Concat(Of("prep")).Select(WordFolding.Key)));
        parts.Map(writer, Plain(Of("cut").Select(WordFolding.Key)));
        writer.Add(Section, parts.ToSection());
    }

    private static List<(string, int)> Plain(IEnumerable<string> words) => [.. words.Distinct(StringComparer.Ordinal).Select(word => (word, 0))];

    private static string FirstWord(string words) => words[..words.IndexOf(' ', StringComparison.Ordinal)];

    // The tails by their first word, which ends at the first mark that is no letter.
    private static List<(string, int)> Tails(List<string> tails, ImageParts parts)
    {
        List<(string, int)> places = [];
        foreach (IGrouping<string, int> group in tails.Select((tail, number) => (First: string.Concat(tail.TakeWhile(char.IsLetter)), number)).GroupBy(tail => tail.First, tail => tail.number, StringComparer.Ordinal))
        {
            places.Add((group.Key, parts.Here));
            parts.Body.Add([.. group]);
        }

        return places;
    }
}
