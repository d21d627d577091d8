using System.Collections.Immutable;
using System.Globalization;
using ShelfSafe.Core;
using ShelfSafe.Verdict;

namespace ShelfSafe.Reports;

/// <summary>Writes what the batch is: the comparison with the tested process, what was unread, and how much it makes.</summary>
internal sealed class TextBatch(TextPage page, Words words)
{
    private const double MillilitresPerLitre = 1_000;

    /// <summary>Writes yours beside tested, one row a difference.</summary>
    public void WriteComparison(CategoryReport? category)
    {
        if (category is null || category.Differences.IsDefaultOrEmpty)
        {
            return;
        }

        List<ImmutableArray<string>> rows = [];
        foreach (Difference difference in category.Differences)
        {
            rows.Add([
                difference.What,
                TextNumbers.Range(difference.Yours, difference.Unit, words),
                Tested(difference),
                words[difference.Allowed ? "comparison.yes" : "comparison.no"],
            ]);
        }

        page.Heading(words["heading.comparison"]);
        page.Table([words["comparison.what"], words["comparison.yours"], words["comparison.tested"], words["comparison.allowed"]], rows, 2);
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
        bool jars = !report.Process.IsDefaultOrEmpty || !report.ProcessAfterChanges.IsDefaultOrEmpty;
        if (!jars || (report.Measures.JarYield is null && report.Measures.TotalMillilitres is not { IsBounded: true }))
        {
            return;
        }

        page.Heading(words["heading.yield"]);
        if (report.Measures.TotalMillilitres is { IsBounded: true } volume)
        {
            page.Paragraph(
                words.With("yield.volume", TextNumbers.Short(volume.Low / MillilitresPerLitre), TextNumbers.Short(volume.High / MillilitresPerLitre)),
                2);
        }

        if (report.Measures.JarYield is { } yield)
        {
            string jar = words.Named("jar", yield.Jar);
            page.Paragraph(
                yield.Jars.IsBounded
                    ? words.With("yield.jars", TextNumbers.Whole(yield.Jars.Low), TextNumbers.Whole(yield.Jars.High), jar)
                    : words.With("yield.jars-at-least", TextNumbers.Whole(yield.Jars.Low), jar),
                2);
            page.Paragraph(words.With("yield.loads", TextNumbers.Range(yield.Loads, string.Empty, words), TextNumbers.Short(yield.RemainderMillilitres.High / MillilitresPerLitre)), 2);
        }
    }

    private string Tested(Difference difference)
    {
        if (difference.Tested.IsBounded && difference.Tested.Low <= 0 && difference.Tested.High > 0)
        {
            Interval most = Interval.Exactly(difference.Tested.High);
            return words.With("comparison.at-most", TextNumbers.Range(most, difference.Unit, words));
        }

        return TextNumbers.Range(difference.Tested, difference.Unit, words);
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
