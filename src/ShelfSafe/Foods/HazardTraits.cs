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

    /// <summary>Whether both foods carry one of the traits by which a food of the steps counts.</summary>
    public bool Share(FoodRow food, FoodRow other) => (food.TraitMask & other.TraitMask) != 0 && food.Traits.Any(trait => _fromSteps.Contains(trait) && other.Has(trait));
}
