using System.Buffers;
using System.Collections.Immutable;
using ShelfSafe.Foods;
using ShelfSafe.Reading;
using ShelfSafe.Steps;

namespace ShelfSafe.Verdict;

/// <summary>What the steps do with heat before and after the jars are filled.</summary>
/// <remarks>
/// Only a canner is published for filled jars, so any other heat that a step gives them is a finding, whatever it is called.
/// A food whose process was set for a hot pack must be said to be heated before it is packed. Source: USDA AIB 539 (2015) Guide 1 p. 1-8 to 1-23.
/// </remarks>
internal sealed class JarSteps
{
    /// <summary>Fact: filled jars get heat that is no canner's.</summary>
    public const string OtherHeat = "unsafe-other-heat";

    /// <summary>Fact: the food is heated before the jars are filled.</summary>
    public const string Heated = "heated-before-filling";

    /// <summary>Fact: the steps fill jars.</summary>
    public const string Filled = "jars-filled";

    /// <summary>Fact: after the jars are filled a canner, a bath or a process is named.</summary>
    public const string Canner = "canner-named";

    /// <summary>Fact: after the jars are filled pressure is named.</summary>
    public const string Pressure = "pressure-named";

    private const int Near = 2; // words
    private readonly LineWordTable _words;
    private readonly ReadTexts _texts;
    private readonly Denials _denials;
    private readonly JarFilling _fillings;
    private readonly TextNote<bool> _namesJar;
    private readonly TextNote<Filling> _filling;
    private readonly TextNote<PlacedWord?> _otherAfterFill;
    private readonly TextNote<PlacedWord?> _other;
    private readonly TextNote<PlacedWord?> _canner;
    private readonly TextNote<PlacedWord?> _pressure;
    private readonly TextNote<PlacedWord?> _cannerAfterFill;
    private readonly TextNote<PlacedWord?> _pressureAfterFill;

    /// <summary>Prepares the notes that it takes of sentences.</summary>
    public JarSteps(LineWordTable words, ReadTexts texts)
    {
        (_words, _texts, _denials, _fillings) = (words, texts, new(words), new(words));
        SearchValues<string> jars = SearchValues.Create([.. words.Of("jar-word"), .. words.Of("jar-size")], StringComparison.OrdinalIgnoreCase);
        _namesJar = texts.Note(text => text.Text.AsSpan().ContainsAny(jars));
        _filling = texts.Note(FillingOf);
        _otherAfterFill = texts.Note(text => OtherIn(text, Math.Max(_filling.Of(text).At, 0)));
        _other = texts.Note(text => OtherIn(text, 0));
        _canner = texts.Note(text => Named(text, "heat-named", 0));
        _pressure = texts.Note(text => Named(text, "heat-pressure", 0));
        _cannerAfterFill = texts.Note(text => Named(text, "heat-named", Math.Max(_filling.Of(text).At, 0)));
        _pressureAfterFill = texts.Note(text => Named(text, "heat-pressure", Math.Max(_filling.Of(text).At, 0)));
    }

    // The word by which a sentence fills jars, or -1, and the word for heat that stands before it.
    private sealed record Filling(int At, PlacedWord? Heat);

    /// <summary>The facts of a part, each at most once.</summary>
    /// <param name="part">The part.</param>
    /// <param name="facts">Facts already known; sentences about serving say nothing about the jar.</param>
    public IEnumerable<StepFact> Find(RecipePart part, ImmutableArray<StepFact> facts)
    {
        // Most dishes never come near a jar.
        if (!part.Steps.Any(step => _namesJar.Of(_texts.Of(step.Text))))
        {
            return [];
        }

        StepFact? filled = null;
        StepFact?[] found = new StepFact?[4]; // heated, other heat, canner, pressure: each at its first place
        ServingSteps serving = new(facts);
        StepFact? later = LaterSteps.First(facts);
        foreach (StepSentence sentence in part.Steps)
        {
            if (sentence.Role != StepRole.Step || serving.Outside(sentence))
            {
                continue;
            }

            if (filled is not null && later is not null && LaterSteps.IsAt(sentence, later))
            {
                break; // what is done with the jar some other day
            }

            filled = Read(sentence, filled, found);
        }

        return [.. found.Prepend(filled).OfType<StepFact>()];
    }

    // Notes what a sentence tells; the fact that jars are filled once they are.
    private StepFact? Read(StepSentence sentence, StepFact? filled, StepFact?[] found)
    {
        ReadText read = _texts.Of(sentence.Text);
        TextNote<PlacedWord?> other = filled is null ? _otherAfterFill : _other;
        if (filled is null)
        {
            Filling filling = _filling.Of(read);
            found[0] ??= Fact(Heated, sentence, filling.Heat);
            filled = Fact(Filled, sentence, filling.At < 0 ? null : read.Placed[filling.At]);
        }

        if (filled is not null)
        {
            found[1] ??= Fact(OtherHeat, sentence, other.Of(read));
            bool first = ReferenceEquals(filled.Sentence, sentence);
            found[2] ??= Fact(Canner, sentence, (first ? _cannerAfterFill : _canner).Of(read));
            found[3] ??= Fact(Pressure, sentence, (first ? _pressureAfterFill : _pressure).Of(read));
        }

        return filled;
    }

