using System.Collections.Immutable;

namespace ShelfSafe.Steps;

/// <summary>Words of a sentence that say a fact, where nothing in the sentence itself takes them back.</summary>
/// <param name="Fact">Index of the fact.</param>
/// <param name="Start">First character in the sentence.</param>
/// <param name="End">After its last character.</param>
/// <param name="Needs">Conditions that other sentences must meet.</param>
/// <param name="Unless">Conditions of which other sentences may meet none.</param>
internal readonly record struct SentenceHit(int Fact, int Start, int End, ImmutableArray<PhraseCondition> Needs, ImmutableArray<PhraseCondition> Unless)
{
    /// <summary>Whether it hangs on other sentences; where it does not, no other hit of its fact follows in its sentence.</summary>
    public bool IsOpen => !Needs.IsEmpty || !Unless.IsEmpty;
}

/// <summary>What the rules of a table find in a sentence by itself.</summary>
/// <remarks>
/// It hangs on the words of the sentence alone, so it may be kept for all recipes that have the sentence. Each condition is searched once,
/// so a sentence full of hits still costs linear time.
/// </remarks>
internal sealed class SentenceHits
{
    private const int BeforeWindow = 6;
    private readonly List<Token> _tokens;
    private readonly TokenMask _mask;
    private readonly StepRuleSet _rules;
    private sbyte[]? _known; // by condition: 0 not yet looked for, 1 there, -1 not there; single bytes, so that threads may share them

    /// <summary>Reads a sentence.</summary>
    public SentenceHits(string sentence, StepRuleSet rules)
    {
        _rules = rules;
        _tokens = Tokenizer.Cut(sentence, rules.Words);
        _mask = TokenMask.Of(_tokens);
        All = Hits();
    }

    /// <summary>The hits in reading order.</summary>
    public ImmutableArray<SentenceHit> All { get; }

    /// <summary>Whether some phrase of a condition stands in the sentence.</summary>
    public bool Has(PhraseCondition condition)
    {
        sbyte[] known = _known ??= new sbyte[_rules.ConditionCount];
        if (known[condition.Number] == 0)
        {
            bool found = false;
            foreach (Phrase phrase in condition.Any)
            {
                found = found || (phrase.MayMatch(_mask) && phrase.Find(_tokens).Start >= 0);
            }

            known[condition.Number] = found ? (sbyte)1 : (sbyte)-1;
        }

        return known[condition.Number] > 0;
    }

    private ImmutableArray<SentenceHit> Hits()
    {
        List<SentenceHit> hits = [];
        HashSet<int>? sure = null; // facts that the sentence says whatever stands in others
        for (int at = 0; at < _tokens.Count; at++)
        {
            StartingRules starting = _rules.Starting(_tokens[at]);
            for (int i = 0; i < starting.Count; i++)
            {
                StepRule rule = starting[i];
                if (rule.Core.MayMatch(_mask) && sure?.Contains(rule.Fact) is not true && rule.Core.MatchAt(_tokens, at) is int end and >= 0
                    && Open(rule.Needs, at, met: true) is { } needs && Open(rule.Unless, at, met: false) is { } unless)
                {
                    SentenceHit found = new(rule.Fact, _tokens[at].Start, _tokens[end - 1].End, needs, unless);
                    hits.Add(found);
                    if (!found.IsOpen)
                    {
                        (sure ??= []).Add(rule.Fact);
                    }
                }
            }
        }

        return [.. hits];
    }

    // The conditions that only other sentences can settle; null where this sentence settles one against the hit.
    private ImmutableArray<PhraseCondition>? Open(int[] conditions, int hit, bool met)
    {
        ImmutableArray<PhraseCondition>.Builder? open = null;
        foreach (int number in conditions)
        {
            PhraseCondition condition = _rules.Condition(number);
            bool others = condition.Scope is PhraseScope.Neighbour or PhraseScope.Part;
            bool here = condition.Scope switch
            {
                PhraseScope.Before => Before(condition, hit, touching: false),
                PhraseScope.Adjacent => Before(condition, hit, touching: true),
                PhraseScope.Sentence or PhraseScope.Neighbour or PhraseScope.Part => Has(condition),
            };

            if (here ? !met : met && !others)
            {
                return null;
            }

            if (!here && others)
            {
                (open ??= ImmutableArray.CreateBuilder<PhraseCondition>()).Add(condition);
            }
        }

        return open?.ToImmutable() ?? [];
    }

    private bool Before(PhraseCondition condition, int hit, bool touching)
    {
        for (int at = hit - 1; at >= 0 && at >= hit - BeforeWindow && !_tokens[at + 1].Break; at--)
        {
            foreach (Phrase phrase in condition.Any)
            {
                if (phrase.MatchAt(_tokens, at) is int end and >= 0 && (touching ? end == hit : end <= hit))
                {
                    return true;
                }
            }
        }

        return false;
    }
}
