using ShelfSafe.Lessons;
using Anchor = ShelfSafe.Reports.Teaching.SvgDrawing.Anchor;

namespace ShelfSafe.Reports.Teaching;

/// <summary>
/// Draws the figure of a lesson as SVG: curves told apart by dashes and letters, bars by dark and white, never by colour. It is as narrow as a
/// telephone, so that its words stay legible there.
/// </summary>
internal static class SvgPicture
{
    private const double Width = 420;
    private const double Left = 62;
    private const double Right = 16;
    private const double Top = 16;
    private const double TitleLine = 18;
    private const int TitleLetters = 46;
    private const double PlotHeight = 300;
    private const double LegendLine = 20;
    private const double BarLine = 38;
    private const double BarHeight = 14;

    private static readonly string[] Dashes = ["", "8 3", "2 3", "10 3 2 3", "5 5", "1 5"];

    /// <summary>The picture.</summary>
    /// <param name="figure">What is drawn.</param>
    public static string Draw(Figure figure) => figure switch
    {
        LineFigure lines => Draw(lines),
        BarFigure bars => Draw(bars),
        _ => throw new ArgumentOutOfRangeException(nameof(figure), figure, "must have lines or bars"),
    };

    private static string Draw(LineFigure figure)
    {
        SvgDrawing svg = new();
        double top = Title(svg, figure.Title);
        double across = Width - Left - Right;
        double bottom = top + PlotHeight;
        double X(double value) => Left + (across * figure.X.Place(value));
        double Y(double value) => bottom - (PlotHeight * figure.Y.Place(value));
        foreach (double tick in figure.Y.Ticks())
        {
            svg.Line(Left, Y(tick), Width - Right, Y(tick), 0.3);
            svg.Text(Left - 6, Y(tick) + 4, PictureNumbers.Of(tick), Anchor.End);
        }

        HorizontalAxis(svg, figure.X, X, top, bottom);
        svg.Line(Left, top, Left, bottom, 1.5);
        svg.Text(16, top + (PlotHeight / 2), figure.Y.Name, Anchor.Middle, upward: true);
        double legend = bottom + 62;
        for (int i = 0; i < figure.Lines.Length; i++)
        {
            FigureLine line = figure.Lines[i];
            int letter = figure.FirstLetter + i;
            string dash = Dashes[letter % Dashes.Length];
            svg.Curve(line.X.Zip(line.Y, (x, y) => (X(x), Y(y))), 2, dash);
            int at = PictureNumbers.PlaceOfLetter(line, i, figure.Lines.Length);
            svg.Mark(X(line.X[at]), Y(line.Y[at]), PictureNumbers.Letter(letter));
            svg.Line(Left, legend - 4, Left + 44, legend - 4, 2, dash);
            svg.Mark(Left + 60, legend - 4, PictureNumbers.Letter(letter));
            svg.Text(Left + 76, legend, line.Name);
            legend += LegendLine;
        }

        return svg.Finish(figure.Title, figure.Description, Width, legend);
    }

    private static string Draw(BarFigure figure)
    {
        SvgDrawing svg = new();
        const double Edge = 12;
        const double Numbers = 86;
        double across = Width - Edge - Numbers;
        double top = Title(svg, figure.Title) + (figure.Mark is null ? 0 : 18);
        double bottom = top + (figure.Bars.Length * BarLine) + 6;
        double X(double value) => Edge + (across * figure.X.Place(value));
        HorizontalAxis(svg, figure.X, X, top, bottom);
        double y = top + 3;
        if (figure.Mark is { } mark)
        {
            svg.Line(X(mark), top - 4, X(mark), bottom, 2, "6 3");
            svg.Text(X(mark), top - 8, figure.MarkName, Anchor.Middle, bold: true);
        }

        foreach (FigureBar bar in figure.Bars)
        {
            svg.Text(Edge + 4, y + 13, PictureNumbers.Short(bar.Name), halo: true);
            svg.Box(X(bar.Low), y + 18, Math.Max(2, X(bar.High) - X(bar.Low)), BarHeight, bar.Dark);
            svg.Text(X(bar.High) + 5, y + 30, PictureNumbers.Of(bar), halo: true);
            y += BarLine;
        }

        svg.Line(Edge, top, Edge, bottom, 1.5);
        return svg.Finish(figure.Title, figure.Description, Width, bottom + 48);
    }

    // A long title takes several lines; the plot begins below it.
    private static double Title(SvgDrawing svg, string title)
    {
        double y = Top + 2;
        string line = string.Empty;
        foreach (string word in title.Split(' '))
        {
            if (line.Length > 0 && line.Length + word.Length >= TitleLetters)
            {
                svg.Text(12, y, line, bold: true);
                (line, y) = (string.Empty, y + TitleLine);
            }

            line = line.Length == 0 ? word : $"{line} {word}";
        }

        svg.Text(12, y, line, bold: true);
        return y + TitleLine - 4;
    }

    private static void HorizontalAxis(SvgDrawing svg, FigureAxis axis, Func<double, double> x, double top, double bottom)
    {
        foreach (double tick in axis.Ticks())
        {
            svg.Line(x(tick), top, x(tick), bottom + 5, 0.3);
            svg.Text(x(tick), bottom + 18, PictureNumbers.Of(tick), Anchor.Middle);
        }

        svg.Line(x(axis.Low), bottom, x(axis.High), bottom, 1.5);
        svg.Text((x(axis.Low) + x(axis.High)) / 2, bottom + 38, axis.Name, Anchor.Middle);
    }
}
