using System.Collections.Immutable;
using System.Globalization;
using ShelfSafe.Verdict;

namespace ShelfSafe.Reports;

/// <summary>Writes what the batch is: the comparison with the tested process, what was unread, and how much it makes.</summary>
internal sealed class TextBatch(TextPage page, Words words)
{
    /// <summary>Writes yours beside tested, one row a difference.</summary>
    public void WriteComparison(CategoryReport? category)
    {
        if (category is null || category.Differences.IsDefaultOrEmpty)
        {
            return;
        }

        page.Heading(words["heading.comparison"]);
        ReportTables tables = new(words);
        page.Table(tables.ComparisonHeader, tables.ComparisonRows(category), 2);
    }

    /// <summary>Writes the ingredients that no food was found for, and those taken on the cook's word.</summary>
    public void WriteUnread(ImmutableArray<IngredientReport> ingredients)
    {
        if (ingredients.IsDefaultOrEmpty)
        {
            return;
        }

        WriteList(ingredients.Where(static one => !one.Identified), "heading.unread", "unread.intro");
        WriteList(ingredients.Where(static one => one.OnTheCooksWord), "heading.cooks-word", "cooks-word.intro");
    }

    /// <summary>Writes volume and jars, only where the recipe may be put up now or after changes.</summary>
    public void WriteYield(VettingReport report)
    {
        bool first = true;
        foreach (string line in ReportHead.Yield(words, report))
        {
            if (first)
            {
                page.Heading(words["heading.yield"]);
                first = false;
            }

            page.Paragraph(line, 2);
        }
    }

    private void WriteList(IEnumerable<IngredientReport> ingredients, string heading, string intro)
    {
        bool first = true;
        foreach (IngredientReport ingredient in ingredients)
        {
            if (first)
            {
                page.Heading(words[heading]);
                page.Paragraph(words[intro], 2);
                first = false;
            }

            string line = words.With("label.line", ingredient.Line.ToString(CultureInfo.InvariantCulture));
            page.Paragraph($"{ingredient.Text} ({line})", 2, "- ");
        }
    }
}
