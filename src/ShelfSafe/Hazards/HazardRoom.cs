using ShelfSafe.Core;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using ShelfSafe.Steps;

namespace ShelfSafe.Hazards;

/// <summary>Finds what is true in any jar: every card that may hold against every item, the worst row of a card winning.</summary>
/// <remarks>Known gap: a card looks at one item or at the whole batch, never at two items against each other.</remarks>
internal sealed class HazardRoom(PackTables tables)
{
    private readonly CardShelf<HazardCard> _cards = tables.HazardShelf;
    private readonly SortedRows?[] _sorted = new SortedRows?[tables.HazardShelf.Count];

    /// <summary>Fills the blanks of messages.</summary>
    public MessageText Text { get; } = new(WordTable.BuiltIn);

    /// <summary>The card of a rule.</summary>
    public HazardCard Card(string rule) => _cards.Find(rule) is int card and >= 0 ? _cards[card] : throw new KeyNotFoundException(rule);

    /// <summary>Whether the pack has a card for the rule.</summary>
    public bool Knows(string rule) => _cards.Find(rule) >= 0;

    /// <summary>All findings of the cards for a batch.</summary>
    public List<RawFinding> Find(Batch batch, Acidity acidity)
    {
        List<RawFinding> found = [];
        foreach (int at in MeantCards.Of(_cards, batch))
        {
            HazardCard card = _cards[at];
            SortedRows rows = _sorted[at] ??= new(Rows(card, ofItems: true), Rows(card, ofItems: false));
            HazardRow[] meant = Meant(rows.OfItems, batch);
            foreach (BatchItem item in meant.Length > 0 ? batch.Items : [])
            {
                if (Worst(meant, item, batch, acidity) is { } row)
                {
                    found.Add(OfItem(card, row, item, batch));
                }
            }

            if (Worst(rows.OfBatch, null, batch, acidity) is { } whole)
            {
                found.Add(OfBatch(card, whole, batch));
            }
        }

        return found;
    }

    /// <summary>A finding that the program raises itself, with level and words of the card.</summary>
    public RawFinding Raise(string rule, BatchItem? item, Batch batch, SourceSpan? span = null, string? words = null, FindingLevel? level = null)
    {
        HazardCard card = Card(rule);
        HazardRow row = card.Rows[0];
        foreach (HazardRow candidate in card.Rows)
        {
            if (level == candidate.Level)
            {
                row = candidate;
            }
        }

        string message = item is null && card.StepMessage.Length > 0 ? card.StepMessage : card.Message;
        return new(
            rule,
            level ?? row.Level,
            item,
            item?.Words,
            [span ?? item?.Ingredient.Span ?? Start(batch)],
            new(Text, message, card.Why, card.Instead, item, batch, words),
            row.Sources);
    }

    // The rows that may hold for some item of the batch; most often all of them or none.
    private static HazardRow[] Meant(HazardRow[] rows, Batch batch)
    {
        int count = 0;
        foreach (HazardRow row in rows)
        {
            count += TermJudge.MayHold(row.Check, batch) ? 1 : 0;
        }

        return count == 0 ? [] : count == rows.Length ? rows : Some(rows, batch);
    }

    // The closure stands in a method of its own, since one is made wherever a method that holds one is entered.
    private static HazardRow[] Some(HazardRow[] rows, Batch batch) => Array.FindAll(rows, row => TermJudge.MayHold(row.Check, batch));

    // The rows are walked from the worst level down, so the first that holds is the one.
    private static HazardRow? Worst(HazardRow[] rows, BatchItem? item, Batch batch, Acidity acidity)
    {
        foreach (HazardRow row in rows)
        {
            if (TermJudge.Holds(row.Check, item, batch, acidity))
            {
                return row;
            }
        }

        return null;
    }

    private static HazardRow[] Rows(HazardCard card, bool ofItems) =>
        [.. card.Rows.Where(row => row.Check.HasItemTerm == ofItems && row.Check.Terms[0].Kind != TermKind.ByProgram).OrderByDescending(row => row.Level)];

    private RawFinding OfItem(HazardCard card, HazardRow row, BatchItem item, Batch batch)
    {
        // What is only added at serving stays out of the jar: it is named, and watched for.
        FindingLevel level = item.InJar ? row.Level : (FindingLevel)Math.Min((int)row.Level, (int)FindingLevel.Caution);
        return new(
            card.Rule,
            level,
            item,
            item.Words,
            [item.Ingredient.Span],
            new(Text, card.Message, card.Why, card.Instead, item, batch, null),
            row.Sources);
    }

    private RawFinding OfBatch(HazardCard card, HazardRow row, Batch batch)
    {
        StepFact? fact = TermJudge.FactOf(row.Check, batch);
        string message = fact is not null && card.StepMessage.Length > 0 ? card.StepMessage : card.Message;
        return new(
            card.Rule,
            row.Level,
            null,
            null,
            [fact?.Span ?? Start(batch)],
            new(Text, message, card.Why, card.Instead, null, batch, fact?.Words),
            row.Sources);
    }

    private static SourceSpan Start(Batch batch) => new(batch.Span.Start, batch.Span.Start);

    private sealed record SortedRows(HazardRow[] OfItems, HazardRow[] OfBatch);
}