    // "Fill loosely with raw beef, leaving 1 inch headspace": only a jar has headspace, so the jar need not be named again.
    private Filling FillingOf(ReadText text)
    {
        int jar = _fillings.At(text.Placed);
        int fill = jar < 0 && First(text.Placed, "headspace-word") >= 0 ? First(text.Placed, "jar-fill") : jar;
        return new(fill, HeatIn(text.Placed, 0, fill < 0 ? text.Placed.Count : fill));
    }

    private static StepFact? Fact(string id, StepSentence sentence, PlacedWord? word) => word is { } at
        ? new(id, sentence, sentence.Text.Map(at.Start, at.End), sentence.Text.Text[at.Start..at.End])
        : null;

    // Heat for the food: not for the water, the jars or the lids, and not the heat it already has ("boiling water").
    private PlacedWord? HeatIn(IReadOnlyList<PlacedWord> all, int from, int to)
    {
        for (int i = from; i < to; i++)
        {
            if (_words.Is("heat-food", all[i].Plain) && !IsOfTheMedium(all, i) && !_denials.OfHeat(all, i))
            {
                return all[i];
            }
        }

        return null;
    }

    private bool IsOfTheMedium(IReadOnlyList<PlacedWord> all, int heat)
    {
        bool adjective = all[heat].Plain.EndsWith("ing", StringComparison.Ordinal) && heat + 1 < all.Count && _words.Is("heat-medium", all[heat + 1].Plain);
        return adjective || (all.Skip(heat + 1).Take(3).FirstOrDefault(one => !_words.Is("step-article", one.Plain)).Plain is { } next && _words.Is("heat-medium", next));
    }

    // A device that is no canner, or a verb of heat in a sentence that names no canner.
    private PlacedWord? OtherIn(ReadText read, int from)
    {
        IReadOnlyList<PlacedWord> all = read.Placed;
        if (First(all, "jar-later") >= 0)
        {
            return null;
        }

        bool canner = First(all, "heat-canner") >= 0;
        for (int i = from; i < all.Count; i++)
        {
            bool device = _words.Is("heat-device", all[i].Plain) && !(canner && _words.Is("heat-beside-canner", all[i].Plain));
            bool adjective = i + 1 < all.Count && (_words.Is("heat-liquid", all[i + 1].Plain) || IsOfAFood(all, i, read) || IsOfALiquid(all, i));
            bool verb = _words.Is("heat-verb", all[i].Plain) && !canner && !adjective;
            if ((device || (verb && !IsForAnotherFilling(all, i, read))) && !_denials.OfHeat(all, i))
            {
                return all[i];
            }
        }

        return null;
    }

    // "Pack the smoked trout", "fill the jars with the cooked beans": a state of the food, told by an article before it.
    private bool IsOfAFood(IReadOnlyList<PlacedWord> all, int heat, ReadText read) =>
        heat > 0 && _words.Is("step-article", all[heat - 1].Plain) && all[heat].Plain.EndsWith("ed", StringComparison.Ordinal)
        && read.Mentions.Any(mention => mention.Start == all[heat + 1].Start || (mention.Start == all[heat].Start && mention.End > all[heat].End));

    // "Fill the jars with the tomatoes and the liquid they cooked in": what the liquid is, told behind it.
    private bool IsOfALiquid(IReadOnlyList<PlacedWord> all, int heat) =>
        all[heat].Plain.EndsWith("ed", StringComparison.Ordinal) && all[heat + 1].Plain == "in"
        && all.Take(heat).TakeLast(Near + 1).Any(word => _words.Is("heat-liquid", word.Plain)) && !all.Take(heat).TakeLast(Near).Any(word => _words.Is("jar-word", word.Plain));

    // "Heat the juice again, fill the jars": a food is heated, and a jar is filled behind it.
    private bool IsForAnotherFilling(IReadOnlyList<PlacedWord> all, int heat, ReadText read)
    {
        bool food = read.Mentions.Any(mention => mention.Start > all[heat].End && all.Count(word => word.Start > all[heat].End && word.Start < mention.Start) < Near);
        int fill = heat + 1;
        while (food && fill < all.Count && !_words.Is("jar-refill", all[fill].Plain))
        {
            fill++;
        }

        return food && fill < all.Count && !all.Skip(heat).Take(fill - heat).Any(word => _words.Is("jar-word", word.Plain)) && all.Skip(fill).Any(word => _words.Is("jar-word", word.Plain) || _words.Is("headspace-word", word.Plain));
    }

    // A canner or heat for the jars; "bring the vinegar to a boil" and "the boiling brine" are heat for a food.
    private PlacedWord? Named(ReadText read, string kind, int from)
    {
        IReadOnlyList<PlacedWord> all = read.Placed;
        bool food = read.Mentions.Any(static mention => mention.Match.Candidates.All(static food => food.Group != "water")) && !all.Any(word => _words.Is("jar-word", word.Plain));
        for (int i = from; i < all.Count; i++)
        {
            bool cooks = _words.Is("heat-food", all[i].Plain) && (food || (i + 1 < all.Count && _words.Is("heat-liquid", all[i + 1].Plain) && all[i + 1].Plain != "water"));
            if (_words.Is(kind, all[i].Plain) && !cooks)
            {
                return _denials.OfDevice(all, i) ? null : all[i];
            }
        }

        return null;
    }

    private int First(IReadOnlyList<PlacedWord> all, string kind)
    {
        for (int i = 0; i < all.Count; i++)
        {
            if (_words.Is(kind, all[i].Plain))
            {
                return i;
            }
        }

        return -1;
    }
}
