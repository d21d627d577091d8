using System.Globalization;
using System.Text.Json;
using PuppeteerSharp;
using PuppeteerSharp.Media;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using Xunit;

namespace ShelfSafe.Tests.Browser;

/// <summary>One page in a real browser: what it complains of, asks for, shows and prints.</summary>
internal sealed class PageCheck : IAsyncDisposable
{
    private const string AxeResource = "Deque.AxeCore.Commons.Resources.axe.min.js";
    private const double PointsPerMillimetre = 72 / 25.4;
    private const double SideMargin = 15 * PointsPerMillimetre;

    private readonly IPage _page;

    private PageCheck(IPage page) => _page = page;

    /// <summary>Addresses that the page asked for.</summary>
    public List<string> Requests { get; } = [];

    /// <summary>Errors and warnings of the console, and errors of scripts.</summary>
    public List<string> Complaints { get; } = [];

    /// <summary>Opens a file.</summary>
    public static async Task<PageCheck> OpenAsync(IBrowser browser, string path)
    {
        IPage page = await browser.NewPageAsync();
        PageCheck check = new(page);
        page.Request += (_, asked) => check.Requests.Add(asked.Request.Url);
        page.Console += (_, said) => check.Complaints.Add($"{said.Message.Type}: {said.Message.Text}");
        page.PageError += (_, fault) => check.Complaints.Add(fault.Message);
        await page.GoToAsync(new Uri(path).AbsoluteUri, WaitUntilNavigation.Networkidle0);
        return check;
    }

    /// <summary>What axe-core finds by the success criteria of WCAG 2.2 A and AA.</summary>
    public async Task<IReadOnlyList<string>> AccessibilityFaultsAsync()
    {
        using Stream stream = typeof(Deque.AxeCore.Commons.AxeRunOptions).Assembly.GetManifestResourceStream(AxeResource)!;
        using StreamReader reader = new(stream);
        await _page.EvaluateExpressionAsync(await reader.ReadToEndAsync(TestContext.Current.CancellationToken));
        string found = await _page.EvaluateExpressionAsync<string>("""
            axe.run({ runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] }).then(result => JSON.stringify({
              passes: result.passes.length,
              faults: result.violations.flatMap(rule => rule.nodes.map(node => rule.id + ': ' + node.html.slice(0, 200) + ' ' + node.failureSummary)) }))
            """);
        using JsonDocument json = JsonDocument.Parse(found);
        Assert.InRange(json.RootElement.GetProperty("passes").GetInt32(), 1, int.MaxValue); // axe did look
        return [.. json.RootElement.GetProperty("faults").EnumerateArray().Select(static fault => fault.GetString()!)];
    }

    /// <summary>By how many pixels the page is wider than a window.</summary>
    public async Task<int> SidewaysAsync(int width)
    {
        await _page.SetViewportAsync(new ViewPortOptions { Width = width, Height = 800 });
        return await _page.EvaluateExpressionAsync<int>($"document.documentElement.scrollWidth - {width.ToString(CultureInfo.InvariantCulture)}");
    }

    /// <summary>What a printed page loses: letters that are on no sheet, letters beyond the margin, elements that cut their text.</summary>
    public async Task<IReadOnlyList<string>> PrintFaultsAsync(PaperFormat paper)
    {
        List<string> faults = [];
        await _page.EmulateMediaTypeAsync(MediaType.Print);
        string shown = await _page.EvaluateExpressionAsync<string>("document.querySelector('main').innerText");
        string[] cut = await _page.EvaluateExpressionAsync<string[]>("""
            [...document.querySelectorAll('main *')].filter(one => getComputedStyle(one).overflowX !== 'visible' && one.scrollWidth > one.clientWidth + 1).map(one => one.outerHTML.slice(0, 80))
            """);
        byte[] pdf = await _page.PdfDataAsync(new PdfOptions { Format = paper, PreferCSSPageSize = false });
        await _page.EmulateMediaTypeAsync(MediaType.None);
        faults.AddRange(cut.Select(static one => "cut: " + one));

        using PdfDocument document = PdfDocument.Open(pdf);
        Dictionary<char, int> printed = [];
        foreach (UglyToad.PdfPig.Content.Page sheet in document.GetPages())
        {
            foreach (Letter letter in sheet.Letters)
            {
                if (letter.Value.Trim().Length > 0 && (letter.BoundingBox.Left < SideMargin - 2 || letter.BoundingBox.Right > sheet.Width - SideMargin + 2 || letter.BoundingBox.Bottom < 0 || letter.BoundingBox.Top > sheet.Height))
                {
                    faults.Add(FormattableString.Invariant($"sheet {sheet.Number}: \"{letter.Value}\" stands at {letter.BoundingBox.Left:F0} to {letter.BoundingBox.Right:F0} of {sheet.Width:F0}"));
                }

                foreach (char one in letter.Value.Where(char.IsAsciiLetterOrDigit))
                {
                    printed[one] = printed.GetValueOrDefault(one) + 1;
                }
            }
        }

        // Numbers of list entries are printed but are no text of the page, so there may be more on paper, never less.
        faults.AddRange(shown.Where(char.IsAsciiLetterOrDigit).CountBy(static one => one)
            .Where(pair => printed.GetValueOrDefault(pair.Key) < pair.Value)
            .Select(pair => FormattableString.Invariant($"\"{pair.Key}\" stands {pair.Value} times on the page, {printed.GetValueOrDefault(pair.Key)} times on paper")));
        return faults;
    }

    public async ValueTask DisposeAsync() => await _page.CloseAsync();
}
