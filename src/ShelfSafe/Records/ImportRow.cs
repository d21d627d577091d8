namespace ShelfSafe.Records;

/// <summary>One batch of an import and the line on which it begins.</summary>
/// <param name="Line">Line from 1.</param>
/// <param name="Batch">The batch.</param>
public sealed record ImportRow(int Line, BatchRecord Batch);

/// <summary>One broken row of an import.</summary>
/// <param name="Line">Line from 1.</param>
/// <param name="Message">What is wrong and what would be right.</param>
public sealed record ImportFault(int Line, string Message);
