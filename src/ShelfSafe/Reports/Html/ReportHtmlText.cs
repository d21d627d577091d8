using System.Collections.Immutable;
using System.Net;
using System.Text;

namespace ShelfSafe.Reports.Html;

/// <summary>Builds HTML in which every text is data: inert, encoded, never an element or attribute of its own.</summary>
internal sealed class ReportHtmlText
{
    private readonly StringBuilder _page = new();

    /// <summary>A text without control or direction marks, encoded for content and for quoted attributes.</summary>
    public static string Safe(string text) => WebUtility.HtmlEncode(InertText.Of(text));

    /// <summary>Adds markup of our own.</summary>
    public ReportHtmlText Raw(string markup)
    {
        _page.Append(markup);
        return this;
    }

    /// <summary>Adds a text.</summary>
    public ReportHtmlText Text(string text) => Raw(Safe(text));

    /// <summary>Adds an element that holds only a text.</summary>
    public void Element(string name, string text) => Raw($"<{name}>").Text(text).Raw($"</{name}>\n");

    /// <summary>Adds a heading of the second level.</summary>
    public void Heading(string text) => Element("h2", text);

    /// <summary>Adds a list under a heading; nothing where it is empty.</summary>
    /// <param name="heading">Words of the heading.</param>
    /// <param name="lines">Encoded lines.</param>
    /// <param name="ordered">Whether the lines are numbered.</param>
    public void List(string heading, IEnumerable<string> lines, bool ordered = false)
    {
        string[] all = [.. lines];
        if (all.Length == 0)
        {
            return;
        }

        string name = ordered ? "ol" : "ul";
        Heading(heading);
        Raw($"<{name}>\n").Raw(string.Concat(all.Select(static line => $"<li>{line}</li>\n"))).Raw($"</{name}>\n");
    }

    /// <summary>Adds a table; on a narrow page it scrolls, and can be reached by keyboard.</summary>
    public void Table(string caption, ImmutableArray<string> header, IReadOnlyList<ImmutableArray<string>> rows)
    {
        Raw("<div class=\"wide\" role=\"group\" tabindex=\"0\" aria-label=\"").Text(caption).Raw("\">\n<table>\n<caption>").Text(caption).Raw("</caption>\n<thead><tr>");
        foreach (string cell in header)
        {
            Raw("<th scope=\"col\">").Text(cell).Raw("</th>");
        }

        Raw("</tr></thead>\n<tbody>\n");
        foreach (ImmutableArray<string> row in rows)
        {
            Raw("<tr><th scope=\"row\">").Text(row[0]).Raw("</th>");
            foreach (string cell in row.Skip(1))
            {
                Raw("<td>").Text(cell).Raw("</td>");
            }

            Raw("</tr>\n");
        }

        Raw("</tbody>\n</table>\n</div>\n");
    }

    /// <inheritdoc/>
    public override string ToString() => _page.ToString();
}
