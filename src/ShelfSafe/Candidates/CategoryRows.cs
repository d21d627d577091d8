using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Hazards;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;
using static ShelfSafe.Candidates.CategoryTerms;

namespace ShelfSafe.Candidates;

/// <summary>Finds the rows of the process table that govern a category.</summary>
internal sealed class CategoryRows(RowTable<ProcessRow> processes, RuleLists lists)
{
    private readonly RuleList _mending = lists.Of(RuleLists.MendingRules);

    /// <summary>The longest time of any single main food where it is longer; the category's row is overruled jar by jar.</summary>
    public (ImmutableArray<ProcessRow> Governing, ImmutableArray<ProcessRow> Overruled) Longest(CategoryCard card, Batch batch, Acidity acidity, ImmutableArray<ProcessRow> rows, List<RawFinding> all)
    {
        HashSet<string> own = new(StringComparer.Ordinal);
        foreach (BatchItem item in batch.InJar)
        {
            if (item.Food is { } food && food.Process.StartsWith("yes: ", StringComparison.Ordinal) && Any(card.Core, item, batch, acidity) && !Removes(item, all, _mending))
            {
                own.Add(food.Process["yes: ".Length..]);
            }
        }

        List<ProcessRow> governing = [];
        List<ProcessRow> overruled = [];
        IReadOnlyList<ProcessRow> single = processes.WithAny("product", own);
        foreach (ProcessRow row in rows)
        {
            ProcessRow? longest = single
                .Where(other => other.Seen && other.Method == row.Method && other.Jar == row.Jar && other.Pack == row.Pack)
                .MaxBy(other => other.Minutes);
            bool longer = longest is not null && longest.Minutes > row.Minutes;
            governing.Add(longer ? longest! : row);
            if (longer)
            {
                overruled.Add(row);
            }
        }

        return ([.. governing.Distinct()], [.. overruled]);
    }

    /// <summary>The category's own rows, in the jars that every main food allows.</summary>
    public ImmutableArray<ProcessRow> Of(CategoryCard card, Batch batch, Acidity acidity, List<RawFinding> all)
    {
        bool seafood = !card.SeafoodProducts.IsEmpty && batch.InJar.Any(item => item.Has("seafood") && !Removes(item, all, _mending));
        HashSet<string> products = new(seafood ? card.SeafoodProducts : card.Products, StringComparer.Ordinal);
        HashSet<string>? jars = null;
        foreach (BatchItem item in batch.InJar)
        {
            bool core = Any(card.Core, item, batch, acidity) && !Removes(item, all, _mending);
            if (core && card.Products.IsEmpty && item.Food is { } food && food.Process.StartsWith("yes: ", StringComparison.Ordinal))
            {
                products.Add(food.Process["yes: ".Length..]);
            }

            if (core && item.Food is { BulkJars.Length: > 0 } bulk && card.Method == "pressure")
            {
                jars ??= new(bulk.BulkJars, StringComparer.Ordinal);
                jars.IntersectWith(bulk.BulkJars);
            }
        }

        return
        [
            .. processes.WithAny("product", products).Where(row =>
                row.Seen
                && row.Method == card.Method
                && (jars is null || jars.Contains(row.Jar) || (row.Jar == "half-pint" && jars.Contains("pint")))),
        ];
    }
}
