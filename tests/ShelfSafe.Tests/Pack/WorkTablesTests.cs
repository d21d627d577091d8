using ShelfSafe.Pack;
using Xunit;

namespace ShelfSafe.Tests.Pack;

/// <summary>The tables of the work: sources that exist, and words that a newcomer reads.</summary>
public class WorkTablesTests
{
    // Words of the trade that a preserving cook learns first; they count as short.
    private static readonly HashSet<string> Trade = new(StringComparer.OrdinalIgnoreCase)
    {
        "process", "processes", "processed", "published", "headspace", "canner", "canners", "acid", "recipe", "recipes", "vinegar", "altitude", "bacteria",
        "pressure", "refrigerator", "gelatin", "tomato", "tomatoes", "potatoes", "gauge", "tested", "serving", "mayonnaise", "timetable", "weighted",
    };

    private static readonly WorkTables _tables = WorkTables.Of(RulePack.Default);

    [Fact]
    public void Read_EverySource_Exists()
    {
        List<PackFault> faults = [];

        _tables.CheckSources(RulePack.Default.Tables.Sources, faults);

        Assert.Empty(faults);
    }

    [Fact]
    public void Adaptations_EveryHazard_HasATreatment()
    {
        HashSet<string> known = [.. _tables.Adaptations.Select(row => row.Rule)];
        string[] missing = [.. RulePack.Default.Tables.Hazards.Select(card => card.Rule).Where(rule => !known.Contains(rule) && rule != "at-serving")];

        Assert.Empty(missing);
    }

    // Only these may be done to a recipe: nothing adds acid to a mixture, swaps a thickener or guesses at a food.
    [Theory]
    [InlineData("unidentified", "ask")]
    [InlineData("unmeasured", "ask")]
    [InlineData("step-food", "ask")]
    [InlineData("dense", "freeze")]
    [InlineData("leftovers", "freeze")]
    [InlineData("seafood", "freeze")]
    [InlineData("proportions", "freeze")]
    [InlineData("thickener", "serve")]
    [InlineData("fat", "leave-out")]
    public void Adaptations_OfAHazard_AreWhatGuidanceAllows(string rule, string treatment) =>
        Assert.Equal(treatment, _tables.Adaptations.Single(row => row.Rule == rule).Treatment);

    // Flesch-Kincaid grade level: 0.39 words a sentence + 11.8 syllables a word - 15.59.
    [Fact]
    public void Texts_OfEveryTable_AreAtGradeEightOrBelow()
    {
        IEnumerable<string> texts =
        [
            .. _tables.Changes.SelectMany(row => (string[])[row.Text, row.Instead]),
            .. _tables.Adaptations.SelectMany(row => (string[])[row.Text, row.Step]),
            .. _tables.Freezing.Select(row => row.Text),
            .. _tables.RunSheet.Select(row => row.Text),
        ];

        Assert.All(texts.Where(text => text.Length > 0), text => Assert.True(Grade(text) <= 8, $"{Grade(text):0.0}: {text}"));
    }

    private static double Grade(string text)
    {
        string[] words = [.. text.Split([' ', ',', '.', ':', ';', '/', '-', '{', '}', '(', ')', '"'], StringSplitOptions.RemoveEmptyEntries).Where(word => char.IsLetter(word[0]))];
        int sentences = Math.Max(1, text.Split([". ", "? ", ": "], StringSplitOptions.RemoveEmptyEntries).Length);
        return (0.39 * words.Length / sentences) + (11.8 * words.Sum(Syllables) / Math.Max(words.Length, 1)) - 15.59;
    }

    private static int Syllables(string word)
    {
        if (Trade.Contains(word))
        {
            return 1;
        }

        int count = 0;
        bool vowel = false;
        foreach (char letter in word)
        {
            bool now = "aeiouyAEIOUY".Contains(letter, StringComparison.Ordinal);
            count += now && !vowel ? 1 : 0;
            vowel = now;
        }

        bool silent = word.Length > 3 && (word.EndsWith('e') || word.EndsWith("ed", StringComparison.Ordinal)) && !word.EndsWith("le", StringComparison.Ordinal) && !word.EndsWith("ted", StringComparison.Ordinal) && !word.EndsWith("ded", StringComparison.Ordinal);
        return Math.Max(1, count - (silent ? 1 : 0));
    }
}
