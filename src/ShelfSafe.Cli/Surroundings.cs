namespace ShelfSafe.Cli;

/// <summary>What the program takes from around it besides its input: the day, and the place of the cook's own profile.</summary>
/// <param name="KitchenFile">Where a kitchen profile is looked for without being named, or <see langword="null"/> for nowhere.</param>
/// <param name="Day">Tells the day, or <see langword="null"/> where it must not matter; asked only where it does, since a time zone takes reading.</param>
internal sealed record Surroundings(string? KitchenFile, Func<DateOnly>? Day)
{
    /// <summary>No profile and no day.</summary>
    public static Surroundings None { get; } = new(null, null);

    /// <summary>The day, or <see langword="null"/> where it must not matter.</summary>
    public DateOnly? Today => Day?.Invoke();

    /// <summary>The place of the profile for this user.</summary>
    /// <param name="environment">Reads a variable of the environment.</param>
    /// <param name="windows">Whether this is Windows.</param>
    /// <param name="day">Tells the day.</param>
    /// <remarks>
    /// <c>%APPDATA%\shelfsafe\kitchen.json</c> on Windows; elsewhere <c>$XDG_CONFIG_HOME/shelfsafe/kitchen.json</c>, else
    /// <c>~/.config/shelfsafe/kitchen.json</c>. A relative <c>XDG_CONFIG_HOME</c> counts as none, as its specification says.
    /// </remarks>
    public static Surroundings Of(Func<string, string?> environment, bool windows, Func<DateOnly> day)
    {
        ArgumentNullException.ThrowIfNull(environment);
        string? folder = windows ? Named(environment("APPDATA"))
            : Named(environment("XDG_CONFIG_HOME")) is { } config && config[0] == '/' ? config
            : Named(environment("HOME")) is { } home ? Path.Combine(home, ".config")
            : null;
        return new(folder is null ? null : Path.Combine(folder, "shelfsafe", "kitchen.json"), day);
    }

    private static string? Named(string? value) => string.IsNullOrEmpty(value) ? null : value;
}
