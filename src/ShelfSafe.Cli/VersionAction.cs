using System.CommandLine;
using System.CommandLine.Invocation;
using ShelfSafe.Pack;
using ShelfSafe.Reports;

namespace ShelfSafe.Cli;

/// <summary>What <c>--version</c> does: names the program and the rule pack that it judges by, with its date.</summary>
internal sealed class VersionAction : SynchronousCommandLineAction
{
    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        RulePack pack = RulePack.Default;
        string version = typeof(VersionAction).Assembly.GetName().Version?.ToString(3) ?? "0.0.0";
        parseResult.InvocationConfiguration.Output.WriteLine(Words.Read().With("version.line", version, pack.Version, pack.Date, pack.Sha256));
        return ExitCode.Permitted;
    }
}
