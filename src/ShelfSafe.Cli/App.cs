using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using System.CommandLine.Parsing;

namespace ShelfSafe.Cli;

/// <summary>The command line: parses arguments, runs a command, and answers with an exit code.</summary>
/// <param name="standardInput">Opens standard input, for <c>-</c>.</param>
/// <param name="terminal">What standard output is connected to.</param>
/// <param name="stop">Asked for by Ctrl+C: the recipe at hand is finished, and no other is begun.</param>
internal sealed class App(Func<Stream> standardInput, Terminal terminal, CancellationToken stop = default)
{
    /// <summary>Runs one command line.</summary>
    public int Run(IReadOnlyList<string> arguments, TextWriter output, TextWriter error)
    {
        Command root = new("shelfsafe", "Reads a recipe and says what published guidance offers for putting it up in jars.")
        {
            new HelpOption(),
            new VersionOption(),
            new VetCommand(standardInput, terminal, stop).Build(),
            RulesCommand.Build(),
            new TableCommand(terminal).Build(),
            new CompareCommand(standardInput, terminal).Build(),
            new AdaptCommand(standardInput).Build(),
            new PlanCommand(standardInput).Build(),
        };
        ParseResult result = root.Parse([.. arguments], new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (result.Action is ParseErrorAction || (result.Errors.Count > 0 && result.Action?.ClearsParseErrors != true))
        {
            // "Required command was not provided" adds nothing to "Unrecognized command": the last says what is wrong.
            IEnumerable<string> messages = result.Errors.Select(static one => one.Message);
            foreach (string message in (result.UnmatchedTokens.Count > 0 ? messages.TakeLast(1) : messages).Distinct(StringComparer.Ordinal))
            {
                Complain(error, message);
            }

            error.WriteLine($"shelfsafe: for help: shelfsafe {Path(result.CommandResult)}--help");
            return ExitCode.Trouble;
        }

        return Invoke(result, output, error);
    }

    /// <summary>Writes one line of complaint; line breaks and control marks in it are made harmless.</summary>
    public static void Complain(TextWriter error, string message)
    {
        char[] line = message.ToCharArray();
        for (int i = 0; i < line.Length; i++)
        {
            line[i] = char.IsControl(line[i]) || line[i] is '\u2028' or '\u2029' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069') ? ' ' : line[i];
        }

        error.WriteLine("shelfsafe: " + new string(line));
    }

    private static string Path(CommandResult command) =>
        command.Parent is CommandResult parent ? $"{Path(parent)}{command.Command.Name} " : string.Empty;

    private static int Invoke(ParseResult result, TextWriter output, TextWriter error)
    {
        try
        {
            int code = result.Invoke(new InvocationConfiguration { Output = output, Error = error, EnableDefaultExceptionHandler = false, ProcessTerminationTimeout = null });
            output.Flush();
            return code;
        }
        catch (IOException broken)
        {
            if (BrokenPipe.Is(broken))
            {
                return ExitCode.Trouble; // whoever read the output has seen enough: nothing to say
            }

            Complain(error, $"output cannot be written: {broken.Message}");
            return ExitCode.Trouble;
        }
#pragma warning disable CA1031 // The last line of defence: a cook never sees a stack trace.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            Complain(error, $"a fault in this program stopped it ({fault.GetType().Name}): {fault.Message}");
            return ExitCode.Trouble;
        }
    }
}
