using System.Collections.Immutable;
using System.Runtime.InteropServices;
using ShelfSafe.Reading.Amounts;
using ShelfSafe.Reading;

namespace ShelfSafe.Foods;

/// <summary>Reads one ingredient line into its foods, each with amount, package, preparation and meaning.</summary>
/// <remarks>Known gap: a line that hides a second amount in prose ("plus more if you like") keeps only the first for weighing.</remarks>
public sealed class IngredientReader
{
    /// <summary>Characters of one line that are read; no cook writes a longer one, and the rest is reported as unread by the reading room.</summary>
    private const int Longest = 2_000;

    private static readonly IngredientLine s_anyLine = new(new(string.Empty, [], []), null, AtServing: false, FromProse: false); // each line takes its place
    private readonly LineCutter _cutter;
    private readonly FoodCatalogue _catalogue;
    private readonly LineWordTable _words;
    private readonly ReadTexts _texts;
    private readonly TextNote<LineFood[]> _foods;

    /// <summary>Makes a reader over the catalogue and the word tables.</summary>
    internal IngredientReader(FoodCatalogue catalogue, LineWordTable words, ReadTexts texts)
    {
        _texts = texts;
        _foods = texts.Note(text => Work(text.Text));
        _catalogue = catalogue;
        _words = words;
        _cutter = new(catalogue, words);
    }

