using ShelfSafe.Candidates;
using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using ShelfSafe.Reading;

namespace ShelfSafe.Verdict;

/// <summary>Foods that the title, an introduction or a note names and the list does not, and more of a listed food.</summary>
internal sealed class TextFoods
{
    private const int Near = 5; // words
    private const string Legume = "legume"; // dried or fresh

    private readonly FoodCatalogue _catalogue;
    private readonly LineWordTable _words;
    private readonly ReadTexts _texts;
    private readonly StepMeasures _measures;
    private readonly Limits _limits;
    private readonly RuleList _bulk;
    private readonly Denials _denials;
    private readonly StepFoods _stepFoods;
    private readonly TextNote<Additions> _additions;

    /// <summary>Prepares the note that it takes of sentences.</summary>
    public TextFoods(FoodCatalogue catalogue, LineWordTable words, ReadTexts texts, StepMeasures measures, Limits limits, RuleLists lists, StepFoods stepFoods)
    {
        (_catalogue, _words, _texts, _measures, _limits, _denials, _stepFoods) = (catalogue, words, texts, measures, limits, new(words), stepFoods);
        _bulk = lists.Of(RuleLists.BulkGroups);
        _additions = texts.Note(AdditionsOf);
    }

    // Whether a sentence speaks of a share of the batch ("half the recipe"), and else the foods of which it says more. Then foods out of a shop's packet, and fresh ones.
    private sealed record Additions(bool OfBatch, FoodMention[] Foods, FoodMention[] Bought, FoodMention[] Fresh);

    /// <summary>A "beef noodle soup" whose list has no noodles: where are they?</summary>
    /// <param name="recipe">The recipe.</param>
    /// <param name="part">The dish.</param>
    /// <param name="batch">Its batch.</param>
    /// <param name="dry">Whether it is a dry mix.</param>
    /// <param name="listed">The words of the list.</param>
    public IEnumerable<(SourceSpan Span, string Words)> InTitle(Recipe recipe, RecipePart part, Batch batch, bool dry, Lazy<HashSet<string>> listed)
    {
        string title = Title(recipe, part);
        ReadText read = _texts.Of(title);
        foreach (FoodMention mention in read.Mentions)
        {
            // "Apple butter" is its own dish; "apples with butter" holds butter. A dry mix is named for its spice, or for what it makes ("taco soup mix").
            bool own = (batch.IsKind("dry-mix") && title.IndexOf("mix", mention.Start, StringComparison.OrdinalIgnoreCase) >= 0) || (_words.Is("title-not-food", mention.Words) && !read.Before(mention.Start).Contains("with"))
                || (batch.IsKind("spice-mix") && read.Placed.FirstOrDefault(word => word.Start >= mention.End).Plain is { } next && _words.Is("title-use", next)) // "beef rub"
                || (batch.IsKind("spice-mix") && mention.Match.Candidates is [_, ..] all && all.All(static food => food.Has("dry-spice")))
                || (dry && mention.Match.Candidates is [_, ..] named && named.All(static food => food.Acidity == FoodAcidity.Dry)) // dry foods keep in any proportion
                || IsOwnName(mention, read, batch) || IsOfListedFoods(mention, batch, listed) || IsOwnStock(mention, batch);
            if (!own && IsForeign(mention, read, batch, listed))
            {
                yield return InTitle(recipe, title, mention.Start, mention.End);
            }
        }
    }

    /// <summary>A state that the title gives the food, of which no published process knows: "roasted tomatoes".</summary>
    /// <param name="recipe">The recipe.</param>
    /// <param name="part">The dish.</param>
    /// <param name="lead">Where an open category leads, every state in the title ("shredded") speaks against it but those of its own name, else only what no tested recipe is ("creamy").</param>
    public IEnumerable<(SourceSpan Span, string Words)> StatesOfTitle(Recipe recipe, RecipePart part, Candidate? lead)
    {
        string title = Title(recipe, part);
        bool plain = lead?.Kind == "category";
        string[] name = plain ? WordFolding.Words(lead!.Name) : [];
        return _texts.Of(title).Placed
            .Where(word => !name.Contains(word.Plain, StringComparer.Ordinal) && (_words.Is("title-state-any", word.Plain) || (plain && _words.Is("title-state", word.Plain))))
            .Select(word => InTitle(recipe, title, word.Start, word.End));
    }

    /// <summary>A part of the title with its place in the text.</summary>
    public static (SourceSpan Span, string Words) OfTitle(Recipe recipe, RecipePart part, (int Start, int End) place) => InTitle(recipe, Title(recipe, part), place.Start, place.End);

