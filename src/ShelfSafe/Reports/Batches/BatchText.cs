using System.Collections.Immutable;
using System.Globalization;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Records;

namespace ShelfSafe.Reports.Batches;

/// <summary>Writes the batch log for people.</summary>
public sealed class BatchText
{
    private readonly Words _words;
    private readonly BatchPhrases _phrases;
    private readonly TextPage _page;

    /// <summary>Prepares to write.</summary>
    /// <param name="output">Receives the text; lines end in a line feed.</param>
    /// <param name="words">Words for people.</param>
    /// <param name="style">Width and colours.</param>
    /// <param name="pack">The rule pack, for the months of best quality.</param>
    public BatchText(TextWriter output, Words words, TextStyle style, RulePack pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        _words = words;
        _phrases = new(words, (int)pack.Tables.Limits["best-quality-months"]);
        _page = new(output, style);
    }

    /// <summary>Says that a batch was recorded, how it counts, and what comes next.</summary>
    /// <param name="batch">The batch as recorded.</param>
    /// <param name="reason">Key of the words that say why it does not count, or empty.</param>
    /// <param name="today">The day of writing.</param>
    public void WriteAdded(BatchRecord batch, string reason, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(batch);
        ArgumentNullException.ThrowIfNull(reason);
        _page.Paragraph(_words.With("batch.added", batch.Lot, batch.Title, batch.Jars), ink: TextPage.Ink.Bold);
        WriteStanding(batch, today, indent: 2);
        if (reason.Length > 0)
        {
            _page.Paragraph(_words[reason], 2, _words["label.why"] + ": ");
        }

        if (batch is { Published: true, Sealed: null })
        {
            _page.Paragraph(_words.With("batch.next-seal", batch.Lot), 2);
        }
    }

    /// <summary>Lists batches, oldest first.</summary>
    /// <param name="batches">The batches.</param>
    /// <param name="today">The day of writing.</param>
    public void WriteList(IReadOnlyList<BatchRecord> batches, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(batches);
        WriteTable(batches, "batch.column-jars", static batch => batch.Jars, today, "batch.none");
    }

    /// <summary>Lists what is still there, oldest first, with the day until which it is at its best.</summary>
    /// <param name="batches">The batches.</param>
    /// <param name="today">The day of writing.</param>
    public void WriteStock(IReadOnlyList<BatchRecord> batches, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(batches);
        BatchRecord[] there = [.. batches.Where(static batch => batch.InStock > 0)];
        WriteTable(there, "batch.column-there", static batch => batch.InStock, today, "batch.none-there");
        if (there.Any(batch => batch.Standing == ShelfStanding.PublishedProcess))
        {
            _page.Gap();
            _page.Paragraph(_words["batch.best-means"]);
        }
    }

