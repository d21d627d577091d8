namespace ShelfSafe.Reports.Pages;

/// <summary>A page of headings, lines and boxes to tick, whatever it is printed as. Every text is data: a page makes it inert.</summary>
internal interface IReportPage
{
    /// <summary>Begins the page.</summary>
    void Open(string title);

    /// <summary>A heading.</summary>
    void Heading(string text);

    /// <summary>A smaller heading; the lines after an empty one belong to no group.</summary>
    void Group(string text);

    /// <summary>A paragraph.</summary>
    void Text(string text);

    /// <summary>A line of its own.</summary>
    void Line(string text);

    /// <summary>One item of a list.</summary>
    /// <param name="text">The words.</param>
    /// <param name="mark">Its number, such as <c>1.</c>, or empty for a bullet.</param>
    void Item(string text, string mark = "");

    /// <summary>A line with a box to tick.</summary>
    void Check(string text);

    /// <summary>Lines of another text, word for word.</summary>
    void Quote(IEnumerable<string> lines);

    /// <summary>Ends the page.</summary>
    void Close();
}
