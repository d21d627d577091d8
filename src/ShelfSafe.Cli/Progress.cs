using ShelfSafe.Reports;

namespace ShelfSafe.Cli;

/// <summary>A bar on the terminal that counts recipes; nothing where nobody looks.</summary>
/// <param name="error">Receives the bar.</param>
/// <param name="visible">Whether a person sees it.</param>
/// <param name="total">Number of inputs, or <see langword="null"/> where it is not known, as with records of a pipe.</param>
internal sealed class Progress(TextWriter error, bool visible, int? total)
{
    private const long PauseMilliseconds = 100;
    private const int Cells = 24;

    private readonly Words? _words = visible ? Words.Read() : null;
    private long _next;
    private bool _shown;

    /// <summary>Shows how far the run has come, at most ten times a second.</summary>
    /// <param name="done">Inputs that were written.</param>
    public void Show(int done)
    {
        if (_words is null || total == 1 || Environment.TickCount64 < _next)
        {
            return;
        }

        _next = Environment.TickCount64 + PauseMilliseconds;
        error.Write("\r" + Bar(_words, done, total));
        _shown = true;
    }

    /// <summary>Takes the bar away before other words are written.</summary>
    public void Clear()
    {
        if (_shown)
        {
            error.Write("\r\u001b[K");
            _shown = false;
        }
    }

    /// <summary>The bar, or the bare count where the total is not known.</summary>
    internal static string Bar(Words words, int done, int? total)
    {
        if (total is not { } all || all <= 0)
        {
            return words.With("progress.count", done);
        }

        int full = (int)Math.Min(Cells, (long)Cells * done / all);
        return $"[{new string('#', full)}{new string('.', Cells - full)}] {words.With("progress.of", done, all)}";
    }
}
