using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using ShelfSafe.Reading;
using ShelfSafe.Reading.Amounts;

namespace ShelfSafe.Verdict;

/// <summary>Words and amounts by which less acid may go into the jar than the list says: "half the lemon juice", "let down with water".</summary>
/// <remarks>A yes that rests on acid rests on the whole listed amount, so any doubt about it is asked.</remarks>
internal sealed class AcidWords(LineWordTable words, ReadTexts texts, StepMeasures measures, Limits limits, RuleLists lists, JarAcid jarAcid)
{
    private const int Near = 40;
    private readonly Denials _denials = new(words);
    private readonly RuleList _ofLine = lists.Of(RuleLists.AcidLineDoubt);

    /// <summary>Places of doubt, at most one for each sentence or line.</summary>
    /// <param name="part">The dish.</param>
    /// <param name="batch">Its batch.</param>
    /// <param name="formula">Whether a published recipe is matched: then water that tops the jars up makes its acid weaker.</param>
    public IEnumerable<(SourceSpan Span, string Words)> Find(RecipePart part, Batch batch, bool formula)
    {
        foreach (IngredientLine line in part.Ingredients)
        {
            bool acid = batch.Items.Any(item => ReferenceEquals(item.Ingredient.Line, line) && item.InJar && IsAcid(item.Food));
            if (acid && (Doubt(line.Text.Text) ?? Weak(line.Text.Text) ?? OfLine(line)) is { } doubt)
            {
                yield return (line.Text.Map(doubt.Start, doubt.End), line.Text.Text[doubt.Start..doubt.End]);
            }
        }

        if (!batch.InJar.Any(item => IsAcid(item.Food)))
        {
            yield break;
        }

        ServingSteps serving = new(batch.Facts);
        foreach (StepSentence sentence in part.Steps)
        {
            string text = sentence.Text.Text;
            ReadText read = texts.Of(sentence.Text);
            FoodMention[] mentions = serving.Outside(sentence) ? [] : read.Mentions;
            if (mentions.FirstOrDefault(mention => mention.Match.Candidates.Any(IsAcid)) is { } acid && (Doubt(text, acid.Start, acid.End) ?? Weak(text) ?? Weaker(mentions, batch)) is { } doubt)
            {
                yield return (sentence.Text.Map(doubt.Start, doubt.End), text[doubt.Start..doubt.End]);
            }
            else if (formula && mentions.FirstOrDefault(mention => mention.Match.Candidates.Any(food => food.Has("water"))) is { } water && TopsUp(read.Before(water.Start)))
            {
                yield return (sentence.Text.Map(water.Start, water.End), text[water.Start..water.End]);
            }
        }

        if (TooLittle(part, batch) is { } less)
        {
            yield return less;
        }
    }

    // "Watered-down vinegar", "bottled or fresh", "minus a cup": words that in the acid's own line make it less or another.
    private (int Start, int End)? OfLine(IngredientLine line)
    {
        foreach (PlacedWord word in texts.Of(line.Text).Placed)
        {
            if (_ofLine.Contains(word.Plain))
            {
                return (word.Start, word.End);
            }
        }

        return null;
    }

