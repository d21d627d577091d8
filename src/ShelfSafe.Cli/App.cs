using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using System.CommandLine.Parsing;

namespace ShelfSafe.Cli;

/// <summary>The command line: parses arguments, runs a command, and answers with an exit code.</summary>
/// <param name="standardInput">Opens standard input, for <c>-</c>.</param>
/// <param name="terminal">What standard output is connected to.</param>
/// <param name="around">The day and the place of the cook's own profile; none of both without it.</param>
/// <param name="stop">Asked for by Ctrl+C: the recipe at hand is finished, and no other is begun.</param>
internal sealed class App(Func<Stream> standardInput, Terminal terminal, Surroundings? around = null, CancellationToken stop = default)
{
    private static readonly string[] Commands = ["vet", "table", "compare", "adapt", "plan", "why", "batch", "rules", "schema", "completion"];

    private readonly Surroundings _around = around ?? Surroundings.None;

    /// <summary>Runs one command line.</summary>
    public int Run(IReadOnlyList<string> arguments, TextWriter output, TextWriter error)
    {
        ParseResult result = Parse(arguments is ["help", ..] ? [.. arguments.Skip(1), "--help"] : arguments);
        if (result.Action is ParseErrorAction || (result.Errors.Count > 0 && result.Action?.ClearsParseErrors != true))
        {
            Complain(error, $"{string.Join("; ", Faults(result).Select(static message => message.TrimEnd('.')))}; for help: shelfsafe {Path(result.CommandResult)}--help");
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

        try
        {
            error.WriteLine("shelfsafe: " + new string(line));
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // Standard error is closed or full: nobody can be told, and the exit code still tells.
        }
    }

    /// <summary>The whole command line.</summary>
    internal Command Build()
    {
        HelpOption help = new();
        help.Action = new TeachingHelp((HelpAction)help.Action!);
        Command root = new("shelfsafe", "Reads a recipe and says what published guidance offers for putting it up in jars.")
        {
            help,
            new VersionOption { Description = "Tells the version of the program and of the rule pack, with its date.", Action = new VersionAction() },
            new Option<bool>("--explain") { Description = "Explains the exit codes.", Recursive = true, Action = new ExplainAction() },
        };
        foreach (string name in Commands)
        {
            root.Subcommands.Add(Build(name));
        }

        root.Subcommands.Add(CompletionCommand.BuildAnswers(Build));
        return root;
    }

    private Command Build(string name) => name switch
    {
        "vet" => new VetCommand(standardInput, terminal, _around, stop).Build(),
        "table" => new TableCommand(terminal, _around).Build(),
        "compare" => new CompareCommand(standardInput, terminal, _around).Build(),
        "adapt" => new AdaptCommand(standardInput, terminal, _around).Build(),
        "plan" => new PlanCommand(standardInput, _around).Build(),
        "why" => new WhyCommand(standardInput, terminal, _around).Build(),
        "batch" => new BatchCommand(standardInput, terminal, _around).Build(),
        "rules" => RulesCommand.Build(),
        "schema" => SchemaCommand.Build(),
        "completion" => CompletionCommand.BuildScripts(),
        _ => throw new ArgumentOutOfRangeException(nameof(name)),
    };

    // A start builds no more than the command that is named; where the words do not fit it, the whole command line tells why.
    private ParseResult Parse(IReadOnlyList<string> arguments)
    {
        ParserConfiguration configuration = new() { ResponseFileTokenReplacer = null };
        if (arguments.Count > 0 && Commands.Contains(arguments[0]) && !arguments.Any(IsForAnyCommand))
        {
            ParseResult result = new Command("shelfsafe") { Build(arguments[0]) }.Parse(arguments, configuration);
            if (result.Errors.Count == 0)
            {
                return result;
            }
        }

        return Build().Parse(arguments, configuration);
    }

    private static bool IsForAnyCommand(string word) => word is "-h" or "/h" or "-?" or "/?"
        || word.StartsWith("--help", StringComparison.Ordinal) || word.StartsWith("--explain", StringComparison.Ordinal);

    // "Required command was not provided" adds nothing to a word that is no command.
    private static IEnumerable<string> Faults(ParseResult result)
    {
        if (result.UnmatchedTokens.Count == 0)
        {
            return result.Errors.Select(static one => one.Message).Distinct(StringComparer.Ordinal);
        }

        Command command = result.CommandResult.Command;
        string word = result.UnmatchedTokens[0];
        return word.StartsWith('-') ? [KitchenOptions.Unknown(command, word)]
            : command.Subcommands.Count == 0 ? [$"\"{word}\" is more than {command.Name} takes"]
            : [KitchenOptions.Unknown(word, command.Subcommands.Where(static one => !one.Hidden).Select(static one => one.Name))];
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
        catch (UnauthorizedAccessException)
        {
            Complain(error, "output cannot be written: standard output is closed");
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
