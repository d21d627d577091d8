using ShelfSafe.Core;

namespace ShelfSafe.Steps;

/// <summary>The words of printed processes. Words of a language, not facts of canning, so they stand in code.</summary>
internal sealed class ProcessWords
{
    private readonly List<(Phrase Phrase, Func<List<Token>, int, int, ProcessMark> Make)> _phrases = [];
    private readonly PhraseCompiler _compiler;

    /// <summary>Compiles the phrases.</summary>
    public ProcessWords()
    {
        _compiler = new(Words);
        AddMethods();
        AddMarks();
        AddJars();
        AddPressures();
        AddTimes();
        _compiler.Finish();
    }

    /// <summary>The vocabulary to cut sentences with.</summary>
    public Vocabulary Words { get; } = new();

    private void AddMethods()
    {
        Say("boiling water bath|canner|process*", mark => mark with { Method = "boiling-water" });
        Say("water bath canner|can|process*?", mark => mark with { Method = "boiling-water" });
        Say("boiling|hot|canning bath|waterbath", mark => mark with { Method = "boiling-water" });
        Say("waterbath", mark => mark with { Method = "boiling-water" });
        Say("process ..6 boiling water", mark => mark with { Method = "boiling-water" });
        Say("boil ..3 jar", mark => mark with { Method = "boiling-water" });
        Say("steam canner|can", mark => mark with { Method = "atmospheric-steam" });
        Say("pressure can|canner|process*", mark => mark with { Method = "pressure" });
        Say("pressure ..2 # minute|min|mins|hour|hr", mark => mark with { Method = "pressure" });
    }

    private void AddMarks()
    {
        Say("process|reprocess ..8 minute|min|mins|hour|hr|pound|lb|lbs|psi|canner", mark => mark with { Says = true });
        Say("can|canned in|as ..1 jar|pint|quart", mark => mark with { Says = true }); // "can in quarts for 90 minutes"
        Say("process ..2 jar|pint|quart", mark => mark with { Says = true });
        Say("psi|psig|kpa", mark => mark with { Says = true });
        Say("# lb|lbs|pound of? pressure", mark => mark with { Says = true });
        Say("pressure ..4 # lb|lbs|pound", mark => mark with { Says = true });
        Say("vent|vented|venting|exhaust|exhausted ..8 # minute|min|mins", mark => mark with { Vents = true });
        Say("# minute|min|mins ..4 vent|venting", mark => mark with { Vents = true });
        Say("if|when|where ..6 less|under|shorter ..1 # minute|min|mins", mark => mark with { Vents = true }); // "sterilize the jars if you process less than 10 minutes"
        // What is added at an altitude: "10 minutes longer above 1,000 ft", but not "10 minutes, longer above 1,000 ft".
        Add("# minute|min|mins longer|more|extra|additional ..3 above|over|altitude|altitudes|every|each|higher|up", (tokens, at, end) => new(at, end) { Vents = tokens[at + 2].Start - tokens[at + 1].End == 1 });
        Say("add|adding|plus|increase|extra ..5 # minute|min|mins ..4 above|over|altitude|altitudes|every|each|higher", mark => mark with { Vents = true });
        Say("altitude|altitudes|above|over ..5 add|adding|increase|extra ..5 # minute|min|mins", mark => mark with { Vents = true });
        Say("# pint|quart|qt|gallon of? ..1 water", mark => mark with { Pours = true }); // water for the canner
        Say("stand|rest|wait|cool ..3 # minute|min|mins", mark => mark with { Vents = true });
        Say("fill|pack|ladle|pour|spoon|put|funnel ..8 jar|pint|quart|gallon|litre|liter", mark => mark with { Fills = true });
        Say("jar|pint|quart|gallon ..2 inch|headspace", mark => mark with { Fills = true });
        Say("food|blender|stick processor|process", mark => mark with { Cooking = true });
    }

    private void AddJars()
    {
        Say("half pint", mark => mark with { Jar = "half-pint" });
        Say("half gallon", mark => mark with { Jar = "half-gallon" });
        Say("pint and =a half", mark => mark with { Jar = "pint-and-a-half" });
        Say("pint", mark => mark with { Jar = "pint" });
        Say("quart|qt", mark => mark with { Jar = "quart" });
        Say("gallon", mark => mark with { Jar = "gallon" });
        Add("# ml|cc|millilitre|milliliter ..1 jar|bottle|size", (tokens, at, end) => new(at, end) { Jar = JarOf(tokens[at].Number) });
        Say("litre|liter jar|bottle", mark => mark with { Jar = "quart" });
        Add("# l|litre|liter ..1 jar|bottle|size", (tokens, at, end) => new(at, end) { Jar = JarOf(tokens[at].Number * 1000) });
    }