    /// <summary>The foods of a line; never empty for a line with letters.</summary>
    public ImmutableArray<Ingredient> Read(IngredientLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        LineFood[] foods = _foods.Of(_texts.Of(line.Text));
        Ingredient[] read = new Ingredient[foods.Length];
        for (int i = 0; i < read.Length; i++)
        {
            LineFood food = foods[i];
            read[i] = food.Read with
            {
                Line = line,
                Span = line.Text.Map(food.Start, Math.Max(food.Start + 1, food.End)),
                AtServing = line.AtServing || (food.Read.AtServing && !IsUndone(_texts.Of(line.Text))),
                Entry = i,
            };
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(read);
    }

    // "Cream to serve, stirred into the pot", "noodles for serving or to put in the jars": what follows the serving puts it into the jar.
    private bool IsUndone(ReadText line)
    {
        int serving = line.Text.IndexOf("serv", StringComparison.OrdinalIgnoreCase);
        serving = serving < 0 ? line.Text.IndexOf(" table", StringComparison.OrdinalIgnoreCase) : serving;
        return serving >= 0 && line.Placed.Any(word => word.Start > serving && _words.Is("serving-undone", word.Plain));
    }

    private LineFood[] Work(string line)
    {
        string text = line.Length > Longest ? line[..Longest] : line;
        List<LineFood> made = [];
        foreach ((int start, int end) in _cutter.Cut(text))
        {
            // What belongs to the other foods is blanked, so that offsets stay those of the line.
            Read(start == 0 && end == text.Length ? text : new string(' ', start) + text[start..end], made);
        }

        return [.. made];
    }

    private void Read(string text, List<LineFood> made)
    {
        LineState state = new(text);
        new LineScan(_words, _catalogue).Run(state);
        if (IsEquipment(state))
        {
            made.Add(Make(state, (state.Start, state.End), new Unidentified(state.Phrase), notFood: true, shares: null, []));
            return;
        }

        if (made.Count > 0 && LineCutter.NamesTheSame(state.Phrase))
        {
            made.Add(Make(state, (state.Start, state.End), made[^1].Read.Match, notFood: false, shares: null, [], made[^1].Read.Food)); // "+ 500 g waxy ones"
            return;
        }

        bool each = SkipEach(state);
        string? shares = null;
        List<FoodPhrase> phrases = new PhraseSplitter(_words, _catalogue).Split(state);
        if (each && phrases is [{ } one])
        {
            // "3 cups each of red and green peppers" are six cups of peppers.
            phrases.AddRange(Enumerable.Repeat(one, Joints(state.Phrase)));
        }

        foreach (FoodPhrase phrase in phrases)
        {
            made.Add(Make(state, (phrase.Start, phrase.End), phrase.Match, notFood: false, shares, phrase.Alternatives, phrase.Food));
            shares ??= each || state.Measures is [{ Unit: "part" }, ..] ? null : phrase.Food; // "equal parts vinegar and water"
        }
    }

    // "3 cups each of onions and peppers": the amount is that of each food.
    private static bool SkipEach(LineState state)
    {
        int start = NumberScan.Skip(state.Text, state.Start);
        if (state.Measures.Count == 0 || NumberScan.Word(state.Text, start, out int end) is not "each" || end >= state.End)
        {
            return false;
        }

        start = NumberScan.Skip(state.Text, end);
        state.Start = NumberScan.Word(state.Text, start, out end) is "of" ? NumberScan.Skip(state.Text, end) : start;
        return true;
    }

    private static int Joints(string phrase) =>
        phrase.Split(" and ").Length - 1 + phrase.Split(" & ").Length - 1 + phrase.Split(", ").Length - 1;

    private bool IsEquipment(LineState state)
    {
        string[] words = WordFolding.Words(state.Phrase);
        if (NamesShapeOfFood(words))
        {
            return false;
        }

        if (IsClosedVessel(words))
        {
            return true;
        }

        if (_catalogue.IsFood(state.Phrase))
        {
            string last = words is [.., { } end] ? WordFolding.Singular(end) : string.Empty;
            return _words.Is("equipment", last) && !_catalogue.IsFood(last);
        }

        bool vessel = state.Measures is [{ Unit: "jar" or "bottle" }, ..] && words.All(word => char.IsDigit(word[0]) || _words.Is("filler", word) || _words.Is("prep", word));
        return vessel || IsVessel(state, words) || Array.Exists(words, IsTool) && (IsTool(Head(words)) || _words.Is("jar-word", Head(words)) || _words.Is("serve-verb", words[0]) || words.All(word => IsTool(word) || _words.Is("filler", word) || _words.Is("prep", word) || _words.Is("size", word) || !char.IsLetter(word[0])));
    }

    // "Eight pineapple rings", "a lamb rack": what else is a tool is the shape of the food before it.
    private bool NamesShapeOfFood(string[] words) =>
        words is [.. var before, { } last] && _words.Is("food-shape", WordFolding.Singular(last)) && Array.Exists(before, _catalogue.IsFood);

    // "20 beer bottles with caps": the vessel that will hold the food, and nothing in it.
    private bool IsClosedVessel(string[] words) =>
        Array.IndexOf(words, "with") is > 0 and var with && _words.Unit(words[with - 1], 0, out _) is "jar" or "bottle"
        && with < words.Length - 1 && words[(with + 1)..].All(word => _words.Is("closure", word) || _words.Is("filler", word) || word is "and" or "or");

    // "Eight greased pint jars", "a stone jar", "a brine-filled bag": the line ends in what holds the food, and names none.
    private bool IsVessel(LineState state, string[] words)
    {
        string last = WordFolding.Words(state.Text) is [.., { } end] ? end : string.Empty;
        return _words.Unit(last, 0, out _) is "jar" or "bag" or "bottle" or "package"
            && !state.Text.AsSpan().ContainsAnyInRange('\uD83C', '\uD83E') // a picture sign may be a food
            && (Array.Exists(words, static word => word == "filled") || !Array.Exists(words, word => _catalogue.IsFood(word) || IsUnknown(word)));
    }

    // "Zorblatt, 1 bag": a word that no table knows may be the food.
    private bool IsUnknown(string word) => word.Length > 2 && char.IsLetter(word[0]) && !_words.Knows(word) && !_words.Knows(WordFolding.Singular(word)) && _words.Unit(word, 0, out _) is null && !_catalogue.IsPlain(word);

    // "Square of muslin", "string to tie it with", "lids and rings": what the line is about stands before the little word, or behind "of".
    private static string Head(string[] words)
    {
        int of = Array.IndexOf(words, "of");
        string[] from = of >= 0 && of < words.Length - 1 ? words[(of + 1)..] : words;
        int end = Array.FindIndex(from, word => word is "with" or "for" or "to" or "in" or "from" or "and" or "or" or "that" or "large" or "big" or "fitted" or "lined");
        return end > 0 ? from[end - 1] : from[^1];
    }

    private bool IsTool(string word) => _words.Is("equipment", WordFolding.Singular(word));

    private static LineFood Make(LineState state, (int Start, int End) at, FoodMatch match, bool notFood, string? shares, ImmutableArray<Alternative> alternatives, string? food = null)
    {
        bool carries = shares is null;
        int end = WithoutBracket(state, at.Start, at.End);
        return new(at.Start, end, new(
            s_anyLine,
            default,
            state.Text[at.Start..end].Trim(),
            food ?? string.Join(' ', WordFolding.Words(state.Phrase)),
            match,
            carries ? state.Measures.FirstOrDefault() : null,
            carries ? [.. state.Measures] : [],
            carries ? state.Package : null,
            state.Preparation.Length == 0 ? null : state.Preparation,
            state.Size,
            state.Optional,
            state.ToTaste,
            alternatives,
            state.JuiceOrZest,
            state.Measures.Count == 0 ? null : shares,
            state.AtServing,
            notFood));
    }

    // "Milk (optional)", "vinegar (5 %)": what stands in brackets behind a food is not its name.
    private static int WithoutBracket(LineState state, int start, int end)
    {
        foreach ((int From, int To) hole in state.Holes)
        {
            if (hole.From > start && hole.From < end && hole.To >= end && state.Text.AsSpan(start, hole.From - start).Trim().Length > 0)
            {
                return start + state.Text.AsSpan(start, hole.From - start).TrimEnd().Length;
            }
        }

        return Math.Max(start, end);
    }

    /// <summary>One food as read from the text of a line; its place and the heading of the line are added for each line anew.</summary>
    private readonly record struct LineFood(int Start, int End, Ingredient Read);
}
