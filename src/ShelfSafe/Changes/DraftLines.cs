using System.Collections.Immutable;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Changes;

/// <summary>Changes lines of the list: takes them out, keeps them for serving day, or gives them a published amount.</summary>
internal sealed class DraftLines(AdaptRules rules, Draft draft, AdaptLog log, Dictionary<DraftLine, ImmutableArray<IngredientReport>> entriesOf)
{
    /// <summary>Takes a line out or to serving day; asks about one with more than one food, or with one that was not read: it is never split or dropped by guess.</summary>
    public void Move(DraftLine line, AdaptRow row, string treatment, ImmutableArray<SourceReference> sources)
    {
        if (!entriesOf.TryGetValue(line, out ImmutableArray<IngredientReport> entries) || entries.Length != 1)
        {
            log.Ask("@shared-line", line.Text);
        }
        else if (!entries[0].Identified || entries[0].Alternatives.Any(other => other.FoodId is null && other.Traits.IsEmpty))
        {
            log.Ask("unidentified", line.Text);
        }
        else
        {
            line.Place = treatment == "leave-out" ? DraftPlace.Out : DraftPlace.Serving;
            log.Changes.Add(new(treatment, line.Text, string.Empty, row.Text, sources));
        }
    }

    /// <summary>Brings the list to the amounts of a published recipe.</summary>
    /// <param name="comparison">The recipe beside the published one.</param>
    /// <param name="arrived">Gets the words of every line that is new.</param>
    /// <returns>Whether it was done; not so where a line holds several foods, which is asked about.</returns>
    public bool BringTo(FormulaComparison comparison, ISet<string> arrived)
    {
        ImmutableArray<SourceReference> source = [new(string.Empty, comparison.Source, string.Empty, comparison.Url)];
        HashSet<DraftLine> taken = [];
        foreach (FormulaAmount amount in comparison.Amounts)
        {
            DraftLine[] own = [.. draft.Lines.Where(line => amount.Offsets.Contains(line.Offset))];
            if (own.FirstOrDefault(IsShared) is { } shared)
            {
                log.Ask("@shared-line", shared.Text);
                return false;
            }

            own = own.Length == 0 && amount.Required ? [.. Alike(amount, comparison.Extra)] : own;
            taken.UnionWith(own);
            if (own.Length == 0 ? amount.Required : !amount.Free)
            {
                SetAmount(own, amount.Line, arrived, source);
            }
        }

        foreach (DraftLine line in draft.Lines.Where(line => comparison.Extra.Contains(line.Offset) && !taken.Contains(line)).ToArray())
        {
            Move(line, rules["@formula-extra"], "leave-out", source);
        }

        return true;
    }

    // "1 can crushed tomatoes" makes room for the published tomatoes: a line that the formula does not have, with the same last word.
    private IEnumerable<DraftLine> Alike(FormulaAmount amount, ImmutableArray<int> extra)
    {
        string head = Mentions.Words(amount.Name).Last();
        return draft.Lines.Where(line => extra.Contains(line.Offset) && entriesOf.TryGetValue(line, out ImmutableArray<IngredientReport> entries) && entries is [{ Identified: true } entry] && Mentions.Words(entry.Food).LastOrDefault() == head);
    }

    // The published amount takes the place of the first line of its food, or is a new line; further lines of that food go.
    private void SetAmount(DraftLine[] own, string amount, ISet<string> arrived, ImmutableArray<SourceReference> source)
    {
        string before = string.Join("; ", own.Select(line => line.Text));
        amount = Prepared(own, amount);
        if (before == amount)
        {
            return; // it stands so already
        }

        if (own.Length == 0)
        {
            draft.Lines.Add(new(amount, null, -1));
            arrived.UnionWith(Mentions.Words(amount));
        }
        else
        {
            own[0].Text = amount;
            own[0].Place = DraftPlace.Kept;
            foreach (DraftLine line in own.Skip(1))
            {
                line.Place = DraftPlace.Out;
            }
        }

        log.Changes.Add(new("amount", before, amount, rules["@formula"].Text, source));
    }

    // "Chopped" belongs to the cup: what the cook does with the food is kept.
    private string Prepared(DraftLine[] own, string amount)
    {
        string? words = own.Length > 0 && entriesOf.TryGetValue(own[0], out ImmutableArray<IngredientReport> entries) && entries is [{ Preparation: { Length: > 0 } known }] && !Mentions.Words(known).Any(IsPacking) ? known : null;
        int tail = amount.IndexOf(',', StringComparison.Ordinal);
        return words is null || words.Any(char.IsDigit) || amount.Contains(words, StringComparison.OrdinalIgnoreCase) ? amount
            : tail < 0 ? $"{amount}, {words}"
            : $"{amount[..tail]}, {words}{amount[tail..]}";
    }

    // A can that makes room for fresh food is not drained any more.
    private static bool IsPacking(string word) => word is "drained" or "drain" or "rinsed" or "rinse" or "canned" or "tinned";

    private bool IsShared(DraftLine line) => entriesOf.TryGetValue(line, out ImmutableArray<IngredientReport> entries) && entries.Length != 1;
}
