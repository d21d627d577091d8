using System.Collections.Immutable;
using System.Globalization;

namespace ShelfSafe.Pack;

/// <summary>Makes the cards of <c>rules/jars-in-hand/</c> of their Markdown.</summary>
internal static class JarSignReader
{
    /// <summary>Folder of the cards.</summary>
    public const string Folder = "jars-in-hand/";

    private static readonly string[] _sections = ["Any jar", "Published process, hot pack", "Published process, raw pack", "Published process, too late", "No published process", "Why"];
    private static readonly string[] _fields = ["title", "words", "hours", "also", "source"];

    /// <summary>Reads all cards in the order of their names, with a fault for whatever is missing or not known.</summary>
    public static ImmutableArray<JarSignCard> ReadAll(PackFiles files, List<PackFault> faults)
    {
        List<JarSignCard> cards = [];
        foreach (string name in files.CardsOf(Folder))
        {
            if (Read(name, files, faults) is { } card)
            {
                cards.Add(card);
            }
        }

        return [.. cards];
    }

    private static JarSignCard? Read(string file, PackFiles files, List<PackFault> faults)
    {
        string text = files.Card(file);
        CardText card = CardText.Read(text);
        string id = Path.GetFileNameWithoutExtension(file);
        int before = faults.Count;
        if (!string.Equals(card.Title, id, StringComparison.Ordinal))
        {
            faults.Add(new(file, 1, 1, $"the title must be the name of the file, \"{id}\""));
        }

        Dictionary<string, string> fields = Fields(file, card, faults);
        foreach (string section in card.Sections.Keys.Where(static key => key.Length > 0 && !_sections.Contains(key, StringComparer.Ordinal)))
        {
            faults.Add(new(file, 1, 1, $"the section \"{section}\" is not known; known: {string.Join(", ", _sections)}"));
        }

        ImmutableArray<string> also = Keys(fields, "also");
        foreach (string caution in also.Where(caution => !files.Has($"cautions/{caution}.md")))
        {
            faults.Add(new(file, 1, 1, $"caution \"{caution}\" does not exist in cautions/"));
        }

        int? hours = Hours(file, fields, faults);
        JarSignCard read = new(
            id,
            fields.GetValueOrDefault("title", string.Empty),
            Keys(fields, "words"),
            hours,
            also,
            Keys(fields, "source"),
            CardList.Read(text, _sections[0]),
            CardList.Read(text, _sections[1]),
            CardList.Read(text, _sections[2]),
            CardList.Read(text, _sections[3]),
            CardList.Read(text, _sections[4]),
            card.Section("Why"));
        CheckParts(file, read, faults);
        return faults.Count > before ? null : read;
    }

    private static void CheckParts(string file, JarSignCard card, List<PackFault> faults)
    {
        if (card.Title.Length == 0 || card.Why.Length == 0 || card.NotPublished.IsEmpty)
        {
            faults.Add(new(file, 1, 1, "the card needs a title, a Why, and steps under \"## No published process\""));
        }

        if (card.Hours is null != card.TooLate.IsEmpty)
        {
            faults.Add(new(file, 1, 1, "hours and \"## Published process, too late\" belong together; give both or none"));
        }

        if (card.Hot.IsEmpty != card.Raw.IsEmpty)
        {
            faults.Add(new(file, 1, 1, "steps for hot pack and raw pack belong together; give both or none"));
        }

        if (card.Any.IsEmpty && card.Hot.IsEmpty)
        {
            faults.Add(new(file, 1, 1, "the card needs steps under \"## Any jar\", or under both packs"));
        }
    }

    private static Dictionary<string, string> Fields(string file, CardText card, List<PackFault> faults)
    {
        Dictionary<string, string> fields = new(StringComparer.Ordinal);
        foreach ((string section, string[] _, string[] cells, int line) in card.Rows)
        {
            if (section.Length > 0 || cells.Length != 2 || !_fields.Contains(cells[0], StringComparer.Ordinal))
            {
                faults.Add(new(file, line, 1, $"the row is not known; the first table may hold: {string.Join(", ", _fields)}"));
            }
            else
            {
                fields[cells[0]] = cells[1];
            }
        }

        return fields;
    }

    private static int? Hours(string file, Dictionary<string, string> fields, List<PackFault> faults)
    {
        if (!fields.TryGetValue("hours", out string? text))
        {
            return null;
        }

        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int hours) && hours > 0)
        {
            return hours;
        }

        faults.Add(new(file, 1, 1, $"hours \"{text}\" is no whole number above 0"));
        return null;
    }

    private static ImmutableArray<string> Keys(Dictionary<string, string> fields, string field) =>
        [.. fields.GetValueOrDefault(field, string.Empty).Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];
}
