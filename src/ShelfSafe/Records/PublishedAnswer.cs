namespace ShelfSafe.Records;

/// <summary>Whether a batch counts as put up by a published process.</summary>
/// <param name="Process">The process used, with the row that it meets.</param>
/// <param name="Published">Whether it counts.</param>
/// <param name="Boil">Whether guidance asks to boil the food before it is tasted.</param>
/// <param name="Reason">Key of the words that say why it does not count, or empty.</param>
public sealed record PublishedAnswer(ProcessUsed Process, bool Published, bool Boil, string Reason);
