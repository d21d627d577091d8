using System.Diagnostics;
using Xunit;

namespace ShelfSafe.Tests.Cli;

/// <summary>Runs the built program in a real shell, where pipes, redirections, signals and terminals are real.</summary>
internal static class Shell
{
    private static readonly string _program = Path.Combine(AppContext.BaseDirectory, "ShelfSafe.Cli.dll");

    // A file on the path and no function of the shell: a function is lost where another shell stands between, as script(1) puts one.
    private static readonly Lazy<string> _onPath = new(PutOnPath);

    /// <summary>Runs a bash script in which <c>shelfsafe</c> is the program; skips the test where there is no bash.</summary>
    /// <param name="folder">Folder to run in.</param>
    /// <param name="script">The script.</param>
    /// <param name="environment">Variables to set.</param>
    public static async Task<(int Code, string Output, string Error)> RunAsync(string folder, string script, params (string Name, string Value)[] environment)
    {
        Assert.SkipUnless(File.Exists("/bin/bash"), "there is no bash here");
        ProcessStartInfo start = new("/bin/bash", ["--norc", "-c", script])
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = true,
        };
        start.Environment["PATH"] = _onPath.Value + Path.PathSeparator + Environment.GetEnvironmentVariable("PATH");
        start.Environment.Remove("NO_COLOR");
        start.Environment["XDG_CONFIG_HOME"] = folder; // no profile of whoever runs the tests
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

    /// <summary>Whether a program of this name stands in a folder of the path.</summary>
    public static bool Has(string program) =>
        (Environment.GetEnvironmentVariable("PATH") ?? string.Empty).Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, program)));

    private static string PutOnPath()
    {
        string folder = Directory.CreateDirectory(Path.Combine(AppContext.BaseDirectory, "on-path")).FullName;
        string file = Path.Combine(folder, "shelfsafe");
        File.WriteAllText(file, $"#!/bin/sh\nexec dotnet '{_program}' \"$@\"\n");
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(file, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }

        return folder;
    }
}
