namespace ShelfSafe.Steps;

/// <summary>The rules that may begin at one token, walked without allocating.</summary>
internal readonly struct StartingRules(StepRule[] byStem, StepRule[] byExact, StepRule[] byPrefix, StepRule[] byNumber)
{
    /// <summary>How many there are.</summary>
    public int Count => byStem.Length + byExact.Length + byPrefix.Length + byNumber.Length;

    /// <summary>One of them, by its place.</summary>
    public StepRule this[int at]
    {
        get
        {
            if (at < byStem.Length)
            {
                return byStem[at];
            }

            at -= byStem.Length;
            if (at < byExact.Length)
            {
                return byExact[at];
            }

            at -= byExact.Length;
            return at < byPrefix.Length ? byPrefix[at] : byNumber[at - byPrefix.Length];
        }
    }
}
