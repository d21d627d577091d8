namespace ShelfSafe.Reading;

/// <summary>What a heading announces.</summary>
internal enum HeadingKind
{
    /// <summary>A name: a dish, or a group whose words say nothing more.</summary>
    Name,

    /// <summary>A group of one dish: "For the sauce", "Filling".</summary>
    Group,

    /// <summary>The list of foods.</summary>
    Ingredients,

    /// <summary>"You will need": foods or tools, the content decides.</summary>
    Needs,

    /// <summary>Tools.</summary>
    Equipment,

    /// <summary>Directions.</summary>
    Method,

    /// <summary>Notes, tips, storage, nutrition.</summary>
    Note,

    /// <summary>Another way to make the dish.</summary>
    Variation,

    /// <summary>What is added when the food is eaten.</summary>
    Serving,

    /// <summary>Introduction, timings, servings.</summary>
    Introduction,
}
