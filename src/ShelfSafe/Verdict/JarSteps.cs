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
internal sealed class JarSteps(LineWordTable words)
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

            List<PlacedWord> all = PlacedWord.Of(sentence.Text.Text);
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
    private int FillAt(List<PlacedWord> all)
    {
        int jar = all.FindIndex(one => words.Is("jar-word", one.Plain));
        jar = jar >= 0 ? jar : Enumerable.Range(1, Math.Max(0, all.Count - 1)).FirstOrDefault(i => IsLedJar(all[i - 1].Plain, all[i].Plain), -1);
        int fill = all.FindIndex(one => words.Is("jar-fill", one.Plain));
        bool empty = all.Exists(one => words.Is("jar-empty", one.Plain));
        return jar < 0 || fill < 0 || empty || _denials.OfHeat(all, fill) ? -1 : Math.Min(fill, jar);
    }

    // One pot, can or tin is a pan or a shop's tin, unless it was made ready as a jar is: "fill the pot with water", but "into hot tins".
    private bool IsLedJar(string lead, string word) =>
        words.Is("jar-size", word) && words.Is(words.Is("jar-or-pan", word) ? "jar-made-ready" : "jar-lead", lead);

    // Heat for the food: not for the water, the jars or the lids, and not the heat it already has ("boiling water").
    private PlacedWord? HeatIn(List<PlacedWord> all, int from, int to)
    {
        for (int i = from; i < to; i++)
        {
            bool adjective = all[i].Plain.EndsWith("ing", StringComparison.Ordinal) && i + 1 < all.Count && words.Is("heat-medium", all[i + 1].Plain);
            bool medium = all.Skip(i + 1).Take(3).FirstOrDefault(one => !words.Is("step-article", one.Plain)).Plain is { } next && words.Is("heat-medium", next);
            if (words.Is("heat-food", all[i].Plain) && !adjective && !medium && !_denials.OfHeat(all, i))
            {
                return all[i];
            }
        }

        return null;
    }

    // A device that is no canner, or a verb of heat in a sentence that names no canner.
    private PlacedWord? OtherIn(List<PlacedWord> all, int from)
    {
        if (all.Exists(one => words.Is("jar-later", one.Plain)))
        {
            return null;
        }

        bool canner = all.Exists(one => words.Is("heat-canner", one.Plain));
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

    private PlacedWord? Named(List<PlacedWord> all, string kind)
    {
        int at = all.FindIndex(one => words.Is(kind, one.Plain));
        return at >= 0 && !_denials.OfDevice(all, at) ? all[at] : null;
    }
}
