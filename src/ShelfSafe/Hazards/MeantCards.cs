using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using ShelfSafe.Steps;

namespace ShelfSafe.Hazards;

/// <summary>Sorts out the cards that can have nothing to say of a batch, by their signs and without reading them.</summary>
internal static class MeantCards
{
    /// <summary>The places of the cards that may have something to say, in their order.</summary>
    public static IEnumerable<int> Of<T>(CardShelf<T> cards, Batch batch)
        where T : class
    {
        bool[] marks = Marks(cards, batch);
        for (int card = 0; card < cards.Count; card++)
        {
            if (cards.IsMeant(card, marks))
            {
                yield return card;
            }
        }
    }

    private static bool[] Marks<T>(CardShelf<T> cards, Batch batch)
        where T : class
    {
        bool[] marks = new bool[cards.SignCount];
        foreach (BatchItem item in batch.Items)
        {
            if (item.Food is { } food)
            {
                cards.Mark(marks, food);
            }
        }

        foreach (StepFact fact in batch.Facts)
        {
            cards.Mark(marks, CardSign.Step, fact.Id);
        }

        foreach (string kind in batch.Kinds)
        {
            cards.Mark(marks, CardSign.Dish, kind);
        }

        return marks;
    }
}
