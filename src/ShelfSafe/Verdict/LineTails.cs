using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using ShelfSafe.Reading;
using ShelfSafe.Reading.Amounts;

namespace ShelfSafe.Verdict;

/// <summary>What an ingredient line says behind or around its food: other foods, and states that change the food.</summary>
internal sealed class LineTails
{
    private readonly FoodCatalogue _catalogue;
    private readonly LineWordTable _words;
    private readonly ReadTexts _texts;
    private readonly RuleList _plain;
    private readonly RuleList _harmless;
    private readonly RuleList _again;
    private readonly RuleList _lineMore;
    private readonly double _rounding;
    private readonly Denials _denials;
    private readonly StepVerbs _verbs;
    private readonly TextNote<State[]> _states;
    private readonly TextNote<(int Start, int End)?> _doubt;
    private readonly TextNote<(int Start, int End)?> _more;
    private readonly TextNote<(int Start, int End)?> _second;

    /// <summary>Prepares the notes that it takes of lines.</summary>
    public LineTails(FoodCatalogue catalogue, LineWordTable words, ReadTexts texts, RuleLists lists, Limits limits)
    {
        (_catalogue, _words, _texts, _denials, _verbs) = (catalogue, words, texts, new(words), new(words));
        _plain = lists.Of(RuleLists.PlainGroups);
        _lineMore = lists.Of(RuleLists.LineMore);
        _again = lists.Of(RuleLists.AmountAgain);
        _rounding = limits["formula-rounding"];
        _states = texts.Note<State[]>(text => [.. States(text)]);
        _harmless = lists.Of(RuleLists.HarmlessGroups);
        _doubt = texts.Note(text => First(text, word => _words.Is("line-doubt", word), from: 1));
        _more = texts.Note(text => First(text, _lineMore.Contains, from: 0));
        _second = texts.Note(text => SecondIn(text.Text));
    }

    // A word for a state, and whether it counts of any food or only of a plain pack.
    private sealed record State(PlacedWord Word, bool OfAny);

    /// <summary>Foods that the line names beside those that were read from it.</summary>
    public IEnumerable<(SourceSpan Span, string Words)> OtherFoods(IngredientLine line, Batch batch)
    {
        string text = line.Text.Text;
        List<BatchItem> own = Own(line, batch);
        if (own.Count == 0 || own.All(item => !item.InJar))
        {
            yield break;
        }

        ReadText read = _texts.Of(line.Text);
        HashSet<string>? named = null;
        foreach (FoodMention mention in read.Mentions)
        {
            if (mention.Match.Candidates.Any(food => own.Any(item => item.Food?.Id == food.Id || Kin(item, food)))
                || IsRead(mention, named ??= Named(own))
                || _words.Is("step-not-food", mention.Words) || _words.Is("step-verb", mention.Words) || _words.Is("line-not-food", mention.Words)
                || mention.Match.Candidates.All(food => food.Group == "water" || (food.Acidity == FoodAcidity.Dry && food.Group != "legume-dried" && !_catalogue.Traits.CountsFromSteps(food)) || (food.Id == "brine" && read.Placed.Any(static word => word.Plain.StartsWith("soak", StringComparison.Ordinal))))
                || IsOwnKind(mention, own) || IsOwnFlesh(mention, read, own) || IsMeasureBase(mention, read, batch) || _verbs.Is(text, mention) || Tool(text, mention.End) || _denials.LeavesOut(read.Before(mention.Start)))
            {
                continue;
            }

            yield return (line.Text.Map(mention.Start, mention.End), text[mention.Start..mention.End]);
        }
    }

    // "6 cups blackberries (3 boxes of berries)".
    private bool IsOwnKind(FoodMention mention, List<BatchItem> own) =>
        _words.Is("step-generic", WordFolding.Singular(mention.Words)) && own.Any(item => item.Food is { } food && food.Name.EndsWith(WordFolding.Singular(mention.Words), StringComparison.Ordinal));

    // "1/2 cup sugar for each quart of fruit", "of rhubarb": what the amount is measured by, which the list has.
    private bool IsMeasureBase(FoodMention mention, ReadText read, Batch batch) =>
        read.Before(mention.Start) is [.. var before, "of"] && before.ToArray().TakeLast(3).Any(static word => word is "each" or "every" or "per")
        && (_words.Is("step-generic", mention.Words)
            ? batch.InJar.Any(item => mention.Match.Candidates.Any(food => food.Group == item.Food?.Group))
            : mention.Match.Candidates.All(food => batch.InJar.Any(item => item.Food?.Id == food.Id)));

