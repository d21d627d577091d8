using ShelfSafe.Pack;

namespace ShelfSafe.Foods;

/// <summary>Traits of the food table that reading must not lose.</summary>
internal sealed class HazardTraits(RuleLists lists)
{
    private readonly RuleList _kept = lists.Of(RuleLists.KeptTraits);
    private readonly RuleList _fromSteps = lists.Of(RuleLists.StepTraits);

    /// <summary>Whether a food brings a hazard that a spelling or a modifier may not take away, and that the head of its phrase cannot have.</summary>
    public bool Brings(FoodRow modifier, FoodMatch head) => modifier.Traits.Any(trait => _kept.Contains(trait) && !head.MayHave(trait));

    /// <summary>Whether a food of the steps counts though no list names it.</summary>
    public bool CountsFromSteps(FoodRow food) => food.Traits.Any(_fromSteps.Contains);

    /// <summary>Whether a food of the steps counts by more than being fat.</summary>
    public bool CountsBeyondFat(FoodRow food) => food.Traits.Any(trait => trait != "fat" && _fromSteps.Contains(trait));

    /// <summary>Whether the list brings every hazard by which a food of the steps counts: oil does not stand for cream.</summary>
    /// <param name="listed">Whether the list has a trait.</param>
    /// <param name="named">The food of the steps, the title or a note.</param>
    public bool Covers(Func<string, bool> listed, FoodRow named)
    {
        bool counts = false;
        foreach (string trait in named.Traits)
        {
            if (_fromSteps.Contains(trait))
            {
                counts = true;
                if (!listed(trait))
                {
                    return false;
                }
            }
        }

        return counts;
    }
}
