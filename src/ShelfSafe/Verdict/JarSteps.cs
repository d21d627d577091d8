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
internal sealed class JarSteps(LineWordTable words, ReadTexts texts)
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

    private readonly Denials _denials = new(words);
    private readonly SearchValues<string> _jars = SearchValues.Create([.. words.Of("jar-word"), .. words.Of("jar-size")], StringComparison.OrdinalIgnoreCase);

    /// <summary>The facts of a part, each at most once.</summary>
    /// <param name="part">The part.</param>
    /// <param name="facts">Facts already known; sentences about serving say nothing about the jar.</param>
    public IEnumerable<StepFact> Find(RecipePart part, ImmutableArray<StepFact> facts)
    {
        // Most dishes never come near a jar.
        if (!part.Steps.Any(step => step.Text.Text.AsSpan().ContainsAny(_jars)))
        {
            return [];
        }

        StepFact? filled = null;
        StepFact?[] found = new StepFact?[4]; // heated, other heat, canner, pressure: each at its first place
        foreach (StepSentence sentence in part.Steps)
        {
            if (sentence.Role != StepRole.Step || ServingSteps.Outside(sentence, facts))
            {
                continue;
            }

            if (filled is not null && LaterSteps.At(sentence, facts) is not null)
            {
                break; // what is done with the jar some other day
            }

            IReadOnlyList<PlacedWord> all = texts.Of(sentence.Text.Text).Placed;
            int fill = filled is null ? FillAt(all) : -1;
            if (filled is null)
            {
                found[0] ??= Fact(Heated, sentence, HeatIn(all, 0, fill < 0 ? all.Count : fill));
                filled = Fact(Filled, sentence, fill < 0 ? null : all[fill]);
            }

            if (filled is not null)
            {
                found[1] ??= Fact(OtherHeat, sentence, OtherIn(all, Math.Max(fill, 0)));
                found[2] ??= Fact(Canner, sentence, Named(all, "heat-named"));
                found[3] ??= Fact(Pressure, sentence, Named(all, "heat-pressure"));
            }
        }

        return [.. found.Prepend(filled).OfType<StepFact>()];
    }

    private static StepFact? Fact(string id, StepSentence sentence, PlacedWord? word) => word is { } at
        ? new(id, sentence, sentence.Text.Map(at.Start, at.End), sentence.Text.Text[at.Start..at.End])
        : null;

    // The first word of filling in a sentence that names a jar and does not wash it; "into hot pints" names one, "2 pints of water" does not.
    private int FillAt(IReadOnlyList<PlacedWord> all)
    {
        int fill = First(all, "jar-fill");
        if (fill < 0)
        {
            return -1;
        }

        int jar = First(all, "jar-word");
        for (int i = 1; i < all.Count && jar < 0; i++)
        {
            jar = IsLedJar(all[i - 1].Plain, all[i].Plain) ? i : -1;
        }

        return jar < 0 || First(all, "jar-empty") >= 0 || _denials.OfHeat(all, fill) ? -1 : Math.Min(fill, jar);
    }

    // One pot, can or tin is a pan or a shop's tin, unless it was made ready as a jar is: "fill the pot with water", but "into hot tins".
    private bool IsLedJar(string lead, string word) =>
        words.Is("jar-size", word) && words.Is(words.Is("jar-or-pan", word) ? "jar-made-ready" : "jar-lead", lead);

    // Heat for the food: not for the water, the jars or the lids, and not the heat it already has ("boiling water").
    private PlacedWord? HeatIn(IReadOnlyList<PlacedWord> all, int from, int to)
    {
        for (int i = from; i < to; i++)
        {
            if (words.Is("heat-food", all[i].Plain) && !IsOfTheMedium(all, i) && !_denials.OfHeat(all, i))
            {
                return all[i];
            }
        }

        return null;
    }

    private bool IsOfTheMedium(IReadOnlyList<PlacedWord> all, int heat)
    {
        bool adjective = all[heat].Plain.EndsWith("ing", StringComparison.Ordinal) && heat + 1 < all.Count && words.Is("heat-medium", all[heat + 1].Plain);
        return adjective || (all.Skip(heat + 1).Take(3).FirstOrDefault(one => !words.Is("step-article", one.Plain)).Plain is { } next && words.Is("heat-medium", next));
    }

    // A device that is no canner, or a verb of heat in a sentence that names no canner.
    private PlacedWord? OtherIn(IReadOnlyList<PlacedWord> all, int from)
    {
        if (First(all, "jar-later") >= 0)
        {
            return null;
        }

        bool canner = First(all, "heat-canner") >= 0;
        for (int i = from; i < all.Count; i++)
        {
            bool device = words.Is("heat-device", all[i].Plain) && !(canner && words.Is("heat-beside-canner", all[i].Plain));
            bool adjective = i + 1 < all.Count && words.Is("heat-liquid", all[i + 1].Plain);
            bool verb = words.Is("heat-verb", all[i].Plain) && !canner && !adjective;
            if ((device || verb) && !_denials.OfHeat(all, i))
            {
                return all[i];
            }
        }

        return null;
    }

    private PlacedWord? Named(IReadOnlyList<PlacedWord> all, string kind)
    {
        int at = First(all, kind);
        return at >= 0 && !_denials.OfDevice(all, at) ? all[at] : null;
    }

    private int First(IReadOnlyList<PlacedWord> all, string kind)
    {
        for (int i = 0; i < all.Count; i++)
        {
            if (words.Is(kind, all[i].Plain))
            {
                return i;
            }
        }

        return -1;
    }
}