    // "White sauce" behind white potatoes is another food: a hazard is known by its last word. Fat of a listed animal is its own.
    private bool IsRead(FoodMention mention, HashSet<string> read)
    {
        string[] all = mention.Words.Split(' ');
        return (mention.Match.Candidates.Any(_catalogue.Traits.CountsBeyondFat) ? all[^1..] : all).Any(read.Contains);
    }

    // "Clams, enough for 3 quarts of meat": the meat of the listed animal; "with meat" is some other.
    private bool IsOwnFlesh(FoodMention mention, ReadText read, List<BatchItem> own) =>
        _words.Is("own-flesh", mention.Words) && own.Exists(item => item.Food is { Group: "seafood" or "poultry" or "meat" }) && read.Before(mention.Start) is not [.., "and" or "with" or "plus" or "or"];

    /// <summary>A word that says the food was prepared in a way for which no process was set.</summary>
    /// <param name="line">The line.</param>
    /// <param name="batch">The dish.</param>
    /// <param name="plain">Name of the plain pack that leads, or <see langword="null"/>: then every such state counts but that of its name ("smoked fish"), else only what no tested recipe holds ("battered").</param>
    public (SourceSpan Span, string Words)? Prepared(IngredientLine line, Batch batch, string? plain)
    {
        State[] states = _states.Of(_texts.Of(line.Text));
        if (states.Length == 0)
        {
            return null;
        }

        List<BatchItem> own = Own(line, batch);
        if (!own.Any(item => item.InJar && item.Food is { } food && (_plain.Contains(food.Group) || food.Group == "legume-dried")))
        {
            return null;
        }

        bool dried = own.All(item => item.Food is { Group: "legume-dried" });
        HashSet<string> named = [.. WordFolding.Words(plain ?? string.Empty), .. own.Where(item => item.Food is not null).SelectMany(item => WordFolding.Words(item.Food!.Name))];
        bool seasoning = own.All(static item => item.Food is { Bulk: BulkUse.Seasoning }); // grated ginger: of a seasoning the size is free
        return Array.Find(states, state => (state.OfAny || (plain is not null && !dried && !(seasoning && state.Word.Plain is "grated" or "shredded"))) && !named.Contains(state.Word.Plain)) is { Word: var word }
            ? At(line, (word.Start, word.End))
            : null;
    }

    /// <summary>A word by which a dry food is dry no longer: "soaked lentils", "chickpeas, drained".</summary>
    /// <param name="line">A line of a dry mix.</param>
    public (SourceSpan Span, string Words)? Wet(IngredientLine line) =>
        _texts.Of(line.Text) is var read && read.Has("wet-state") && read.Placed.FirstOrDefault(word => _words.Is("wet-state", word.Plain)) is { } wet
            ? At(line, (wet.Start, wet.End))
            : null;

    private IEnumerable<State> States(ReadText read)
    {
        string before = string.Empty;
        foreach (PlacedWord word in read.Placed)
        {
            bool cut = word.Plain == "roast" && _words.Is("roast-cut", before); // a chuck roast is raw
            before = word.Plain;
            bool any = _words.Is("line-state-any", word.Plain);
            if ((any || _words.Is("line-state", word.Plain)) && !cut && !_denials.LeavesOut(read.Before(word.Start)))
            {
                yield return new(word, any);
            }
        }
    }

    /// <summary>A word by which the line takes its own amount or food back: "(we use 3/4)", "but half will do".</summary>
    public (SourceSpan Span, string Words)? Doubt(IngredientLine line, Batch batch) =>
        _doubt.Of(_texts.Of(line.Text)) is { } doubt && Own(line, batch).Any(item => item.InJar) ? At(line, doubt) : null;

    /// <summary>A word by which the line takes more of its food than it measures: "doubled", "plus another 2 cups", "heaped".</summary>
    /// <remarks>Of dry spices, salt, sugar and acid more does no harm to a published recipe.</remarks>
    public (SourceSpan Span, string Words)? More(IngredientLine line, Batch batch) =>
        _more.Of(_texts.Of(line.Text)) is { } more && Own(line, batch).Any(item => item.InJar && item.Food is { } food && (food.Group == "water" || !_harmless.Contains(food.Group))) ? At(line, more) : null;

    // The first word of the kind from a place on that the next word does not take back.
    private (int Start, int End)? First(ReadText read, Func<string, bool> asked, int from)
    {
        IReadOnlyList<PlacedWord> all = read.Placed;
        for (int i = from; i < all.Count; i++)
        {
            string next = i + 1 < all.Count ? all[i + 1].Plain : string.Empty;
            if (asked(all[i].Plain) && !_words.Is("line-doubt-not", next))
            {
                return (all[i].Start, all[i].End);
            }
        }

        return null;
    }

