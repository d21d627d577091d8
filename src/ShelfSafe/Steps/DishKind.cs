namespace ShelfSafe.Steps;

/// <summary>What kind of dish a recipe is: a chili, a salsa, a cake.</summary>
/// <param name="Id">Kind, a word of <c>rules/dish-kinds.csv</c>.</param>
/// <param name="NotAJar"><c>yes</c> where dishes of the kind are baked, fried or served fresh, <c>freeze</c> where they are for the freezer or refrigerator, else <c>no</c>.</param>
/// <param name="Evidence">The title or heading words that tell it, or the foods and step facts.</param>
/// <param name="FromTitle">Whether the title tells it; title words decide before foods do.</param>
public sealed record DishKind(string Id, string NotAJar, string Evidence, bool FromTitle);
