using System.Globalization;
using ShelfSafe.Pack;

namespace ShelfSafe.Lessons;

/// <summary>The fixed words of lessons and pictures, from <c>rules/words.csv</c> of the pack.</summary>
internal sealed class LessonWords
{
    private readonly Dictionary<string, string> _texts = new(StringComparer.Ordinal);

    /// <summary>Reads the words; a key that the table lacks is a fault of the program, which a test guards.</summary>
    public LessonWords(RulePack pack) =>
        CsvTable.Read(
            "words.csv",
            pack.Text("words.csv"),
            ["key", "text"],
            row =>
            {
                _texts[row.Text("key")] = row.Text("text");
                return string.Empty;
            },
            []);

    /// <summary>The words under a key.</summary>
    public string this[string key] => _texts[key];

    /// <summary>The words under a key with their blanks filled, the same in every culture.</summary>
    public string With(string key, params ReadOnlySpan<object?> values) => string.Format(CultureInfo.InvariantCulture, this[key], values);
}
