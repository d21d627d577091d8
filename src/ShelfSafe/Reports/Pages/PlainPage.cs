namespace ShelfSafe.Reports.Pages;

/// <summary>A page as plain text, wrapped to the width.</summary>
internal sealed class PlainPage(TextPage page) : IReportPage
{
    public void Open(string title) => page.Paragraph(title, ink: TextPage.Ink.Bold);

    public void Heading(string text) => page.Heading(text);

    public void Group(string text) => page.Paragraph(text, 2, ink: TextPage.Ink.Bold);

    public void Text(string text)
    {
        page.Gap();
        page.Paragraph(text);
    }

    public void Line(string text) => page.Paragraph(text, 2);

    public void Item(string text, string mark = "") => page.Paragraph(text, 2, mark.Length == 0 ? "- " : mark + " ");

    public void Check(string text) => page.Paragraph(text, 2, "[ ] ");

    public void Quote(IEnumerable<string> lines)
    {
        foreach (string line in lines)
        {
            page.Paragraph(line, 2, "> ");
        }
    }

    public void Close() => page.Gap();
}
