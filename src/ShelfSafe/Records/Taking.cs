namespace ShelfSafe.Records;

/// <summary>Jars taken out of a batch.</summary>
/// <param name="Date">Day.</param>
/// <param name="Jars">How many, at least one.</param>
public sealed record Taking(DateOnly Date, int Jars);
