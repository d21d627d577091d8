using System.Collections.Immutable;
using ShelfSafe.Verdict;

namespace ShelfSafe.Reports;

/// <summary>Writes where the cook can go from here: the fridge and freezer, published recipes, and the sources.</summary>
internal sealed class TextElsewhere(TextPage page, Words words, SourceList sources)
{
    /// <summary>Writes how long the dish keeps cold.</summary>
    public void WriteStorage(ImmutableArray<StorageAdvice> storage)
    {
        if (storage.IsDefaultOrEmpty)
        {
            return;
        }

        page.Heading(words["heading.storage"]);
        foreach ((StorageAdvice advice, string text) in ReportHead.Storage(storage))
        {
            page.Paragraph(text + sources.Mark(advice.Source), 2, words.Named("where", advice.Where) + ": ");
        }
    }

    /// <summary>Writes the published formulas near the recipe and the swap each needs.</summary>
    public void WriteNearest(ImmutableArray<NearestFormula> nearest)
    {
        if (nearest.IsDefaultOrEmpty)
        {
            return;
        }

        page.Heading(words["heading.nearest"]);
        foreach (NearestFormula formula in nearest)
        {
            page.Paragraph(formula.Name + sources.Mark(formula.Source), 2, "- ");
            if (formula.Swap.Length > 0)
            {
                page.Paragraph(formula.Swap, 4, words["label.swap"] + ": ");
            }

            if (!formula.ScaledIngredients.IsDefaultOrEmpty)
            {
                page.Paragraph(string.Join("; ", formula.ScaledIngredients), 4, words["label.scaled"] + ": ");
            }
        }
    }

    /// <summary>Writes the numbered sources.</summary>
    public void WriteSources()
    {
        if (sources.Lines.Count == 0)
        {
            return;
        }

        page.Heading(words["label.sources"]);
        for (int i = 0; i < sources.Lines.Count; i++)
        {
            page.Paragraph(sources.Lines[i], 2, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"[{i + 1}] "));
        }
    }
}
