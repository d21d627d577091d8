using ShelfSafe.Pack;
using ShelfSafe.Tests.Samples;
using Xunit;

namespace ShelfSafe.Tests.Pack;

/// <summary>The guide to the rules folder explains every table, column, list, kind of word and term, and names none that is gone.</summary>
public sealed class RulesReadmeTests
{
    private const string Changes = "## Changes";
    private static readonly Dictionary<string, string> _files = RulesFolder.Files();
    private static readonly string _guide = Guide();
    private static readonly HashSet<string> _words = [.. _guide.Split([' ', ',', ';', '`', '|', '\n', '(', ')', ':', '.', '"'], StringSplitOptions.RemoveEmptyEntries)];

    [Fact]
    public void Guide_EachTable_StandsWithItsHeader() =>
        Assert.All(_files.Where(static file => file.Key.EndsWith(".csv", StringComparison.Ordinal) && file.Key != "foods.csv"), static file =>
        {
            Assert.Contains(file.Key, _guide, StringComparison.Ordinal);
            Assert.Contains($"`{Header(file.Value)}`", _guide, StringComparison.Ordinal);
        });

    // The foods have a table of their own, a row for each column or two.
    [Fact]
    public void Guide_EachColumnOfTheFoods_IsExplained()
    {
        string section = _guide[_guide.IndexOf("### foods.csv", StringComparison.Ordinal).._guide.IndexOf("### food-aliases.csv", StringComparison.Ordinal)];
        string[] explained = [.. section.Split('\n').Where(static line => line.StartsWith("| ", StringComparison.Ordinal)).SelectMany(static line => line.Split('|')[1].Split(',')).Select(static name => name.Trim())];

        Assert.All(Header(_files["foods.csv"]).Split(','), column => Assert.Contains(column, explained));
    }

    [Fact]
    public void Guide_EachNamedTable_Exists() =>
        Assert.All(
            _guide.Split([' ', ',', '`', '|', '\n', '(', ')', ':', ';', '/'], StringSplitOptions.RemoveEmptyEntries).Where(static word => word.EndsWith(".csv", StringComparison.Ordinal)),
            static name => Assert.Contains(name, _files.Keys));

    [Theory]
    [InlineData("lists.csv", 0)]
    [InlineData("line-words.csv", 1)]
    public void Guide_EachListAndKindOfWord_IsExplained(string table, int column)
    {
        List<string> names = CsvTable.Read(table, _files[table], Header(_files[table]).Split(','), row => row.Text(column == 0 ? "list" : "kind"), []);

        Assert.All(names.Distinct().Where(static name => !RuleLists.IsOfCards(name)), static name => Assert.Contains(name, _words));
    }

    [Fact]
    public void Guide_EachTrait_IsNamed() =>
        Assert.All(RulePack.Default.Tables.Foods.SelectMany(static food => food.Traits).Distinct(), static trait => Assert.Contains(trait, _words));

    [Fact]
    public void Guide_EachTermOfTheGrammar_IsExplained() =>
        Assert.All(CheckParser.Beginnings, static term => Assert.Contains(term, _guide, StringComparison.Ordinal));

    [Fact]
    public void Guide_EachFieldOfACategory_IsExplained()
    {
        IEnumerable<string> cards = _files.Where(static file => file.Key.StartsWith("categories/", StringComparison.Ordinal)).Select(static file => file.Value);
        IEnumerable<string> fields = cards.SelectMany(static card => card[..card.IndexOf("\n## ", StringComparison.Ordinal)].Split('\n')).Where(static line => line.StartsWith("| ", StringComparison.Ordinal))
            .Select(static line => line.Split('|')[1].Trim()).Where(static field => field is not ("field" or "---"));

        Assert.All(fields.Distinct(), static field => Assert.Contains("`" + field, _guide, StringComparison.Ordinal));
    }

    private static string Header(string table) => table[..table.IndexOf('\n', StringComparison.Ordinal)];

    // The list of changes may name what is gone.
    private static string Guide()
    {
        string text = File.ReadAllText(Path.Combine(RulesFolder.Path, "README.md"));
        return text[..text.IndexOf(Changes, StringComparison.Ordinal)];
    }
}
