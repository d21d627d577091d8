namespace ShelfSafe.Records;

/// <summary>What a label and a stock line may say of a batch.</summary>
public enum ShelfStanding
{
    /// <summary>Not put up by a published process: freeze or throw away, no shelf date.</summary>
    FreezeOrThrowAway,

    /// <summary>Put up by a published process, but nobody has looked at the seals yet: no shelf date.</summary>
    SealsUnchecked,

    /// <summary>Put up by a published process, and the seals were looked at.</summary>
    PublishedProcess,
}
