using System.CommandLine;
using System.Text;

namespace ShelfSafe.Cli;

/// <summary>The commands <c>completion</c>, which prints the script for a shell, and <c>complete</c>, which that script asks.</summary>
internal static class CompletionCommand
{
    private static readonly string[] _shells = ["bash", "zsh", "fish", "powershell"];

    /// <summary>Makes the command that prints a script.</summary>
    public static Command BuildScripts()
    {
        Argument<string> shell = new("SHELL") { HelpName = string.Join('|', _shells), Description = "The shell that reads the script." };
        shell.CompletionSources.Add(_shells);
        shell.Validators.Add(static result => KitchenOptions.Check(result, "SHELL", _shells));
        Command completion = new("completion", "Prints a script that lets a shell complete commands, options and their values.") { shell };
        completion.SetAction(result =>
        {
            result.InvocationConfiguration.Output.Write(Script(result.GetValue(shell)!));
            return ExitCode.Permitted;
        });
        return completion;
    }

    /// <summary>Makes the command that the scripts call; it is not shown in help.</summary>
    /// <param name="root">Makes the whole command line.</param>
    public static Command BuildAnswers(Func<Command> root)
    {
        Option<bool> next = new("--next") { Description = "A new word begins; the last one given is finished." };
        Argument<string[]> words = new("WORD") { Arity = ArgumentArity.ZeroOrMore, Description = "What was typed after the program's name." };
        Command complete = new("complete", "Lists what the last word can become, one a line.") { next, words };
        complete.Hidden = true;
        complete.SetAction(result =>
        {
            string[] typed = result.GetValue(words) ?? [];
            foreach (string answer in Answers(root(), result.GetValue(next) ? [.. typed, string.Empty] : typed))
            {
                result.InvocationConfiguration.Output.WriteLine(answer);
            }

            return ExitCode.Permitted;
        });
        return complete;
    }

    /// <summary>What the last word can become; none where a file or folder is wanted, for which the shell has its own list.</summary>
    /// <remarks>A value may hang on its option with an equals sign: most shells hand that over as one word, bash as three.</remarks>
    internal static IEnumerable<string> Answers(Command root, string[] words)
    {
        string[] typed = [.. words.SkipLast(1).Where(static word => word != "="), .. words.TakeLast(1).Select(static word => word == "=" ? string.Empty : word)];
        return typed is [.. string[] before, string last] && last.StartsWith("--", StringComparison.Ordinal) && last.Split('=', 2) is [string option, string value]
            ? Parsed(root, [.. before, option, value]).Select(answer => $"{option}={answer}")
            : Parsed(root, typed);
    }

    private static IEnumerable<string> Parsed(Command root, string[] words)
    {
        string last = words.Length == 0 ? string.Empty : words[^1];
        StringBuilder line = new(root.Name);
        foreach (string word in words.SkipLast(1))
        {
            line.Append(" \"").Append(word.Replace("\"", string.Empty, StringComparison.Ordinal)).Append('"');
        }

        line.Append(' ').Append(last);
        ParseResult parsed = root.Parse(line.ToString(), new ParserConfiguration { ResponseFileTokenReplacer = null });
        return parsed.GetCompletions(line.Length)
            .Select(static item => item.InsertText ?? item.Label)
            .Where(text => text.StartsWith(last, StringComparison.Ordinal) && (last.StartsWith('-') || !text.StartsWith('-')))
            .Where(static text => text is not ("-?" or "-h" or "/?" or "/h"))
            .Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal);
    }

    private static string Script(string shell)
    {
        string name = $"completion/shelfsafe.{shell}";
        using Stream stream = typeof(CompletionCommand).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"{name} was not built into the program");
        using StreamReader reader = new(stream);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