    /// <summary>Two amounts of one kind side by side: columns for several batches, of which one cannot be told.</summary>
    /// <remarks>Nor can an amount be told that is a count of a measure: "1'008 cups sugar" would be one "cup sugar".</remarks>
    public (SourceSpan Span, string Words)? SecondAmount(IngredientLine line, Batch batch) =>
        _second.Of(_texts.Of(line.Text)) is { } second ? At(line, second)
        : Own(line, batch).Any(item => item.InJar && item.Ingredient is { Amount.Unit: "each" } own && _words.Unit(own.Food, 0, out _) is { } unit && StepMeasures.Plain(own.Amount.Value, unit) is not null) ? At(line, (0, line.Text.Text.Length))
        : null;

    private (int Start, int End)? SecondIn(string text)
    {
        (int Start, int End, bool Volume, double High)? before = null;
        int bare = -1; // the end of a number without a unit
        foreach (PrintedNumber number in NumberWalk.In(text))
        {
            string? measured = _words.Unit(text, number.Next(text), out int own);
            bool twice = measured is null && bare >= 0 && text.AsSpan(bare, number.Start - bare).IsWhiteSpace() && !text.AsSpan(number.End).StartsWith("-"); // "4 8 onions", not "7 3/4-inch pieces"
            if (twice || (before is not null && measured is null && IsCorrection(text, number)))
            {
                return (number.Start, number.End);
            }

            bare = measured is null ? number.End : -1;
            if (measured is { } unit && StepMeasures.Plain(number.Value, unit) is { } plain
                && PerJarWords.Find(text[number.Start..own]) is null) // "1 teaspoon a quart"
            {
                if (before is { } first && first.Volume == plain.Volume && (text.AsSpan(first.End, number.Start - first.End).IsWhiteSpace() || IsAnotherAmount(text[first.End..number.Start], first.High, plain.High)))
                {
                    return (first.Start, own);
                }

                before = (number.Start, own, plain.Volume, plain.High);
            }
        }

        return null;
    }

    // "4 cups (make that 8)": in brackets, behind words of correction alone.
    private bool IsCorrection(string text, PrintedNumber number)
    {
        int open = text.LastIndexOf('(', number.Start);
        return open >= 0 && number.Next(text) < text.Length && text[number.Next(text)] == ')'
            && PlacedWord.Of(text[open..number.Start]) is [_, ..] between && between.TrueForAll(word => _again.Contains(word.Plain));
    }

    // "4 cups (or 8 cups)", "2 cups/4 cups": not the same amount in another unit.
    private bool IsAnotherAmount(string between, double first, double second)
    {
        bool other = PlacedWord.Of(between) is [.., var last] ? _again.Contains(last.Plain) && between.AsSpan().ContainsAny('(', '[') : between.Trim() == "/";
        return other && Math.Max(first, second) > (1 + _rounding) * Math.Min(first, second);
    }

    private static (SourceSpan Span, string Words) At(IngredientLine line, (int Start, int End) place) =>
        (line.Text.Map(place.Start, place.End), line.Text.Text[place.Start..place.End]);

    // Words of the foods that were read from a line.
    private static HashSet<string> Named(List<BatchItem> own) =>
        [.. own.SelectMany(item => WordFolding.Words(item.Ingredient.Food + " " + item.Food?.Name + " " + string.Join(' ', item.Ingredient.Alternatives.Select(other => other.Food + " " + other.Words))).Select(WordFolding.Singular))];

    private static List<BatchItem> Own(IngredientLine line, Batch batch) =>
        [.. batch.Items.Where(item => ReferenceEquals(item.Ingredient.Line, line))];

    // Beef and beef broth, tomato and tomato juice: the words of one food within another.
    private bool Kin(BatchItem item, FoodRow food) => item.Food is { } own && own.Group == food.Group && own.Process == food.Process && own.Acidity == food.Acidity && own.Group != "acid"
        && (!_plain.Contains(food.Group) || WordFolding.Words(own.Name).Intersect(WordFolding.Words(food.Name), StringComparer.Ordinal).Any());

    private bool Tool(string text, int end)
    {
        string after = text[end..].TrimStart();
        string next = new([.. after.TakeWhile(char.IsLetter)]);
        return next.Length > 0 && (_words.Is("step-tool", next.ToLowerInvariant()) || _words.Is("equipment", next.ToLowerInvariant()));
    }
}
