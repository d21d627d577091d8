namespace ShelfSafe.Pack;

/// <summary>Rows without which the worked examples of the lessons cannot be drawn.</summary>
internal static class LessonNeeds
{
    private static readonly string[] Numbers =
    [
        "food-height-pint", "food-height-quart", "glass-resistance", "inside-film", "steam-film", "air-film", "starch-sets", "start", "canner-start", "come-up",
        "pressure-drop-pint", "pressure-drop-quart", "room", "room-time", "acid-line", "vinegar-acid", "mix-model-error", "water-line", "negligible-share",
        "broth-water", "broth-protein", "broth-fat", "broth-carbohydrate", "broth-fibre", "broth-ash",
        "thick-water", "thick-protein", "thick-fat", "thick-carbohydrate", "thick-fibre", "thick-ash",
        "mix-vinegar", "mix-onion-low", "mix-onion-middle", "mix-onion-high", "aw-dry-low", "aw-dry-high", "aw-jam-low", "aw-jam-high",
    ];

    private static readonly string[] Processes = ["soup-hot-pint-pc", "soup-hot-quart-pc"];

    /// <summary>Adds a fault for each row that is missing.</summary>
    public static void Check(PackTables tables, LessonNumbers numbers, List<PackFault> faults)
    {
        foreach (string id in Numbers.Where(id => !numbers.Has(id)))
        {
            faults.Add(new("lesson-numbers.csv", 1, 1, $"the row \"{id}\" is missing; a lesson is drawn with it"));
        }

        foreach (string id in Processes.Where(id => !tables.Processes.Any(row => row.Id == id && !row.Weighted.IsDefaultOrEmpty && !row.Dial.IsDefaultOrEmpty)))
        {
            faults.Add(new("processes.csv", 1, 1, $"the row \"{id}\" with its gauge pressures is missing; a lesson is drawn with it"));
        }
    }
}
