using System.Text;
using ShelfSafe.Cli;

namespace ShelfSafe.Tests.Cli;

/// <summary>A folder of its own and a way to run the command line in it.</summary>
public sealed class Kitchenette : IDisposable
{
    public string Folder { get; } = Directory.CreateTempSubdirectory("shelfsafe-").FullName;

    public string Path(string name) => System.IO.Path.Combine(Folder, name);

    public string Write(string name, string text) => WriteBytes(name, Encoding.UTF8.GetBytes(text));

    public string WriteBytes(string name, byte[] bytes)
    {
        string path = Path(name);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        File.WriteAllBytes(path, bytes);
        return path;
    }

    /// <summary>Runs the command line with the given standard input.</summary>
    public static (int Code, string Output, string Error) Run(byte[] input, params string[] arguments)
    {
        using StringWriter output = new() { NewLine = "\n" };
        using StringWriter error = new() { NewLine = "\n" };
        int code = new App(() => new MemoryStream(input), Terminal.None).Run(arguments, output, error);
        return (code, output.ToString(), error.ToString());
    }

    /// <summary>Runs the command line as if it were connected to a terminal, or was stopped.</summary>
    internal static (int Code, string Output, string Error) RunOn(Terminal terminal, CancellationToken stop, params string[] arguments)
    {
        using StringWriter output = new() { NewLine = "\n" };
        using StringWriter error = new() { NewLine = "\n" };
        int code = new App(static () => Stream.Null, terminal, stop: stop).Run(arguments, output, error);
        return (code, output.ToString(), error.ToString());
    }

    /// <summary>Runs the command line with nothing on standard input.</summary>
    public static (int Code, string Output, string Error) Run(params string[] arguments) => Run([], arguments);

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
