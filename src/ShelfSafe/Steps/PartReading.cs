namespace ShelfSafe.Steps;

/// <summary>The sentences of one dish as the rules of a table see them, each by itself and beside the others.</summary>
/// <param name="sentences">What the rules find in each by itself.</param>
internal sealed class PartReading(SentenceHits[] sentences)
{
    /// <summary>The facts that a sentence says, each at the first words that say it.</summary>
    public IEnumerable<SentenceHit> Of(int sentence)
    {
        HashSet<int>? said = null;
        foreach (SentenceHit hit in sentences[sentence].All)
        {
            if (said?.Contains(hit.Fact) is not true && Holds(hit, sentence))
            {
                if (hit.IsOpen)
                {
                    (said ??= []).Add(hit.Fact); // another hit of the fact may follow
                }

                yield return hit;
            }
        }
    }

    private bool Holds(in SentenceHit hit, int sentence)
    {
        foreach (PhraseCondition need in hit.Needs)
        {
            if (!Elsewhere(need, sentence))
            {
                return false;
            }
        }

        foreach (PhraseCondition exception in hit.Unless)
        {
            if (Elsewhere(exception, sentence))
            {
                return false;
            }
        }

        return true;
    }

    private bool Elsewhere(PhraseCondition condition, int sentence)
    {
        if (condition.Scope == PhraseScope.Neighbour)
        {
            return Has(condition, sentence - 1) || Has(condition, sentence + 1);
        }

        for (int i = 0; i < sentences.Length; i++)
        {
            if (sentences[i].Has(condition))
            {
                return true;
            }
        }

        return false;
    }

    private bool Has(PhraseCondition condition, int sentence) => sentence >= 0 && sentence < sentences.Length && sentences[sentence].Has(condition);
}
