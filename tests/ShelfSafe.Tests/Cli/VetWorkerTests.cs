using ShelfSafe.Cli;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Reports;
using Xunit;

namespace ShelfSafe.Tests.Cli;

/// <summary>A report is whole or not there, even where a fault of the program stops it half way.</summary>
public sealed class VetWorkerTests
{
    private const int Long = 600_000;
    private static readonly VetSetup Setup = new(BuiltIn.Vetter, Kitchen.Unknown, RulePack.Default);

    [Theory]
    [InlineData(10)]
    [InlineData(Long)]
    public void Do_AFaultHalfWayThroughTheReport_LeavesNoPartOfIt(int letters)
    {
        VetResult result = Do(new BrokenFormat(), letters);
        Assert.Empty(result.Pieces);
        Assert.Empty(result.Counts);
        Assert.Equal("-: not vetted, a fault in this program stopped it (InvalidOperationException): half way", Assert.Single(result.Troubles));
    }

    [Theory]
    [InlineData(10, false)]
    [InlineData(Long, true)]
    public void Do_ALongRecipe_IsWrittenOnlyWhenItsTurnComes(int letters, bool large)
    {
        VetPiece piece = Assert.Single(Do(ReportFormat.Create("jsonl", RulePack.Default, new TextStyle()), letters).Pieces);
        Assert.Equal(large, piece.Large is not null);
        Assert.Equal(large, piece.Text.Length == 0);
    }

    private static VetResult Do(ReportFormat format, int letters)
    {
        string recipe = "# Plums\n\n- 1 kg plums\n\nSimmer.\n\n" + new string('x', letters);
        return new VetWorker(Setup, format, () => new MemoryStream(System.Text.Encoding.UTF8.GetBytes(recipe))).Do(new("-", RecipeKinds.Markdown));
    }

    private sealed class BrokenFormat : ReportFormat
    {
        public override string One(ReportItem item) => throw new InvalidOperationException("half way");

        public override void Write(TextWriter output, ReportItem item)
        {
            output.Write("{\"half\":");
            throw new InvalidOperationException("half way");
        }
    }
}
