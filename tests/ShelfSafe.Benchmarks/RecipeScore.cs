using ShelfSafe.Core;
using ShelfSafe.Verdict;

namespace ShelfSafe.Benchmarks;

/// <summary>Compares reports with labelled recipes and keeps what differs.</summary>
internal sealed class RecipeScore
{
    private readonly List<string> _outcomes = [];
    private readonly List<string> _weaker = [];
    private readonly List<string> _missed = [];
    private readonly List<string> _alarms = [];
    private readonly List<string> _acidity = [];
    private int _recipes;
    private int _flags;
    private int _quiet;
    private int _exact;

    /// <summary>Scores one recipe.</summary>
    public void Add(RecipeLabel label, VettedFile file)
    {
        _recipes++;
        string outcome = Names.Of(file.Report.Outcome);
        string reasons = file.Report.Reasons.IsDefaultOrEmpty ? string.Empty : $" [{string.Join(" | ", file.Report.Reasons)}]";
        if (outcome == label.Outcome)
        {
            _exact++;
        }
        else if (!label.AlsoOk.Contains(outcome))
        {
            _outcomes.Add($"{label.File}: {outcome}, label {label.Outcome} ({string.Join(", ", label.AlsoOk)}){reasons}");
        }

        if (!label.AlsoOk.Append(label.Outcome).Any(allowed => Permits(outcome).All(Permits(allowed).Contains)))
        {
            _weaker.Add($"{label.File}: {outcome}, label {label.Outcome} ({string.Join(", ", label.AlsoOk)}){reasons}");
        }

        string acidity = Names.Of(file.Report.Acidity);
        if (acidity != label.Acidity && !label.AcidityAlsoOk.Contains(acidity))
        {
            _acidity.Add($"{label.File}: {acidity}, label {label.Acidity}");
        }

        AddMissed(label, file);
        AddAlarms(label, file);
    }

    /// <summary>Prints the figures and every difference.</summary>
    public void Print(string title, TextWriter output)
    {
        int ok = _recipes - _outcomes.Count;
        output.WriteLine($"== {title}: {_recipes} labelled recipes");
        output.WriteLine($"outcome equal to label or also_ok: {ok} of {_recipes} ({Share(ok, _recipes)}), equal to label {_exact}");
        output.WriteLine($"weaker outcomes: {_weaker.Count}");
        output.WriteLine($"hard must_flag reported: {_flags - _missed.Count} of {_flags}");
        output.WriteLine($"false alarms (stop or change): {_alarms.Count} of {_quiet} words");
        output.WriteLine($"acidity agrees: {_recipes - _acidity.Count} of {_recipes} ({Share(_recipes - _acidity.Count, _recipes)})");
        List("weaker", _weaker, output);
        List("outcome differs", _outcomes, output);
        List("missed", _missed, output);
        List("false alarm", _alarms, output);
        List("acidity differs", _acidity, output);
        output.WriteLine();
    }

    /// <summary>A share in per cent.</summary>
    internal static string Share(int part, int whole) =>
        whole == 0 ? "none" : (100.0 * part / whole).ToString("0.0", System.Globalization.CultureInfo.InvariantCulture) + " %";

    /// <summary>Prints a list with its name before each line.</summary>
    internal static void List(string name, List<string> lines, TextWriter output)
    {
        foreach (string line in lines)
        {
            output.WriteLine($"  {name}: {line}");
        }
    }

    private static string[] Permits(string outcome) => outcome switch
    {
        "boiling-water" => ["boiling-water now", "boiling-water after"],
        "boiling-water-after-changes" => ["boiling-water after"],
        "pressure" => ["pressure now", "pressure after"],
        "pressure-after-changes" => ["pressure after"],
        "dry-storage" => ["shelf"],
        _ => [],
    };

    private static bool IsBar(Finding finding) => finding.Level is FindingLevel.Stop or FindingLevel.Change;

    private void AddMissed(RecipeLabel label, VettedFile file)
    {
        foreach (FlagLabel flag in label.MustFlag.Where(static flag => !flag.Soft))
        {
            _flags++;
            bool found = file.Report.Findings.Any(finding => finding.Level != FindingLevel.Note
                && (finding.Rule == flag.Hazard || flag.HazardAlsoOk.Contains(finding.Rule))
                && (file.IsAbout(finding, flag.Words) || (flag.InDirections && finding.Ingredient is null)));
            if (!found)
            {
                string other = string.Join(", ", file.Report.Findings.Where(finding => file.IsAbout(finding, flag.Words)).Select(static finding => finding.Rule).Distinct());
                _missed.Add($"{label.File}: \"{flag.Words}\" as {flag.Hazard}{(flag.InDirections ? " in the steps" : string.Empty)}{(other.Length > 0 ? $"; reported as {other}" : string.Empty)}");
            }
        }

        if (label.UnsafeMethod is { } method)
        {
            _flags++;
            if (!file.Report.Findings.Any(static finding => finding.Rule == "unsafe-method" || finding.Rule == "own-process"))
            {
                _missed.Add($"{label.File}: method \"{method}\"");
            }
        }
    }

    private void AddAlarms(RecipeLabel label, VettedFile file)
    {
        _quiet += label.MustNotFlag.Count + label.MustNotFlagAs.Count;
        foreach (string words in label.MustNotFlag)
        {
            if (file.Report.Findings.FirstOrDefault(finding => IsBar(finding) && IsAlarm(finding, words, file)) is { } alarm)
            {
                _alarms.Add($"{label.File}: \"{words}\" flagged as {alarm.Rule}: {alarm.Message}");
            }
        }

        foreach (FlagLabel flag in label.MustNotFlagAs)
        {
            if (file.Report.Findings.Any(finding => IsBar(finding) && finding.Rule == flag.Hazard && IsAlarm(finding, flag.Words, file)))
            {
                _alarms.Add($"{label.File}: \"{flag.Words}\" flagged as {flag.Hazard}");
            }
        }
    }

    // A finding that stands on a longer food ("chicken stock") is no alarm about a word in it ("chicken") unless the label has just that word.
    private static bool IsAlarm(Finding finding, string words, VettedFile file) =>
        finding.Ingredient is { } ingredient
            ? ingredient.Contains(words, StringComparison.OrdinalIgnoreCase) || string.Equals(ingredient, words, StringComparison.OrdinalIgnoreCase)
            : file.IsAbout(finding, words);
}
