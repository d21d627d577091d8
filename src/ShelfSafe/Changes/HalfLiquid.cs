using ShelfSafe.Core;
using ShelfSafe.Verdict;

namespace ShelfSafe.Changes;

/// <summary>Finds how much liquid brings a soup's jars to half liquid. Source of the half: the gate of <c>rules/categories/soup.md</c>.</summary>
internal sealed class HalfLiquid(RecipeVetter vetter, Kitchen kitchen)
{
    private const double StepMillilitres = 250;
    private const int SpareSteps = 4; // as much liquid as the whole batch, and a litre, is always enough

    /// <summary>Adds the least liquid, in quarter litres, with which the jars are half liquid: the dish's own where nothing speaks against it, else water.</summary>
    /// <param name="editor">The draft, which gets the liquid.</param>
    /// <param name="current">Its report so far.</param>
    /// <returns>The report with the liquid, or <paramref name="current"/> where none is lacking or the batch has no bounded volume.</returns>
    public VettingReport Reach(DraftEditor editor, VettingReport current)
    {
        if (!IsTooThick(current) || current.Measures.TotalMillilitres is not { IsBounded: true } total)
        {
            return current;
        }

        VettingReport thin = current;
        foreach (string liquid in editor.Liquids)
        {
            thin = With(editor, liquid, (int)Math.Ceiling(total.High / StepMillilitres) + SpareSteps);
            if (!IsTooThick(thin) && AdaptPromise.Counting(thin).IsSubsetOf(AdaptPromise.Counting(current)))
            {
                break;
            }
        }

        return thin;
    }

    private VettingReport With(DraftEditor editor, string liquid, int most)
    {
        int low = 0;
        int high = most;
        while (high - low > 1)
        {
            int middle = (low + high) / 2;
            editor.Added.SetLiquid(middle, liquid);
            (low, high) = IsTooThick(vetter.Vet(editor.Draft.Print(), kitchen)) ? (middle, high) : (low, middle);
        }

        editor.Added.SetLiquid(high, liquid);
        return vetter.Vet(editor.Draft.Print(), kitchen);
    }

    private static bool IsTooThick(VettingReport report) =>
        report.Category is { Id: "soup" } soup && soup.Differences.Any(row => row.What == "solids share" && !row.Allowed);
}
