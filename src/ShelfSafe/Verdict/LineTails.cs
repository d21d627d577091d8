using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using ShelfSafe.Reading;
using ShelfSafe.Reading.Amounts;

namespace ShelfSafe.Verdict;

/// <summary>What an ingredient line says behind or around its food: other foods, and states that change the food.</summary>
internal sealed class LineTails(FoodCatalogue catalogue, LineWordTable words, ReadTexts texts, RuleLists lists)
{
    private readonly RuleList _plain = lists.Of(RuleLists.PlainGroups);
    private readonly Denials _denials = new(words);

    /// <summary>Foods that the line names beside those that were read from it.</summary>
    public IEnumerable<(SourceSpan Span, string Words)> OtherFoods(IngredientLine line, Batch batch)
    {
        string text = line.Text.Text;
        List<BatchItem> own = Own(line, batch);
        if (own.Count == 0 || own.All(item => !item.InJar))
        {
            yield break;
        }

        ReadText read = texts.Of(text);
        HashSet<string>? named = null;
        foreach (FoodMention mention in read.Mentions)
        {
            if (mention.Match.Candidates.Any(food => own.Any(item => item.Food?.Id == food.Id || Kin(item, food)))
                || IsRead(mention, named ??= Named(own))
                || words.Is("step-not-food", mention.Words) || words.Is("step-verb", mention.Words) || words.Is("line-not-food", mention.Words)
                || mention.Match.Candidates.All(food => food.Acidity == FoodAcidity.Dry && !catalogue.Traits.CountsFromSteps(food))
                || Tool(text, mention.End) || _denials.LeavesOut(read.Before(mention.Start)))
            {
                continue;
            }

            yield return (line.Text.Map(mention.Start, mention.End), text[mention.Start..mention.End]);
        }
    }

    // "White sauce" behind white potatoes is another food: a hazard is known by its last word. Fat of a listed animal is its own.
    private bool IsRead(FoodMention mention, HashSet<string> read)
    {
        string[] all = mention.Words.Split(' ');
        return (mention.Match.Candidates.Any(catalogue.Traits.CountsBeyondFat) ? all[^1..] : all).Any(read.Contains);
    }

    /// <summary>A word that says the food was prepared in a way for which no process was set.</summary>
    /// <param name="line">The line.</param>
    /// <param name="batch">The dish.</param>
    /// <param name="plain">Whether a plain pack leads: then every such state counts, else only what no tested recipe holds ("battered").</param>
    public (SourceSpan Span, string Words)? Prepared(IngredientLine line, Batch batch, bool plain)
    {
        string text = line.Text.Text;
        List<BatchItem> own = Own(line, batch);
        if (!own.Any(item => item.InJar && item.Food is { } food && (_plain.Contains(food.Group) || food.Group == "legume-dried")))
        {
            return null;
        }

        bool dried = own.All(item => item.Food is { Group: "legume-dried" });
        HashSet<string> named = [.. own.Where(item => item.Food is not null).SelectMany(item => WordFolding.Words(item.Food!.Name))];
        ReadText read = texts.Of(text);
        string before = string.Empty;
        foreach (PlacedWord word in read.Placed)
        {
            bool cut = word.Plain == "roast" && words.Is("roast-cut", before); // a chuck roast is raw
            before = word.Plain;
            bool state = words.Is("line-state-any", word.Plain) || (plain && !dried && words.Is("line-state", word.Plain));
            if (state && !cut && !named.Contains(word.Plain) && !_denials.LeavesOut(read.Before(word.Start)))
            {
                return (line.Text.Map(word.Start, word.End), text[word.Start..word.End]);
            }
        }

        return null;
    }

    /// <summary>A word by which the line takes its own amount or food back: "(we use 3/4)", "but half will do".</summary>
    public (SourceSpan Span, string Words)? Doubt(IngredientLine line, Batch batch)
    {
        string text = line.Text.Text;
        if (!Own(line, batch).Any(item => item.InJar))
        {
            return null;
        }

        IReadOnlyList<PlacedWord> all = texts.Of(text).Placed;
        for (int i = 1; i < all.Count; i++)
        {
            string next = i + 1 < all.Count ? all[i + 1].Plain : string.Empty;
            if (words.Is("line-doubt", all[i].Plain) && !words.Is("line-doubt-not", next))
            {
                return (line.Text.Map(all[i].Start, all[i].End), text[all[i].Start..all[i].End]);
            }
        }

        return null;
    }

    /// <summary>Two amounts of one kind side by side: columns for several batches, of which one cannot be told.</summary>
    public (SourceSpan Span, string Words)? SecondAmount(IngredientLine line)
    {
        string text = line.Text.Text;
        (int Start, int End, bool Volume)? before = null;
        foreach (PrintedNumber number in NumberWalk.In(text))
        {
            if (words.Unit(text, number.Next(text), out int unitEnd) is { } unit && StepMeasures.Plain(number.Value, unit) is { } plain)
            {
                if (before is { } first && first.Volume == plain.Volume && text.AsSpan(first.End, number.Start - first.End).IsWhiteSpace())
                {
                    return (line.Text.Map(first.Start, unitEnd), text[first.Start..unitEnd]);
                }

                before = (number.Start, unitEnd, plain.Volume);
            }
        }

        return null;
    }

    // Words of the foods that were read from a line.
    private static HashSet<string> Named(List<BatchItem> own) =>
        [.. own.SelectMany(item => WordFolding.Words(item.Ingredient.Food + " " + item.Food?.Name + " " + string.Join(' ', item.Ingredient.Alternatives.Select(other => other.Food + " " + other.Words))).Select(WordFolding.Singular))];

    private static List<BatchItem> Own(IngredientLine line, Batch batch) =>
        [.. batch.Items.Where(item => ReferenceEquals(item.Ingredient.Line, line))];

    // Beef and beef broth, tomato and tomato juice: the words of one food within another.
    private static bool Kin(BatchItem item, FoodRow food) => item.Food is { } own && own.Group == food.Group && own.Process == food.Process && own.Acidity == food.Acidity && own.Group != "acid";

    private bool Tool(string text, int end)
    {
        string after = text[end..].TrimStart();
        string next = new([.. after.TakeWhile(char.IsLetter)]);
        return next.Length > 0 && (words.Is("step-tool", next.ToLowerInvariant()) || words.Is("equipment", next.ToLowerInvariant()));
    }
}
