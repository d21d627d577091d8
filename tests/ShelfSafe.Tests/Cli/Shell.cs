using System.Diagnostics;
using Xunit;

namespace ShelfSafe.Tests.Cli;

/// <summary>Runs the built program in a real shell, where pipes, redirections, signals and terminals are real.</summary>
internal static class Shell
{
    private static readonly string _program = Path.Combine(AppContext.BaseDirectory, "ShelfSafe.Cli.dll");

    /// <summary>Runs a bash script in which <c>shelfsafe</c> is the program; skips the test where there is no bash.</summary>
    /// <param name="folder">Folder to run in.</param>
    /// <param name="script">The script.</param>
    /// <param name="environment">Variables to set.</param>
    public static async Task<(int Code, string Output, string Error)> RunAsync(string folder, string script, params (string Name, string Value)[] environment)
    {
        Assert.SkipUnless(File.Exists("/bin/bash"), "there is no bash here");
        ProcessStartInfo start = new("/bin/bash", ["--norc", "-c", $"shelfsafe() {{ dotnet '{_program}' \"$@\"; }}\nexport -f shelfsafe\n{script}"])
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = true,
        };
        start.Environment.Remove("NO_COLOR");
        foreach ((string name, string value) in environment)
        {
            start.Environment[name] = value;
        }

        using Process process = Process.Start(start)!;
        process.StandardInput.Close();
        CancellationToken stop = TestContext.Current.CancellationToken;
        Task<string> output = process.StandardOutput.ReadToEndAsync(stop);
        Task<string> error = process.StandardError.ReadToEndAsync(stop);
        await process.WaitForExitAsync(stop);
        return (process.ExitCode, await output, await error);
    }
}
