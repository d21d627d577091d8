using System.Text.RegularExpressions;
using ShelfSafe.Lessons;
using ShelfSafe.Pack;
using ShelfSafe.Tests.Cli;
using ShelfSafe.Tests.Samples;
using Xunit;

namespace ShelfSafe.Tests.Lessons;

/// <summary>Every card and every rule told as a lesson: short, sourced, plain, and with a command that works.</summary>
public class LessonCardTests
{
    private const int MostWords = 250;
    private const double HighestGrade = 8;

    private static readonly LessonBook Book = LessonBook.Create(RulePack.Default);

    public static TheoryData<string> Everything => [.. Book.Topics.Select(topic => topic.Id).Concat(Book.Rules)];

    // One lesson for each step of the work.
    [Theory]
    [InlineData("venting")]
    [InlineData("altitude")]
    [InlineData("gauge")]
    [InlineData("headspace")]
    [InlineData("siphoning")]
    [InlineData("raw pack")]
    [InlineData("hot pack")]
    [InlineData("seals")]
    [InlineData("storage")]
    [InlineData("opening a jar")]
    [InlineData("tinned beans")]
    [InlineData("tinned tomatoes")]
    [InlineData("frozen meat")]
    [InlineData("leftover meat")]
    [InlineData("piece size")]
    [InlineData("half batches")]
    [InlineData("mixed load")]
    [InlineData("untested process")]
    [InlineData("people at risk")]
    [InlineData("gifts")]
    [InlineData("sale")]
    [InlineData("whom to ask")]
    [InlineData("low-sugar jam")]
    [InlineData("pectin")]
    [InlineData("acid")]
    [InlineData("pH")]
    [InlineData("water activity")]
    [InlineData("freezing")]
    [InlineData("Frozen-Meat")]
    public void Find_EveryStepOfTheWork_HasALesson(string asked) => Assert.NotNull(Book.Find(asked, out _));

    [Theory]
    [MemberData(nameof(Everything))]
    public void Lesson_OfTopicOrRule_HasAtMost250Words(string id)
    {
        int words = Paragraphs(id).Sum(LessonReader.WordsIn);

        Assert.InRange(words, 10, MostWords);
    }

    [Theory]
    [MemberData(nameof(Everything))]
    public void Lesson_OfTopicOrRule_ReadsAtGradeEightOrBelow(string id)
    {
        double grade = Readability.Grade(string.Join(' ', Paragraphs(id)));

        Assert.True(grade <= HighestGrade, FormattableString.Invariant($"{id}: grade {grade:0.0}"));
    }

    [Theory]
    [MemberData(nameof(Everything))]
    public void Lesson_OfTopicOrRule_LeadsToLessonsThatExist(string id) =>
        Assert.All(Book.Find(id, out _)!.See, further => Assert.NotNull(Book.Find(further, out _)));

    [Fact]
    public void Cards_Sources_AreSeenOrNamedAsOurOwn()
    {
        Dictionary<string, SourceRow> sources = RulePack.Default.Tables.Sources.ToDictionary(source => source.Id, StringComparer.Ordinal);
        foreach (LessonCard card in RulePack.Default.Lessons().Cards)
        {
            Assert.All(card.Sources, key => Assert.True(sources[key].Status is "verified" or "common practice"));
            Assert.Contains(card.Sources, key => sources[key].Status == "verified");
        }
    }

    // A number of a worked example is published, or it says that somebody chose it.
    [Fact]
    public void Numbers_OfTheExamples_AreSourcedOrCalledChosen()
    {
        string[] rows = RulesFolder.Files()["lesson-numbers.csv"].Split('\n', StringSplitOptions.RemoveEmptyEntries)[1..];

        Assert.All(rows, row => Assert.Matches("chosen for the picture, not measured|USDA AIB|21 CFR|Beuchat|common practice: (a bound of this program|wider than)", row));
    }

    [Theory]
    [MemberData(nameof(Everything))]
    public void TryIt_EveryCommand_ParsesAndRuns(string id)
    {
        foreach (string command in Book.Find(id, out _)!.TryIt)
        {
            string[] words = [.. Regex.Matches(command, "\"([^\"]*)\"|(\\S+)").Select(match => match.Groups[1].Success ? match.Groups[1].Value : match.Value)];
            Assert.Equal("shelfsafe", words[0]);
            (int code, string output, string error) = Kitchenette.Run([.. words[1..].Select(Here)]);

            Assert.True(code is 0 or 1, $"{command}: {error}");
            Assert.Empty(error);
            Assert.NotEmpty(output);
        }
    }

    // Source: the worked sentences of the formula's own description; counts by hand.
    [Theory]
    [InlineData("jar", 1)]
    [InlineData("water", 2)]
    [InlineData("boiled", 1)]
    [InlineData("heated", 2)]
    [InlineData("altitude", 1)]
    [InlineData("116", 1)]
    public void Syllables_Word_AreCounted(string word, int expected) => Assert.Equal(expected, Readability.Syllables(word));

    [Fact]
    public void Grade_LongWordsInLongSentences_IsHigh()
    {
        Assert.True(Readability.Grade("Put the lid on the jar. Let it cool. Do not move it.") < 2);
        Assert.True(Readability.Grade("Microbiological considerations necessitate comprehensive instrumentation, notwithstanding considerable organisational complications.") > 20);
    }

    private static IEnumerable<string> Paragraphs(string id)
    {
        Lesson lesson = Book.Find(id, out _)!;
        return lesson.Sections.TakeWhile(section => !section.Heading.StartsWith("What the food table", StringComparison.Ordinal)).SelectMany(section => section.Paragraphs);
    }

    // The commands are printed for the project's own folder, wherever the tests run.
    private static string Here(string word)
    {
        if (!word.StartsWith("sample-recipes", StringComparison.Ordinal))
        {
            return word;
        }

        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            if (Path.Exists(Path.Combine(at.FullName, word)))
            {
                return Path.Combine(at.FullName, word);
            }
        }

        return word;
    }
}
