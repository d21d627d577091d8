using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Verdict;

namespace ShelfSafe.Tests.Reports;

/// <summary>A report made by hand, so that the writers are tested without the machinery.</summary>
internal static class SampleReport
{
    public const string Source = "Book of the island, page 7";

    public static readonly SourceReference Book = new("island-book", "Book of the island", "page 7", "https://example.org/book");

    public static VettingReport Of(Outcome outcome, params Finding[] findings) => new(
        "Stew of the hall",
        Acidity.LowAcid,
        outcome,
        new("soup", "Soups", "category", [new("solids share", "share", new(0.7, 0.725), new(0, 0.5), Allowed: false)]),
        ["It holds low-acid food."],
        [.. findings],
        [Ingredient(12, "3 tbsp flour", "flour", "wheat-flour")],
        new(new(0.7, 0.75), new(0.06, 0.08), null, null, null, new(3_900, double.PositiveInfinity), new("pint", new(8, 9), new(1, 2), new(0, 400), 1)),
        [],
        outcome is Outcome.Pressure or Outcome.BoilingWater ? [Process(outcome)] : [],
        outcome is Outcome.PressureAfterChanges or Outcome.BoilingWaterAfterChanges ? [Process(outcome)] : [],
        [],
        [],
        new("1.2", "2026-11-01", "0123456789abcdef"),
        new(AltitudeFeet: 1_345, Gauge: "weighted"));

    public static Finding Finding(FindingLevel level, string rule, string? ingredient, params int[] lines) => new(
        rule,
        level,
        ingredient,
        [.. lines.Select(line => new Place(line, 3, line, 24))],
        $"\"{ingredient}\" thickens the stew.",
        "Thick food heats more slowly.",
        "Leave it out.",
        [Book]);

    public static IngredientReport Ingredient(int line, string text, string food, string? foodId) => new(
        line,
        text,
        new(Interval.Exactly(3), "tbsp"),
        [new(Interval.Exactly(3), "tbsp")],
        null,
        food,
        foodId,
        null,
        Optional: false,
        ToTaste: false,
        [],
        null,
        new(24, 25.123),
        ["thickener", "starchy"],
        foodId is not null,
        OnTheCooksWord: false,
        null);

    public static ProcessLine Process(Outcome outcome)
    {
        bool pressure = outcome is Outcome.Pressure or Outcome.PressureAfterChanges;
        return new(
            "row-1",
            "Soup",
            pressure ? "pressure" : "boiling-water",
            "pint",
            "hot",
            75,
            pressure ? "dial" : null,
            pressure ? 11 : null,
            new(0, 2_000),
            1,
            null,
            string.Empty,
            Source,
            null,
            []);
    }

    public static ImmutableArray<Outcome> All { get; } = [.. Enum.GetValues<Outcome>()];
}
