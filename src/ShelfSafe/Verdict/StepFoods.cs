using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using ShelfSafe.Reading;
using ShelfSafe.Steps;

namespace ShelfSafe.Verdict;

/// <summary>Foods with a hazard that the steps name and the ingredient list does not.</summary>
internal sealed class StepFoods
{
    private readonly FoodCatalogue _catalogue;
    private readonly LineWordTable _words;
    private readonly ReadTexts _texts;
    private readonly RuleList _solid;
    private readonly RuleList _shelled;
    private readonly Denials _denials;
    private readonly StepVerbs _verbs;
    private readonly StepThings _things;
    private readonly TextNote<NamedFood[]> _hazards;
    private readonly TextNote<NamedFood[]> _bulky;
    private readonly TailHazards _tails;

    /// <summary>Prepares the notes that it takes of sentences.</summary>
    public StepFoods(FoodCatalogue catalogue, LineWordTable words, ReadTexts texts, RuleLists lists)
    {
        (_catalogue, _words, _texts, _denials, _verbs, _things) = (catalogue, words, texts, new(words), new(words), new(words, texts));
        _solid = lists.Of(RuleLists.SolidGroups);
        _shelled = lists.Of(RuleLists.ShelledGroups);
        _tails = new(catalogue, words, texts, IsNoFood);
        RuleList listed = lists.Of(RuleLists.ListedGroups);
        _hazards = texts.Note<NamedFood[]>(text => [.. Named(text, peppersToo: false, food => catalogue.Traits.CountsFromSteps(food) && !(food.Has("fat") && !food.Has("dairy") && IsSetAside(text) && !text.Has("serve-later")))]); // "trim off all the tallow", but "save the butter for last", "eat it with the lard melted in"
        _bulky = texts.Note<NamedFood[]>(text => [.. Named(text, peppersToo: true, food => listed.Contains(food.Group)).Where(named => !words.Is("step-verb", named.Mention.Words) || IsNamed(text, named.Mention))]);
    }

    // A food that a sentence names, and what its words say of it by themselves.
    private sealed record NamedFood(FoodRow Food, FoodMention Mention, bool Peppers, bool Added, bool Generic, string Singular, string Last, string? Fruit);

    /// <summary>One item for each such food, in the jar and of unknown amount.</summary>
    /// <param name="part">The dish.</param>
    /// <param name="title">Its name: "build the tacos" names the dish itself.</param>
    /// <param name="facts">Facts of its steps.</param>
    /// <param name="listed">Foods of its list.</param>
    public IEnumerable<BatchItem> Find(RecipePart part, string? title, ImmutableArray<StepFact> facts, ImmutableArray<BatchItem> listed)
    {
        string[] name = title is null ? [] : _texts.Of(title).Singulars;
        int line = listed.IsEmpty ? 0 : listed[^1].Line + 1;
        bool dry = StepWater.AllDry(listed);
        ListedFood[] list = Listed(listed);
        HashSet<string> seen = new(StringComparer.Ordinal);
        if (StepWater.Find(facts, listed) is { } water)
        {
            yield return Item(water.Sentence, new(water.Start, water.End, "water", _catalogue.Find("water")), line++) with { Weighed = true };
        }

        foreach ((IngredientLine source, FoodMention mention) in _tails.Find(part, listed))
        {
            if (mention.Match.Candidates is [var food, ..] && seen.Add(food.Id))
            {
                yield return Item(source.Text, source.Group, mention, line++);
            }
        }

        ServingSteps serving = new(facts, dry);
        foreach (StepSentence sentence in part.Steps)
        {
            if (sentence.Role != StepRole.Step || serving.Outside(sentence))
            {
                continue;
            }

            foreach (NamedFood named in _hazards.Of(_texts.Of(sentence.Text)))
            {
                bool dish = named.Food is { Group: "other" } && named.Food.Has("leftovers") && Array.IndexOf(name, named.Singular) >= 0;
                if (!dish && !Covered(named, list, alike: true) && seen.Add(named.Food.Id))
                {
                    yield return Item(sentence, named.Mention, line++);
                }
            }
        }
    }

    // Foods that the sentence neither leaves out nor names as a verb or tool.
    private IEnumerable<NamedFood> Named(ReadText read, bool peppersToo, Func<FoodRow, bool> counts)
    {
        foreach (FoodMention mention in read.Mentions)
        {
            bool peppers = peppersToo && ArePeppers(read, mention);
            if ((peppers ? _catalogue.Find("bell pepper") : mention.Match) is Identified { Food: { } food }
                && counts(food)
                && !_words.Is("step-not-food", mention.Words)
                && !IsNoFood(read, mention))
            {
                yield return new(food, mention, peppers, IsAdded(read, mention), IsGeneric(mention.Words) && !IsPacked(read, mention), WordFolding.Singular(mention.Words), mention.Words[(mention.Words.LastIndexOf(' ') + 1)..], mention.Words.Split(' ') is [var fruit, "zest" or "peel" or "rind"] ? WordFolding.Singular(fruit) : null);
            }
        }
    }

