using System.CommandLine;

namespace ShelfSafe.Cli;

/// <summary>The command <c>rules check</c>: validates a rule pack whole and names every fault with its place.</summary>
internal static class RulesCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Build()
    {
        Argument<string> folder = new("FOLDER") { Description = "Folder of the rule pack." };
        Command check = new("check", "Validates a rule pack and names each fault by file, line and column.") { folder };
        check.SetAction(result => Check(result.GetValue(folder)!, result.InvocationConfiguration.Output, result.InvocationConfiguration.Error));
        return new("rules", "Works on rule packs.") { check };
    }

    private static int Check(string folder, TextWriter output, TextWriter error)
    {
        if (VetSetup.Pack(folder, message => App.Complain(error, message)) is not { } pack)
        {
            return ExitCode.Trouble;
        }

        output.WriteLine($"{RecipePaths.Shown(folder)}: no fault found; version {pack.Version} of {pack.Date}, sha256 {pack.Sha256}");
        return ExitCode.Permitted;
    }
}
