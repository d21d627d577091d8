using ShelfSafe.Changes;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Tests.Samples;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Changes;

/// <summary>The harvest hall's kitchen, its vetter and its sample recipes.</summary>
internal static class WorkFixture
{
    public static RecipeVetter Vetter { get; } = BuiltIn.Vetter;

    public static RecipeComparer Comparer { get; } = RecipeComparer.Create(RulePack.Default);

    public static RecipeAdapter Adapter { get; } = RecipeAdapter.Create(Vetter, RulePack.Default);

    public static Kitchen Hall { get; } = new(AltitudeFeet: 410 / 0.3048, Gauge: "weighted");

    public static IEnumerable<string> SampleNames => SampleFolder.Names;

    public static string Sample(string name) => File.ReadAllText(SampleFolder.Of(name));

    /// <summary>A report for pint jars, which a run sheet needs.</summary>
    public static VettingReport VetPints(string text) => Vetter.Vet(text, Hall with { Jar = "pint" });

    public static VettingReport Vet(string text) => Vetter.Vet(text, Hall);

    public static RecipeComparison Compare(string before, string after) => Comparer.Compare(Vet(before), Vet(after));

    /// <summary>The jar version of a recipe, which must be one: vetted again it is covered as written by rows that the first report named.</summary>
    public static Adaptation Jar(string recipe)
    {
        Adaptation done = Adapter.Adapt(recipe, Hall);
        Assert.True(done.Kind == AdaptationKind.Jar, string.Join(" | ", done.Questions.Concat(done.Reasons).Select(note => $"{note.What}: {note.Text}")));
        VettingReport again = Vet(done.Recipe);
        Assert.Equal(Outcome.Pressure, again.Outcome);
        Assert.NotEmpty(again.Process);
        Assert.Subset(done.Before.ProcessAfterChanges.Select(line => line.RowId).ToHashSet(), again.Process.Select(line => line.RowId).ToHashSet());
        return done;
    }
}
