using ShelfSafe.Pack;

namespace ShelfSafe.Steps;

/// <summary>Writes the section that <see cref="StepRuleSet"/> reads.</summary>
/// <remarks>
/// Layout: where each part begins. The words; the facts (their number, then each); and four parts of entries (their number, then where each
/// begins, counted from the section): rules by the word they may begin with (0 for a number), rules (fact, phrase, needs, exceptions),
/// conditions (scope, phrases), phrases (number of places, then for each place its least and most number, whether it may be empty, gap, words).
/// </remarks>
internal static class StepRuleWriter
{
    /// <summary>How many parts there are.</summary>
    public const int Parts = 6;

    /// <summary>Place of the words among the parts.</summary>
    public const int VocabularyPart = 0;

    /// <summary>Place of the facts.</summary>
    public const int FactPart = 1;

    /// <summary>Place of the rules by first word.</summary>
    public const int StartPart = 2;

    /// <summary>Place of the rules.</summary>
    public const int RulePart = 3;

    /// <summary>Place of the conditions.</summary>
    public const int ConditionPart = 4;

    /// <summary>Place of the phrases.</summary>
    public const int PhrasePart = 5;

    /// <summary>Adds compiled rules to an image.</summary>
    /// <param name="rules">The rules.</param>
    /// <param name="name">Name of the section.</param>
    /// <param name="writer">Takes it.</param>
    public static void Write(StepRuleCompiler rules, string name, PackImageWriter writer)
    {
        ImageParts parts = new(Parts);
        List<Phrase> phrases = [];
        PhraseCondition[] conditions = [.. rules.Conditions];

        parts.Begin();
        rules.Words.Write(writer, parts.Body);
        parts.Begin();
        parts.Body.Add([.. rules.Facts.Select(writer.Id)]);
        parts.Entries([.. Starts(rules)], static (start, section) => section.Add(start));
        parts.Entries([.. rules.Rules], (rule, section) =>
        {
            section.Add(rule.Fact);
            section.Add(Number(rule.Core));
            section.Add([.. rule.Needs]);
            section.Add([.. rule.Unless]);
        });
        parts.Entries(conditions, (condition, section) =>
        {
            section.Add((int)condition.Scope);
            section.Add([.. condition.Any.Select(Number)]);
        });
        parts.Entries(phrases, WritePhrase);
        writer.Add(name, parts.ToSection());

        int Number(Phrase phrase)
        {
            phrases.Add(phrase);
            return phrases.Count - 1;
        }
    }

    private static IEnumerable<List<int>> Starts(StepRuleCompiler rules)
    {
        for (int word = 0; word <= rules.Words.Count; word++)
        {
            List<int> own = [];
            for (int i = 0; i < rules.Rules.Length; i++)
            {
                PhrasePlace first = rules.Rules[i].Core.Places[0];
                if (word == 0 ? !double.IsNaN(first.Least) : first.Words.Has(word))
                {
                    own.Add(i);
                }
            }

            yield return own;
        }
    }

    private static void WritePhrase(Phrase phrase, ImageSection section)
    {
        section.Add(phrase.Places.Length);
        foreach (PhrasePlace place in phrase.Places)
        {
            section.Add(place.Least);
            section.Add(place.Most);
            section.Add(place.Optional ? 1 : 0);
            section.Add(place.Gap);
            section.Add([.. place.Words.Range.Where(place.Words.Has)]);
        }
    }
}
