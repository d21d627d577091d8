namespace ShelfSafe.Cli;

/// <summary>A line on the terminal that counts recipes; nothing where nobody looks.</summary>
internal sealed class Progress(TextWriter error, bool visible)
{
    private const long PauseMilliseconds = 100;

    private long _next;
    private bool _shown;

    /// <summary>Shows the count, at most ten times a second.</summary>
    public void Show(int recipes)
    {
        if (!visible || Environment.TickCount64 < _next)
        {
            return;
        }

        _next = Environment.TickCount64 + PauseMilliseconds;
        error.Write(FormattableString.Invariant($"\r{recipes} recipes"));
        _shown = true;
    }

    /// <summary>Takes the line away before other words are written.</summary>
    public void Clear()
    {
        if (_shown)
        {
            error.Write("\r\u001b[K");
            _shown = false;
        }
    }
}
