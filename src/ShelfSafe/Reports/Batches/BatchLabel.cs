using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Records;

namespace ShelfSafe.Reports.Batches;

/// <summary>What stands on the label of one jar.</summary>
/// <param name="Lot">Lot code.</param>
/// <param name="Title">Title of the recipe.</param>
/// <param name="Lines">Further lines, most important last.</param>
/// <param name="Warning">The line that must be seen first, or empty.</param>
internal sealed record BatchLabel(string Lot, string Title, ImmutableArray<string> Lines, string Warning)
{
    /// <summary>The label of a batch. Process, shelf date and boiling stand only on a batch that a published process covers.</summary>
    public static BatchLabel Of(BatchRecord batch, Words words, BatchPhrases phrases)
    {
        List<string> lines = [words.With("label-jar.put-up", Days.Of(batch.Date))];
        if (!batch.Published)
        {
            lines.Add(words["label-jar.not-published"]);
            return new(batch.Lot, batch.Title, [.. lines], words["label-jar.freeze-or-throw"]);
        }

        lines.Add(words.With("label-jar.process", phrases.Process(batch), phrases.Altitude(batch)));
        if (phrases.BestUntil(batch) is { } until)
        {
            lines.Add(words.With("label-jar.best-until", Days.Of(until)));
        }

        if (batch.Boil)
        {
            lines.Add(words["label-jar.boil"]);
        }

        return new(batch.Lot, batch.Title, [.. lines], batch.Sealed is null ? words["label-jar.seal"] : string.Empty);
    }
}