    private void AddPressures()
    {
        Add("# lb|lbs|pound|psi|psig ..1 pressure?", (tokens, at, end) => new(at, end) { Psi = PrintedProcessReader.ToPsi(tokens[at].Number, "psi") });
        Add("# lb|lbs|pound of pressure", (tokens, at, end) => new(at, end) { Psi = PrintedProcessReader.ToPsi(tokens[at].Number, "psi") });
        Add("# kpa", (tokens, at, end) => new(at, end) { Psi = PrintedProcessReader.ToPsi(tokens[at].Number, "kpa") });
        Add("# bar", (tokens, at, end) => new(at, end) { Psi = PrintedProcessReader.ToPsi(tokens[at].Number, "bar") });
    }

    private void AddTimes()
    {
        Add("# minute|min|mins", Time(1));
        Add("# for ..1 pint|quart|half", Bare(0));
        Add("pint|quart #", Bare(1));
        Add("# hour|hr|hrs", Time(60));
        Add("# # minute|min|mins", Range(1));
        Add("# to|or|and # minute|min|mins", Range(1));
        Add("# # hour|hr|hrs", Range(60));
        Add("# to|or|and # hour|hr|hrs", Range(60));
        Add("an hour", Fixed(60));
        Add("=quarter of an hour", Fixed(15));
        Add("=half an|hour hour?", Fixed(30));
        Add("=three =quarters of an hour", Fixed(45));
        Add("an hour and =a =half", Fixed(90));
    }

    private void Add(string phrase, Func<List<Token>, int, int, ProcessMark> make) => _compiler.Add(phrase, made => _phrases.Add((made, make)));

    private void Say(string phrase, Func<ProcessMark, ProcessMark> with) => Add(phrase, (_, at, end) => with(new(at, end)));

    /// <summary>Every mark of a sentence; of marks that overlap in kind the longest stays.</summary>
    public List<ProcessMark> Marks(List<Token> tokens)
    {
        List<ProcessMark> marks = [];
        TokenMask sentence = TokenMask.Of(tokens);
        List<(Phrase Phrase, Func<List<Token>, int, int, ProcessMark> Make)> likely = _phrases.FindAll(one => one.Phrase.MayMatch(sentence));
        for (int at = 0; at < tokens.Count; at++)
        {
            if (!tokens[at].IsKnown)
            {
                continue;
            }

            foreach ((Phrase phrase, Func<List<Token>, int, int, ProcessMark> make) in likely)
            {
                if (phrase.MatchAt(tokens, at) is int end and >= 0)
                {
                    ProcessMark mark = make(tokens, at, end);
                    if (!marks.Exists(other => Covers(other, mark)))
                    {
                        marks.RemoveAll(other => Covers(mark, other));
                        marks.Add(mark);
                    }
                }
            }
        }

        marks.RemoveAll(mark => mark.Minutes is not null && marks.Exists(other => other.Psi is not null && other.At == mark.At)); // "90 min for quarts, 10 lb"
        marks.RemoveAll(mark => marks.Exists(other => (mark.Minutes is not null && other.Vents || mark.Jar is not null && other.Pours) && other.At <= mark.At && other.End >= mark.End));
        return marks;
    }

    private static bool Covers(ProcessMark outer, ProcessMark inner) =>
        outer.At <= inner.At && outer.End >= inner.End
        && ((outer.Minutes is not null && inner.Minutes is not null) || (outer.Jar is not null && inner.Jar is not null));

    // "pints 60 minutes, 75 for quarts": a bare number beside a jar is its time where it can be one.
    private static Func<List<Token>, int, int, ProcessMark> Bare(int number) =>
        (tokens, at, end) => tokens[at + number].Number is >= 5 and <= 240 and var minutes && double.IsInteger(minutes)
            ? new(at + number, at + number + 1) { Minutes = Interval.Exactly(minutes) }
            : new(at, end);

    private static Func<List<Token>, int, int, ProcessMark> Fixed(double minutes) =>
        (_, at, end) => new(at, end) { Minutes = Interval.Exactly(minutes) };

    private static Func<List<Token>, int, int, ProcessMark> Time(double minutes) =>
        (tokens, at, end) => new(at, end) { Minutes = Interval.Exactly(tokens[at].Number * minutes) };

    private static Func<List<Token>, int, int, ProcessMark> Range(double minutes) =>
        (tokens, at, end) =>
        {
            (double first, double second) = (tokens[at].Number * minutes, tokens[end - 2].Number * minutes);
            return new(at, end) { Minutes = new(Math.Min(first, second), Math.Max(first, second)) };
        };

    // A metric jar counts as the next larger listed one.
    private static string JarOf(double millilitres) => millilitres switch
    {
        <= 250 => "half-pint",
        <= 500 => "pint",
        <= 750 => "pint-and-a-half",
        <= 1000 => "quart",
        <= 2000 => "half-gallon",
        _ => "gallon",
    };
}
