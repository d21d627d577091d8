using System.Collections.Immutable;

namespace ShelfSafe.Plans;

/// <summary>Lays the work of a session on the clock. One canner of each kind; each load holds jars of one recipe alone.</summary>
/// <remarks>Counted with the longest times, so that the sheet errs toward starting early. Jars of two recipes never share a load.</remarks>
internal static class Timetable
{
    private const string Soak = "soak";

    /// <summary>Loads of one recipe that are laid on the clock: more than a day's work; the rest is left to another session, and the sheet says so.</summary>
    public const int MostLoads = 40;

    /// <summary>Longest minutes of some steps.</summary>
    public static int Longest(IEnumerable<RunSheetStep> steps, bool soaking) =>
        (int)Math.Ceiling(steps.Where(step => soaking || step.Id != Soak).Sum(step => step.Minutes?.High ?? 0));

    /// <summary>The entries in order of their start, and the minutes from the first work to the last jar.</summary>
    public static (ImmutableArray<TimetableEntry> Entries, int Longest) Of(ImmutableArray<RunSheetStep> before, ImmutableArray<PlannedRecipe> recipes)
    {
        List<TimetableEntry> entries = [];
        int ready = Lay(entries, before, 0, string.Empty, 0);
        Dictionary<string, int> free = new(StringComparer.Ordinal); // when each canner is free
        int cook = ready; // when the cook's hands are free
        foreach (PlannedRecipe recipe in recipes)
        {
            int prepare = Longest(recipe.Prepare, soaking: false);
            int fill = Longest(recipe.Fill, soaking: false);
            int canner = free.GetValueOrDefault(recipe.Process.Method);
            int start = Math.Max(cook, canner - prepare - fill);
            if (recipe.Prepare.FirstOrDefault(step => step.Id == Soak) is { } soak)
            {
                int longest = (int)(soak.Minutes?.High ?? 0);
                entries.Add(new(start - longest, longest, recipe.Title, 0, soak.Text));
            }

            int at = Lay(entries, recipe.Prepare.Where(step => step.Id != Soak), start, recipe.Title, 0);
            int loads = recipe.Loads.IsBounded ? Math.Clamp((int)recipe.Loads.High, 1, MostLoads) : 1;
            for (int load = 1; load <= loads; load++)
            {
                // The next jars are filled while the canner cools, and go in hot.
                at = Math.Max(at, free.GetValueOrDefault(recipe.Process.Method) - fill);
                at = Lay(entries, recipe.Fill, at, recipe.Title, load);
                cook = at;
                at = Lay(entries, recipe.Canner, Math.Max(at, free.GetValueOrDefault(recipe.Process.Method)), recipe.Title, load);
                free[recipe.Process.Method] = at;
            }
        }

        int end = entries.Max(entry => entry.Start + entry.Minutes);
        return ([.. entries.OrderBy(entry => entry.Start)], end);
    }

    private static int Lay(List<TimetableEntry> entries, IEnumerable<RunSheetStep> steps, int at, string recipe, int load)
    {
        foreach (RunSheetStep step in steps.Where(step => step.Minutes is { High: > 0 }))
        {
            int minutes = (int)Math.Ceiling(step.Minutes!.Value.High);
            entries.Add(new(at, minutes, recipe, load, step.Text));
            at += minutes;
        }

        return at;
    }
}
