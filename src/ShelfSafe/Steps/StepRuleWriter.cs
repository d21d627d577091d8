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

    private const int HeaderLength = 4 * Parts;

    /// <summary>Adds compiled rules to an image.</summary>
    /// <param name="rules">The rules.</param>
    /// <param name="name">Name of the section.</param>
    /// <param name="writer">Takes it.</param>
    public static void Write(StepRuleCompiler rules, string name, PackImageWriter writer)
    {
        ImageSection header = new();
        ImageSection body = new();
        List<Phrase> phrases = [];
        PhraseCondition[] conditions = [.. rules.Conditions];

        header.Add(HeaderLength);
        rules.Words.Write(writer, body);
        header.Add(HeaderLength + body.Length);
        body.Add(rules.Facts.Count);
        foreach (string fact in rules.Facts)
        {
            body.Add(writer.Id(fact));
        }

        Entries([.. Starts(rules)], (start, section) => Numbers([.. start], section));
        Entries([.. rules.Rules], (rule, section) =>
        {
            section.Add(rule.Fact);
            section.Add(Number(rule.Core));
            Numbers(rule.Needs, section);
            Numbers(rule.Unless, section);
        });
        Entries(conditions, (condition, section) =>
        {
            section.Add((int)condition.Scope);
            Numbers([.. condition.Any.Select(Number)], section);
        });
        Entries(phrases, WritePhrase);
        header.Add(body.ToArray());
        writer.Add(name, header);

        int Number(Phrase phrase)
        {
            phrases.Add(phrase);
            return phrases.Count - 1;
        }

        void Entries<T>(IReadOnlyList<T> all, Action<T, ImageSection> write)
        {
            header.Add(HeaderLength + body.Length);
            ImageSection entries = new();
            int first = HeaderLength + body.Length + 4 + (4 * all.Count);
            body.Add(all.Count);
            foreach (T one in all)
            {
                body.Add(first + entries.Length);
                write(one, entries);
            }

            body.Add(entries.ToArray());
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
            Numbers([.. place.Words.Range.Where(place.Words.Has)], section);
        }
    }

    private static void Numbers(int[] numbers, ImageSection section)
    {
        section.Add(numbers.Length);
        foreach (int number in numbers)
        {
            section.Add(number);
        }
    }
}
