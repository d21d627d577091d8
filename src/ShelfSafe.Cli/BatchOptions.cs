using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using ShelfSafe.Core;
using ShelfSafe.Records;

namespace ShelfSafe.Cli;

/// <summary>Options that the subcommands of <c>batch</c> share, and what they mean where they are not given.</summary>
internal static class BatchOptions
{
    /// <summary>The log file.</summary>
    public static Option<string?> Log() => new("--log")
    {
        HelpName = "FILE",
        Description = "The batch log; without it, shelfsafe/batches.db in your data folder ($XDG_DATA_HOME or ~/.local/share, on Windows LocalApplicationData).",
    };

    /// <summary>The lot code of one batch.</summary>
    public static Argument<string> Lot() => new("LOT") { Description = "Lot code, such as 2026-10-03-A." };

    /// <summary>A day, year-month-day.</summary>
    public static Option<DateOnly?> Date(string what) => new("--date")
    {
        HelpName = "2026-10-03",
        Description = what,
        CustomParser = static result => Day(result),
    };

    /// <summary>A whole number; words of our own where it is none.</summary>
    public static Option<int?> Whole(string name, string description) => new(name)
    {
        HelpName = "N",
        Description = description,
        CustomParser = result => Whole(result, name),
    };

    /// <summary>A number with a point.</summary>
    public static Option<double?> Number(string name, string description) => new(name)
    {
        HelpName = "N",
        Description = description,
        CustomParser = result =>
        {
            string text = result.Tokens[0].Value;
            if (double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value))
            {
                return value;
            }

            result.AddError($"{name}: \"{text}\" is no number; write digits, such as 15");
            return null;
        },
    };

    /// <summary>Reads a whole number of an option or argument.</summary>
    public static int? Whole(ArgumentResult result, string name)
    {
        string text = result.Tokens[0].Value;
        if (int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int value))
        {
            return value;
        }

        result.AddError($"{name}: \"{text}\" is no whole number; write digits, such as 7");
        return null;
    }

    /// <summary>The log that was named, or the one in the cook's data folder.</summary>
    /// <param name="named">As named, or <see langword="null"/>.</param>
    /// <param name="make">Whether the folder of the default place is made.</param>
    /// <exception cref="BatchLogException">There is no data folder, or it cannot be made.</exception>
    public static string Place(string? named, bool make)
    {
        if (named is not null)
        {
            return named.Length > 0 ? named : throw new BatchLogException("--log: the name is empty");
        }

        string data = Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify);
        if (data.Length == 0)
        {
            throw new BatchLogException("this account has no data folder; name the batch log with --log FILE");
        }

        string folder = Path.Combine(data, "shelfsafe");
        try
        {
            if (make)
            {
                Directory.CreateDirectory(folder);
            }
        }
        catch (IOException fault)
        {
            throw new BatchLogException($"{folder}: the folder of the batch log cannot be made; name another place with --log FILE", fault);
        }
        catch (UnauthorizedAccessException fault)
        {
            throw new BatchLogException($"{folder}: the folder of the batch log may not be made; name another place with --log FILE", fault);
        }

        return Path.Combine(folder, "batches.db");
    }

    private static DateOnly? Day(ArgumentResult result)
    {
        string text = result.Tokens[0].Value;
        if (Days.TryRead(text, out DateOnly date))
        {
            return date;
        }

        result.AddError($"--date: \"{text}\" is no day; write year-month-day, such as 2026-10-03");
        return null;
    }
}
