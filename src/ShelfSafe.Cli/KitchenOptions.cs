using System.CommandLine;
using System.CommandLine.Parsing;
using ShelfSafe.Core;

namespace ShelfSafe.Cli;

/// <summary>Options that describe the kitchen, the same in every command that asks for it.</summary>
internal static class KitchenOptions
{
    /// <summary>Altitude, with its unit.</summary>
    public static Option<string?> Altitude()
    {
        Option<string?> altitude = new("--altitude") { HelpName = "\"1350 ft\"|\"410 m\"", Description = "Altitude above sea level, with its unit." };
        altitude.Validators.Add(static result =>
        {
            if (result.Tokens.Count == 1 && !Cli.Altitude.TryRead(result.Tokens[0].Value, out _, out string wrong))
            {
                result.AddError($"--altitude: {wrong}");
            }
        });
        return altitude;
    }

    /// <summary>Gauge of the pressure canner.</summary>
    public static Option<string?> Gauge() => OneOf("--gauge", "dial|weighted", "Gauge of the pressure canner.", KitchenWords.Gauges);

    /// <summary>Jar size.</summary>
    public static Option<string?> Jar() => OneOf("--jar", "SIZE", $"Jar size: {string.Join(", ", KitchenWords.Jars)}.", KitchenWords.Jars);

    /// <summary>Country whose kitchen words are used.</summary>
    public static Option<string?> Region() =>
        OneOf("--region", "CODE", $"Country whose words the recipe uses: {string.Join(", ", KitchenWords.Regions)}.", KitchenWords.Regions);

    /// <summary>An option that takes one of a few words.</summary>
    public static Option<string?> OneOf(string name, string help, string description, IReadOnlyList<string> allowed)
    {
        Option<string?> option = new(name) { HelpName = help, Description = description };
        Limit(option, allowed);
        return option;
    }

    /// <summary>Lets an option take a few words only, and offers them to the shell.</summary>
    public static void Limit<T>(Option<T> option, IReadOnlyList<string> allowed)
    {
        option.CompletionSources.Clear();
        option.CompletionSources.Add([.. allowed]);
        option.Validators.Add(result => Check(result, result.Option.Name, allowed));
    }

    /// <summary>Complains where the word given is not one of those allowed.</summary>
    public static void Check(SymbolResult result, string name, IReadOnlyList<string> allowed)
    {
        if (result.Tokens.Count == 1 && !allowed.Contains(result.Tokens[0].Value, StringComparer.Ordinal))
        {
            result.AddError($"{name}: {Unknown(result.Tokens[0].Value, allowed)}");
        }
    }

    /// <summary>Complains of words that start like an option but are none.</summary>
    /// <param name="result">The words that were taken for arguments.</param>
    /// <param name="command">The command.</param>
    public static void CheckDashes(ArgumentResult result, Command command)
    {
        foreach (string value in result.Tokens.Select(static token => token.Value).Where(static value => value.Length > 1 && value[0] == '-'))
        {
            result.AddError(Unknown(command, value));
        }
    }

    /// <summary>Says that a command has no such option, and which is nearest.</summary>
    public static string Unknown(Command command, string option)
    {
        string? near = EditDistance.Nearest(option, command.Options.Where(static one => !one.Hidden).SelectMany(static one => one.Aliases.Prepend(one.Name)));
        return $"\"{option}\" is no option of {command.Name}{Nearest(near)}";
    }

    /// <summary>Says that a word is not known, what is known, and which is nearest.</summary>
    public static string Unknown(string word, IEnumerable<string> known)
    {
        string[] all = [.. known];
        return $"\"{word}\" is not known; known: {string.Join(", ", all)}{Nearest(EditDistance.Nearest(word, all))}";
    }

    private static string Nearest(string? near) => near is null ? string.Empty : $"; nearest: {near}";
}
