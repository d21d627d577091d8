using System.Net;
using System.Text;
using ShelfSafe.Core;
using ShelfSafe.Verdict;

namespace ShelfSafe.Reports.Html;

/// <summary>Writes the recipe as it stands, each finding marked at its words and named by its rule; where places overlap the worst level colours.</summary>
internal static class ReportHtmlRecipe
{
    /// <summary>Writes the section.</summary>
    public static void Write(ReportHtmlText page, Words words, ReportItem item)
    {
        if (item.Text.Length == 0)
        {
            return;
        }

        page.Heading(words["html.recipe"]);
        page.Element("p", words[item.IsFileText ? "html.recipe-intro" : "html.recipe-made"]);
        string text = item.Text;
        LineTable lines = new(text);
        List<(int Start, int End, Finding Finding)> marks = [];
        foreach (Finding finding in item.Report.Findings.IsDefault ? [] : item.Report.Findings)
        {
            foreach (Place place in finding.Places.IsDefault ? [] : finding.Places)
            {
                int start = Offset(lines, text, place.Line, place.Column);
                int end = Offset(lines, text, place.EndLine, place.EndColumn);
                if (end > start)
                {
                    marks.Add((start, end, finding));
                }
            }
        }

        page.Raw("<div class=\"recipe\" role=\"group\" tabindex=\"0\" aria-label=\"").Text(words["html.recipe"]).Raw("\">");
        int[] edges = [.. marks.SelectMany(static mark => new[] { mark.Start, mark.End }).Append(0).Append(text.Length).Distinct().Order()];
        for (int i = 0; i + 1 < edges.Length; i++)
        {
            WriteRun(page, words, text.AsSpan(edges[i], edges[i + 1] - edges[i]), [.. marks.Where(mark => mark.Start <= edges[i] && mark.End >= edges[i + 1])], edges[i + 1]);
        }

        page.Raw("</div>\n");
    }

    private static int Offset(LineTable lines, string text, int line, int column)
    {
        int skipped = line == 1 && text[0] == '\uFEFF' ? 1 : 0;
        return line > lines.Count ? text.Length : Math.Clamp(lines.StartOf(line) + column - 1 + skipped, 0, text.Length);
    }

    // The rules are named where a mark ends, so that the marks can be told apart in grey and by ear.
    private static void WriteRun(ReportHtmlText page, Words words, ReadOnlySpan<char> run, (int Start, int End, Finding Finding)[] marks, int end)
    {
        if (marks.Length == 0)
        {
            page.Raw(Inert(run));
            return;
        }

        FindingLevel worst = marks.Max(static mark => mark.Finding.Level);
        page.Raw($"<mark class=\"{Names.Of(worst)}\">").Raw(Inert(run)).Raw("</mark>");
        string[] ending = [.. marks.Where(mark => mark.End == end).Select(mark => $"{words[$"level.{Names.Of(mark.Finding.Level)}"]} {mark.Finding.Rule}").Distinct(StringComparer.Ordinal)];
        if (ending.Length > 0)
        {
            page.Raw("<small class=\"tag\">[").Text(string.Join("; ", ending)).Raw("]</small>");
        }
    }

    // Line ends stay; any other control or direction mark becomes a sign that can be seen.
    private static string Inert(ReadOnlySpan<char> run)
    {
        StringBuilder built = new(run.Length);
        foreach (Rune rune in run.EnumerateRunes())
        {
            if (rune.Value is '\n' or '\t')
            {
                built.Append((char)rune.Value);
            }
            else if (rune.Value is not ('\r' or 0xFEFF))
            {
                built.Append(rune.IsAscii && rune.Value == ' ' ? " " : InertText.Of(rune.ToString()) is { Length: > 0 } kept ? WebUtility.HtmlEncode(kept) : " ");
            }
            else if (rune.Value == '\r' && !run.Contains('\n'))
            {
                built.Append('\n');
            }
        }

        return built.ToString();
    }
}
