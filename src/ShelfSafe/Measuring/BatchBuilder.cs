using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Pack;

namespace ShelfSafe.Measuring;

/// <summary>Makes batch items of ingredients: one a food, each with its presence and what it weighs.</summary>
internal sealed class BatchBuilder(Weigher weigher, Limits limits, ReadTexts texts)
{
    // What an entry of a line weighs hangs on the text of the line alone, and on which of its foods is meant.
    private readonly TextNote<WeighedEntries> _known = texts.Note(static _ => new WeighedEntries());

    private sealed class WeighedEntries
    {
        public ImmutableArray<WeighedEntry> All { get; set; } = [];
    }

    private sealed record WeighedEntry(int Entry, string? Food, Weighing Weighing);

    /// <summary>The items of a dish in reading order.</summary>
    public ImmutableArray<BatchItem> Items(IReadOnlyList<Ingredient> ingredients)
    {
        ImmutableArray<BatchItem>.Builder items = ImmutableArray.CreateBuilder<BatchItem>();
        int line = 0;
        foreach (Ingredient ingredient in ingredients)
        {
            if (ingredient.NotFood)
            {
                continue;
            }

            bool choice = ingredient.Alternatives.Length > 0 || ingredient.Match.Candidates.Length > 1;
            Presence presence = ingredient.AtServing ? Presence.AtServing
                : ingredient.Optional || choice ? Presence.Maybe
                : Presence.In;
            Add(items, ingredient, line, ingredient.Words, ingredient.Match, presence);
            foreach (Alternative alternative in ingredient.Alternatives)
            {
                Add(items, ingredient, line, alternative.Words, alternative.Match, presence);
            }

            line++;
        }

        return items.ToImmutable();
    }

    private void Add(ImmutableArray<BatchItem>.Builder items, Ingredient ingredient, int line, string words, FoodMatch match, Presence presence)
    {
        if (match.Candidates.IsEmpty)
        {
            Weighing unread = Weighed(ingredient, null);
            Interval mass = unread.Grams ?? Interval.Unknown;
            items.Add(new(ingredient, line, words, null, presence, mass, unread.Millilitres ?? mass, Weighed: unread.Grams is not null));
        }

        foreach (FoodRow food in match.Candidates)
        {
            (Interval grams, Interval volume, bool weighed) = Weigh(ingredient, food);
            items.Add(new(
                ingredient,
                line,
                words,
                food,
                presence,
                presence == Presence.Maybe ? grams.OrNothing() : grams,
                presence == Presence.Maybe ? volume.OrNothing() : volume,
                weighed));
        }
    }

    private Weighing Weighed(Ingredient ingredient, FoodRow? food)
    {
        WeighedEntries known = _known.Of(texts.Of(ingredient.Line.Text));
        foreach (WeighedEntry entry in known.All)
        {
            if (entry.Entry == ingredient.Entry && entry.Food == food?.Id)
            {
                return entry.Weighing;
            }
        }

        Weighing weighing = weigher.Weigh(ingredient, food);
        known.All = known.All.Add(new(ingredient.Entry, food?.Id, weighing)); // what two threads add at once may be worked out again
        return weighing;
    }

    private (Interval Grams, Interval Millilitres, bool Weighed) Weigh(Ingredient ingredient, FoodRow food)
    {
        Weighing weighing = Weighed(ingredient, food);
        if (weighing.Grams is { } grams)
        {
            return (grams, weighing.Millilitres ?? grams, true);
        }

        // A seasoning without an amount counts from nothing to the limit of a seasoning; but wine or beer may be all the liquid there is.
        bool drink = food.Group == "alcohol" && !ingredient.ToTaste;
        bool body = food.Group == "vegetable" && !ingredient.ToTaste; // onions without an amount may be pounds of them
        bool seasoning = (food.Bulk == BulkUse.Seasoning && !body) || food.Has("salt") || food.Has("dry-spice") || food.Has("fresh-herb");
        if (ingredient.Amount is null && seasoning && !drink)
        {
            Interval little = new(0, limits["to-taste-grams"]);
            return (little, little, true);
        }

        // Water or broth to cover is as much as it takes: its amount stays unknown, and asks nothing of the cook.
        return (Interval.Unknown, weighing.Millilitres ?? Interval.Unknown, food.Has("water") || food.Has("broth"));
    }
}
