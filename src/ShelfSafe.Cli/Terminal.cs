using ShelfSafe.Reports;

namespace ShelfSafe.Cli;

/// <summary>What standard output is connected to.</summary>
/// <param name="IsTerminal">Whether a person sees it directly.</param>
/// <param name="Width">Columns of the terminal; 80 where there is none.</param>
/// <param name="Colour">Whether colour is welcome: a terminal, no <c>NO_COLOR</c>, and not a dumb one.</param>
/// <param name="ErrorIsTerminal">Whether a person sees standard error directly.</param>
internal sealed record Terminal(bool IsTerminal, int Width, bool Colour, bool ErrorIsTerminal = false)
{
    private const int DefaultWidth = 80;
    private const int Widest = 120;

    /// <summary>No terminal: 80 columns, no colour.</summary>
    public static Terminal None { get; } = new(IsTerminal: false, DefaultWidth, Colour: false);

    /// <summary>The layout for reports.</summary>
    public TextStyle Style => new(Width, Colour);

    /// <summary>Asks the console.</summary>
    public static Terminal Read()
    {
        if (Console.IsOutputRedirected)
        {
            return None with { ErrorIsTerminal = !Console.IsErrorRedirected };
        }

        // Set and not empty means no colour, whatever the value: the convention of no-color.org.
        bool colour = string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"))
            && !string.Equals(Environment.GetEnvironmentVariable("TERM"), "dumb", StringComparison.Ordinal);
        return new(IsTerminal: true, Columns(), colour, !Console.IsErrorRedirected);
    }

    private static int Columns()
    {
        try
        {
            int width = Console.WindowWidth;
            return width <= 0 ? DefaultWidth : Math.Clamp(width, TextStyle.Narrowest, Widest);
        }
        catch (IOException)
        {
            return DefaultWidth;
        }
        catch (PlatformNotSupportedException)
        {
            return DefaultWidth;
        }
    }
}
