using System.CommandLine;
using ShelfSafe.Records;

namespace ShelfSafe.Cli;

/// <summary>The command <c>batch</c>: the record of what was put up, and the jar in the hand.</summary>
/// <param name="standardInput">Opens standard input, for a recipe or import named <c>-</c>.</param>
/// <param name="terminal">What standard output is connected to.</param>
/// <param name="around">The place of the cook's own profile.</param>
/// <param name="clock">Tells the day; <see langword="null"/> for the system's.</param>
internal sealed class BatchCommand(Func<Stream> standardInput, Terminal terminal, Surroundings around, TimeProvider? clock = null)
{
    /// <summary>Makes the command.</summary>
    public Command Build() => new("batch", "Keeps the record of what was put up, prints labels, and says what to do with a doubtful jar.")
    {
        new BatchAddCommand(standardInput, terminal, around, Today).Build(),
        new BatchListCommand(terminal, Today).BuildList(),
        new BatchListCommand(terminal, Today).BuildStock(),
        new BatchShowCommand(terminal, Today).Build(),
        new BatchSealCommand(terminal, Today).Build(),
        new BatchTakeCommand(terminal, Today).Build(),
        new BatchLabelsCommand().Build(),
        new BatchExportCommand().Build(),
        new BatchImportCommand(standardInput, terminal, Today).Build(),
        new BatchCheckCommand(terminal, Today).Build(),
    };

    /// <summary>Runs what may fail with a plain line: it is written, and the answer is 2.</summary>
    public static int Guard(ParseResult result, Action work)
    {
        try
        {
            work();
            return ExitCode.Permitted;
        }
        catch (BatchLogException trouble)
        {
            App.Complain(result.InvocationConfiguration.Error, trouble.Message);
            return ExitCode.Trouble;
        }
    }

    /// <summary>Writes a text to standard output, or to a file that appears whole or not at all.</summary>
    /// <exception cref="BatchLogException">The file cannot be written, or is the log itself.</exception>
    public static void Write(string text, string? file, string log, TextWriter output)
    {
        if (!OutputFile.IsFree(file, [], [(log, "the batch log")], static wrong => throw new BatchLogException(wrong)))
        {
            return;
        }

        OutputFile.Write(file, output, static wrong => throw new BatchLogException(wrong), writer => writer.Write(text));
    }

    private DateOnly Today() => DateOnly.FromDateTime((clock ?? TimeProvider.System).GetLocalNow().DateTime);
}
