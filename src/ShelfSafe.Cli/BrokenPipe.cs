namespace ShelfSafe.Cli;

/// <summary>Tells a reader that went away (<c>shelfsafe vet . | head</c>) from a full disk.</summary>
internal static class BrokenPipe
{
    private const int Epipe = 32; // Linux and macOS
    private const int NoData = unchecked((int)0x800700E8); // Windows ERROR_NO_DATA
    private const int Broken = unchecked((int)0x8007006D); // Windows ERROR_BROKEN_PIPE

    /// <summary>Whether the other end of the pipe was closed.</summary>
    public static bool Is(IOException fault) => fault.HResult is Epipe or NoData or Broken;
}