    /// <summary>The title of a dish; empty where it has none.</summary>
    public static string Title(Recipe recipe, RecipePart part) => part.Name ?? recipe.Title ?? string.Empty;

    // A title with marks in it is not found as it stands; then the first character stands for its place.
    private static (SourceSpan Span, string Words) InTitle(Recipe recipe, string title, int start, int end) =>
        (recipe.Text.IndexOf(title, StringComparison.Ordinal) is >= 0 and var at ? new(at + start, at + end) : new(0, Math.Min(1, recipe.Text.Length)), title[start..end]);

    // "Salsa verde", "Brown stock": the title begins with the word of the dish's own kind, and with no other food.
    private bool IsOwnName(FoodMention mention, ReadText read, Batch batch) =>
        read.Before(mention.Start).Length == 0
        && mention.Words.Split(' ') is var all && Array.Exists(all, word => IsOwnKind(word, batch))
        && Array.TrueForAll(all, word => IsOwnKind(word, batch) || _words.Is("colour", word));

    // "Rhubarb and strawberry jam" of listed "strawbs": the dish by the table's names of its foods.
    private bool IsOfListedFoods(FoodMention mention, Batch batch, Lazy<HashSet<string>> listed) =>
        _stepFoods.IsDish(mention.Words, [.. listed.Value, .. batch.InJar.SelectMany(item => item.Food is null ? [] : _texts.Of(item.Food.Name).Singulars)]);

    // "Chicken stock" of a list with carcasses: what the recipe makes, and nothing that it takes.
    private static bool IsOwnStock(FoodMention mention, Batch batch) =>
        batch.IsKind("stock") && mention.Match.Candidates is [_, ..] all && all.All(static food => food.Group == "broth" && !food.Has("seafood"))
        && batch.InJar.Any(static item => item.Food is { Group: "meat" or "poultry" });

    private bool IsOwnKind(string word, Batch batch) => _words.Is("dish-word", word) && batch.IsKind(word);

    /// <summary>Foods of the introduction and the notes, unless they are served beside.</summary>
    public IEnumerable<(SourceSpan Span, string Words)> BesideTheSteps(RecipePart part, Batch batch, Lazy<HashSet<string>> listed)
    {
        ServingSteps serving = new(batch.Facts);
        foreach (StepSentence sentence in part.Steps)
        {
            if (sentence.Role == StepRole.Step)
            {
                continue;
            }

            ReadText read = _texts.Of(sentence.Text);
            foreach (FoodMention mention in serving.IsBeside(sentence, read) ? [] : read.Mentions)
            {
                if (IsForeign(mention, read, batch, listed))
                {
                    yield return (sentence.Text.Map(mention.Start, mention.End), read.Text[mention.Start..mention.End]);
                }
            }
        }
    }

    /// <summary>Foods kept for serving that a step takes up before the jars are filled: "in go the noodles".</summary>
    public IEnumerable<(SourceSpan Span, string Words)> Unserved(RecipePart part, Batch batch)
    {
        BatchItem[] kept = [.. batch.Items.Where(item => item.Presence == Presence.AtServing)];
        StepSentence? filled = batch.Fact(JarSteps.Filled)?.Sentence;
        ServingSteps serving = new(batch.Facts);
        foreach (StepSentence sentence in kept.Length == 0 || filled is null ? [] : part.Steps)
        {
            ReadText read = _texts.Of(sentence.Text);
            if (sentence.Role == StepRole.Step && !serving.Outside(sentence) && (!read.Has("serve-later") || serving.PutsIntoTheJar(sentence)))
            {
                foreach (FoodMention mention in read.Mentions)
                {
                    if (kept.Any(item => item.Food is { } food && mention.Match.Candidates.Any(other => other.Id == food.Id || other.Group == food.Group && other.Group is "pasta" or "grain" or "dairy"))
                        && !batch.InJar.Any(item => item.Food is { } food && mention.Match.Candidates.Any(other => other.Id == food.Id)))
                    {
                        yield return (sentence.Text.Map(mention.Start, mention.End), read.Text[mention.Start..mention.End]);
                    }
                }
            }

            if (ReferenceEquals(sentence, filled))
            {
                yield break;
            }
        }
    }

