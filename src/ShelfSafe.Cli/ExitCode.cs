namespace ShelfSafe.Cli;

/// <summary>What the program returns to the shell.</summary>
internal static class ExitCode
{
    /// <summary>A process or the shelf is open to the recipe as written, and nothing must be changed.</summary>
    public const int Permitted = 0;

    /// <summary>Any other verdict.</summary>
    public const int Verdict = 1;

    /// <summary>Wrong use, or something that could not be read or written.</summary>
    public const int Trouble = 2;

    /// <summary>Stopped by Ctrl+C; what was written is whole.</summary>
    public const int Stopped = 130;

    /// <summary>All of them.</summary>
    public static IReadOnlyList<int> All { get; } = [Permitted, Verdict, Trouble, Stopped];
}
