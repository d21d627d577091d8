using System.Globalization;
using System.Text;
using ShelfSafe.Pack;
using ShelfSafe.Records;
using ShelfSafe.Reports.Html;

namespace ShelfSafe.Reports.Batches;

/// <summary>A sheet of labels to print, one for each jar that is there. All text of the batch is data and encoded.</summary>
public sealed class LabelSheet
{
    private const int Columns = 2;
    private const int WidthMm = 95;
    private const int HeightMm = 64;
    private const int MarginMm = 10;
    private const int TextColumns = 40;
    private const int MostLines = 12;

    private const string Style = """
        @page{size:A4;margin:10mm}
        *{box-sizing:border-box}
        body{margin:0;color:#000;background:#fff;font:10pt/1.3 "Trebuchet MS",Verdana,sans-serif}
        main{display:grid;grid-template-columns:repeat(2,95mm)}
        .jar{width:95mm;min-height:64mm;padding:4mm;border:.2mm dashed #000;break-inside:avoid;overflow-wrap:anywhere}
        .jar p{margin:.8mm 0}
        .lot{font-size:14pt;font-weight:bold}
        .title{font-weight:bold}
        .warning{border:.6mm solid #000;padding:1mm;font-weight:bold}
        """;

    private readonly Words _words;
    private readonly BatchPhrases _phrases;

    /// <summary>Prepares a sheet.</summary>
    /// <param name="words">Words for people.</param>
    /// <param name="pack">The rule pack, for the months of best quality.</param>
    public LabelSheet(Words words, RulePack pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        _words = words;
        _phrases = new(words, (int)pack.Tables.Limits["best-quality-months"]);
    }

    /// <summary>The formats.</summary>
    public static IReadOnlyList<string> Formats { get; } = ["html", "svg"];

    /// <summary>Writes the sheet.</summary>
    /// <param name="batches">The batches in their order; one label for each jar that is there.</param>
    /// <param name="format">One of <see cref="Formats"/>.</param>
    public string Write(IEnumerable<BatchRecord> batches, string format)
    {
        ArgumentNullException.ThrowIfNull(batches);
        BatchLabel[] labels = [.. batches.SelectMany(batch => Enumerable.Repeat(BatchLabel.Of(batch, _words, _phrases), batch.InStock))];
        return format == "svg" ? Svg(labels) : Html(labels);
    }

    private static string Svg(BatchLabel[] labels)
    {
        int rows = (labels.Length + Columns - 1) / Columns;
        int width = (Columns * WidthMm) + (2 * MarginMm);
        int height = (rows * HeightMm) + (2 * MarginMm);
        StringBuilder sheet = new();
        sheet.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width}mm\" height=\"{height}mm\" viewBox=\"0 0 {width} {height}\" font-family=\"Verdana,sans-serif\" font-size=\"3.2\">\n");
        for (int i = 0; i < labels.Length; i++)
        {
            int left = MarginMm + (i % Columns * WidthMm);
            int top = MarginMm + (i / Columns * HeightMm);
            sheet.Append(CultureInfo.InvariantCulture, $"<g transform=\"translate({left} {top})\">\n<rect width=\"{WidthMm}\" height=\"{HeightMm}\" fill=\"#fff\" stroke=\"#000\" stroke-width=\"0.2\" stroke-dasharray=\"1 1\"/>\n");
            SvgLines(sheet, labels[i]);
            sheet.Append("</g>\n");
        }

        return sheet.Append("</svg>\n").ToString();
    }

    // The warning stands before the title, so that a long title can push out nothing that matters.
    private static void SvgLines(StringBuilder sheet, BatchLabel label)
    {
        double at = 8;
        int left = MostLines;
        Line(label.Lot, "font-size=\"5\" font-weight=\"bold\"");
        Block(label.Warning, "font-weight=\"bold\"", 3);
        Block(label.Title, "font-weight=\"bold\"", 2);
        foreach (string line in label.Lines)
        {
            Block(line, string.Empty, left);
        }

        void Block(string text, string style, int most)
        {
            foreach (string line in Wrapped(text).Take(Math.Min(most, left)))
            {
                Line(line, style);
            }
        }

        void Line(string text, string style)
        {
            sheet.Append(CultureInfo.InvariantCulture, $"<text x=\"4\" y=\"{at:0.#}\" {style}>").Append(ReportHtmlText.Safe(text)).Append("</text>\n");
            at += 4.4;
            left--;
        }
    }

    private static IEnumerable<string> Wrapped(string text)
    {
        string line = string.Empty;
        foreach (string word in InertText.Of(text).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string rest = word;
            while (rest.Length > 0)
            {
                string next = line.Length == 0 ? rest : line + " " + rest;
                if (InertText.Columns(next) <= TextColumns)
                {
                    line = next;
                    rest = string.Empty;
                }
                else if (line.Length > 0)
                {
                    yield return line;
                    line = string.Empty;
                }
                else
                {
                    int cut = Math.Min(TextColumns / 2, rest.Length);
                    cut -= cut < rest.Length && char.IsHighSurrogate(rest[cut - 1]) ? 1 : 0;
                    yield return rest[..cut];
                    rest = rest[cut..];
                }
            }
        }

        if (line.Length > 0)
        {
            yield return line;
        }
    }

    private string Html(BatchLabel[] labels)
    {
        ReportHtmlText page = new();
        page.Raw("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>").Text(_words["label-jar.sheet"]).Raw("</title>\n<style>\n").Raw(Style).Raw("\n</style>\n</head>\n<body>\n<main>\n");
        foreach (BatchLabel label in labels)
        {
            page.Raw("<section class=\"jar\">\n");
            Paragraph(page, "lot", label.Lot);
            Paragraph(page, "warning", label.Warning);
            Paragraph(page, "title", label.Title);
            foreach (string line in label.Lines)
            {
                Paragraph(page, "line", line);
            }

            page.Raw("</section>\n");
        }

        return page.Raw("</main>\n</body>\n</html>\n").ToString();
    }

    private static void Paragraph(ReportHtmlText page, string name, string text)
    {
        if (text.Length > 0)
        {
            page.Raw($"<p class=\"{name}\">").Text(text).Raw("</p>\n");
        }
    }
}
