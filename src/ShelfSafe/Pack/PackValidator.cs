namespace ShelfSafe.Pack;

/// <summary>Checks a pack across its rows: ids, references, ranges.</summary>
internal static class PackValidator
{
    /// <summary>Adds a fault for each thing that is wrong.</summary>
    public static void Check(PackTables tables, List<PackFault> faults)
    {
        Dictionary<string, FoodRow> foods = new(StringComparer.Ordinal);
        FoodRowValidator rows = new();
        foreach (FoodRow food in tables.Foods)
        {
            if (!foods.TryAdd(food.Id, food))
            {
                faults.Add(new("foods.csv", food.Line, 1, $"the id \"{food.Id}\" stands on line {foods[food.Id].Line} already"));
            }

            foreach (FluentValidation.Results.ValidationFailure failure in rows.Validate(food).Errors)
            {
                faults.Add(new("foods.csv", food.Line, 1, failure.ErrorMessage));
            }
        }

        HashSet<(string, string)> aliases = [];
        foreach (AliasRow alias in tables.Aliases)
        {
            if (!foods.ContainsKey(alias.Food))
            {
                faults.Add(new("food-aliases.csv", alias.Line, alias.Alias.Length + 2, $"food \"{alias.Food}\" does not exist; name an id of foods.csv"));
            }

            if (!aliases.Add((alias.Alias, alias.Region)))
            {
                faults.Add(new("food-aliases.csv", alias.Line, 1, $"\"{alias.Alias}\" has a row for this region already; one food an alias and region"));
            }
        }

        CheckSources(tables, faults);
        tables.Lists.Check(tables, faults);
    }

    private static void CheckSources(PackTables tables, List<PackFault> faults)
    {
        HashSet<string> known = new(StringComparer.Ordinal);
        foreach (SourceRow source in tables.Sources)
        {
            if (!known.Add(source.Id))
            {
                faults.Add(new("sources.csv", 1, 1, $"the id \"{source.Id}\" stands twice"));
            }
        }

        foreach (HazardCard card in tables.Hazards)
        {
            foreach (HazardRow row in card.Rows)
            {
                Known($"hazards/{card.Rule}.md", row.Check.Line, row.Sources, known, faults);
            }
        }

        CheckSigns(tables, known, faults);
        tables.Kitchen.CheckSources(known, faults);
        foreach (CategoryCard card in tables.Categories)
        {
            foreach (Gate gate in card.Gates)
            {
                Known($"categories/{card.Id}.md", gate.Check.Line, gate.Sources, known, faults);
            }
        }
    }

    private static void CheckSigns(PackTables tables, HashSet<string> known, List<PackFault> faults)
    {
        if (tables.JarSigns.IsEmpty)
        {
            faults.Add(new(JarSignReader.Folder, 1, 1, "the cards of jars in hand are missing"));
        }

        HashSet<string> words = new(StringComparer.OrdinalIgnoreCase);
        foreach (JarSignCard card in tables.JarSigns)
        {
            string file = $"{JarSignReader.Folder}{card.Id}.md";
            Known(file, 1, card.Sources, known, faults);
            foreach (string word in card.Words.Append(card.Id).Where(word => !words.Add(word)))
            {
                faults.Add(new(file, 1, 1, $"\"{word}\" tells another sign already; each word once"));
            }
        }
    }

    private static void Known(string file, int line, IReadOnlyList<string> keys, HashSet<string> known, List<PackFault> faults)
    {
        if (keys.Count == 0)
        {
            faults.Add(new(file, line, 1, "the row has no source; name a key of sources.csv"));
        }

        foreach (string key in keys)
        {
            if (!known.Contains(key))
            {
                faults.Add(new(file, line, 1, $"source \"{key}\" does not exist in sources.csv"));
            }
        }
    }
}
