using System.Collections.Immutable;
using ShelfSafe.Foods;
using ShelfSafe.Pack;
using ShelfSafe.Reading;
using ShelfSafe.Steps;

namespace ShelfSafe.Verdict;

/// <summary>Steps of the table: what is only served beside, or added when serving, is no part of the jar.</summary>
/// <remarks>Made once for all sentences of a dish, so that a long text costs no more a sentence than a short one.</remarks>
internal sealed class ServingSteps
{
    /// <summary>Fact: the words are for the day the jar is opened, if they stand behind the canner or in a note.</summary>
    public const string Later = "served-later";

    private const string IntoJar = "into-the-jar";

    private readonly Dictionary<StepSentence, List<StepFact>>? _told; // what a sentence says of serving
    private readonly HashSet<StepSentence>? _into; // sentences of what goes into the jars
    private readonly StepFact? _filled;
    private readonly StepFact? _closed;
    private readonly StepFact? _later;
    private readonly bool _dry;
    private readonly int _canner = int.MaxValue;

    /// <summary>Sorts the facts of a dish.</summary>
    /// <param name="facts">Its facts; where jars are filled, "over the top" is no serving unless the sentence says so.</param>
    /// <param name="dry">Whether every listed food is dry, so that "To make: simmer with 8 cups water" needs no jar before it.</param>
    public ServingSteps(ImmutableArray<StepFact> facts, bool dry = false)
    {
        StepFact? mixed = null;
        foreach (StepFact fact in facts)
        {
            _filled = fact.Id == JarSteps.Filled ? fact : _filled;
            mixed ??= fact.Id == "dry-mixed" ? fact : null;
            if (fact.Id == IntoJar)
            {
                (_into ??= new(ReferenceEqualityComparer.Instance)).Add(fact.Sentence);
            }

            if (fact.Id is "serve-with" or "at-serving" or "served-fresh" or LaterSteps.Used or Later)
            {
                _told ??= new(ReferenceEqualityComparer.Instance);
                (_told.TryGetValue(fact.Sentence, out List<StepFact>? told) ? told : _told[fact.Sentence] = []).Add(fact);
            }
        }

        (_dry, _closed, _later) = (dry, _filled ?? mixed, LaterSteps.First(facts));
        foreach (StepFact fact in facts)
        {
            if (fact.Span.Start < _canner && IsCanner(fact))
            {
                _canner = fact.Span.Start;
            }
        }
    }

    /// <summary>The facts without those by which a note tells what is done with the opened jar: "mash with butter for a side dish".</summary>
    /// <param name="facts">Facts of the dish, those of the jars among them.</param>
    /// <param name="states">Facts that tell what becomes of the food.</param>
    public static ImmutableArray<StepFact> WithoutLater(ImmutableArray<StepFact> facts, RuleList states)
    {
        ServingSteps serving = new(facts);
        return serving._told is null ? facts
            : facts.RemoveAll(fact => states.Contains(fact.Id) && serving.SaysLater(fact.Sentence) && !serving.PutsIntoTheJar(fact.Sentence) && serving.IsBehindTheCanner(fact.Sentence));
    }

    /// <summary>Whether a sentence tells what goes into the jars, whatever it says of serving: "serve with cream stirred in before you fill the jars".</summary>
    public bool PutsIntoTheJar(StepSentence sentence) => _into?.Contains(sentence) is true;

    /// <summary>Whether a sentence speaks of serving alone.</summary>
    public bool Outside(StepSentence sentence)
    {
        if (PutsIntoTheJar(sentence))
        {
            return false;
        }

        if (SaysLater(sentence) && (sentence.Role == StepRole.Note || IsBehindTheCanner(sentence)))
        {
            return true;
        }

        foreach (StepFact fact in _told?.TryGetValue(sentence, out List<StepFact>? told) is true ? told : [])
        {
            if (fact.Id != Later
                && (fact.Id is "served-fresh" or LaterSteps.Used || _filled is null || SaysServing(sentence.Text.Text, fact.Span.Start > _filled.Span.Start)))
            {
                return true;
            }
        }

        return (_closed is not null || _dry) && _later is not null && LaterSteps.IsAt(sentence, _later) && !(_closed?.Span.Start > _later.Span.Start);
    }

    /// <summary>Whether a sentence outside the steps speaks of the table, of trade or of the past, and of nothing that goes into the jar.</summary>
    /// <param name="sentence">A sentence of an introduction, a note or a part about serving.</param>
    /// <param name="read">Its words.</param>
    public bool IsBeside(StepSentence sentence, ReadText read) => !PutsIntoTheJar(sentence)
        && (sentence.Role == StepRole.Serving || Outside(sentence) || read.Has("serve-later") || (read.Has("note-beside") && !read.Has("note-adds")));

    private bool SaysLater(StepSentence sentence) =>
        _told?.TryGetValue(sentence, out List<StepFact>? told) is true && told.Exists(static fact => fact.Id == Later);

    // What gives the filled jars their heat; where no step fills jars, what prints a time for the canner.
    private bool IsCanner(StepFact fact) => _filled is not null
        ? fact.Id is JarSteps.Canner or JarSteps.Pressure
        : LaterSteps.IsCanner(fact) && fact.Sentence.Text.Text.AsSpan().ContainsAnyInRange('0', '9');

    private bool IsBehindTheCanner(StepSentence sentence) => _canner < sentence.Text.Map(0, Math.Min(1, sentence.Text.Text.Length)).Start;

    private static bool SaysServing(string text, bool after) =>
        (after && text.Contains("garnish", StringComparison.OrdinalIgnoreCase)) || (!text.Contains(" now", StringComparison.OrdinalIgnoreCase) && (text.Contains("serv", StringComparison.OrdinalIgnoreCase) || text.Contains("open", StringComparison.OrdinalIgnoreCase)
        || text.Contains("reheat", StringComparison.OrdinalIgnoreCase) || Eats(text) || text.Contains("table", StringComparison.OrdinalIgnoreCase)));

    // "Eat with bread", but not "heat" or "great".
    private static bool Eats(string text)
    {
        int at = text.IndexOf("eat", StringComparison.OrdinalIgnoreCase);
        while (at > 0 && char.IsLetter(text[at - 1]))
        {
            at = text.IndexOf("eat", at + 1, StringComparison.OrdinalIgnoreCase);
        }

        return at >= 0;
    }
}
