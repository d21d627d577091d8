using System.Text;
using ShelfSafe.Lessons;

namespace ShelfSafe.Reports.Teaching;

/// <summary>Draws the figure of a lesson with letters and marks, for a terminal or a block of code.</summary>
internal static class CharacterPlot
{
    private const int Columns = 60;
    private const int Rows = 16;
    private const int WidestName = 30;

    /// <summary>Lines of the plot, none wider than 78 columns, without trailing blanks.</summary>
    public static IReadOnlyList<string> Draw(Figure figure) => figure switch
    {
        LineFigure lines => Draw(lines),
        BarFigure bars => Draw(bars),
        _ => throw new ArgumentOutOfRangeException(nameof(figure), figure, "must have lines or bars"),
    };

    private static List<string> Draw(LineFigure figure)
    {
        char[][] field = [.. Enumerable.Range(0, Rows + 1).Select(static _ => new string(' ', Columns + 1).ToCharArray())];
        for (int i = 0; i < figure.Lines.Length; i++)
        {
            FigureLine line = figure.Lines[i];
            for (int point = 0; point < line.X.Length; point++)
            {
                double column = Columns * figure.X.Place(line.X[point]);
                double row = Rows * (1 - figure.Y.Place(line.Y[point]));
                int before = Math.Max(0, point - 1);
                double lastColumn = Columns * figure.X.Place(line.X[before]);
                double lastRow = Rows * (1 - figure.Y.Place(line.Y[before]));
                for (double share = 0; share <= 1; share += 0.5) // a line of fewer points than columns has no gaps either
                {
                    field[(int)Math.Round(lastRow + (share * (row - lastRow)))][(int)Math.Round(lastColumn + (share * (column - lastColumn)))] = PictureNumbers.Letter(figure.FirstLetter + i)[0];
                }
            }
        }

        List<string> drawn = [InertText.Of(figure.Y.Name)];
        for (int row = 0; row <= Rows; row++)
        {
            double value = figure.Y.Low + ((figure.Y.High - figure.Y.Low) * (Rows - row) / Rows);
            string label = row % 4 == 0 ? PictureNumbers.Of(value) : string.Empty;
            drawn.Add($"{label,7} |{new string(field[row])}".TrimEnd());
        }

        drawn.AddRange(HorizontalAxis(figure.X, 8, Columns));
        for (int i = 0; i < figure.Lines.Length; i++)
        {
            drawn.Add($"{PictureNumbers.Letter(figure.FirstLetter + i),9} {InertText.Of(figure.Lines[i].Name)}");
        }

        return drawn;
    }

    private static List<string> Draw(BarFigure figure)
    {
        const int Across = 32;
        int names = Math.Min(WidestName, figure.Bars.Select(static bar => InertText.Columns(Cut(bar.Name))).DefaultIfEmpty().Max());
        int? mark = figure.Mark is { } value ? (int)Math.Round(Across * figure.X.Place(value)) : null;
        List<string> drawn = [];
        if (mark is { } at)
        {
            drawn.Add(new string(' ', names + 2 + at) + InertText.Of(figure.MarkName));
        }

        foreach (FigureBar bar in figure.Bars)
        {
            string name = Cut(bar.Name);
            int low = (int)Math.Round(Across * figure.X.Place(bar.Low));
            int high = (int)Math.Round(Across * figure.X.Place(bar.High));
            StringBuilder row = new(new string(' ', Across + 1));
            if (mark is { } line)
            {
                row[line] = ':';
            }

            for (int column = low; column <= high; column++)
            {
                row[column] = bar.Dark ? '#' : '=';
            }

            drawn.Add($"{name}{new string(' ', names - InertText.Columns(name))} |{row} {PictureNumbers.Of(bar)}".TrimEnd());
        }

        drawn.AddRange(HorizontalAxis(figure.X, names + 1, Across));
        return drawn;
    }

    private static string Cut(string name)
    {
        StringBuilder kept = new();
        string clean = InertText.Of(name);
        foreach (Rune rune in clean.EnumerateRunes())
        {
            if (InertText.Columns(kept.ToString()) + InertText.Columns(rune.ToString()) > WidestName - 1 && kept.Length + rune.Utf16SequenceLength < clean.Length)
            {
                return kept.Append('…').ToString();
            }

            kept.Append(rune.ToString());
        }

        return kept.ToString();
    }

    // The line, its ends and middle as numbers, and the name.
    private static IEnumerable<string> HorizontalAxis(FigureAxis axis, int indent, int across)
    {
        string low = PictureNumbers.Of(axis.Low);
        string middle = PictureNumbers.Of((axis.Low + axis.High) / 2);
        string high = PictureNumbers.Of(axis.High);
        yield return new string(' ', indent) + "+" + new string('-', across);
        yield return (new string(' ', indent) + low).PadRight(indent + (across / 2)) + middle.PadRight((across / 2) - high.Length + 1) + high;
        yield return new string(' ', indent) + InertText.Of(axis.Name);
    }
}