    /// <summary>"Another 3 cups of onions", "double the peppers": more of a food than the list has.</summary>
    /// <param name="part">The dish.</param>
    /// <param name="batch">Its batch.</param>
    /// <param name="dry">Whether it is a dry mix: dry foods keep in any proportion, and only what is wet is asked.</param>
    public IEnumerable<(SourceSpan Span, string Words)> More(RecipePart part, Batch batch, bool dry)
    {
        ServingSteps serving = new(batch.Facts, dry);
        foreach (StepSentence sentence in part.Steps)
        {
            string text = sentence.Text.Text;
            ReadText read = _texts.Of(sentence.Text);
            if (serving.Outside(sentence) || (read.Has("serve-later") && !serving.PutsIntoTheJar(sentence)))
            {
                continue;
            }

            Additions additions = _additions.Of(read);
            if (additions.OfBatch && !dry)
            {
                yield return (sentence.Text.Map(0, text.Length), text);
            }

            foreach (FoodMention mention in additions.OfBatch ? [] : additions.Foods.Concat(additions.Bought.Where(mention => !IsListedBought(part, mention))).Concat(dry ? additions.Fresh : []).Concat(AboveTheList(read, batch)))
            {
                if (!dry || mention.Match.Candidates.Any(static food => food.Acidity != FoodAcidity.Dry))
                {
                    yield return (sentence.Text.Map(mention.Start, mention.End), text[mention.Start..mention.End]);
                }
            }
        }
    }

    // "Two crushed fresh garlic cloves" where a dry mix has the powder.
    private bool IsFresh(ReadText read, FoodMention mention) =>
        _words.Is("fresh-name", mention.Words.Split(' ')[0]) || read.Before(mention.Start) is [.., var last] && _words.Is("fresh-name", last);

    // A can of what the list has, and has in cans.
    private bool IsListedBought(RecipePart part, FoodMention mention) =>
        part.Ingredients.Any(line => _texts.Of(line.Text) is { } own && own.Has("food-package") && own.Mentions.Any(other => other.Match.Candidates.Any(mention.Match.Candidates.Contains)));

    private Additions AdditionsOf(ReadText read)
    {
        string[] all = read.Folded;
        int share = Array.FindIndex(all, word => _words.Is("batch-share", word) && !(read.Mentions.Length == 0 && _words.Is("batch-whole", word)));
        bool ofBatch = share >= 0 && all.Skip(share + 1).Take(2).Any(word => word is "batch" or "recipe" or "quantity" or "quantities" or "amounts");
        return new(
            ofBatch,
            ofBatch || read.Has("step-return-word") ? [] : [.. read.Mentions.Where(mention => IsMore(read, mention.Start) && IsBulk(read, mention))],
            ofBatch ? [] : [.. read.Mentions.Where(mention => IsBulk(read, mention) && _stepFoods.IsBought(read, mention))],
            ofBatch ? [] : [.. read.Mentions.Where(mention => IsFresh(read, mention))]);
    }

    private bool IsBulk(ReadText read, FoodMention mention) =>
        !_words.Is("step-not-food", mention.Words)
        && (StepFoods.ArePeppers(read, mention)
            || (mention.Match.Candidates.Any(food => _bulk.Contains(food.Group) || food.Group is "tomato" or "thickener" or "fat-oil")
                && mention.Match.Candidates.All(food => !food.Has("water") && !food.Has("broth") && !food.Has("dry-spice"))));

    // A brine for soaking meat is salt that the list need not hold; only a ferment and a cure rest on their salt.
    private static bool IsFreeSalt(FoodMention mention, Batch batch) =>
        mention.Match.Candidates is [_, ..] all && all.All(static food => food.Group == "salt" && !food.Has("curing-salt")) && !batch.IsKind("fermented-vegetable") && !batch.IsKind("pickle");

    // "Another 3 cups of onions"; but "simmer another 20 minutes, until the tomatoes are soft" asks for time.
    private bool IsMore(ReadText sentence, int offset)
    {
        if (!sentence.HasBefore("step-more", offset, within: Near))
        {
            return false;
        }

        ReadOnlySpan<string> before = sentence.Before(offset);
        before = before[Math.Max(0, before.Length - Near)..];
        for (int i = before.Length - 1; i >= 0 && !(before[i].StartsWith("minute", StringComparison.Ordinal) || before[i].StartsWith("hour", StringComparison.Ordinal) || before[i] is "min" or "mins"); i--)
        {
            if (_words.Is("step-more", before[i]))
            {
                return true;
            }
        }

        return false;
    }

