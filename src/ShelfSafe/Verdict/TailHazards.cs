using System.Collections.Immutable;
using ShelfSafe.Foods;
using ShelfSafe.Measuring;
using ShelfSafe.Reading;

namespace ShelfSafe.Verdict;

/// <summary>Foods with a hazard that only the tail of an ingredient line names: "2 lb stew beef, dredged in flour".</summary>
/// <param name="isNoFood">Whether a word for a food is a verb or a tool at its place, or is named to be left out.</param>
internal sealed class TailHazards(FoodCatalogue catalogue, LineWordTable words, ReadTexts texts, Func<ReadText, FoodMention, bool> isNoFood)
{
    private readonly Denials _denials = new(words);

    /// <summary>Each such food with its line, unless the line leaves it out, keeps it for the table, or the list has it anyway.</summary>
    /// <param name="part">The dish.</param>
    /// <param name="listed">Its foods as read from the list.</param>
    public IEnumerable<(IngredientLine Line, FoodMention Mention)> Find(RecipePart part, ImmutableArray<BatchItem> listed)
    {
        foreach (IngredientLine line in part.Ingredients)
        {
            ReadText read = texts.Of(line.Text.Text);
            FoodMention[] hazards = [.. read.Mentions.Where(mention => IsHazard(read, mention))];
            BatchItem[] own = hazards.Length == 0 || read.Has("serve-later") ? [] : [.. listed.Where(item => ReferenceEquals(item.Ingredient.Line, line))];
            if (own.Length == 0 || own.Any(static item => !item.InJar || item.Food is null))
            {
                continue;
            }

            HashSet<string> named = [.. own.SelectMany(item => WordFolding.Words(item.Words + " " + item.Ingredient.Food + " " + item.Food!.Name)).Select(WordFolding.Singular)];
            foreach (FoodMention mention in hazards)
            {
                if (!named.Contains(WordFolding.Singular(mention.Words[(mention.Words.LastIndexOf(' ') + 1)..]))
                    && !_denials.LeavesOut(read.Before(mention.Start))
                    && read.Before(mention.Start) is not [.., "for"] and not [.., "for", "the" or "a" or "an"] // "garlic for aioli"
                    && !listed.Any(item => item.Food is { } food && mention.Match.Candidates.Any(other => other.Id == food.Id || catalogue.Traits.Covers(food.Has, other))))
                {
                    yield return (line, mention);
                }
            }
        }
    }

    private bool IsHazard(ReadText read, FoodMention mention) =>
        mention.Match is Identified { Food: { } food } && catalogue.Traits.CountsFromSteps(food) && !words.Is("step-not-food", mention.Words) && !isNoFood(read, mention);
}
