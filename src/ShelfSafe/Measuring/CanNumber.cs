namespace ShelfSafe.Measuring;

/// <summary>Reads the trade number of a can ("No. 303", "No. 2 1/2", "#10") out of a line.</summary>
internal static class CanNumber
{
    /// <summary>Key of the can in the package table (<c>can-no-303</c>), or <see langword="null"/> where no number stands.</summary>
    public static string? In(string line)
    {
        if (!PrintedState.Has(line, "can") && !PrintedState.Has(line, "cans") && !PrintedState.Has(line, "tin") && !PrintedState.Has(line, "tins"))
        {
            return null;
        }

        for (int i = 0; i < line.Length; i++)
        {
            int after = line[i] == '#' ? i + 1 : line.AsSpan(i).StartsWith("No.", StringComparison.OrdinalIgnoreCase) ? i + 3 : 0;
            if (after == 0 || (i > 0 && char.IsLetterOrDigit(line[i - 1])))
            {
                continue;
            }

            ReadOnlySpan<char> rest = line.AsSpan(after).TrimStart();
            int digits = 0;
            while (digits < rest.Length && char.IsAsciiDigit(rest[digits]))
            {
                digits++;
            }

            if (digits > 0)
            {
                ReadOnlySpan<char> tail = rest[digits..].TrimStart([' ', '-']);
                bool half = tail.StartsWith("1/2", StringComparison.Ordinal) || tail.StartsWith("\u00BD", StringComparison.Ordinal);
                return string.Concat("can-no-", rest[..digits], half ? "-1/2" : string.Empty);
            }
        }

        return null;
    }
}
