namespace ShelfSafe.Measuring;

/// <summary>Words that give an amount to each jar: "per quart", "to each pint jar". Words of a language, so they stand in code.</summary>
internal static class PerJarWords
{
    private static readonly string[] Each = ["per ", "each ", "every ", "/", "to a ", "in a ", "a "];

    /// <summary>The jar that an amount is for, <c>jar</c> where its size is not named, or <see langword="null"/>.</summary>
    public static string? Find(string text)
    {
        foreach (string jar in (ReadOnlySpan<string>)["half-pint", "pint", "quart", "jar"])
        {
            foreach (string each in Each)
            {
                int at = text.IndexOf(each + jar, StringComparison.OrdinalIgnoreCase);
                if (at == 0 || (at > 0 && (each == "/" || !char.IsLetterOrDigit(text[at - 1]))))
                {
                    return jar;
                }
            }
        }

        return null;
    }
}
