using System.Collections.Immutable;
using ShelfSafe.Core;

namespace ShelfSafe.Pack;

/// <summary>Makes hazard and category cards of their Markdown, with a fault for everything outside the grammar.</summary>
internal static class CardReader
{
    /// <summary>Reads a hazard card; <see langword="null"/> where a fault was reported.</summary>
    /// <param name="file">Its path in the pack.</param>
    /// <param name="text">Its Markdown.</param>
    /// <param name="lists">The lists that its checks may name.</param>
    /// <param name="faults">Receives what is wrong.</param>
    public static HazardCard? Hazard(string file, string text, RuleLists lists, List<PackFault> faults)
    {
        CardText card = CardText.Read(text);
        string rule = Path.GetFileNameWithoutExtension(file);
        int before = faults.Count;
        if (!string.Equals(card.Title, rule, StringComparison.Ordinal))
        {
            faults.Add(new(file, 1, 1, $"the title must be the rule id \"{rule}\""));
        }

        ImmutableArray<HazardRow>.Builder rows = ImmutableArray.CreateBuilder<HazardRow>();
        foreach ((string section, string[] header, string[] cells, int line) in card.Rows)
        {
            if (section.Length == 0
                && Level(file, line, Cell(header, cells, "level"), faults) is { } level
                && Check(file, line, Cell(header, cells, "check"), lists, faults) is { } check)
            {
                rows.Add(new(level, check, Keys(Cell(header, cells, "source"))));
            }
        }

        ImmutableArray<HazardCase> cases = Cases(file, card, lists, faults);
        if (rows.Count == 0)
        {
            faults.Add(new(file, 1, 1, "the card needs a table with the columns level, check, source"));
        }

        foreach (string needed in (ReadOnlySpan<string>)["Message", "Why", "Instead"])
        {
            if (card.Section(needed).Length == 0)
            {
                faults.Add(new(file, 1, 1, $"the section \"## {needed}\" is missing or empty"));
            }
        }

        return faults.Count > before
            ? null
            : new(rule, rows.ToImmutable(), card.Section("Message"), card.Section("Message in steps"), card.Section("Why"), card.Section("Instead"), card.Sections.ToImmutableDictionary(StringComparer.Ordinal)) { Cases = cases };
    }

    // A dash drops the finding, so such a row must name the finding that speaks instead.
    private static ImmutableArray<HazardCase> Cases(string file, CardText card, RuleLists lists, List<PackFault> faults)
    {
        ImmutableArray<HazardCase>.Builder cases = ImmutableArray.CreateBuilder<HazardCase>();
        foreach ((string section, string[] header, string[] cells, int line) in card.Rows)
        {
            if (section != "Other cases" || Check(file, line, Cell(header, cells, "check"), lists, faults) is not { } check)
            {
                continue;
            }

            string instead = Cell(header, cells, "instead");
            if (instead.Length == 0 || (instead == "-" && !check.Terms.Any(term => term.Kind is TermKind.Beside or TermKind.StoppedBy)))
            {
                faults.Add(new(file, line, 1, "the case needs words under \"instead\", or a dash and a term \"beside:\" or \"stopped by:\""));
            }

            cases.Add(new(check, instead == "-" ? string.Empty : instead, Cell(header, cells, "message")));
        }

        return cases.ToImmutable();
    }

    /// <summary>Reads a category card; <see langword="null"/> where a fault was reported.</summary>
    /// <param name="file">Its path in the pack.</param>
    /// <param name="text">Its Markdown.</param>
    /// <param name="lists">The lists that its checks may name.</param>
    /// <param name="faults">Receives what is wrong.</param>
    public static CategoryCard? Category(string file, string text, RuleLists lists, List<PackFault> faults)
    {
        CardText card = CardText.Read(text);
        int before = faults.Count;
        Dictionary<string, string> fields = new(StringComparer.Ordinal);
        List<Gate> gates = [];
        Dictionary<string, List<Check>> sections = new(StringComparer.Ordinal) { ["Applies"] = [], ["Core"] = [], ["Allowed"] = [] };
        foreach ((string section, string[] header, string[] cells, int line) in card.Rows)
        {
            if (section.Length == 0 && cells.Length == 2)
            {
                fields[cells[0]] = cells[1];
            }
            else if (section == "Gates")
            {
                AddGate(file, header, cells, line, lists, gates, faults);
            }
            else if (sections.TryGetValue(section, out List<Check>? list) && Check(file, line, Cell(header, cells, "check"), lists, faults) is { } check)
            {
                list.Add(check);
            }
        }

        foreach (string needed in (ReadOnlySpan<string>)["name", "dish", "method", "rank"])
        {
            if (!fields.ContainsKey(needed))
            {
                faults.Add(new(file, 1, 1, $"the first table must have a row \"{needed}\""));
            }
        }

        return faults.Count > before ? null : Category(Path.GetFileNameWithoutExtension(file), fields, sections, gates);
    }

    private static CategoryCard Category(string id, Dictionary<string, string> fields, Dictionary<string, List<Check>> sections, List<Gate> gates) =>
        new(
            id,
            fields["name"],
            fields["dish"],
            fields["method"],
            Products(fields, "products"),
            int.TryParse(fields["rank"], System.Globalization.CultureInfo.InvariantCulture, out int rank) ? rank : 0,
            fields.GetValueOrDefault("acid", string.Empty),
            fields.GetValueOrDefault("longest time", string.Empty) == "yes",
            [.. sections["Applies"]],
            [.. sections["Core"]],
            [.. sections["Allowed"]],
            [.. gates])
        {
            IsSmooth = fields.GetValueOrDefault("smooth", string.Empty) == "yes",
            SeafoodProducts = Products(fields, "seafood products"),
        };

    private static ImmutableArray<string> Products(Dictionary<string, string> fields, string field) =>
        [.. fields.GetValueOrDefault(field, string.Empty).Split("||", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];

    private static void AddGate(string file, string[] header, string[] cells, int line, RuleLists lists, List<Gate> gates, List<PackFault> faults)
    {
        string word = Cell(header, cells, "level");
        bool refuses = word == "refuse";
        FindingLevel? level = refuses ? FindingLevel.Change : Level(file, line, word, faults);
        if (level is { } found && Check(file, line, Cell(header, cells, "check"), lists, faults) is { } check)
        {
            gates.Add(new(
                Cell(header, cells, "rule"),
                refuses,
                found,
                check,
                Cell(header, cells, "message"),
                Cell(header, cells, "instead"),
                Keys(Cell(header, cells, "source"))));
        }
    }

    private static Check? Check(string file, int line, string text, RuleLists lists, List<PackFault> faults)
    {
        Check? check = CheckParser.Parse(text, line, lists, out string? wrong);
        if (check is null)
        {
            faults.Add(new(file, line, 1, wrong!));
        }

        return check;
    }

    private static FindingLevel? Level(string file, int line, string word, List<PackFault> faults)
    {
        switch (word)
        {
            case "stop": return FindingLevel.Stop;
            case "change": return FindingLevel.Change;
            case "caution": return FindingLevel.Caution;
            case "note": return FindingLevel.Note;
            default:
                faults.Add(new(file, line, 1, $"\"{word}\" is no level; allowed: stop, change, caution, note"));
                return null;
        }
    }

    private static string Cell(string[] header, string[] cells, string column)
    {
        int index = Array.IndexOf(header, column);
        return index >= 0 && index < cells.Length ? cells[index] : string.Empty;
    }

    private static ImmutableArray<string> Keys(string text) =>
        [.. text.Replace("`", string.Empty, StringComparison.Ordinal).Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];
}
