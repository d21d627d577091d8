using ShelfSafe.Pack;
using ShelfSafe.Records;

namespace ShelfSafe.Reports.Batches;

/// <summary>Writes what to do with a jar in the hand.</summary>
/// <param name="output">Receives the text; lines end in a line feed.</param>
/// <param name="words">Words for people.</param>
/// <param name="style">Width and colours.</param>
public sealed class JarText(TextWriter output, Words words, TextStyle style)
{
    private readonly TextPage _page = new(output, style);

    /// <summary>Lists the signs.</summary>
    /// <param name="signs">The cards.</param>
    public void WriteSigns(IEnumerable<JarSignCard> signs)
    {
        ArgumentNullException.ThrowIfNull(signs);
        _page.Paragraph(words["hand.intro"]);
        _page.Gap();
        _page.Table([words["hand.column-sign"], words["hand.column-seen"]], [.. signs.Select(static card => (System.Collections.Immutable.ImmutableArray<string>)[card.Id, card.Title])], 2);
        _page.Gap();
        _page.Paragraph(words["hand.never"], ink: TextPage.Ink.Bold);
    }

    /// <summary>Writes one answer.</summary>
    /// <param name="answer">The answer.</param>
    public void WriteAnswer(JarAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        _page.Paragraph(answer.Card.Title, ink: TextPage.Ink.Bold);
        if (answer.Batch is { } batch)
        {
            _page.Paragraph(words.With(batch.Published ? "hand.lot" : "hand.lot-not-published", batch.Lot, batch.Title), ink: batch.Published ? TextPage.Ink.Plain : TextPage.Ink.Red);
        }

        _page.Paragraph(words["hand.never"]);
        foreach (JarCase one in answer.Cases)
        {
            _page.Heading(one.Key == "hand.late" ? words.With(one.Key, answer.Card.Hours) : words[one.Key]);
            foreach (string step in one.Steps)
            {
                _page.Paragraph(step, 2, "- ");
            }
        }

        _page.Gap();
        _page.Paragraph(answer.Card.Why, 0, words["label.why"] + ": ", TextPage.Ink.Faint);
        foreach (JarCaution caution in answer.Cautions)
        {
            _page.Heading(caution.Title);
            foreach (string line in caution.Lines)
            {
                _page.Paragraph(line, 2, "- ");
            }
        }

        _page.Heading(words["label.sources"]);
        foreach (SourceRow source in answer.Sources)
        {
            _page.Paragraph(string.Join(", ", new[] { source.Title, source.Locator }.Where(static text => text.Length > 0)) + (source.Url.Length > 0 ? $" <{source.Url}>" : string.Empty), 2, "- ");
        }
    }
}
