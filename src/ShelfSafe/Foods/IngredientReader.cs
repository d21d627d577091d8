using System.Collections.Immutable;
using ShelfSafe.Reading;

namespace ShelfSafe.Foods;

/// <summary>Reads one ingredient line into its foods, each with amount, package, preparation and meaning.</summary>
/// <remarks>Known gap: a line that hides a second amount in prose ("plus more if you like") keeps only the first for weighing.</remarks>
public sealed class IngredientReader
{
    /// <summary>Characters of one line that are read; no cook writes a longer one, and the rest is reported as unread by the reading room.</summary>
    private const int Longest = 2_000;

    private readonly LineCutter _cutter;
    private readonly FoodCatalogue _catalogue;
    private readonly LineWordTable _words;

    /// <summary>Makes a reader over the catalogue and the word tables.</summary>
    internal IngredientReader(FoodCatalogue catalogue, LineWordTable words)
    {
        _catalogue = catalogue;
        _words = words;
        _cutter = new(catalogue, words);
    }

    /// <summary>The foods of a line; never empty for a line with letters.</summary>
    public ImmutableArray<Ingredient> Read(IngredientLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        string text = line.Text.Text.Length > Longest ? line.Text.Text[..Longest] : line.Text.Text;
        ImmutableArray<Ingredient>.Builder made = ImmutableArray.CreateBuilder<Ingredient>();
        foreach ((int start, int end) in _cutter.Cut(text))
        {
            // What belongs to the other foods is blanked, so that offsets stay those of the line.
            Read(line, start == 0 && end == text.Length ? text : new string(' ', start) + text[start..end], made);
        }

        return made.ToImmutable();
    }

    private void Read(IngredientLine line, string text, ImmutableArray<Ingredient>.Builder made)
    {
        LineState state = new(text);
        new LineScan(_words, _catalogue).Run(state);
        if (IsEquipment(state))
        {
            made.Add(Make(line, state, (state.Start, state.End), new Unidentified(state.Phrase), notFood: true, shares: null, []));
            return;
        }

        string? shares = null;
        foreach (FoodPhrase phrase in new PhraseSplitter(_words, _catalogue).Split(state))
        {
            made.Add(Make(line, state, (phrase.Start, phrase.End), phrase.Match, notFood: false, shares, phrase.Alternatives, phrase.Food));
            shares ??= phrase.Food;
        }
    }

    private bool IsEquipment(LineState state)
    {
        if (_catalogue.IsFood(state.Phrase))
        {
            string last = WordFolding.Words(state.Phrase) is [.., { } end] ? WordFolding.Singular(end) : string.Empty;
            return _words.Is("equipment", last) && !_catalogue.IsFood(last);
        }

        string[] words = WordFolding.Words(state.Phrase);
        bool vessel = state.Measures is [{ Unit: "jar" or "bottle" }, ..] && words.All(word => char.IsDigit(word[0]) || _words.Is("filler", word) || _words.Is("prep", word));
        return vessel || words.Any(word => _words.Is("equipment", WordFolding.Singular(word)));
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