    // The measured acid of all steps together, where each names an amount, against that of the list.
    private (SourceSpan, string)? TooLittle(RecipePart part, Batch batch)
    {
        double listed = batch.InJar.Where(item => IsAcid(item.Food) && item.Ingredient.Amount is not null)
            .Sum(item => StepMeasures.Plain(item.Ingredient.Amount!.Value, item.Ingredient.Amount.Unit) is { Volume: true } plain ? plain.Low : 0);
        double used = 0;
        (SourceSpan, string)? last = null;
        ServingSteps serving = new(batch.Facts);
        foreach (StepSentence sentence in part.Steps)
        {
            string text = sentence.Text.Text;
            ReadText read = texts.Of(sentence.Text);
            bool each = read.Has("jar-word") || read.Has("jar-size") || read.Folded.Any(word => word is "each" or "per");
            foreach ((Interval value, string unit, FoodMention mention) in serving.Outside(sentence) ? [] : measures.Of(read))
            {
                // What a row of the jar acids prints for a pint, and twice that for a quart.
                double pints = text.Contains("quart", StringComparison.OrdinalIgnoreCase) && !text.Contains("pint", StringComparison.OrdinalIgnoreCase) ? 2 : 1;
                if (each && mention.Match.Candidates.Any(IsAcid) && StepMeasures.Plain(value, unit) is { Volume: true } jar
                    && jar.Low < pints * (1 - limits["formula-rounding"]) * mention.Match.Candidates.Min(food => jarAcid.LeastForAPint(food.Id)))
                {
                    return (sentence.Text.Map(mention.Start, mention.End), text[mention.Start..mention.End]);
                }

                if (!each && mention.Match.Candidates.Any(IsAcid) && StepMeasures.Plain(value, unit) is { Volume: true } plain)
                {
                    used += plain.Low;
                    last = (sentence.Text.Map(mention.Start, mention.End), text[mention.Start..mention.End]);
                }
            }
        }

        return used > 0 && used < (1 - limits["formula-rounding"]) * listed ? last : null;
    }

    // "Fill up with hot water": the last words before the water are "with" and the like, and a verb of filling stands before them.
    private bool TopsUp(ReadOnlySpan<string> before)
    {
        ReadOnlySpan<string> last = before[Math.Max(0, before.Length - 3)..];
        return (last.Contains("with") || last.Contains("from")) && words.HasAny("water-tops", before[Math.Max(0, before.Length - 8)..]);
    }

    internal static bool IsAcid(FoodRow? food) => food is not null && food.Id != "ascorbic-acid" && (food.Group == "acid" || food.Has("vinegar") || food.Has("acidifier"));

    // "Use rice vinegar" where the list has another: its strength is not that of the tested recipe.
    private static (int Start, int End)? Weaker(FoodMention[] mentions, Batch batch) =>
        Array.Find(mentions, mention => mention.Match.Candidates is [_, ..] all && all.All(food => food.Has("weak-vinegar") && !batch.Items.Any(item => item.Food?.Id == food.Id))) is { } weak
            ? (weak.Start, weak.End)
            : null;

    // "4-5 percent", "* or 4 percent": any strength below the 5 percent that the tested recipes name.
    private (int Start, int End)? Weak(string text)
    {
        foreach (PrintedNumber number in NumberWalk.In(text, strict: true, nested: true))
        {
            if (char.IsAsciiDigit(text[number.Start]) && number.Value.Low < limits["vinegar-percent"]
                && (text.AsSpan(number.End).TrimStart().StartsWith("%") || NumberScan.Word(text, number.Next(text), out _) is "percent" or "per"))
            {
                return (number.Start, number.End);
            }
        }

        return null;
    }

    // A word that makes the acid less, weaker or optional; "do not dilute" makes it neither. A strength other than 5 percent is one too.
    // In a sentence the word stands near the acid.
    private (int Start, int End)? Doubt(string text, int from = 0, int to = int.MaxValue)
    {
        IReadOnlyList<PlacedWord> all = texts.Of(text).Placed;
        for (int i = 0; i < all.Count; i++)
        {
            PlacedWord word = all[i];
            if (word.End < from - Near || word.Start > (long)to + Near)
            {
                continue;
            }

            if (words.Is("acid-out", word.Plain) && all.Skip(i + 1).Take(3).Any(one => one.Plain is "out" or "down" or "off"))
            {
                return (word.Start, word.End);
            }

            bool denied = i > 0 && _denials.OfLess(all[i - 1].Plain);
            bool length = word.Plain == "half" && i + 1 < all.Count && all[i + 1].Plain is "inch" or "pint" or "pints" or "a";
            if (words.Is("acid-doubt", word.Plain) && !denied && !length)
            {
                return (word.Start, word.End);
            }
        }

        return null;
    }
}
