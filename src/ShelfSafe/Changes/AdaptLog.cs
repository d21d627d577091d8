using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Changes;

/// <summary>What was changed, what the cook must say first, and why it cannot be done.</summary>
internal sealed class AdaptLog(AdaptRules rules)
{
    /// <summary>Every change so far.</summary>
    public List<AdaptChange> Changes { get; } = [];

    /// <summary>What the cook must say first.</summary>
    public List<AdaptNote> Questions { get; } = [];

    /// <summary>Why it cannot be done.</summary>
    public List<AdaptNote> Reasons { get; } = [];

    /// <summary>Whether a question or a reason stands in the way.</summary>
    public bool IsStuck => Questions.Count > 0 || Reasons.Count > 0;

    /// <summary>Asks about words of the recipe, once.</summary>
    public void Ask(string rule, string what) => Question(new(what, rules[rule].Text, rules.Sources(rules[rule])));

    /// <summary>Asks about a finding; where it quotes no words of the list, it speaks for itself.</summary>
    public void Ask(Finding finding)
    {
        AdaptRow row = rules[finding.Rule];
        Question(finding.Ingredient is { } words ? new(words, row.Text, rules.Sources(row)) : new(string.Empty, $"{finding.Message} {finding.Instead}", finding.Sources));
    }

    /// <summary>Says why there is no jar version, in the words of a row.</summary>
    public void Give(string rule) => Reasons.Add(new(string.Empty, rules[rule].Text, rules.Sources(rules[rule])));

    /// <summary>Says why there is no jar version, in the words of a finding, once.</summary>
    public void Give(Finding finding)
    {
        if (!Reasons.Exists(note => note.Text == finding.Message))
        {
            Reasons.Add(new(string.Empty, finding.Message, finding.Sources));
        }
    }

    /// <summary>A change in the words and with the sources of a row.</summary>
    public void Change(string kind, string what, string now, string rule) => Changes.Add(new(kind, what, now, rules[rule].Text, rules.Sources(rules[rule])));

    private void Question(AdaptNote note)
    {
        if (!Questions.Exists(other => other.What == note.What && other.Text == note.Text))
        {
            Questions.Add(note);
        }
    }
}
