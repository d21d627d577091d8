namespace ShelfSafe.Pack;

/// <summary>The closed set of terms that a card's check may use. Item terms look at one ingredient, recipe terms at the whole.</summary>
public enum TermKind
{
    /// <summary>Item: the food carries one of the traits.</summary>
    Trait,

    /// <summary>Item: the food is one of the ids.</summary>
    Food,

    /// <summary>Item: the food is of one of the groups.</summary>
    Group,

    /// <summary>Item: the food's acidity class; an unread food is low-acid.</summary>
    Acidity,

    /// <summary>Item: the first word of the food's process column; an unread food has none.</summary>
    Process,

    /// <summary>Item: the food's bulk column; an unread food has none.</summary>
    Bulk,

    /// <summary>Item: upper end of its grams (or millilitres) above the threshold; unknown counts as above.</summary>
    AmountAbove,

    /// <summary>Item: upper end of its share of the batch above the threshold; unknown counts as above.</summary>
    ShareAbove,

    /// <summary>Item: the ingredient line has one of the words.</summary>
    LineHas,

    /// <summary>Item: no food of the table was recognised.</summary>
    Unidentified,

    /// <summary>Item: it could not be weighed.</summary>
    Unmeasured,

    /// <summary>Item: the recipe says it may be left out.</summary>
    Optional,

    /// <summary>Item: the amount is left to taste.</summary>
    ToTaste,

    /// <summary>Item: it is above its own seasoning limit of the food table, or has none.</summary>
    AboveSeasoning,

    /// <summary>Recipe: the steps say one of the facts.</summary>
    Step,

    /// <summary>Recipe: the dish is of one of the kinds.</summary>
    Dish,

    /// <summary>Recipe: some item carries one of the traits.</summary>
    BatchHasTrait,

    /// <summary>Recipe: some item is one of the foods.</summary>
    BatchHasFood,

    /// <summary>Recipe: some item is of one of the groups.</summary>
    BatchHasGroup,

    /// <summary>Recipe: more foods of one of the groups than the threshold have a published process of their own, each process counted once.</summary>
    BatchFoodsAbove,

    /// <summary>Recipe: upper share of all items with the trait above the threshold.</summary>
    BatchShareOfTrait,

    /// <summary>Recipe: upper share of all items of the acidity class above the threshold.</summary>
    BatchShareOfAcidity,

    /// <summary>Recipe: upper share of all items with the bulk word above the threshold.</summary>
    BatchShareOfBulk,

    /// <summary>Recipe: lower share of all items with the trait below the threshold.</summary>
    BatchShareBelow,

    /// <summary>Recipe: acidity class of the batch.</summary>
    BatchAcidity,

    /// <summary>Recipe: upper share of drained solids above the threshold; unknown counts as above.</summary>
    SolidsShareAbove,

    /// <summary>Recipe: even the lower share of drained solids is above the threshold.</summary>
    LeastSolidsShareAbove,

    /// <summary>Recipe: upper share of fat above the threshold.</summary>
    FatShareAbove,

    /// <summary>Recipe: there are no steps.</summary>
    NoSteps,

    /// <summary>Recipe: a pH printed in it is above the threshold.</summary>
    PrintedPhAbove,

    /// <summary>Recipe: a processing time is printed in it.</summary>
    PrintedTime,

    /// <summary>Recipe: a jar larger than the named one is printed in it.</summary>
    PrintedJarAbove,

    /// <summary>Recipe: the published acid of a plain tomato pack is not put into each jar, or not in full.</summary>
    JarAcidLacking,

    /// <summary>Other cases of a card alone: the outcome of the dish.</summary>
    Outcome,

    /// <summary>Other cases of a card alone: another finding about the same ingredient has one of the rules.</summary>
    Beside,

    /// <summary>Other cases of a card alone: one of the rules stops the dish.</summary>
    StoppedBy,

    /// <summary>Never by itself: the program raises the finding and takes level and words from the card.</summary>
    ByProgram,

    /// <summary>Always.</summary>
    Always,
}
