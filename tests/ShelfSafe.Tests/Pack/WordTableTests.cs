using System.Text.RegularExpressions;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using Xunit;

namespace ShelfSafe.Tests.Pack;

/// <summary>The words of the program: each key that it asks for is there, and its blanks can be filled.</summary>
public sealed partial class WordTableTests
{
    [Fact]
    public void BuiltIn_EachAcidity_HasAReason()
    {
        foreach (Acidity acidity in Enum.GetValues<Acidity>())
        {
            Assert.EndsWith(".", WordTable.BuiltIn[$"reason.acidity.{Names.Of(acidity)}"], StringComparison.Ordinal);
        }
    }

    [Fact]
    public void BuiltIn_EachMethodOfTheTable_HasWordsForAnOwnProcess()
    {
        foreach (string method in RulePack.Default.Tables.Processes.Select(row => row.Method).Distinct(StringComparer.Ordinal))
        {
            Assert.Contains("12 minutes", WordTable.BuiltIn.With($"own-process.{method}", "12 minutes", "pint"), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void BuiltIn_EachText_CanBeFilled()
    {
        string?[] blanks = [.. Enumerable.Repeat("x", 12)];
        foreach (string key in WordTable.BuiltIn.Keys.Where(key => Blank().IsMatch(WordTable.BuiltIn[key])))
        {
            Assert.DoesNotContain("{0}", WordTable.BuiltIn.With(key, blanks), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Item_UnknownKey_NamesTheTable() =>
        Assert.Contains("no-such-key", Assert.Throws<KeyNotFoundException>(() => WordTable.BuiltIn["no-such-key"]).Message, StringComparison.Ordinal);

    [GeneratedRegex(@"\{\d+[^}]*\}")]
    private static partial Regex Blank();
}
