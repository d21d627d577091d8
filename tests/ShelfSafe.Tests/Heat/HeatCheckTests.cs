using System.Globalization;
using ShelfSafe.Tests.Published;
using Xunit;

namespace ShelfSafe.Tests.Heat;

/// <summary>
/// Every row of heat-checks.csv; each names its source, page and status. Rows with -X in their id are known disagreements of sources and are
/// explained in <see cref="KnownDisagreementTests"/>; derived rows only guard against a change of our own code.
/// </summary>
public class HeatCheckTests
{
    /// <summary>Facts without a formula in these rooms: statements, printed headspaces, jar arithmetic, unit definitions.</summary>
    private static readonly string[] LookUps = ["PH-U1", "YLD-07", "YLD-08", "YLD-09", "YLD-10", "YLD-11", "YLD-12"];

    public static TheoryData<string> Ids => [.. NumberedCheck.All().Select(check => check.Id).Where(id => !id.Contains("-X", StringComparison.Ordinal) && !LookUps.Contains(id, StringComparer.Ordinal))];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Answer_PublishedInputs_GivesTheExpectedValue(string id)
    {
        NumberedCheck check = NumberedCheck.All().Single(row => row.Id == id);

        double answer = HeatAnswers.Of(check);

        double expected = NumberedCheck.Number(check.Expected);
        double allowed = check.Tolerance + (1e-9 * Math.Abs(expected));
        Assert.True(Math.Abs(answer - expected) <= allowed, string.Create(CultureInfo.InvariantCulture, $"{id}: {answer} instead of {expected} ± {check.Tolerance}; {check.Source}"));
    }

    [Fact]
    public void Table_Rows_AreAllHere() => Assert.Equal(329, NumberedCheck.All().Count);
}
