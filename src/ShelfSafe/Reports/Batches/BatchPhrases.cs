using ShelfSafe.Core;
using ShelfSafe.Records;

namespace ShelfSafe.Reports.Batches;

/// <summary>The phrases about a batch that text, stock and labels share. Whether a shelf date may stand is decided here alone.</summary>
/// <param name="words">Words for people.</param>
/// <param name="bestQualityMonths">Months of best quality, from the limits of the rule pack.</param>
internal sealed class BatchPhrases(Words words, int bestQualityMonths)
{
    /// <summary>The day until which the food is at its best; <see langword="null"/> where no shelf date may be printed.</summary>
    public DateOnly? BestUntil(BatchRecord batch) =>
        batch.Standing == ShelfStanding.PublishedProcess ? batch.Date.AddMonths(bestQualityMonths) : null;

    /// <summary>The process used, as far as it was told.</summary>
    public string Process(BatchRecord batch)
    {
        ProcessUsed used = batch.Process;
        string[] pieces =
        [
            used.Method is { } method ? words.Named("method", method) : words["batch.method-not-told"],
            used.Jar is { } jar ? words.Named("jar", jar) : string.Empty,
            used.Pack is { } pack ? words.Named("pack", pack) : string.Empty,
            used.Minutes is { } minutes ? words.With("process.min", minutes) : string.Empty,
            used.Gauge is { } gauge ? words.Named("gauge", gauge) : string.Empty,
            used.Psi is { } psi ? words.With("process.psi", TextNumbers.Short(psi)) : string.Empty,
        ];
        return string.Join(", ", pieces.Where(static piece => piece.Length > 0));
    }

    /// <summary>The altitude, or that it is not known.</summary>
    public string Altitude(BatchRecord batch) => batch.AltitudeFeet is { } feet
        ? words.With("kitchen.altitude", TextNumbers.Whole(feet), TextNumbers.Whole(feet * TextNumbers.MetresPerFoot))
        : words["kitchen.no-altitude"];

    /// <summary>What a stock line says: a date, that the seals were not checked, or freeze or throw away.</summary>
    public string Stock(BatchRecord batch, DateOnly today) => batch.Standing switch
    {
        ShelfStanding.FreezeOrThrowAway => words["batch.freeze-or-throw"],
        ShelfStanding.SealsUnchecked => words["batch.seals-unchecked"],
        ShelfStanding.PublishedProcess => BestUntil(batch) is { } until && until < today
            ? words.With("batch.best-past", Days.Of(until))
            : words.With("batch.best-until", Days.Of(BestUntil(batch)!.Value)),
    };

    /// <summary>Jars sealed and failed, or that nobody looked.</summary>
    public string Seals(BatchRecord batch) => batch.Sealed is null ? words["batch.seals-unchecked"] : words.With("batch.seals", batch.Sealed, batch.Failed);
}
