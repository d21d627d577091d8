using System.Runtime.InteropServices;
using System.Text;
using Microsoft.Win32.SafeHandles;
using ShelfSafe.Cli;

UTF8Encoding utf8 = new(encoderShouldEmitUTF8Identifier: false);
using CancellationTokenSource stop = new();
// The signal itself, since the console's event would open the console's own writer first.
using PosixSignalRegistration pressed = PosixSignalRegistration.Create(PosixSignal.SIGINT, signal =>
{
    // The first Ctrl+C lets the recipe at hand be written whole; a second one ends the program at once.
    signal.Cancel = !stop.IsCancellationRequested;
    stop.Cancel();
});

// The console's own stream swallows a closed pipe on Unix; a plain file stream tells of it, so that the run can end.
// A file that other programs write to as well is left to the console's stream, which keeps to the shared place in it.
using SafeFileHandle handle = new(1, ownsHandle: false);
using FileStream? pipe = Console.IsOutputRedirected && !OperatingSystem.IsWindows() ? new(handle, FileAccess.Write, bufferSize: 1) : null;
using Stream standardOutput = pipe is { CanSeek: false } ? pipe : Console.OpenStandardOutput();
#pragma warning disable CA2000 // Disposed below, where a full disk or a closed pipe is met; standard error holds nothing back, and closing it could only fail.
StreamWriter output = new(standardOutput, utf8, bufferSize: 16_384) { NewLine = "\n" };
StreamWriter error = new(Console.OpenStandardError(), utf8) { NewLine = "\n", AutoFlush = true };
#pragma warning restore CA2000
Surroundings around = Surroundings.Of(Environment.GetEnvironmentVariable, OperatingSystem.IsWindows(), static () => DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime));
int code = new App(() => new StoppableInput(Console.OpenStandardInput(), stop.Token), Terminal.Read(), around, stop.Token).Run(args, output, error);
try
{
    output.Dispose();
}
catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
{
    // What could not be written was complained of when it was tried.
}

return code;
