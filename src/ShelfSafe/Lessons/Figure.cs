using System.Collections.Immutable;

namespace ShelfSafe.Lessons;

/// <summary>A picture as numbers and words, ready to be drawn anywhere.</summary>
/// <param name="Title">Title, plain text.</param>
/// <param name="Description">The picture in words, for whoever cannot see it.</param>
/// <param name="X">Horizontal axis.</param>
/// <param name="Below">Lines of plain text under the picture.</param>
public abstract record Figure(string Title, string Description, FigureAxis X, ImmutableArray<string> Below);

/// <summary>Lines over two axes.</summary>
/// <param name="Y">Vertical axis.</param>
/// <param name="Lines">The lines, at least one.</param>
/// <param name="FirstLetter">Number of the first line's letter and dashes, 0 for A: the same food keeps its letter from picture to picture.</param>
public sealed record LineFigure(string Title, string Description, FigureAxis X, FigureAxis Y, ImmutableArray<FigureLine> Lines, ImmutableArray<string> Below, int FirstLetter = 0)
    : Figure(Title, Description, X, Below);

/// <summary>Horizontal bars over one axis.</summary>
/// <param name="Bars">The bars from top to bottom.</param>
/// <param name="Mark">A line across all bars, or <see langword="null"/>.</param>
/// <param name="MarkName">What the line is.</param>
public sealed record BarFigure(string Title, string Description, FigureAxis X, ImmutableArray<FigureBar> Bars, double? Mark, string MarkName, ImmutableArray<string> Below)
    : Figure(Title, Description, X, Below);

/// <summary>An axis.</summary>
/// <param name="Name">Name with unit.</param>
/// <param name="Low">Lower end.</param>
/// <param name="High">Upper end, above the lower.</param>
/// <param name="Step">Distance of the ticks, above 0.</param>
public sealed record FigureAxis(string Name, double Low, double High, double Step)
{
    /// <summary>Where a value lies: 0 at the lower end, 1 at the upper; a value outside, or none at all, is drawn at the nearer end.</summary>
    public double Place(double value) => double.IsNaN(value) ? 0 : Math.Clamp((value - Low) / (High - Low), 0, 1);

    /// <summary>The ticks from the lower end to the upper.</summary>
    public IEnumerable<double> Ticks()
    {
        int steps = (int)Math.Floor(((High - Low) / Step) + 1e-9);
        return Enumerable.Range(0, steps + 1).Select(i => Low + (i * Step));
    }
}

/// <summary>A line of points; <see cref="X"/> and <see cref="Y"/> have the same length.</summary>
/// <param name="Name">Name in the legend.</param>
/// <param name="X">Places along the horizontal axis, rising, in its unit.</param>
/// <param name="Y">Values in the unit of the vertical axis.</param>
public sealed record FigureLine(string Name, ImmutableArray<double> X, ImmutableArray<double> Y);

/// <summary>A bar from one value to another.</summary>
/// <param name="Name">Name beside the bar.</param>
/// <param name="Low">Where it begins, in the unit of the axis.</param>
/// <param name="High">Where it ends, not below its beginning.</param>
/// <param name="Dark">Whether it is the cook's own, drawn dark.</param>
public sealed record FigureBar(string Name, double Low, double High, bool Dark = false);