    /// <summary>Whether several peppers are named, which are the vegetable whatever one pepper is.</summary>
    internal static bool ArePeppers(ReadText read, FoodMention mention) =>
        mention.Words.EndsWith("pepper", StringComparison.Ordinal) && !mention.Match.Candidates.Any(food => food.Group == "vegetable") && read.Text[mention.Start..mention.End].EndsWith('s');

    /// <summary>Solid food that a sentence after the straining names, and does not throw out: the strained broth is a soup again.</summary>
    public StepFact? AfterStraining(RecipePart part, ImmutableArray<StepFact> facts)
    {
        StepFact? strained = facts.FirstOrDefault(fact => fact.Id == "strained");
        bool after = false;
        if (strained is null)
        {
            return null;
        }

        ServingSteps serving = new(facts);
        foreach (StepSentence sentence in part.Steps)
        {
            if (ReferenceEquals(sentence, strained.Sentence))
            {
                after = true;
                continue;
            }

            if (!after || sentence.Role != StepRole.Step || serving.Outside(sentence) || IsSetAside(_texts.Of(sentence.Text)))
            {
                continue;
            }

            foreach (FoodMention mention in _texts.Of(sentence.Text).Mentions)
            {
                if (mention.Match.Candidates.Any(food => _solid.Contains(food.Group))
                    && !_words.Is("step-verb", mention.Words) && !_words.Is("step-not-food", mention.Words) && !_verbs.Is(sentence.Text.Text, mention))
                {
                    return new("solids-returned", sentence, sentence.Text.Map(mention.Start, mention.End), sentence.Text.Text[mention.Start..mention.End]);
                }
            }
        }

        return null;
    }

    // "Eat the chicken, compost the vegetables"; but "discard the bones and return the meat" puts something back.
    private static bool IsSetAside(ReadText read) => read.Has("step-discard") && !read.Has("step-return");

    /// <summary>Foods of some bulk, and things nobody knows, that the steps put in and the list does not name, with their places.</summary>
    public IEnumerable<(SourceSpan Span, string Words)> Unlisted(RecipePart part, ImmutableArray<StepFact> facts, ImmutableArray<string> kinds, ImmutableArray<BatchItem> listed)
    {
        bool dry = StepWater.AllDry(listed);
        ListedFood[] list = Listed(listed);
        HashSet<string> seen = new(StringComparer.Ordinal);
        Lazy<HashSet<string>> known = new(() => Known(part));
        ServingSteps serving = new(facts, dry);
        foreach (StepSentence sentence in part.Steps)
        {
            if (sentence.Role != StepRole.Step || serving.Outside(sentence))
            {
                continue;
            }

            ReadText read = _texts.Of(sentence.Text);
            foreach (NamedFood named in _bulky.Of(read))
            {
                (FoodRow food, FoodMention mention) = (named.Food, named.Mention);
                if (!Covered(named, list)
                    && !IsOwnFerment(food, facts, listed)
                    && !kinds.Contains(named.Singular) // "pour over the pickles" in a recipe for pickles
                    && !IsCutAway(read, mention, known.Value)
                    && !(named.Generic && listed.Any(item => item.Food is null || (named.Peppers ? item.Food.Group == food.Group : Kindred(item.Food.Group, food.Group))))
                    && seen.Add(food.Id))
                {
                    yield return (sentence.Text.Map(mention.Start, mention.End), sentence.Text.Text[mention.Start..mention.End]);
                }
            }

            foreach ((int start, int end) in IsSetAside(read) ? [] : _things.Find(read, known))
            {
                if (seen.Add(sentence.Text.Text[start..end]))
                {
                    yield return (sentence.Text.Map(start, end), sentence.Text.Text[start..end]);
                }
            }
        }
    }

    /// <summary>Whether words name the dish itself: "tomato salsa" names it and its own foods, "corn salsa" names corn too.</summary>
    internal bool IsDish(string phrase, HashSet<string> known)
    {
        string[] all = phrase.Split(' ');
        return all.Any(word => _words.Is("dish-word", word))
            && all.All(word => _words.Is("dish-word", word) || _words.Is("title-not-food", word) || _words.Is("dish-adjective", word) || _words.Is("filler", word) || known.Contains(word));
    }

    // What the recipe names itself: "add the roux" where a group of the list is the roux.
    internal HashSet<string> Known(RecipePart part)
    {
        HashSet<string> known = new(StringComparer.Ordinal);
        string? last = null;
        foreach (IngredientLine line in part.Ingredients)
        {
            known.UnionWith(_texts.Of(line.Text).Singulars);
            if (line.Group is { } group && !ReferenceEquals(group, last))
            {
                known.UnionWith(_texts.Of(group).Singulars);
            }

            last = line.Group;
        }

        return known;
    }

    // "Raw meat" and "cooked beans" are as generic as "meat" and "beans".
    internal bool IsGeneric(string phrase)
    {
        string[] parts = phrase.Split(' ');
        return _words.Is("step-generic", parts[^1]) && parts.SkipLast(1).All(part => _words.Is("filler", part) || _words.Is("prep", part) || _words.Is("size", part));
    }

