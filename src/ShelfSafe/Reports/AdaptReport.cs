using System.Collections.Immutable;
using ShelfSafe.Changes;
using ShelfSafe.Reports.Pages;

namespace ShelfSafe.Reports;

/// <summary>Writes the jar version of a recipe, or its freezer version, in one of the formats.</summary>
/// <param name="words">Words for people.</param>
public sealed class AdaptReport(Words words)
{
    /// <summary>The formats; the first is the usual one.</summary>
    public static ImmutableArray<string> Formats { get; } = ["markdown", "text", "html", "jsonl"];

    /// <summary>Writes the document.</summary>
    /// <param name="output">Receives the text; lines end in a line feed.</param>
    /// <param name="file">Path of the recipe as given.</param>
    /// <param name="original">The recipe as it stands in the file, for the freezer version.</param>
    /// <param name="adaptation">What came of it.</param>
    /// <param name="format">One of <see cref="Formats"/>.</param>
    /// <param name="style">Layout of the text.</param>
    public void Write(TextWriter output, string file, string original, Adaptation adaptation, string format, TextStyle style)
    {
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(adaptation);
        ArgumentNullException.ThrowIfNull(style);
        switch (format)
        {
            case "jsonl":
                AdaptJson.Write(output, file, adaptation);
                break;
            case "markdown" when adaptation.Kind == AdaptationKind.Jar:
                new AdaptMarkdown(words).Write(output, adaptation);
                break;
            case "markdown":
                new AdaptPage(words, new MarkdownPage(output)).Write(original, adaptation);
                break;
            case "html":
                new AdaptPage(words, new HtmlPage(output)).Write(original, adaptation);
                break;
            default:
                new AdaptPage(words, new PlainPage(new(output, style))).Write(original, adaptation);
                break;
        }
    }
}
