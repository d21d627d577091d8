using ShelfSafe.Core;
using ShelfSafe.Hazards;
using ShelfSafe.Measuring;
using ShelfSafe.Pack;

namespace ShelfSafe.Verdict;

/// <summary>
/// Fits what the findings ask for to the dish as it was judged, so that no line of a recipe gets two orders. It runs after the outcome and
/// changes neither outcome nor level.
/// </summary>
/// <remarks>Known gap: a case sees the other findings by rule and ingredient, not by their words.</remarks>
internal sealed class OtherCases(HazardRoom hazards, MessageText text)
{
    /// <summary>The findings with the words of the case that holds; a finding that another one answers is left out.</summary>
    /// <param name="all">Every finding of the dish, after the outcome.</param>
    public List<RawFinding> Settle(List<RawFinding> all, Batch batch, Acidity acidity, Outcome outcome)
    {
        List<RawFinding> settled = [];
        foreach (RawFinding finding in all)
        {
            if (IsOutranked(finding, all) || IsSaidAlready(finding, all))
            {
                continue;
            }

            HazardCase? own = hazards.Knows(finding.Rule)
                ? hazards.Card(finding.Rule).Cases.FirstOrDefault(one => Holds(one.Check, finding, all, batch, acidity, outcome))
                : null;
            if (own is null)
            {
                settled.Add(finding);
            }
            else if (own.Instead.Length > 0)
            {
                settled.Add(finding with
                {
                    Message = own.Message.Length > 0 && (finding.Item is not null || !MessageText.NamesTheFood(own.Message)) ? text.Fill(own.Message, finding.Item, batch, null) : finding.Message,
                    Instead = text.Fill(own.Instead, finding.Item, batch, null),
                });
            }
        }

        return settled;
    }

    // Watching a food that must be changed first, for the same reason, would be a second order for one line.
    private static bool IsOutranked(RawFinding finding, List<RawFinding> all) =>
        finding is { Level: <= FindingLevel.Caution, Item: not null }
        && all.Exists(other => other.Level > FindingLevel.Caution && other.Rule == finding.Rule && ReferenceEquals(other.Item, finding.Item));

    // "Mash them" in a soup: the card and the category name the same words for the same reason; the graver stays, of two alike the first.
    private static bool IsSaidAlready(RawFinding finding, List<RawFinding> all) =>
        finding is { Item: null, Spans: [var own, ..] } && own.Start > 0
        && all.Exists(other => !ReferenceEquals(other, finding) && other is { Item: null, Spans: [var place, ..] } && place == own && other.Rule == finding.Rule
            && (other.Level > finding.Level || (other.Level == finding.Level && all.IndexOf(other) < all.IndexOf(finding))));

    // "beside" asks for a finding at least as grave, so that nothing that bars a jar falls out.
    private static bool Holds(Check check, RawFinding finding, List<RawFinding> all, Batch batch, Acidity acidity, Outcome outcome) =>
        check.Terms.All(term => term.Kind switch
        {
            TermKind.Outcome => term.Values.Contains(Names.Of(outcome), StringComparer.Ordinal) != term.Negated,
            TermKind.Beside => finding.Item is not null && all.Exists(other => ReferenceEquals(other.Item, finding.Item) && other.Level >= finding.Level && term.Values.Contains(other.Rule, StringComparer.Ordinal)),
            TermKind.StoppedBy => all.Exists(other => other.Level == FindingLevel.Stop && term.Values.Contains(other.Rule, StringComparer.Ordinal)),
            _ => TermJudge.Holds(term, finding.Item, batch, acidity),
        });
}
