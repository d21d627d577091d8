using ShelfSafe.Reports.Html;

namespace ShelfSafe.Reports.Pages;

/// <summary>A page as self-contained HTML without script, in the dress of the report.</summary>
internal sealed class HtmlPage(TextWriter output) : IReportPage
{
    private bool _list;

    public void Open(string title)
    {
        output.Write(ReportHtmlShell.Start(title));
        output.Write($"<h1>{Encoded(title)}</h1>\n");
    }

    public void Heading(string text) => Block("h2", text);

    public void Group(string text)
    {
        if (text.Length == 0)
        {
            EndList();
        }
        else
        {
            Block("h3", text);
        }
    }

    public void Text(string text) => Block("p", text);

    public void Line(string text) => Entry(Encoded(text));

    public void Item(string text, string mark = "") => Entry(mark.Length == 0 ? $"\u2022 {Encoded(text)}" : $"{Encoded(mark)} {Encoded(text)}");

    public void Check(string text) => Entry($"<label><input type=\"checkbox\"> {Encoded(text)}</label>");

    public void Quote(IEnumerable<string> lines)
    {
        EndList();
        output.Write($"<blockquote>{string.Join("<br>\n", lines.Select(Encoded))}</blockquote>\n");
    }

    public void Close()
    {
        EndList();
        output.Write(ReportHtmlShell.End);
    }

    private static string Encoded(string text) => ReportHtmlText.Safe(text);

    private void Block(string element, string text)
    {
        EndList();
        output.Write($"<{element}>{Encoded(text)}</{element}>\n");
    }

    private void Entry(string html)
    {
        output.Write(_list ? string.Empty : "<ul style=\"list-style:none;padding-left:0\">\n");
        _list = true;
        output.Write($"<li>{html}</li>\n");
    }

    private void EndList()
    {
        output.Write(_list ? "</ul>\n" : string.Empty);
        _list = false;
    }
}
