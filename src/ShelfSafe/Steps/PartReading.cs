namespace ShelfSafe.Steps;

/// <summary>The sentences of one dish cut into tokens, and what was already looked up in them.</summary>
/// <remarks>Each condition is searched once a sentence, so a sentence full of hits still costs linear time.</remarks>
internal sealed class PartReading
{
    private const int BeforeWindow = 6;
    private readonly List<Token>[] _tokens;
    private readonly TokenMask[] _masks;
    private readonly sbyte[]?[] _known;
    private readonly StepRuleSet _rules;

    /// <summary>Cuts every sentence.</summary>
    public PartReading(IReadOnlyList<string> sentences, StepRuleSet rules)
    {
        _rules = rules;
        _tokens = new List<Token>[sentences.Count];
        _masks = new TokenMask[sentences.Count];
        for (int i = 0; i < _tokens.Length; i++)
        {
            _tokens[i] = Tokenizer.Cut(sentences[i], rules.Words);
            _masks[i] = TokenMask.Of(_tokens[i]);
        }

        _known = new sbyte[rules.ConditionCount][];
    }

    /// <summary>The tokens of a sentence.</summary>
    public List<Token> this[int sentence] => _tokens[sentence];

    /// <summary>Index after the last token of a rule's words that begin at a token of a sentence, or -1.</summary>
    public int MatchAt(StepRule rule, int sentence, int at) => rule.Core.MayMatch(_masks[sentence]) ? rule.Core.MatchAt(_tokens[sentence], at) : -1;

    /// <summary>Whether all needs of a rule hold around a hit and none of its exceptions does.</summary>
    public bool Holds(StepRule rule, int sentence, int hit)
    {
        foreach (int need in rule.Needs)
        {
            if (!Holds(_rules.Condition(need), sentence, hit))
            {
                return false;
            }
        }

        foreach (int exception in rule.Unless)
        {
            if (Holds(_rules.Condition(exception), sentence, hit))
            {
                return false;
            }
        }

        return true;
    }

    private bool Holds(PhraseCondition condition, int sentence, int hit)
    {
        switch (condition.Scope)
        {
            case PhraseScope.Sentence:
                return In(condition, sentence);
            case PhraseScope.Neighbour:
                return In(condition, sentence) || In(condition, sentence - 1) || In(condition, sentence + 1);
            case PhraseScope.Before:
                return Before(condition, _tokens[sentence], hit, touching: false);
            case PhraseScope.Adjacent:
                return Before(condition, _tokens[sentence], hit, touching: true);
            default:
                for (int i = 0; i < _tokens.Length; i++)
                {
                    if (In(condition, i))
                    {
                        return true;
                    }
                }

                return false;
        }
    }

    private static bool Before(PhraseCondition condition, List<Token> tokens, int hit, bool touching)
    {
        for (int at = hit - 1; at >= 0 && at >= hit - BeforeWindow && !tokens[at + 1].Break; at--)
        {
            foreach (Phrase phrase in condition.Any)
            {
                if (phrase.MatchAt(tokens, at) is int end and >= 0 && (touching ? end == hit : end <= hit))
                {
                    return true;
                }
            }
        }

        return false;
    }

    private bool In(PhraseCondition condition, int sentence)
    {
        if (sentence < 0 || sentence >= _tokens.Length)
        {
            return false;
        }

        sbyte[] known = _known[condition.Number] ??= new sbyte[_tokens.Length];
        if (known[sentence] == 0)
        {
            bool found = false;
            foreach (Phrase phrase in condition.Any)
            {
                found = found || (phrase.MayMatch(_masks[sentence]) && phrase.Find(_tokens[sentence]).Start >= 0);
            }

            known[sentence] = found ? (sbyte)1 : (sbyte)-1;
        }

        return known[sentence] > 0;
    }
}
