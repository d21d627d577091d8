using System.Text.RegularExpressions;
using ShelfSafe.Pack;
using ShelfSafe.Tests.Lessons;
using ShelfSafe.Tests.Samples;
using Xunit;

namespace ShelfSafe.Tests.Pack;

/// <summary>All texts that people read stand in the rules folder, and each of them reads at school grade 8 or below.</summary>
/// <remarks>
/// Lessons are graded as a whole beside their own tests. A text of fewer than five words says too little to be graded. Commands of examples are no sentences, and conditions of
/// published rows stand as printed.
/// </remarks>
public partial class ReadingLevelTests
{
    private const double HighestGrade = 8;
    private const int LeastWords = 5;

    // Columns that people read; all other columns are keys, numbers and sources.
    private static readonly Dictionary<string, string[]> _columns = new(StringComparer.Ordinal)
    {
        ["words.csv"] = ["text"],
        ["changes.csv"] = ["text", "instead"],
        ["adaptations.csv"] = ["text", "step"],
        ["freezing.csv"] = ["text"],
        ["run-sheet.csv"] = ["text"],
        ["storage.csv"] = ["text"],
        ["unsafe-methods.csv"] = ["message", "why", "instead"],
        ["foods.csv"] = ["why_no"],
        ["kitchen-notes.csv"] = ["text", "instead"],
        ["countries.csv"] = ["text", "instead"],
    };

    // Sections of a card that are no text for people.
    private static readonly string[] _unread = ["Trips", "Near miss", "Sample", "Applies", "Core", "Allowed", "Gates", "See", "Pictures", "Needs"];

    private static readonly string[] _folders = ["hazards", "cautions", "jars-in-hand", "categories"];

    public static TheoryData<string> Files =>
        [.. _columns.Keys.Concat(_folders.SelectMany(folder => Directory.GetFiles(Path.Combine(RulesFolder.Path, folder), "*.md").Select(path => $"{folder}/{Path.GetFileName(path)}")))];

    [Theory]
    [MemberData(nameof(Files))]
    public void Texts_OfAFile_ReadAtGradeEightOrBelow(string file)
    {
        string[] hard = [.. Texts(file).Select(Plain).Distinct(StringComparer.Ordinal).Where(text => Readability.Grade(text) > HighestGrade).Select(text => FormattableString.Invariant($"{Readability.Grade(text):0.00}: {text}"))];

        Assert.True(hard.Length == 0, string.Join('\n', hard));
    }

    [Fact]
    public void Texts_OfTheFolder_AreMany() => Assert.InRange(Files.Sum(file => Texts(file.Data).Count()), 1_500, int.MaxValue);

    private static IEnumerable<string> Texts(string file)
    {
        string text = File.ReadAllText(Path.Combine(RulesFolder.Path, file));
        IEnumerable<string> all = file.EndsWith(".csv", StringComparison.Ordinal) ? Cells(file, text)
            : file.StartsWith("categories/", StringComparison.Ordinal) ? RulePack.Default.Tables.Categories.Single(card => card.Id == Path.GetFileNameWithoutExtension(file)).Gates.SelectMany(gate => (string[])[gate.Message, gate.Instead])
            : Lines(text);
        return all.Where(one => one.Split(' ').Length >= LeastWords);
    }

    private static IEnumerable<string> Cells(string file, string text)
    {
        string[] header = text[..text.IndexOf('\n', StringComparison.Ordinal)].TrimEnd().Split(',');
        List<PackFault> faults = [];
        List<string[]> rows = CsvTable.Read(file, new PackText(text), header, row => (string[]?)[row.Text(header[0]), .. _columns[file].Select(row.Text)], faults);
        Assert.Empty(faults);
        return rows.Where(row => file != "words.csv" || !Command().IsMatch(row[0])).SelectMany(row => row.Skip(1));
    }

    private static IEnumerable<string> Lines(string text)
    {
        bool read = false;
        foreach (string line in text.Split('\n'))
        {
            if (line.StartsWith("## ", StringComparison.Ordinal))
            {
                read = !_unread.Contains(line[3..].Trim(), StringComparer.Ordinal);
            }
            else if (read && line.Length > 0 && !line.StartsWith('|'))
            {
                yield return line.TrimStart('-', ' ');
            }
        }
    }

    // As it is said of one food in one dish.
    private static string Plain(string text) =>
        Blank().Replace(NumberChoice.Singular(text).Replace("{ingredient}", "flour", StringComparison.Ordinal).Replace("{dish}", "stew", StringComparison.Ordinal), "two");

    [GeneratedRegex(@"\{[^{}]*\}")]
    private static partial Regex Blank();

    [GeneratedRegex(@"^example\.[a-z-]+\.[0-9]+$")]
    private static partial Regex Command();
}
