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
internal sealed class StepAdditions
{
    private const int MeasureReaches = 30;
    private const int Near = 5; // words
    private readonly LineWordTable _words;
    private readonly ReadTexts _texts;
    private readonly StepFoods _stepFoods;
    private readonly RuleList _left;
    private readonly RuleList _asked;
    private readonly TextNote<NewFood[]> _foods;
    private readonly TextNote<(int Start, int End)?> _sign;
    private readonly TextNote<(int Start, int End)?> _measure;

    /// <summary>Prepares the notes that it takes of sentences.</summary>
    public StepAdditions(LineWordTable words, ReadTexts texts, RuleLists lists, StepFoods stepFoods)
    {
        (_words, _texts) = (words, texts);
        (_left, _asked) = (lists.Of(RuleLists.HarmlessGroups), lists.Of(RuleLists.AskedTraits));
        _stepFoods = stepFoods;
        _foods = texts.Note<NewFood[]>(text => [.. In(text)]);
        _sign = texts.Note(text => Sign(text.Text));
        _measure = texts.Note(Measure);
    }

    // A food that counts where the list does not name it, with the word by which the list would name it.
    private sealed record NewFood(FoodMention Mention, string Last, bool IsBroth);

    /// <summary>Each such food once, with its place.</summary>
    public IEnumerable<(SourceSpan Span, string Words)> Find(Recipe recipe, RecipePart part, Batch batch, Lazy<HashSet<string>> list)
    {
        bool dry = StepWater.AllDry(batch.Items);
        bool mix = dry && !LaterSteps.NamesCanner(batch.Facts); // "add broth" to a dry mix wets it
        HashSet<string> seen = new(StringComparer.Ordinal);
        HashSet<string> known = new(list.Value, StringComparer.Ordinal);
        known.UnionWith(_texts.Of(part.Name ?? recipe.Title ?? string.Empty).Singulars);
        ServingSteps serving = new(batch.Facts, dry);
        foreach (StepSentence sentence in part.Steps)
        {
            string text = sentence.Text.Text;
            ReadText read = _texts.Of(sentence.Text);
            if (sentence.Role == StepRole.Step ? serving.Outside(sentence) : !(read.Has("step-add") || serving.PutsIntoTheJar(sentence)) || serving.IsBeside(sentence, read))
            {
                continue;
            }

            foreach ((FoodMention mention, string last, bool broth) in _foods.Of(read))
            {
                if ((!broth || (mix && IsPutIn(read.Before(mention.Start)))) && !(_words.Is("dish-word", last) && !broth ? _stepFoods.IsDish(mention.Words, known) && !_stepFoods.IsBought(read, mention) && !IsOtherDish(read, mention, last, known) : known.Contains(last)) && !IsLike(mention, batch) && !StepFoods.IsCutAway(read, mention, known) && seen.Add(mention.Words))
                {
                    yield return (sentence.Text.Map(mention.Start, mention.End), text[mention.Start..mention.End]);
                }
            }

            bool adorns = _sign.Of(read) is not null && read.Mentions.Any(mention => mention.Words.Split(' ').Any(known.Contains));
            if (((adorns ? null : _sign.Of(read)) ?? _measure.Of(read)) is { } place)
            {
                yield return (sentence.Text.Map(place.Start, place.End), text[place.Start..place.End]);
            }
        }
    }

    // "Onion soup" is no salsa of onions, and "add salsa" to a soup is not the soup.
    private bool IsOtherDish(ReadText read, FoodMention mention, string last, HashSet<string> known) => !known.Contains(last)
        && (mention.Words.Contains(' ', StringComparison.Ordinal) ? mention.Match.Candidates.Any(static food => food.Has("prepared")) : IsPutIn(read.Before(mention.Start)));

    private bool IsPutIn(ReadOnlySpan<string> before)
    {
        ReadOnlySpan<string> near = before[Math.Max(0, before.Length - Near)..];
        int inward = near.IndexOf("in");
        return !near.ContainsAny("the", "this", "your") && (_words.HasAny("put-in", near) || (inward > 0 && _words.Is("step-add", near[inward - 1])));
    }

    private IEnumerable<NewFood> In(ReadText read)
    {
        foreach (FoodMention mention in read.Mentions)
        {
            string[] all = mention.Words.Split(' ');
            // "The mince" is the listed meat; "soya mince" is known by its first word alone.
            bool generic = _words.Is("step-generic", all[^1]);
            string last = generic ? all[0] : all[^1];
            if (mention.Match.Candidates is { IsEmpty: false } candidates
                && candidates.All(food => food.Group == "broth" || !_left.Contains(food.Group) || (!food.Has("thin-liquid") && food.Traits.Any(_asked.Contains)))
                && !(generic && _stepFoods.IsGeneric(mention.Words)) && !(_words.Is("step-thing", mention.Words) && !_words.Is("dish-word", last)) && !_words.Is("step-not-food", mention.Words) && !_words.Is("line-not-food", mention.Words) && !_words.Is("step-verb", mention.Words)
                && !_stepFoods.IsNoFood(read, mention))
            {
                yield return new(mention, last, candidates.Any(static food => food.Group == "broth"));
            }
        }
    }

    // Whether the batch has the food, or one that stands for it.
    private bool IsLike(FoodMention mention, Batch batch) =>
        mention.Match.Candidates.Any(food => batch.Items.Any(item => item.Food is { } own && (own.Id == food.Id || (own.Group == food.Group && ((own.Process == food.Process && own.Acidity == food.Acidity && !food.Traits.Any(_asked.Contains) && !IsAnotherHerb(mention, own)) || IsHead(mention, own))) || (IsHerb(own) && _words.Is("step-herb", mention.Words)))));

    // "Add the herbs" stands for the dried thyme of the list too.
    private static bool IsHerb(FoodRow food) => food.Group is "herb-fresh" or "herb-spice-dried";

    // "A bunch of basil" where the list has parsley.
    private bool IsAnotherHerb(FoodMention mention, FoodRow own) => own.Group == "herb-fresh" && !_words.Is("step-herb", mention.Words);

    // "The starch" is the listed cook-type starch.
    private static bool IsHead(FoodMention mention, FoodRow own) => !mention.Words.Contains(' ', StringComparison.Ordinal) && WordFolding.Words(own.Name) is [.., string last] && mention.Words == last;

    // "Finish with a knob", "a glug over the top": a measure of something rich that names nothing.
    private (int Start, int End)? Measure(ReadText read)
    {
        foreach (PlacedWord word in read.Placed)
        {
            if (_words.Is("food-measure", word.Plain) && !read.Mentions.Any(mention => mention.Start >= word.End && mention.Start - word.End <= MeasureReaches))
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
            if (text[at] > '\u2000' && _words.Is("food-sign", text.AsSpan(at, length)))
            {
                return (at, at + length);
            }

            at += length - 1;
        }

        return null;
    }
}
