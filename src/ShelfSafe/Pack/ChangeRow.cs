using System.Collections.Immutable;

namespace ShelfSafe.Pack;

/// <summary>What a kitchen change means (<c>rules/changes.csv</c>); the first row that fits a change is used.</summary>
/// <param name="Kinds">Kinds of change it speaks of: <c>swapped</c>, <c>raised</c>, <c>cut</c>, <c>added</c>, <c>left-out</c>, <c>label</c>, <c>into-jar</c>, <c>to-serving</c>.</param>
/// <param name="Foods">Tests on the food, any of which is enough: <c>group x</c>, <c>trait x</c>, <c>acidity x</c>, <c>food x</c>, <c>any</c>. Of a swap both foods must pass.</param>
/// <param name="When">Acidity classes of the changed recipe in which it holds; empty for all.</param>
/// <param name="Unless">Rule ids, or <c>formula</c>, that cancel the row where either report has them.</param>
/// <param name="Matters">Whether it matters for the jar.</param>
/// <param name="Text">What it means, in plain words.</param>
/// <param name="Instead">What to do; empty where nothing needs to be done.</param>
/// <param name="Sources">Keys of <c>rules/sources.csv</c>.</param>
public sealed record ChangeRow(
    string Id,
    ImmutableArray<string> Kinds,
    ImmutableArray<string> Foods,
    ImmutableArray<string> When,
    ImmutableArray<string> Unless,
    bool Matters,
    string Text,
    string Instead,
    ImmutableArray<string> Sources)
{
    /// <summary>Whether a food passes one of the tests; an unread food passes <c>any</c> alone.</summary>
    public bool Takes(FoodRow? food)
    {
        foreach (string test in Foods)
        {
            if (test == "any" || (food is not null && Passes(test, food)))
            {
                return true;
            }
        }

        return false;
    }

    private static bool Passes(string test, FoodRow food)
    {
        int blank = test.IndexOf(' ', StringComparison.Ordinal);
        string value = test[(blank + 1)..];
        return test[..Math.Max(blank, 0)] switch
        {
            "group" => food.Group == value,
            "trait" => food.Has(value),
            "food" => food.Id == value,
            "acidity" => value == AcidityWord(food.Acidity),
            _ => false,
        };
    }

    private static string AcidityWord(FoodAcidity acidity) => acidity switch
    {
        FoodAcidity.Acid => "acid",
        FoodAcidity.Borderline => "borderline",
        FoodAcidity.LowAcid => "low-acid",
        FoodAcidity.Dry => "dry",
    };
}
