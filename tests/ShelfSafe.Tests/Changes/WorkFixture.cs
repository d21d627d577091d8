using ShelfSafe.Changes;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Tests.Changes;

/// <summary>The harvest hall's kitchen, its vetter and its sample recipes.</summary>
internal static class WorkFixture
{
    public static RecipeVetter Vetter { get; } = BuiltIn.Vetter;

    public static RecipeComparer Comparer { get; } = RecipeComparer.Create(RulePack.Default);

    public static RecipeAdapter Adapter { get; } = RecipeAdapter.Create(Vetter, RulePack.Default);

    public static Kitchen Hall { get; } = new(AltitudeFeet: 410 / 0.3048, Gauge: "weighted");

    public static IEnumerable<string> SampleNames => Directory.GetFiles(Folder(), "*.md").Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal);

    public static string Sample(string name) => File.ReadAllText(Path.Combine(Folder(), name));

    /// <summary>A report for pint jars, which a run sheet needs.</summary>
    public static VettingReport VetPints(string text) => Vetter.Vet(text, Hall with { Jar = "pint" });

    public static VettingReport Vet(string text) => Vetter.Vet(text, Hall);

    public static RecipeComparison Compare(string before, string after) => Comparer.Compare(Vet(before), Vet(after));

    private static string Folder()
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            string folder = Path.Combine(at.FullName, "sample-recipes");
            if (Directory.Exists(folder) && File.Exists(Path.Combine(at.FullName, "ShelfSafe.sln")))
            {
                return folder;
            }
        }

        throw new DirectoryNotFoundException("sample-recipes does not stand above the test program");
    }
}