    // "4 quarts water" where the list has two: no step can take more than there is.
    private IEnumerable<FoodMention> AboveTheList(ReadText sentence, Batch batch)
    {
        foreach ((Interval value, string unit, FoodMention mention) in _measures.Of(sentence))
        {
            BatchItem[] own = Own(mention, batch);
            if (own.Length == 0 || (DilutingWater.IsWater(mention) && DilutingWater.IsAside(sentence)) || StepMeasures.Plain(value, unit) is not { } used || mention.Match.Candidates.Any(food => food.Has("dry-spice") || food.Group == "acid") || IsFreeSalt(mention, batch))
            {
                continue;
            }

            (bool Volume, double Low, double High)?[] listed = [.. own.SelectMany(item => item.Ingredient.Measures.IsEmpty ? [item.Ingredient.Amount] : item.Ingredient.Measures.Select(measure => (Amount?)measure)).Select(measure => measure is { } one ? StepMeasures.Plain(one.Value, one.Unit) : null)];
            bool alike = listed.All(one => one is { } known && known.Volume == used.Volume);
            double most = (1 + _limits["formula-rounding"]) * (alike ? listed.Sum(one => one!.Value.High) : own.Sum(item => item.Grams.High));
            if ((used.Volume && !alike ? _limits["scooped-least"] : 1) * used.High > most)
            {
                yield return mention;
            }
        }
    }

    // The listed food itself, or the one that the sentence must mean: "olive oil" beside a listed vegetable oil.
    private BatchItem[] Own(FoodMention mention, Batch batch)
    {
        BatchItem[] own = [.. batch.InJar.Where(item => !item.FromSteps && item.Food is { } food && mention.Match.Candidates.Any(other => other.Id == food.Id))];
        string last = mention.Words[(mention.Words.LastIndexOf(' ') + 1)..];
        return own.Length > 0 ? own : [.. batch.InJar.Where(item => !item.FromSteps && item.Food is { } food && mention.Match.Candidates.Any(other => other.Group == food.Group) && _texts.Of(item.Ingredient.Line.Text).Singulars.Contains(last))];
    }

    private bool IsForeign(FoodMention mention, ReadText read, Batch batch, Lazy<HashSet<string>> listed) =>
        mention.Match.Candidates is { IsEmpty: false } candidates
        && candidates.All(food => _catalogue.Traits.CountsFromSteps(food) || _bulk.Contains(food.Group) || mention.Words.Split(' ').Any(word => _words.Is("dish-word", word)))
        && !_words.Is("step-not-food", mention.Words) && !_words.Is("step-verb", mention.Words) && !IsGeneric(mention, batch) && !_words.Is("line-not-food", mention.Words)
        && !_denials.LeavesOutForGood(read.Before(mention.Start))
        && !candidates.Any(food => (!_bulk.Contains(food.Group) || candidates.Length > 1) && _catalogue.Traits.Covers(trait => batch.Items.Any(item => item.Has(trait)), food) // "cocoa mix" of listed milk powder and cocoa
            || batch.Items.Any(item => item.Food is { } own && (own.Id == food.Id || (own.Group == food.Group && food.Group is "meat" or "poultry" && !_catalogue.Traits.CountsFromSteps(food)))))
        && !_stepFoods.IsDish(mention.Words, listed.Value)
        && !IsListed(mention, listed.Value);

    // "The meat", "the beans" stand for what is listed; "fish works too" and "mushroom salsa" are another food where the list has none.
    private bool IsGeneric(FoodMention mention, Batch batch) =>
        _words.Is("step-generic", mention.Words) && (mention.Match.Candidates.All(static food => food.Group is "vegetable" or "fruit" or "grain" or "nut-seed" or "herb-spice-dried" or "herb-fresh" or "other")
            || batch.Items.Any(item => item.Food is null || mention.Match.Candidates.Any(food => IsOfOneKind(food, item.Food) || (food.Has("bone-in") && item.Has("bone-in")))));

    private static bool IsOfOneKind(FoodRow food, FoodRow other) =>
        food.Group == other.Group || (food.Group.StartsWith(Legume, StringComparison.Ordinal) && other.Group.StartsWith(Legume, StringComparison.Ordinal));

    // "Garlic oil" is no listed garlic: what a hazard is called by its last word must be listed. "White peaches" are no white vinegar.
    private bool IsListed(FoodMention mention, HashSet<string> known)
    {
        string[] all = mention.Words.Split(' ');
        bool hazard = mention.Match.Candidates.Any(_catalogue.Traits.CountsFromSteps);
        return (hazard ? all[^1..] : all).Any(word => word.Length > 3 && known.Contains(word) && !_words.Is("filler", word) && !_words.Is("colour", word));
    }
}
