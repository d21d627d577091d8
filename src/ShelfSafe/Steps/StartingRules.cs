namespace ShelfSafe.Steps;

/// <summary>The rules that may begin at one token, walked without allocating.</summary>
internal readonly struct StartingRules(List<StepRule> byStem, List<StepRule> byExact, List<StepRule> byPrefix, List<StepRule> byNumber)
{
    /// <summary>How many there are.</summary>
    public int Count => byStem.Count + byExact.Count + byPrefix.Count + byNumber.Count;

    /// <summary>One of them, by its place.</summary>
    public StepRule this[int at]
    {
        get
        {
            if (at < byStem.Count)
            {
                return byStem[at];
            }

            at -= byStem.Count;
            if (at < byExact.Count)
            {
                return byExact[at];
            }

            at -= byExact.Count;
            return at < byPrefix.Count ? byPrefix[at] : byNumber[at - byPrefix.Count];
        }
    }
}
