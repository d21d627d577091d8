using ShelfSafe.Records;

namespace ShelfSafe.Tests.Records;

/// <summary>Batches of the harvest hall, 410 m above sea level.</summary>
internal static class SampleBatch
{
    public static DateOnly Day { get; } = new(2024, 10, 3);

    public static ProcessUsed Process { get; } = new("pressure", "pint", "hot", 75, "weighted", 15, "strips-cubes-or-chunks-of-meat-hot-pint-pc");

    public static BatchRecord Soup { get; } = new(
        string.Empty, Day, "Vegetable-beef soup, \"half\" and half", "# Soup\r\n\n- 2 lb beef, cubed\n- İnce biber\n", "soup.md", PlainText: false, "us",
        "pressure", "low-acid", "0.1.0", new string('a', 64), Process, 1_345.144, Jars: 7, Sealed: 6, Failed: 1,
        [new(Day.AddDays(30), 2), new(Day.AddDays(60), 1)], Published: true, Boil: true, "=1+1 is no formula here");

    public static BatchRecord Chowder { get; } = Soup with
    {
        Title = "Fish and potato chowder", Outcome = "freeze-or-chill", Process = new(null, null, null, null, null, null), AltitudeFeet = null,
        Sealed = null, Failed = null, Takings = [], Published = false, Notes = string.Empty, Jars = 3,
    };
}
