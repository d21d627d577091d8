using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Hazards;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;

namespace ShelfSafe.Candidates;

/// <summary>Looks that the parts of the category judge share.</summary>
internal static class CategoryTerms
{
    /// <summary>Rules whose change mends the food instead of leaving it out.</summary>
    private static readonly HashSet<string> Mends = new(StringComparer.Ordinal)
    {
        "unsoaked-beans", "unmeasured", "raw-start", "fresh-citrus", "weak-vinegar", "borderline-acid", "own-process", "too-little-liquid", "jar-too-large", "regional-word", "dense", "fat",
    };

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
    public static bool Removes(BatchItem item, List<RawFinding> all)
    {
        foreach (RawFinding finding in all)
        {
            if (ReferenceEquals(finding.Item, item) && finding.Level >= FindingLevel.Change && !Mends.Contains(finding.Rule))
            {
                return true;
            }
        }

        return false;
    }
}
