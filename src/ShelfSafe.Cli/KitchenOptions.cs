using System.CommandLine;
using System.CommandLine.Parsing;

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
        option.Validators.Add(result => Check(result, allowed));
        return option;
    }

    /// <summary>Complains where the word given is not one of those allowed.</summary>
    public static void Check(OptionResult result, IReadOnlyList<string> allowed)
    {
        if (result.Tokens.Count == 1 && !allowed.Contains(result.Tokens[0].Value, StringComparer.Ordinal))
        {
            result.AddError($"{result.Option.Name}: \"{result.Tokens[0].Value}\" is not known; known: {string.Join(", ", allowed)}");
        }
    }
}
