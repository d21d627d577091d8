using ShelfSafe.Core;

namespace ShelfSafe.Records;

/// <summary>Lot codes such as <c>2026-10-03-A</c>: the day, and a letter that runs through the day's batches.</summary>
/// <remarks>I, O and Q are left out, since on a smudged label they read as digits. After Z comes AA.</remarks>
public static class LotCode
{
    private const string Letters = "ABCDEFGHJKLMNPRSTUVWXYZ";
    private const int MostLetters = 4;

    /// <summary>The code of a batch.</summary>
    /// <param name="date">Day it was put up.</param>
    /// <param name="number">Its number on that day, from 1.</param>
    public static string Of(DateOnly date, int number)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(number, 1);
        string letters = string.Empty;
        for (int rest = number; rest > 0; rest = (rest - 1) / Letters.Length)
        {
            letters = Letters[(rest - 1) % Letters.Length] + letters;
        }

        return $"{Days.Of(date)}-{letters}";
    }

    /// <summary>Reads a code; small letters are read as capitals.</summary>
    /// <param name="text">The text.</param>
    /// <param name="date">Day of the batch.</param>
    /// <param name="number">Its number on that day.</param>
    public static bool TryRead(string text, out DateOnly date, out int number)
    {
        ArgumentNullException.ThrowIfNull(text);
        string code = text.Trim().ToUpperInvariant();
        number = 0;
        date = default;
        if (code.Length <= Days.Length + 1
            || code.Length > Days.Length + 1 + MostLetters
            || code[Days.Length] != '-'
            || !Days.TryRead(code[..Days.Length], out date))
        {
            return false;
        }

        foreach (char letter in code[(Days.Length + 1)..])
        {
            int value = Letters.IndexOf(letter, StringComparison.Ordinal);
            if (value < 0)
            {
                return false;
            }

            number = (number * Letters.Length) + value + 1;
        }

        return true;
    }
}