    /// <summary>Shows one batch whole, its recipe at the end.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="today">The day of writing.</param>
    /// <param name="output">Receives the recipe's own lines.</param>
    public void WriteBatch(BatchRecord batch, DateOnly today, TextWriter output)
    {
        ArgumentNullException.ThrowIfNull(batch);
        ArgumentNullException.ThrowIfNull(output);
        _page.Paragraph($"{batch.Lot}: {batch.Title}", ink: TextPage.Ink.Bold);
        WriteStanding(batch, today, indent: 2);
        Field("batch.put-up", Days.Of(batch.Date));
        Field("batch.verdict", _words.Named("outcome", batch.Outcome));
        Field("label.acidity", _words.Named("acidity", batch.Acidity));
        Field("batch.process", _phrases.Process(batch));
        Field("batch.row", batch.Process.RowId ?? string.Empty);
        Field("batch.altitude", _phrases.Altitude(batch));
        Field("batch.jars", batch.Jars.ToString(CultureInfo.InvariantCulture));
        Field("batch.lids", _phrases.Seals(batch));
        Field("batch.taken", string.Join(", ", batch.Takings.Select(taking => _words.With("batch.taken-on", taking.Jars, Days.Of(taking.Date)))));
        Field("batch.there", batch.InStock.ToString(CultureInfo.InvariantCulture));
        Field("batch.notes", batch.Notes);
        Field("label.file", batch.File);
        Field("label.pack", _words.With("batch.pack", batch.PackVersion, batch.PackSha256.Length > 12 ? batch.PackSha256[..12] : batch.PackSha256));
        _page.Heading(_words["batch.recipe"]);
        output.Write('\n');
        foreach (string line in batch.Recipe.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n'))
        {
            string kept = line[..(line.Length - line.AsSpan().TrimStart(' ').Length)];
            output.Write($"  {kept}{InertText.Of(line)}".TrimEnd() + "\n");
        }
    }

    /// <summary>Says what stands after seals were recorded.</summary>
    /// <param name="batch">The batch as it stands now.</param>
    /// <param name="today">The day of writing.</param>
    public void WriteSealed(BatchRecord batch, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(batch);
        _page.Paragraph(_words.With("batch.sealed", batch.Lot, batch.Sealed, batch.Failed), ink: TextPage.Ink.Bold);
        WriteStanding(batch, today, indent: 2);
        if (batch is { Published: true, Failed: > 0 })
        {
            _page.Paragraph(_words.With("batch.next-failed", batch.Lot), 2);
        }
    }

    /// <summary>Says what stands after jars were taken out, and what to look for before they are opened.</summary>
    /// <param name="batch">The batch as it stands now.</param>
    /// <param name="jars">Jars taken out.</param>
    public void WriteTaken(BatchRecord batch, int jars)
    {
        ArgumentNullException.ThrowIfNull(batch);
        _page.Paragraph(_words.With("batch.took", batch.Lot, jars, batch.InStock), ink: TextPage.Ink.Bold);
        if (!batch.Published)
        {
            _page.Paragraph(_words["batch.taken-not-published"], 2, ink: TextPage.Ink.Red);
            return;
        }

        _page.Paragraph(_words["batch.look"], 2);
        if (batch.Boil)
        {
            _page.Paragraph(_words["batch.boil"], 2);
        }
    }

    /// <summary>Says how many batches were taken in, and which do not count as before.</summary>
    /// <param name="batches">How many.</param>
    /// <param name="lowered">Lots that are not counted as put up by a published process any more.</param>
    public void WriteImported(int batches, IReadOnlyList<string> lowered)
    {
        ArgumentNullException.ThrowIfNull(lowered);
        _page.Paragraph(_words.With("batch.imported", batches));
        if (lowered.Count > 0)
        {
            _page.Paragraph(_words.With("batch.not-any-more", string.Join(", ", lowered)), ink: TextPage.Ink.Red);
        }
    }

    private void WriteStanding(BatchRecord batch, DateOnly today, int indent)
    {
        bool published = batch.Published;
        _page.Paragraph(_words[published ? "batch.is-published" : "batch.is-not-published"], indent, ink: published ? TextPage.Ink.Plain : TextPage.Ink.Red);
        if (published)
        {
            _page.Paragraph(_phrases.Stock(batch, today), indent);
        }
    }

    private void WriteTable(IReadOnlyList<BatchRecord> batches, string column, Func<BatchRecord, int> jars, DateOnly today, string none)
    {
        if (batches.Count == 0)
        {
            _page.Paragraph(_words[none]);
            return;
        }

        ImmutableArray<string> header = [_words["batch.column-lot"], _words["batch.column-title"], _words[column], _words["batch.column-standing"]];
        _page.Table(header, [.. batches.Select(batch => ImmutableArray.Create(batch.Lot, batch.Title, jars(batch).ToString(CultureInfo.InvariantCulture), _phrases.Stock(batch, today)))], 0);
        if (batches.Any(batch => batch.Standing == ShelfStanding.FreezeOrThrowAway))
        {
            _page.Gap();
            _page.Paragraph(_words["batch.freeze-means"], ink: TextPage.Ink.Red);
        }
    }

    private void Field(string key, string text)
    {
        if (text.Length > 0)
        {
            _page.Paragraph(text, 2, _words[key] + ": ", TextPage.Ink.Faint);
        }
    }
}
