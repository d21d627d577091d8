using System.Collections.Immutable;
using ShelfSafe.Foods;
using ShelfSafe.Reading;
using ShelfSafe.Steps;

namespace ShelfSafe.Verdict;

/// <summary>Finds where a text goes over to what is done with a dry mix some other day: under "To make" stand water and a pot.</summary>
internal sealed class LaterSteps(LineWordTable words, ReadTexts texts)
{
    /// <summary>Fact: the words behind it are for the day the mix is cooked.</summary>
    public const string Fact = "made-later";

    /// <summary>Fact: the words tell what a dry mix is used on: "rub it on the ribs", "use 2 tbsp for a pound of beef".</summary>
    public const string Used = "mix-used";

    /// <summary>The facts without uses that may speak of what goes into the jar.</summary>
    /// <param name="part">The dish.</param>
    /// <param name="facts">All its facts.</param>
    /// <param name="isDryMix">Whether the title names a dry mix.</param>
    /// <remarks>A use counts only beside no canner, and where nothing is said of jars or of keeping from it on but for what is left of the mix:
    /// what was rubbed on meat that is dried and kept is no dry mix any more.</remarks>
    public ImmutableArray<StepFact> OwnUses(RecipePart part, ImmutableArray<StepFact> facts, bool isDryMix)
    {
        int last = -1;
        HashSet<StepSentence> rest = new(ReferenceEqualityComparer.Instance);
        HashSet<StepSentence> put = new(ReferenceEqualityComparer.Instance);
        foreach (StepFact fact in facts)
        {
            _ = fact.Id switch
            {
                "rest-kept" => rest.Add(fact.Sentence),
                "mix-kept" => put.Add(fact.Sentence),
                _ => false,
            };
        }

        foreach (StepSentence sentence in part.Steps)
        {
            if ((texts.Of(sentence.Text).Has("jar-word") || put.Contains(sentence)) && !rest.Contains(sentence))
            {
                last = sentence.Text.Map(0, sentence.Text.Text.Length).End;
            }
        }

        return isDryMix && !NamesCanner(facts)
            ? facts.RemoveAll(fact => fact.Id == Used && fact.Span.Start < last)
            : facts.RemoveAll(static fact => fact.Id == Used);
    }

    /// <summary>The first sentence under such a heading or label that names a liquid, as a fact, or <see langword="null"/>.</summary>
    public StepFact? Find(RecipePart part)
    {
        string? last = null;
        bool later = false;
        foreach (StepSentence sentence in part.Steps)
        {
            if (!ReferenceEquals(sentence.Heading, last))
            {
                last = sentence.Heading; // neighbours stand under one and the same
                later = last is not null && IsLater(Last(last));
            }

            if (later && texts.Of(sentence.Text).Has("later-liquid"))
            {
                return new(Fact, sentence, sentence.Text.Map(0, sentence.Text.Text.Length), sentence.Text.Text);
            }
        }

        return null;
    }

    /// <summary>Whether the text names a canner anywhere.</summary>
    public static bool NamesCanner(ImmutableArray<StepFact> facts) => facts.Any(IsCanner);

    /// <summary>Whether a fact is that of a canner.</summary>
    public static bool IsCanner(StepFact fact) => fact.Id is "pressure-canned" or "boiling-water-canned" or "steam-canned";

    private bool IsLater(string heading)
    {
        if (words.Is("later-heading", heading))
        {
            return true;
        }

        foreach (string lead in words.Of("later-lead"))
        {
            if (heading.StartsWith(lead, StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }

    // "Close tightly. To make: simmer ..." is a label of two sentences.
    private static string Last(string heading) => heading.Trim(' ', ':', '.', '*').Split('.')[^1].Trim().ToLowerInvariant();

    /// <summary>The first such words.</summary>
    /// <remarks>None where a canner is named: then the text may speak of this day's jars.</remarks>
    public static StepFact? First(ImmutableArray<StepFact> facts) => NamesCanner(facts) ? null : facts.FirstOrDefault(static fact => fact.Id == Fact);

    /// <summary>Whether a sentence stands at or behind them.</summary>
    public static bool IsAt(StepSentence sentence, StepFact later) => sentence.Text.Map(0, sentence.Text.Text.Length).End > later.Span.Start;
}
