namespace ShelfSafe.Cli;

/// <summary>What the program takes from around it besides its input: the day, and the place of the cook's own profile.</summary>
/// <param name="KitchenFile">Where a kitchen profile is looked for without being named, or <see langword="null"/> for nowhere.</param>
/// <param name="Today">The day, or <see langword="null"/> where it must not matter.</param>
internal sealed record Surroundings(string? KitchenFile, DateOnly? Today)
{
    /// <summary>No profile and no day.</summary>
    public static Surroundings None { get; } = new(null, null);

    /// <summary>The place of the profile for this user.</summary>
    /// <param name="environment">Reads a variable of the environment.</param>
    /// <param name="windows">Whether this is Windows.</param>
    /// <param name="today">The day.</param>
    /// <remarks>
    /// <c>%APPDATA%\shelfsafe\kitchen.json</c> on Windows; elsewhere <c>$XDG_CONFIG_HOME/shelfsafe/kitchen.json</c>, else
    /// <c>~/.config/shelfsafe/kitchen.json</c>. A relative <c>XDG_CONFIG_HOME</c> counts as none, as its specification says.
    /// </remarks>
    public static Surroundings Of(Func<string, string?> environment, bool windows, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(environment);
        string? folder = windows ? Named(environment("APPDATA"))
            : Named(environment("XDG_CONFIG_HOME")) is { } config && config[0] == '/' ? config
            : Named(environment("HOME")) is { } home ? Path.Combine(home, ".config")
            : null;
        return new(folder is null ? null : Path.Combine(folder, "shelfsafe", "kitchen.json"), today);
    }

    private static string? Named(string? value) => string.IsNullOrEmpty(value) ? null : value;
}
