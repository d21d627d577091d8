using PuppeteerSharp.Media;
using ShelfSafe.Tests.Cli;
using ShelfSafe.Tests.Reports;
using ShelfSafe.Tests.Samples;
using Xunit;

namespace ShelfSafe.Tests.Browser;

/// <summary>The HTML report in a real browser. Source: W3C, Web Content Accessibility Guidelines 2.2, levels A and AA, as far as axe-core can see.</summary>
public sealed class HtmlReportTests(Chromium chromium) : IClassFixture<Chromium>, IDisposable
{
    private const int Phone = 360;

    private readonly Kitchenette _kitchen = new();

    public static TheoryData<string> Samples => [.. SampleFolder.Names];

    public void Dispose() => _kitchen.Dispose();

    [Theory]
    [MemberData(nameof(Samples))]
    public async Task Page_OfASample_IsQuietReachableAndPrintsWhole(string name) =>
        await HoldsAsync("vet", SampleFolder.Of(name), "--altitude", "410 m", "--gauge", "weighted");

    [Theory]
    [InlineData("plan", "vegetable-beef-soup.md", "--jar", "quart", "--supper", "18:30")]
    [InlineData("adapt", "venison-and-chickpea-stew.md")]
    [InlineData("adapt", "mushroom-gravy.md")]
    public async Task Page_OfAnotherCommand_IsQuietReachableAndPrintsWhole(string command, string name, params string[] more) =>
        await HoldsAsync([command, SampleFolder.Of(name), "--altitude", "410 m", "--gauge", "weighted", .. more]);

    [Fact]
    public async Task Page_OfAFolderWithoutKitchen_IsQuietReachableAndPrintsWhole() => await HoldsAsync("vet", SampleFolder.Path);

    [Fact]
    public async Task Page_OfHostileTexts_RunsAndLoadsNothing()
    {
        foreach (string name in HostileText.Payloads.Keys)
        {
            _kitchen.Write($"hostile/{name}.md", HostileText.Recipe(name));
        }

        await HoldsAsync("vet", _kitchen.Path("hostile"));
    }

    [Fact]
    public async Task Page_WithFaults_IsSeenThrough()
    {
        string page = _kitchen.Write("bad.html", "<!doctype html><html><body><main><p style='color:#ccc'>" + new string('w', 300) + "</p><img src='none.png'><script>throw new Error('x')</script></main></body></html>");
        await using PageCheck check = await PageCheck.OpenAsync(chromium.Browser, page);

        Assert.NotEmpty(check.Complaints);
        Assert.Equal(2, check.Requests.Count);
        Assert.NotEmpty(await check.AccessibilityFaultsAsync());
        Assert.True(await check.SidewaysAsync(Phone) > 0);
        Assert.NotEmpty(await check.PrintFaultsAsync(PaperFormat.A4));
    }

    private async Task HoldsAsync(params string[] arguments)
    {
        string page = _kitchen.Path("report.html");
        (_, _, string error) = Kitchenette.Run([.. arguments, "--format", "html", "--output", page]);
        Assert.Empty(error);

        await using PageCheck check = await PageCheck.OpenAsync(chromium.Browser, page);

        Assert.Equal([new Uri(page).AbsoluteUri], check.Requests);
        Assert.Empty(check.Complaints);
        Assert.Empty(await check.AccessibilityFaultsAsync());
        Assert.InRange(await check.SidewaysAsync(Phone), int.MinValue, 0);
        Assert.Empty(await check.AccessibilityFaultsAsync());
        Assert.Empty(await check.PrintFaultsAsync(PaperFormat.A4));
        Assert.Empty(await check.PrintFaultsAsync(PaperFormat.Letter));
    }
}
