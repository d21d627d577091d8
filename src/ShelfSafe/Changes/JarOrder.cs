using ShelfSafe.Pack;

namespace ShelfSafe.Changes;

/// <summary>Puts the steps at the jar into working order: filling, closing, processing, and only then what follows.</summary>
/// <remarks>
/// The published steps take the place of the cook's own lids and canner, and of a filling that the same sentence closes. A sentence
/// is taken over only if it speaks of nothing but the jars and food that stays: any other word might tell of something that must be
/// judged, so the cook is asked instead. What is kept is judged again with the whole draft.
/// </remarks>
internal sealed class JarOrder(AdaptRules rules, Draft draft, List<AdaptChange> changes)
{
    private readonly AdaptWords _words = rules.Words;

    /// <summary>Arranges the steps of the draft.</summary>
    /// <param name="stays">Words of the foods that stay in the jar.</param>
    /// <param name="soup">Whether the published filling is that of soups, which takes the place of any other.</param>
    /// <param name="ask">Receives a step that cannot be put in order.</param>
    public void Arrange(IReadOnlySet<string> stays, bool soup, Action<DraftStep> ask)
    {
        List<DraftStep> own = [.. draft.Steps.Where(step => step is { Section: DraftSection.Method, Place: not DraftPlace.Serving, Added: false })];
        int first = own.FindIndex(step => Begins(step, _words));
        List<DraftStep> fill = [];
        List<DraftStep> after = [];
        bool closed = false;
        foreach (DraftStep step in first < 0 ? [] : own.Skip(first))
        {
            bool fills = Fills(step, _words);
            bool closes = Says(step, _words.Processing) || (Says(step, _words.Closing) && !Follows(step));
            if (step.Place == DraftPlace.Out)
            {
                closed |= closes; // taken out already, and yet it tells where the jars are closed
            }
            else if (closes || (soup && fills))
            {
                closed |= closes;
                TakeOver(step, stays, ask);
            }
            else if (!closed && !soup)
            {
                fill.Add(step);
            }
            else if (closed && Follows(step))
            {
                after.Add(step);
            }
            else
            {
                ask(step);
            }
        }

        Rebuild(fill, after);
    }

    /// <summary>Whether the work at the jar begins with this sentence; to have the jars ready is no filling.</summary>
    public static bool Begins(DraftStep step, AdaptWords words) => !Says(step, words.Readying)
        && (Fills(step, words) || Says(step, words.Processing) || (Says(step, words.Closing) && (AddedSteps.Says(step, "jar") || AddedSteps.Says(step, "rim"))));

    /// <summary>Whether the sentence speaks of nothing but the jars and food that stays, so that the published steps can stand in its place.</summary>
    public static bool IsPlain(DraftStep step, IReadOnlySet<string> stays, AdaptWords words)
    {
        bool closed = false;
        foreach (string word in Mentions.Words(step.Text))
        {
            closed |= words.Closing.Contains(word);
            bool plain = words.JarWords.Contains(word) || words.Filling.Contains(word) || words.Closing.Contains(word) || words.Processing.Contains(word) || stays.Contains(word) || word.All(char.IsDigit)
                || (closed && words.Heating.Contains(word)); // "put on the lids and boil them" heats the jars; "boil it and put on the lids" the food
            if (!plain)
            {
                return false;
            }
        }

        return true;
    }

    private static bool Fills(DraftStep step, AdaptWords words) => AddedSteps.Says(step, "jar") && Says(step, words.Filling);

    private bool Follows(DraftStep step) => Says(step, _words.Following) && !Says(step, _words.Processing) && !AddedSteps.Says(step, "bubble");

    private static bool Says(DraftStep step, RuleList words) => Mentions.Words(step.Text).Any(words.Contains);

    private void TakeOver(DraftStep step, IReadOnlySet<string> stays, Action<DraftStep> ask)
    {
        if (!IsPlain(step, stays, _words))
        {
            ask(step);
            return;
        }

        AdaptRow row = rules["@own-jar-step"];
        step.Place = DraftPlace.Out;
        changes.Add(new("method", step.Text, string.Empty, row.Text, rules.Sources(row)));
    }

    private void Rebuild(List<DraftStep> fill, List<DraftStep> after)
    {
        if (fill.Exists(step => Fills(step, _words)))
        {
            foreach (DraftStep added in draft.Steps.FindAll(step => step.Part == JarPart.Fill))
            {
                draft.Steps.Remove(added);
                changes.RemoveAll(change => change.Kind == "step" && change.What == added.Text);
            }
        }

        List<DraftStep> published = draft.Steps.FindAll(step => step.Part != JarPart.None);
        List<DraftStep> rest = draft.Steps.FindAll(step => step.Part == JarPart.None && !fill.Contains(step) && !after.Contains(step));
        int end = rest.FindLastIndex(step => step.Section == DraftSection.Method) + 1;
        rest.InsertRange(end, [.. fill, .. published, .. after]);
        draft.Steps.Clear();
        draft.Steps.AddRange(rest);
    }
}
