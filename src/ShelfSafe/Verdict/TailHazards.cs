using System.Collections.Immutable;
using ShelfSafe.Foods;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using ShelfSafe.Reading;

namespace ShelfSafe.Verdict;

/// <summary>Foods with a hazard that only the tail of an ingredient line names: "2 lb stew beef, dredged in flour".</summary>
internal sealed class TailHazards
{
    private readonly FoodCatalogue _catalogue;
    private readonly ReadTexts _texts;
    private readonly Denials _denials;
    private readonly TextNote<FoodMention[]> _hazards;

    /// <summary>Prepares the note that it takes of lines.</summary>
    /// <param name="catalogue">All foods.</param>
    /// <param name="words">Word lists.</param>
    /// <param name="texts">Lines that were looked at.</param>
    /// <param name="isNoFood">Whether a word for a food is a verb or a tool at its place, or is named to be left out.</param>
    public TailHazards(FoodCatalogue catalogue, LineWordTable words, ReadTexts texts, Func<ReadText, FoodMention, bool> isNoFood)
    {
        (_catalogue, _texts, _denials) = (catalogue, texts, new(words));
        _hazards = texts.Note(text => Array.FindAll(text.Mentions, mention =>
            mention.Match is Identified { Food: { } food } && catalogue.Traits.CountsFromSteps(food) && !words.Is("step-not-food", mention.Words) && !words.Is("kind-alone", mention.Words) && !isNoFood(text, mention)));
    }

    /// <summary>Each such food with its line, unless the line leaves it out, keeps it for the table, or the list has it anyway.</summary>
    /// <param name="part">The dish.</param>
    /// <param name="listed">Its foods as read from the list.</param>
    public IEnumerable<(IngredientLine Line, FoodMention Mention)> Find(RecipePart part, ImmutableArray<BatchItem> listed)
    {
        foreach (IngredientLine line in part.Ingredients)
        {
            ReadText read = _texts.Of(line.Text);
            FoodMention[] hazards = Array.FindAll(_hazards.Of(read), mention => !IsListed(mention, listed)); // most lines name what they list
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
                    && read.Before(mention.Start) is not [.., "for"] and not [.., "for", "the" or "a" or "an"]) // "garlic for aioli"
                {
                    yield return (line, mention);
                }
            }
        }
    }

    private bool IsListed(FoodMention mention, ImmutableArray<BatchItem> listed)
    {
        ImmutableArray<FoodRow> foods = mention.Match.Candidates;
        return Any(static (own, food) => own.Id == food.Id) || Any((own, food) => _catalogue.Traits.Covers(own.Has, food)); // most are listed by name

        bool Any(Func<FoodRow, FoodRow, bool> holds)
        {
            foreach (BatchItem item in listed)
            {
                foreach (FoodRow food in item.Food is null ? [] : foods)
                {
                    if (holds(item.Food!, food))
                    {
                        return true;
                    }
                }
            }

            return false;
        }
    }
}
