using System.Collections.Immutable;

namespace ShelfSafe.Pack;

/// <summary>The lesson cards and the numbers of their worked examples; no verdict reads them.</summary>
internal sealed record LessonTables(ImmutableArray<LessonCard> Cards, LessonNumbers Numbers)
{
    private const string Folder = "lessons/";

    /// <summary>Reads the cards and numbers; what is wrong is added to the faults and left out.</summary>
    public static LessonTables Read(PackFiles files, List<PackFault> faults)
    {
        List<LessonCard> cards = [];
        foreach (string name in files.CardsOf(Folder))
        {
            if (LessonReader.Read(name, files.Card(name), faults) is { } card)
            {
                cards.Add(card);
            }
        }

        return new([.. cards], LessonNumbers.Read(files["lesson-numbers.csv"], faults));
    }

    /// <summary>Checks the lessons against the rest of the pack: sources, further lessons, words that two lessons claim, pictures of hazard cards.</summary>
    public void Check(PackTables tables, List<PackFault> faults)
    {
        HashSet<string> sources = [.. tables.Sources.Select(source => source.Id)];
        HashSet<string> known = [.. Cards.Select(card => card.Id), .. tables.Hazards.Select(card => card.Rule)];
        HashSet<string> names = new(StringComparer.OrdinalIgnoreCase);
        foreach (LessonCard card in Cards)
        {
            string file = $"{Folder}{card.Id}.md";
            Report(card.Sources.Where(key => !sources.Contains(key)), file, "source \"{0}\" does not exist in sources.csv", faults);
            Report(card.See.Where(topic => !known.Contains(topic)), file, "\"{0}\" is neither a lesson nor a rule", faults);
            Report(card.Names.Append(card.Id).Where(name => !names.Add(name)), file, "the name \"{0}\" belongs to another lesson already", faults);
        }

        LessonNeeds.Check(tables, Numbers, faults);
        foreach (HazardCard card in tables.Hazards)
        {
            if (LessonReader.Picture(card.Sections.GetValueOrDefault("Picture", string.Empty)) is null)
            {
                faults.Add(new($"hazards/{card.Rule}.md", 1, 1, "the section \"## Picture\" names no known picture"));
            }
        }
    }

    private static void Report(IEnumerable<string> wrong, string file, string message, List<PackFault> faults)
    {
        foreach (string word in wrong)
        {
            faults.Add(new(file, 1, 1, message.Replace("{0}", word, StringComparison.Ordinal)));
        }
    }
}
