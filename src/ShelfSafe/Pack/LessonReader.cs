using System.Collections.Immutable;
using System.Globalization;

namespace ShelfSafe.Pack;

/// <summary>Makes lesson cards of their Markdown, with a fault for everything outside the form.</summary>
internal static class LessonReader
{
    /// <summary>Most words of a lesson.</summary>
    public const int MostWords = 250;

    private const string Command = "shelfsafe ";

    private static readonly string[] Fields = ["title", "names", "picture", "see", "source"];

    /// <summary>The word that stands for a kind of picture in a card.</summary>
    public static PictureKind? Picture(string word) => word switch
    {
        "" or "none" => PictureKind.None,
        "sets" => PictureKind.Sets,
        "conducts" => PictureKind.Conducts,
        "sizes" => PictureKind.Sizes,
        "altitude" => PictureKind.Altitude,
        "air" => PictureKind.Air,
        "acid" => PictureKind.Acid,
        "water" => PictureKind.Water,
        "composition" => PictureKind.Composition,
        _ => null,
    };

    /// <summary>Reads a lesson card; <see langword="null"/> where a fault was reported.</summary>
    public static LessonCard? Read(string file, string text, List<PackFault> faults)
    {
        CardText card = CardText.Read(text);
        string id = Path.GetFileNameWithoutExtension(file);
        int before = faults.Count;
        Dictionary<string, (string Value, int Line)> fields = ReadFields(file, card, faults);
        if (!string.Equals(card.Title, id, StringComparison.Ordinal))
        {
            faults.Add(new(file, 1, 1, $"the title must be the topic \"{id}\""));
        }

        foreach (string needed in (ReadOnlySpan<string>)["title", "source"])
        {
            if (!fields.TryGetValue(needed, out (string Value, int Line) found) || found.Value.Length == 0)
            {
                faults.Add(new(file, found.Line == 0 ? 1 : found.Line, 1, $"the first table must have a row \"{needed}\" with a value"));
            }
        }

        (string picture, int pictureLine) = fields.GetValueOrDefault("picture", (string.Empty, 1));
        if (Picture(picture) is not { } kind)
        {
            faults.Add(new(file, pictureLine, 1, $"\"{picture}\" is no picture; allowed: none, sets, conducts, sizes, altitude, air, acid, water, composition"));
            kind = PictureKind.None;
        }

        ImmutableArray<string> lesson = Lesson(file, card, faults);
        ImmutableArray<string> commands = TryIt(file, card, faults);
        return faults.Count > before ? null : new(id, fields["title"].Value, List("names"), kind, List("source"), List("see"), lesson, commands);

        ImmutableArray<string> List(string field) =>
            [.. fields.GetValueOrDefault(field, (string.Empty, 1)).Item1.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];
    }

    /// <summary>Words of a text, parted by white space.</summary>
    public static int WordsIn(string text)
    {
        int words = 0;
        bool inside = false;
        foreach (char letter in text)
        {
            bool white = char.IsWhiteSpace(letter);
            words += !white && !inside ? 1 : 0;
            inside = !white;
        }

        return words;
    }

    private static Dictionary<string, (string Value, int Line)> ReadFields(string file, CardText card, List<PackFault> faults)
    {
        Dictionary<string, (string Value, int Line)> fields = new(StringComparer.Ordinal);
        foreach ((string section, _, string[] cells, int line) in card.Rows)
        {
            if (section.Length > 0 || cells.Length != 2 || !Fields.Contains(cells[0], StringComparer.Ordinal))
            {
                faults.Add(new(file, line, 1, $"only one table, before the first section, with the fields {string.Join(", ", Fields)}"));
            }
            else if (!fields.TryAdd(cells[0], (cells[1], line)))
            {
                faults.Add(new(file, line, 1, $"the field \"{cells[0]}\" stands twice"));
            }
        }

        return fields;
    }

    private static ImmutableArray<string> Lesson(string file, CardText card, List<PackFault> faults)
    {
        IReadOnlyList<string> paragraphs = card.Paragraphs("Lesson");
        int words = paragraphs.Sum(WordsIn);
        if (words is 0 or > MostWords)
        {
            faults.Add(new(file, card.LineOf("Lesson"), 1, string.Create(CultureInfo.InvariantCulture, $"the section \"## Lesson\" has {words} words; from 1 to {MostWords} are wanted")));
        }

        return [.. paragraphs];
    }

    private static ImmutableArray<string> TryIt(string file, CardText card, List<PackFault> faults)
    {
        ImmutableArray<string>.Builder commands = ImmutableArray.CreateBuilder<string>();
        foreach (string paragraph in card.Paragraphs("Try it"))
        {
            string command = (paragraph.StartsWith("- ", StringComparison.Ordinal) ? paragraph[2..] : paragraph).Trim('`');
            if (!command.StartsWith(Command, StringComparison.Ordinal))
            {
                faults.Add(new(file, card.LineOf("Try it"), 1, $"\"{command}\" is no command; write `shelfsafe vet ...` or `shelfsafe why ...`"));
            }

            commands.Add(command);
        }

        if (commands.Count == 0)
        {
            faults.Add(new(file, card.LineOf("Try it"), 1, "the section \"## Try it\" is missing or empty; write a command such as `shelfsafe why venting`"));
        }

        return commands.ToImmutable();
    }
}
