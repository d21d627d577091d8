using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Tests;

/// <summary>The vetter of the built-in pack, made once for all tests: what it keeps of one recipe changes no other (<c>ManyRecipesTests</c>).</summary>
internal static class BuiltIn
{
    public static RecipeVetter Vetter { get; } = RecipeVetter.Create(RulePack.Default);
}
