using ShelfSafe.Verdict;

namespace ShelfSafe.Reports;

/// <summary>One vetted recipe, with what a report must know about where it came from.</summary>
/// <param name="File">Path as given, or as found below a folder that was given; <c>-</c> for standard input.</param>
/// <param name="Report">The finished report.</param>
/// <param name="Text">The text that was read; lines and columns of the report count in it.</param>
/// <param name="IsFileText">Whether that text is the file itself; not so where it was made of structured data.</param>
/// <param name="Record">Number of the record in a file of many, from 1, or <see langword="null"/>.</param>
public sealed record ReportItem(string File, VettingReport Report, string Text, bool IsFileText = true, int? Record = null)
{
    /// <summary>The file, and the record where there are several.</summary>
    internal string Name => Record is { } record ? FormattableString.Invariant($"{File}#{record}") : File;
}
