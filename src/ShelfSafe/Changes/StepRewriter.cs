using System.Collections.Immutable;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Changes;

/// <summary>Lets the sentences of the steps follow the foods they speak of: out of the jar, to serving day, or cut to what stays.</summary>
internal sealed class StepRewriter(AdaptRules rules, Draft draft, AdaptLog log, Dictionary<DraftLine, ImmutableArray<IngredientReport>> entries, HashSet<DraftLine> ownServing)
{
    private static readonly string[] Thickeners = ["thickener", "dairy", "coconut-milk"];

    /// <summary>Words of foods that came into the list; a step that names one no longer speaks of what went.</summary>
    public HashSet<string> Arrived { get; } = new(StringComparer.Ordinal);

    /// <summary>Words of the foods that stay.</summary>
    public HashSet<string> Staying() => [.. entries.Where(pair => pair.Key.Place == DraftPlace.Kept).SelectMany(Mentions.Foods).SelectMany(Mentions.Words)];

    /// <summary>Moves the steps of what the recipe itself keeps for serving, where they speak of nothing else; any other stays as it is.</summary>
    public void MoveOwnServing()
    {
        Mentions own = new(entries.Where(pair => ownServing.Contains(pair.Key)).SelectMany(Mentions.Foods), entries.Where(pair => pair.Key.Place == DraftPlace.Kept).SelectMany(Mentions.Foods), rules.Words);
        foreach (DraftStep step in draft.Steps.Where(step => step.Section == DraftSection.Method && (own.NamesGone(step.Text) || rules.Words.Serving.Contains(Mentions.Words(step.Text).FirstOrDefault(string.Empty))) && !own.NamesKept(step.Text)))
        {
            step.Place = DraftPlace.Serving;
        }
    }

    /// <summary>Does what a row says with a sentence; asks where it also speaks of food that stays.</summary>
    public void Move(DraftStep step, AdaptRow row, ImmutableArray<SourceReference> sources)
    {
        if (Thinned(step) || step.Place != DraftPlace.Kept)
        {
            return;
        }

        Mentions mentions = Mentioned();
        string[] kept = [.. mentions.Kept(step.Text)];
        if (kept.Length == 0 || (row.Treatment == "method" && (JarOrder.IsPlain(step, Staying(), rules.Words) || kept.All(static word => word == "water"))))
        {
            Go(step, row, sources);
        }
        else if (!mentions.NamesGone(step.Text))
        {
            log.Ask("@mixed", step.Text); // it may yet be cut where it names food that goes
        }
    }

    /// <summary>Takes "until the sauce has thickened" out of a step, where what thickens it is out.</summary>
    public void Thin(DraftStep step) => _ = step is { Place: DraftPlace.Kept, Added: false } && Thinned(step);

    /// <summary>Moves, cuts or asks about every sentence that names food that goes.</summary>
    public void Follow()
    {
        Mentions mentions = Mentioned();
        foreach (DraftStep step in draft.Steps.Where(step => step is { Place: DraftPlace.Kept, Added: false, Section: not DraftSection.Serving } && mentions.NamesGone(step.Text)))
        {
            if (!mentions.NamesKept(step.Text))
            {
                AdaptRow row = rules[Mentioned(DraftPlace.Serving).NamesGone(step.Text) ? "@sentence" : "@sentence-out"];
                Go(step, row, rules.Sources(row));
            }
            else if (rules.Words.Serving.Contains(Mentions.Words(step.Text).First()))
            {
                Go(step, rules["@sentence"], rules.Sources(rules["@sentence"]));
            }
            else if (ClauseCut.IsCoating(step.Text, mentions) && !(Next(step) is { } next && ClauseCut.PointsBack(next.Text, mentions)))
            {
                Go(step, rules["@sentence-out"], rules.Sources(rules["@sentence-out"]));
            }
            else if (Shorter(step.Text, mentions) is { } shorter)
            {
                Reword(step, shorter, "@reworded");
            }
            else if (!Thinned(step))
            {
                log.Ask("@mixed", step.Text);
            }
        }

        Retitle(mentions);
        draft.Steps.FindAll(step => step is { Place: DraftPlace.Kept, Added: false, Section: DraftSection.Method } && mentions.AddsUnnamed(step.Text)).ForEach(step => log.Ask("@unnamed", step.Text));
    }

    // "Chicken soup with cream" is chicken soup once the cream waits for serving; a title that cannot be cut stays.
    private void Retitle(Mentions mentions)
    {
        if (mentions.NamesGone(draft.Title) && SentenceCut.Without(draft.Title, mentions) is { } shorter && !mentions.NamesGone(shorter))
        {
            log.Change("reworded", draft.Title, shorter, "@reworded");
            draft.Title = shorter;
        }
    }

    private DraftStep? Next(DraftStep step) => draft.Steps.Skip(draft.Steps.IndexOf(step) + 1).FirstOrDefault(other => other is { Place: DraftPlace.Kept, Section: DraftSection.Method });

    private static string? Shorter(string text, Mentions mentions)
    {
        string clauses = ClauseCut.Without(text, mentions) ?? text;
        string? shorter = mentions.NamesGone(clauses) ? SentenceCut.Without(clauses, mentions) : clauses;
        return shorter is not null && mentions.NamesKept(shorter) && !mentions.NamesGone(shorter) ? shorter : null;
    }

    // "Until the sauce has thickened" waits in vain once what thickens it is out.
    private bool Thinned(DraftStep step)
    {
        bool thin = entries.Any(pair => pair.Key.Place != DraftPlace.Kept && !ownServing.Contains(pair.Key) && pair.Value.Any(entry => entry.Traits.Any(trait => Thickeners.Contains(trait, StringComparer.Ordinal))));
        if (!thin || ThickeningCut.Without(step.Text, rules.Words) is not { } shorter || Mentioned().NamesGone(shorter))
        {
            return false;
        }

        Reword(step, shorter, "@thickening");
        return true;
    }

    private void Reword(DraftStep step, string now, string rule)
    {
        log.Change("reworded", step.Text, now, rule);
        step.Text = now;
    }

    private void Go(DraftStep step, AdaptRow row, ImmutableArray<SourceReference> sources)
    {
        step.Place = row.Treatment == "serve" ? DraftPlace.Serving : DraftPlace.Out;
        log.Changes.Add(new(row.Treatment, step.Text, string.Empty, row.Text, sources));
    }

    private Mentions Mentioned(DraftPlace? only = null)
    {
        Mentions mentions = Mentions.Of(entries, ownServing, only, rules);
        mentions.Arrive(Arrived);
        return mentions;
    }
}
