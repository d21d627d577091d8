namespace ShelfSafe.Steps;

/// <summary>A word or number of a sentence, with what the rule pack's vocabulary knows of it.</summary>
/// <param name="Start">First character in the sentence.</param>
/// <param name="End">After its last character.</param>
/// <param name="Stem">Vocabulary number of its stem, 0 where no phrase uses it.</param>
/// <param name="Exact">Vocabulary number of the word as it stands, 0 where no phrase uses it.</param>
/// <param name="Prefix">Vocabulary number of its longest known beginning, 0 where no phrase uses one.</param>
/// <param name="Number">Its value, or NaN for a word that is no number.</param>
/// <param name="Break">Whether a comma, a stronger mark or a word such as "then" stands right before it.</param>
internal readonly record struct Token(int Start, int End, int Stem, int Exact, int Prefix, double Number, bool Break)
{
    /// <summary>Whether a phrase may have a place for it.</summary>
    public bool IsKnown => Stem > 0 || Exact > 0 || Prefix > 0 || !double.IsNaN(Number);
}