    // "Chunks of squash" are no squashing.
    private bool IsNamed(ReadText read, FoodMention mention) => read.Before(mention.Start) is [.., var last] && _words.Is("noun-lead", last);

    // "A bag of frozen vegetables" is none of those in the list.
    private bool IsPacked(ReadText read, FoodMention mention) => read.Before(mention.Start) is [.., var pack, "of"] && _words.Is("food-package", pack);

    /// <summary>Whether a food comes out of a shop's can or packet: "add a can of beans". A jar may be the cook's own, and "the bag of spices" was told before.</summary>
    internal bool IsBought(ReadText read, FoodMention mention)
    {
        string[] own = WordFolding.Words(read.Text[mention.Start..mention.End]);
        string[] to = own is [_, "of", ..] ? [.. read.Before(mention.Start), own[0]] : read.Before(mention.Start) is [.. var before, "of"] ? before.ToArray() : [];
        return to is [.., var lead, var pack] && lead != "the" && _words.Is("food-package", pack) && !_words.Is("jar-word", pack) && read.HasBefore("step-add", mention.Start);
    }

    // "The meat" may be a chicken and "the vegetables" are beans; but fish, beans and mushrooms stand for their own kind alone.
    private static bool Kindred(string listed, string said) => listed == said || said switch
    {
        "meat" or "poultry" => listed is "meat" or "poultry" or "seafood",
        "legume-dried" or "legume-fresh" => listed is "legume-dried" or "legume-fresh",
        "vegetable" or "fruit" or "tomato" or "herb-spice-dried" => listed is "vegetable" or "fruit" or "tomato" or "mushroom" or "legume-dried" or "legume-fresh" or "herb-spice-dried",
        _ => false,
    };

    /// <summary>Whether a word for a food is a verb or a tool at its place, or is named to be left out.</summary>
    public bool IsNoFood(ReadText read, FoodMention mention) => _verbs.Is(read.Text, mention) || _denials.OfFood(read, mention.Start);

    // "Add the pasta": what a step puts in is in the jar, though a line of the list keeps its like for serving.
    private static bool IsAdded(ReadText sentence, FoodMention mention) =>
        sentence.HasBefore("step-return", mention.Start) || sentence.HasBefore("step-add", mention.Start);

    // "Bring the kraut and its liquid to a boil": the cabbage that was fermented here.
    private static bool IsOwnFerment(FoodRow food, ImmutableArray<StepFact> facts, ImmutableArray<BatchItem> listed) =>
        food.Has("fermented") && facts.Any(fact => fact.Id == "fermented") && food.Has("brassica") && listed.Any(item => item.Has("brassica"));

    /// <summary>Whether a food is a part of what the list names that is cut away: "trim the beet tops", "discard the celery leaves".</summary>
    public static bool IsCutAway(ReadText read, FoodMention mention, HashSet<string> known) =>
        IsSetAside(read) && mention.Words.Split(' ') is [var whole, _, ..] && known.Contains(WordFolding.Singular(whole));

    // A listed food with the words of its line, looked up once a dish.
    private readonly record struct ListedFood(BatchItem Item, string[] Singulars);

    private ListedFood[] Listed(ImmutableArray<BatchItem> listed) =>
        [.. listed.Select(item => new ListedFood(item, _texts.Of(item.Ingredient.Line.Text).Singulars))];

    // A hazard is covered by the last word of a line only where that food is of its kind: "cream of tartar" is no cream, "pepper flakes" are no potato flakes.
    private bool Covered(NamedFood named, ListedFood[] listed, bool alike = false)
    {
        FoodRow food = named.Food;
        foreach ((BatchItem item, string[] singulars) in listed)
        {
            if (named.Added && item.Presence == Presence.AtServing)
            {
                continue;
            }

            if ((item.Food is { } own && (own.Id == food.Id || _catalogue.Traits.Covers(own.Has, food))) || (Array.IndexOf(singulars, named.Last) >= 0 && !(alike && item.Food is { } other && other.Group != food.Group && !_catalogue.Traits.CountsFromSteps(other)))
                || (named.Fruit is { } fruit && Array.IndexOf(singulars, fruit) >= 0) // "juice the lemons, zest of two": a part of what is listed
                || (!named.Added && item.Food is { } within && _shelled.Contains(within.Group) && _words.Is("own-shell", named.Mention.Words))) // "scrub the shells" of clams, but "add the shells"
            {
                return true;
            }
        }

        return false;
    }

    private static BatchItem Item(StepSentence sentence, FoodMention mention, int line) => Item(sentence.Text, sentence.Heading, mention, line);

    private static BatchItem Item(MappedText text, string? heading, FoodMention mention, int line)
    {
        IngredientLine source = new(text, heading, AtServing: false, FromProse: true);
        string words = text.Text[mention.Start..mention.End];
        Ingredient ingredient = new(
            source, text.Map(mention.Start, mention.End), words, mention.Words, mention.Match, null, [], null, null, null, false, false, [], null, null, false, false);
        return new(ingredient, line, words, mention.Match.Candidates[0], Presence.In, Interval.Unknown, Interval.Unknown, Weighed: false, FromSteps: true);
    }
}
