using System.Text;

namespace ShelfSafe.Reports.Pages;

/// <summary>A page as Markdown.</summary>
internal sealed class MarkdownPage(TextWriter output) : IReportPage
{
    private readonly StringBuilder _line = new();

    public void Open(string title) => output.Write($"# {Escaped(title)}\n\n");

    public void Heading(string text) => output.Write($"\n## {Escaped(text)}\n\n");

    public void Group(string text) => output.Write(text.Length == 0 ? "\n" : $"\n### {Escaped(text)}\n\n");

    public void Text(string text) => output.Write($"{Escaped(text)}\n");

    public void Line(string text) => output.Write($"- {Escaped(text)}\n");

    public void Item(string text, string mark = "") => output.Write($"{(mark.Length == 0 ? "-" : mark)} {Escaped(text)}\n");

    public void Check(string text) => output.Write($"- [ ] {Escaped(text)}\n");

    public void Quote(IEnumerable<string> lines)
    {
        foreach (string line in lines)
        {
            output.Write(line.Length == 0 ? ">\n" : $"> {InertText.Of(line)}\n");
        }
    }

    public void Close()
    {
    }

    // An address in angle brackets is a link, and holds no marks; any other bracket is no tag.
    private string Escaped(string text)
    {
        _line.Clear();
        string inert = InertText.Of(text);
        for (int at = 0; at < inert.Length; at++)
        {
            char c = inert[at];
            int end = c == '<' && inert.AsSpan(at + 1).StartsWith("http", StringComparison.Ordinal) ? inert.IndexOf('>', at) : -1;
            if (end > 0)
            {
                _line.Append(inert, at, end - at + 1);
                at = end;
            }
            else
            {
                _line.Append(c is '*' or '_' or '`' or '#' or '|' or '<' ? "\\" + c : c.ToString());
            }
        }

        return _line.ToString();
    }
}
