using System.Globalization;
using System.Text;
using ShelfSafe.Reports.Html;

namespace ShelfSafe.Reports.Teaching;

/// <summary>Builds one SVG picture: black on white, no colour, no script, nothing fetched; every text is escaped.</summary>
/// <remarks>Numbers are written with at most one decimal and a point, whatever the culture. The same picture gives the same bytes.</remarks>
internal sealed class SvgDrawing
{
    private readonly StringBuilder _body = new();

    /// <summary>Ends of a text: where its anchor lies.</summary>
    internal enum Anchor
    {
        /// <summary>The text begins there.</summary>
        Start,

        /// <summary>The text is centred there.</summary>
        Middle,

        /// <summary>The text ends there.</summary>
        End,
    }

    /// <summary>A straight line.</summary>
    public void Line(double x1, double y1, double x2, double y2, double width = 1, string dash = "") =>
        _body.Append(CultureInfo.InvariantCulture, $"<line x1=\"{N(x1)}\" y1=\"{N(y1)}\" x2=\"{N(x2)}\" y2=\"{N(y2)}\" stroke=\"#000\" stroke-width=\"{N(width)}\"{Dashed(dash)}/>\n");

    /// <summary>A line through points.</summary>
    public void Curve(IEnumerable<(double X, double Y)> points, double width, string dash)
    {
        _body.Append("<polyline fill=\"none\" stroke=\"#000\" stroke-linejoin=\"round\" stroke-width=\"").Append(N(width)).Append('"').Append(Dashed(dash)).Append(" points=\"");
        _body.AppendJoin(' ', points.Select(static point => $"{N(point.X)},{N(point.Y)}")).Append("\"/>\n");
    }

    /// <summary>A box, dark or white, with a black edge.</summary>
    public void Box(double x, double y, double width, double height, bool dark) =>
        _body.Append(CultureInfo.InvariantCulture, $"<rect x=\"{N(x)}\" y=\"{N(y)}\" width=\"{N(width)}\" height=\"{N(height)}\" fill=\"{(dark ? "#444" : "#fff")}\" stroke=\"#000\"/>\n");

    /// <summary>A letter in a white circle, which names a curve where it runs.</summary>
    public void Mark(double x, double y, string letter)
    {
        _body.Append(CultureInfo.InvariantCulture, $"<circle cx=\"{N(x)}\" cy=\"{N(y)}\" r=\"8\" fill=\"#fff\" stroke=\"#000\"/>\n");
        Text(x, y + 4, letter, Anchor.Middle, bold: true);
    }

    /// <summary>A text in one line; with a halo it stays legible over lines.</summary>
    public void Text(double x, double y, string text, Anchor anchor = Anchor.Start, bool bold = false, bool upward = false, bool halo = false)
    {
        string end = anchor switch
        {
            Anchor.Start => "start",
            Anchor.Middle => "middle",
            Anchor.End => "end",
        };
        string turned = upward ? $" transform=\"rotate(-90 {N(x)} {N(y)})\"" : string.Empty;
        _body.Append(CultureInfo.InvariantCulture, $"<text x=\"{N(x)}\" y=\"{N(y)}\" text-anchor=\"{end}\"{(bold ? " font-weight=\"bold\"" : string.Empty)}{(halo ? " paint-order=\"stroke\" stroke=\"#fff\" stroke-width=\"4\"" : string.Empty)}{turned}>").Append(Data(text)).Append("</text>\n");
    }

    /// <summary>The finished picture.</summary>
    /// <param name="title">Title.</param>
    /// <param name="description">The picture in words, for screen readers.</param>
    /// <param name="width">Width in user units.</param>
    /// <param name="height">Height in user units.</param>
    public string Finish(string title, string description, double width, double height) =>
        new StringBuilder()
            .Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {N(width)} {N(height)}\" width=\"100%\" role=\"img\" aria-label=\"{Data(title)}\" font-family=\"Verdana, sans-serif\" font-size=\"13\">\n")
            .Append("<title>").Append(Data(title)).Append("</title>\n")
            .Append("<desc>").Append(Data(description)).Append("</desc>\n")
            .Append(CultureInfo.InvariantCulture, $"<rect width=\"{N(width)}\" height=\"{N(height)}\" fill=\"#fff\"/>\n")
            .Append(_body)
            .Append("</svg>\n")
            .ToString();

    // Two code points that no XML document may hold, even escaped.
    private static string Data(string text) => ReportHtmlText.Safe(text.Replace('\uFFFE', '\uFFFD').Replace('\uFFFF', '\uFFFD'));

    private static string N(double value) => double.IsFinite(value) ? Math.Round(value, 1).ToString("0.#", CultureInfo.InvariantCulture) : "0";

    private static string Dashed(string dash) => dash.Length == 0 ? string.Empty : $" stroke-dasharray=\"{dash}\"";
}
