using System.Text.Json;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Markdig;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Reports;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Reports;

/// <summary>Recipe text is data: whatever it holds, it does nothing in any format.</summary>
public sealed class InertReportTests
{
    private static readonly RecipeVetter _vetter = BuiltIn.Vetter;
    private static readonly string[] _shapes = ["title", "desc", "rect", "line", "polyline", "circle", "text"];
    private static readonly string[] _allowedAddresses = [SampleReport.Book.Url, .. RulePack.Default.Tables.Sources.Select(static row => row.Url)];
    private static readonly MarkdownPipeline _everyExtension = new MarkdownPipelineBuilder().UseAdvancedExtensions().UseEmojiAndSmiley().Build();

    public static TheoryData<string> Payloads => [.. HostileText.Payloads.Keys];

    [Theory]
    [MemberData(nameof(Payloads))]
    public void Html_AnyPayload_MakesNoElementAttributeOrAddress(string payload) => HoldsNothingThatActs(Written("html", payload), page: true);

    [Theory]
    [MemberData(nameof(Payloads))]
    public void Html_AnyPayloadInAReportMadeByHand_MakesNoElementAttributeOrAddress(string payload) => HoldsNothingThatActs(ByHand("html", payload), page: true);

    [Theory]
    [MemberData(nameof(Payloads))]
    public void Markdown_AnyPayload_MakesNoElementAttributeOrAddress(string payload)
    {
        foreach (string written in new[] { Written("markdown", payload), ByHand("markdown", payload) })
        {
            Assert.DoesNotContain(written, HostileText.IsPower);
            HoldsNothingThatActs(Markdown.ToHtml(written, _everyExtension), page: false);
        }
    }

    [Theory]
    [MemberData(nameof(Payloads))]
    public void Text_AnyPayload_MovesNoCursorAndTurnsNoText(string payload)
    {
        Assert.DoesNotContain(Written("text", payload), HostileText.IsPower);
        Assert.DoesNotContain(ByHand("text", payload), HostileText.IsPower);
    }

    [Theory]
    [MemberData(nameof(Payloads))]
    public void JsonLines_AnyPayload_IsOneLineOfPlainCharacters(string payload)
    {
        string written = Written("jsonl", payload);

        Assert.Equal(written.Length - 1, written.IndexOf('\n', StringComparison.Ordinal));
        Assert.DoesNotContain(written, HostileText.IsPower);
        Assert.DoesNotContain('<', written);
        using JsonDocument json = JsonDocument.Parse(written);
        Assert.StartsWith("Stew", json.RootElement.GetProperty("title").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Payloads))]
    public void Sarif_AnyPayload_MakesNoLinkOrPlaceholder(string payload)
    {
        string written = Written("sarif", payload);

        Assert.DoesNotContain(written, HostileText.IsPower);
        using JsonDocument json = JsonDocument.Parse(written);
        foreach (JsonElement result in json.RootElement.GetProperty("runs")[0].GetProperty("results").EnumerateArray())
        {
            string message = result.GetProperty("message").GetProperty("text").GetString()!;
            Assert.DoesNotContain(message, HostileText.IsPower);

            // Sections 3.11.5 and 3.11.6: a bracket or brace that stands for itself is escaped.
            string bare = message.Replace(@"\\", string.Empty, StringComparison.Ordinal).Replace(@"\[", string.Empty, StringComparison.Ordinal).Replace(@"\]", string.Empty, StringComparison.Ordinal)
                .Replace("{{", string.Empty, StringComparison.Ordinal).Replace("}}", string.Empty, StringComparison.Ordinal);
            Assert.DoesNotContain(bare, static letter => letter is '[' or ']' or '{' or '}');
        }
    }

    private static void HoldsNothingThatActs(string html, bool page)
    {
        using IDocument document = new HtmlParser().ParseDocument(html);
        Assert.Empty(document.QuerySelectorAll("script, svg:not(figure > svg), foreignObject, animate, set, use, image, img, iframe, object, embed, link, base, form, input, button, audio, video, math, template, area"));
        Assert.All(document.QuerySelectorAll("figure > svg *"), static shape => Assert.Contains(shape.LocalName, _shapes)); // pictures of our own
        Assert.Equal(page ? 1 : 0, document.QuerySelectorAll("style").Length);
        Assert.Equal(page ? 3 : 0, document.QuerySelectorAll("meta").Length);
        Assert.DoesNotContain(html, HostileText.IsPower);
        foreach (IElement element in document.All)
        {
            Assert.All(element.Attributes, static attribute =>
            {
                Assert.False(attribute.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase), attribute.Name);
                Assert.False(attribute.Name is "style" or "src" or "srcset" or "autofocus" or "action" or "formaction", attribute.Name);
            });
            if (element.GetAttribute("href") is { } address)
            {
                Assert.Contains(address, _allowedAddresses);
            }
        }
    }

    private static string Written(string name, string payload)
    {
        string text = HostileText.Recipe(payload);
        return Whole(name, new("a " + HostileText.Payloads[payload] + ".md", _vetter.Vet(text, new(AltitudeFeet: 1_345)), text));
    }

    // The machinery reads titles and lines in its own way; here the payload stands in every field, whatever the reader would make of it.
    private static string ByHand(string name, string payload)
    {
        string text = HostileText.Payloads[payload];
        Finding finding = SampleReport.Finding(FindingLevel.Change, "thickener", text, 1) with { Message = text, Why = text, Instead = text, Part = text, Places = [new(1, 1, 1, text.Length)] };
        VettingReport report = SampleReport.Of(Outcome.PressureAfterChanges, finding) with
        {
            Title = text,
            Parts = [new(text, 1, 2, Acidity.LowAcid, Outcome.FreezeOrChill)],
            Ingredients = [SampleReport.Ingredient(1, text, text, null)],
            Nearest = [new("x", text, text, [text], text)],
            Reasons = [text],
        };
        return Whole(name, new(text, report, text));
    }

    private static string Whole(string name, ReportItem item)
    {
        ReportFormat format = ReportFormat.Create(name, RulePack.Default, new TextStyle());
        return format.Start(item) + format.One(item) + format.Finish([item.File], finished: true);
    }
}
