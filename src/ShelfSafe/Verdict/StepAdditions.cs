using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using ShelfSafe.Reading;

namespace ShelfSafe.Verdict;

/// <summary>Foods of every kind that a step puts in and no list names: herbs, drinks, pastes, nuts, and signs that stand for foods.</summary>
/// <remarks>
/// Vegetables, fruit and meat, and foods with a hazard, are found in any dish; this looks at the rest, and only before a yes.
/// Dry spices, salt, water, acids, sugars and pectin are left alone: no published process fails by them; treacle and honey are asked. Known gap: broth.
/// </remarks>
internal sealed class StepAdditions(LineWordTable words, ReadTexts texts, RuleLists lists, StepFoods stepFoods)
{
    private const int MeasureReaches = 30;
    private readonly RuleList _left = lists.Of(RuleLists.HarmlessGroups);
    private readonly RuleList _asked = lists.Of(RuleLists.AskedTraits);

    /// <summary>Each such food once, with its place.</summary>
    public IEnumerable<(SourceSpan Span, string Words)> Find(Recipe recipe, RecipePart part, Batch batch, Lazy<HashSet<string>> list)
    {
        HashSet<string> seen = new(StringComparer.Ordinal);
        HashSet<string> known = new(list.Value, StringComparer.Ordinal);
        known.UnionWith(texts.Of(part.Name ?? recipe.Title ?? string.Empty).Singulars);
        foreach (StepSentence sentence in part.Steps)
        {
            string text = sentence.Text.Text;
            if (sentence.Role != StepRole.Step || ServingSteps.Outside(sentence, batch.Facts, StepWater.AllDry(batch.Items)))
            {
                continue;
            }

            ReadText read = texts.Of(text);
            bool listed = false;
            foreach (FoodMention mention in read.Mentions)
            {
                listed |= mention.Words.Split(' ').Any(known.Contains);
                if (IsNew(mention, batch, known) && !stepFoods.IsNoFood(read, mention) && !StepFoods.IsCutAway(read, mention, known) && seen.Add(mention.Words))
                {
                    yield return (sentence.Text.Map(mention.Start, mention.End), text[mention.Start..mention.End]);
                }
            }

            (int Start, int End)? odd = (listed ? null : Sign(text)) ?? Measure(read);
            if (odd is { } place)
            {
                yield return (sentence.Text.Map(place.Start, place.End), text[place.Start..place.End]);
            }
        }
    }

    private bool IsNew(FoodMention mention, Batch batch, HashSet<string> known)
    {
        string[] all = mention.Words.Split(' ');
        return mention.Match.Candidates is { IsEmpty: false } candidates
            && candidates.All(food => !_left.Contains(food.Group) || (!food.Has("thin-liquid") && food.Traits.Any(_asked.Contains)))
            && !known.Contains(all[^1])
            && !words.Is("dish-word", all[^1]) && !words.Is("step-generic", all[^1]) && !words.Is("step-thing", mention.Words) && !words.Is("step-not-food", mention.Words) && !words.Is("line-not-food", mention.Words) && !words.Is("step-verb", mention.Words)
            && !candidates.Any(food => batch.Items.Any(item => item.Food is { } own && (own.Id == food.Id || (own.Group == food.Group && ((own.Process == food.Process && own.Acidity == food.Acidity) || IsHead(all, own))) || (IsHerb(own) && words.Is("step-herb", mention.Words)))));
    }

    // "Add the herbs" stands for the dried thyme of the list too.
    private static bool IsHerb(FoodRow food) => food.Group is "herb-fresh" or "herb-spice-dried";

    // "The starch" is the listed cook-type starch.
    private static bool IsHead(string[] mention, FoodRow own) => mention is [string head] && WordFolding.Words(own.Name) is [.., string last] && head == last;

    // "Finish with a knob", "a glug over the top": a measure of something rich that names nothing.
    private (int Start, int End)? Measure(ReadText read)
    {
        foreach (PlacedWord word in read.Placed)
        {
            if (words.Is("food-measure", word.Plain) && !read.Mentions.Any(mention => mention.Start >= word.End && mention.Start - word.End <= MeasureReaches))
            {
                return (word.Start, word.End);
            }
        }

        return null;
    }

    // A picture sign of a food, where the sentence names no listed food that it could adorn.
    private (int Start, int End)? Sign(string text)
    {
        for (int at = 0; at < text.Length; at++)
        {
            int length = char.IsSurrogatePair(text, at) ? 2 : 1;
            if (text[at] > '\u2000' && words.Is("food-sign", text.AsSpan(at, length)))
            {
                return (at, at + length);
            }

            at += length - 1;
        }

        return null;
    }
}
