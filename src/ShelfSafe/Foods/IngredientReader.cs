using System.Collections.Immutable;
using ShelfSafe.Reading;

namespace ShelfSafe.Foods;

/// <summary>Reads one ingredient line into its foods, each with amount, package, preparation and meaning.</summary>
/// <remarks>Known gap: a line that hides a second amount in prose ("plus more if you like") keeps only the first for weighing.</remarks>
public sealed class IngredientReader
{
    private readonly FoodCatalogue _catalogue;
    private readonly LineWordTable _words;

    /// <summary>Makes a reader over the catalogue and the word tables.</summary>
    internal IngredientReader(FoodCatalogue catalogue, LineWordTable words)
    {
        _catalogue = catalogue;
        _words = words;
    }

    /// <summary>The foods of a line; never empty for a line with letters.</summary>
    public ImmutableArray<Ingredient> Read(IngredientLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        string text = line.Text.Text;
        LineState state = new(text.Length > 2_000 ? text[..2_000] : text);
        new LineScan(_words, _catalogue).Run(state);
        if (IsEquipment(state))
        {
            return [Make(line, state, (state.Start, state.End), new Unidentified(state.Phrase), notFood: true, shares: null, [])];
        }

        List<FoodPhrase> phrases = new PhraseSplitter(_words, _catalogue).Split(state);
        ImmutableArray<Ingredient>.Builder made = ImmutableArray.CreateBuilder<Ingredient>();
        foreach (FoodPhrase phrase in phrases)
        {
            made.Add(Make(line, state, (phrase.Start, phrase.End), phrase.Match, notFood: false, made.Count == 0 ? null : made[0].Food, phrase.Alternatives, phrase.Food));
        }

        return made.ToImmutable();
    }

    private bool IsEquipment(LineState state)
    {
        if (_catalogue.IsFood(state.Phrase))
        {
            string last = WordFolding.Words(state.Phrase) is [.., { } end] ? WordFolding.Singular(end) : string.Empty;
            return _words.Is("equipment", last) && !_catalogue.IsFood(last);
        }

        return WordFolding.Words(state.Phrase).Any(word => _words.Is("equipment", WordFolding.Singular(word)));
    }

    private static Ingredient Make(IngredientLine line, LineState state, (int Start, int End) at, FoodMatch match, bool notFood, string? shares, ImmutableArray<Alternative> alternatives, string? food = null)
    {
        bool carries = shares is null;
        return new(
            line,
            line.Text.Map(at.Start, Math.Max(at.Start + 1, at.End)),
            state.Text[at.Start..Math.Max(at.Start, at.End)].Trim(),
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
            line.AtServing || state.AtServing,
            notFood);
    }
}
