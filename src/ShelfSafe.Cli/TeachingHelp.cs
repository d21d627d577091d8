using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using System.CommandLine.Parsing;
using System.Globalization;
using ShelfSafe.Reports;

namespace ShelfSafe.Cli;

/// <summary>Help that teaches: the usual text, then examples that work, then where the exit codes are explained.</summary>
/// <param name="usual">Help as the parser library writes it.</param>
internal sealed class TeachingHelp(HelpAction usual) : SynchronousCommandLineAction
{
    private const string Program = "shelfsafe";

    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

    /// <summary>The examples of a command, each with what it does.</summary>
    /// <param name="words">The words of the program.</param>
    /// <param name="command">Name of the command, such as <c>rules-check</c>.</param>
    public static IEnumerable<(string Line, string Does)> Examples(Words words, string command)
    {
        for (int number = 1; ; number++)
        {
            string key = string.Create(CultureInfo.InvariantCulture, $"example.{command}.{number}");
            if (words.Find(key) is not { } line)
            {
                yield break;
            }

            yield return (line, words[$"{key}.does"]);
        }
    }

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        int code = usual.Invoke(parseResult);
        Words words = Words.Read();
        TextWriter output = parseResult.InvocationConfiguration.Output;
        (string Line, string Does)[] examples = [.. Examples(words, Name(parseResult.CommandResult))];
        if (examples.Length > 0)
        {
            output.WriteLine($"{words["help.examples"]}:");
            foreach ((string line, string does) in examples)
            {
                output.WriteLine($"  {line}");
                output.WriteLine($"      {does}");
            }

            output.WriteLine();
        }

        output.WriteLine(words["help.exit-codes"]);
        return code;
    }

    private static string Name(CommandResult command) => command.Parent is CommandResult parent
        ? string.Join('-', new[] { Name(parent), command.Command.Name }.Where(static part => part != Program))
        : Program;
}
