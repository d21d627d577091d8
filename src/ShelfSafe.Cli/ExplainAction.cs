using System.CommandLine;
using System.CommandLine.Invocation;
using System.Globalization;
using ShelfSafe.Reports;

namespace ShelfSafe.Cli;

/// <summary>What <c>--explain</c> does: tells what each exit code means.</summary>
internal sealed class ExplainAction : SynchronousCommandLineAction
{
    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        Words words = Words.Read();
        TextWriter output = parseResult.InvocationConfiguration.Output;
        output.WriteLine(words["exit.intro"]);
        foreach (int code in ExitCode.All)
        {
            string number = code.ToString(CultureInfo.InvariantCulture);
            output.WriteLine($"  {number,-4} {words[$"exit.{number}"]}");
        }

        return ExitCode.Permitted;
    }
}
