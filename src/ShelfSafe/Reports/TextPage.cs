using System.Collections.Immutable;

namespace ShelfSafe.Reports;

/// <summary>A plain page: wraps paragraphs to the width, lines up tables, and colours only where colour is asked for.</summary>
/// <remarks>Everything that is written passes <see cref="InertText"/>, so recipe text cannot reach the terminal raw.</remarks>
internal sealed class TextPage(TextWriter output, TextStyle style)
{
    private const string Reset = "\u001b[0m";

    private readonly int _width = Math.Max(style.Width, TextStyle.Narrowest);

    private bool _gap;

    /// <summary>Ink of a run of words.</summary>
    internal enum Ink
    {
        /// <summary>As the terminal has it.</summary>
        Plain,

        /// <summary>Bold.</summary>
        Bold,

        /// <summary>Bold red.</summary>
        Red,

        /// <summary>Bold yellow.</summary>
        Yellow,

        /// <summary>Faint.</summary>
        Faint,
    }

    /// <summary>Asks for an empty line before the next words; several in a row count once.</summary>
    public void Gap() => _gap = true;

    /// <summary>A heading on a line of its own, after an empty line.</summary>
    public void Heading(string text, Ink ink = Ink.Bold)
    {
        Gap();
        Paragraph(text, ink: ink);
    }

    /// <summary>A paragraph, wrapped at spaces; a single word that is too long, such as an address, runs over.</summary>
    /// <param name="text">The words.</param>
    /// <param name="indent">Columns before every line.</param>
    /// <param name="mark">Words that hang in the first line before the rest, such as a bullet or a label.</param>
    /// <param name="ink">Ink of the mark, or of all where there is no mark.</param>
    public void Paragraph(string text, int indent = 0, string mark = "", Ink ink = Ink.Plain)
    {
        WriteGap();
        string clean = InertText.Of(text);
        string hanging = new(' ', indent + InertText.Columns(mark));
        int room = Math.Max(_width - hanging.Length, 1);
        bool first = true;
        int at = 0;
        do
        {
            int end = LineEnd(clean, at, room);
            ReadOnlySpan<char> line = clean.AsSpan(at, end - at);
            if (first)
            {
                output.Write(new string(' ', indent));
                output.Write(mark.Length == 0 ? Inked(line.ToString(), ink) : Inked(mark, ink) + line.ToString());
            }
            else
            {
                output.Write(hanging);
                output.Write(mark.Length == 0 ? Inked(line.ToString(), ink) : line.ToString());
            }

            output.Write('\n');
            first = false;
            at = end < clean.Length ? end + 1 : end; // the space at the break is dropped
        }
        while (at < clean.Length);
    }

    /// <summary>A table whose columns line up; the last column wraps where the width runs out.</summary>
    public void Table(ImmutableArray<string> header, IReadOnlyList<ImmutableArray<string>> rows, int indent)
    {
        int[] widths = new int[header.Length];
        for (int column = 0; column < header.Length; column++)
        {
            widths[column] = InertText.Columns(header[column]);
            foreach (ImmutableArray<string> row in rows)
            {
                widths[column] = Math.Max(widths[column], InertText.Columns(InertText.Of(row[column])));
            }
        }

        if (indent + widths.Sum() + (2 * (widths.Length - 1)) > _width)
        {
            Stacked(header, rows, indent);
            return;
        }

        Row(header, widths, indent, Ink.Faint);
        foreach (ImmutableArray<string> row in rows)
        {
            Row(row, widths, indent, Ink.Plain);
        }
    }

    /// <summary>A line of a drawing, whose blanks stand: it is neither wrapped nor coloured.</summary>
    /// <param name="line">Built of the program's own marks and of inert text.</param>
    public void Drawing(string line)
    {
        WriteGap();
        output.Write(line);
        output.Write('\n');
    }

    private static int LineEnd(string text, int start, int room)
    {
        int columns = 0;
        int lastSpace = -1;
        int at = start;
        while (at < text.Length)
        {
            if (text[at] == ' ')
            {
                if (columns > room)
                {
                    break;
                }

                lastSpace = at;
            }

            int next = char.IsHighSurrogate(text[at]) && at + 1 < text.Length ? at + 2 : at + 1;
            columns += InertText.Columns(text.AsSpan(at, next - at));
            if (columns > room && lastSpace >= 0)
            {
                return lastSpace;
            }

            at = next;
        }

        return at;
    }

    private void Stacked(ImmutableArray<string> header, IReadOnlyList<ImmutableArray<string>> rows, int indent)
    {
        // Too narrow for columns: one block a row, each value under its own label.
        foreach (ImmutableArray<string> row in rows)
        {
            Paragraph(row[0], indent, "- ");
            for (int column = 1; column < header.Length; column++)
            {
                if (row[column].Length > 0)
                {
                    Paragraph(row[column], indent + 2, $"{header[column]}: ", Ink.Faint);
                }
            }
        }
    }

    private void Row(ImmutableArray<string> cells, int[] widths, int indent, Ink ink)
    {
        WriteGap();
        string line = string.Empty;
        for (int column = 0; column < cells.Length; column++)
        {
            string cell = InertText.Of(cells[column]);
            line += column == 0 ? cell : "  " + cell;
            line += new string(' ', widths[column] - InertText.Columns(cell));
        }

        output.Write(new string(' ', indent));
        output.Write(Inked(line.TrimEnd(), ink));
        output.Write('\n');
    }

    private void WriteGap()
    {
        if (_gap)
        {
            output.Write('\n');
            _gap = false;
        }
    }

    private string Inked(string text, Ink ink)
    {
        if (!style.Colour || ink == Ink.Plain || text.Length == 0)
        {
            return text;
        }

        string code = ink switch
        {
            Ink.Plain => string.Empty,
            Ink.Bold => "\u001b[1m",
            Ink.Red => "\u001b[1;31m",
            Ink.Yellow => "\u001b[1;33m",
            Ink.Faint => "\u001b[2m",
        };
        return code + text + Reset;
    }
}
