using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Hazards;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;

namespace ShelfSafe.Candidates;

/// <summary>Looks that the parts of the category judge share.</summary>
internal static class CategoryTerms
{
    /// <summary>Whether any check holds.</summary>
    public static bool Any(ImmutableArray<Check> checks, BatchItem? item, Batch batch, Acidity acidity)
    {
        foreach (Check check in checks)
        {
            if (TermJudge.Holds(check, item, batch, acidity))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether a finding takes the food out of the jar.</summary>
    /// <param name="item">The food.</param>
    /// <param name="all">All findings of the dish.</param>
    /// <param name="mending">Rules whose change mends the food instead.</param>
    public static bool Removes(BatchItem item, List<RawFinding> all, RuleList mending)
    {
        foreach (RawFinding finding in all)
        {
            if (ReferenceEquals(finding.Item, item) && finding.Level >= FindingLevel.Change && !mending.Contains(finding.Rule))
            {
                return true;
            }
        }

        return false;
    }
}
