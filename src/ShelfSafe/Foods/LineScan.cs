using ShelfSafe.Core;
using ShelfSafe.Reading;
using ShelfSafe.Reading.Amounts;
using static ShelfSafe.Foods.LineText;

namespace ShelfSafe.Foods;

/// <summary>Takes amounts, brackets, preparation and the little words off a line, until the food phrase is left.</summary>
internal sealed class LineScan(LineWordTable words, FoodCatalogue catalogue)
{
    private readonly MeasureScan _measures = new(words);
    private readonly ClauseScan _clauses = new(words, catalogue);

    /// <summary>Reads the line into the state.</summary>
    public void Run(LineState state)
    {
        BracketScan.Brackets(state);
        Leading(state);
        if (state.Measures.Count == 0)
        {
            new TrailingScan(words, _measures).Trailing(state);
        }
        else
        {
            _measures.Joins.TrailingSum(state);
            TrailingScan behind = new(words, _measures);
            behind.Weight(state);
            behind.PackageSize(state);
        }

        OrMore(state);
        _clauses.Phrases(state);
        _clauses.Comma(state);
        ClauseScan.Tail(state);
        ClauseScan.Trim(state);
        Size(state);
    }

    private void Leading(LineState state)
    {
        string text = state.Text;
        int at = JuiceOf(state, AfterAbout(state, AfterPart(state, AfterLabel(state, SkipHoles(state, 0)))));
        bool negative = at + 1 < text.Length && text[at] is '-' or '\u2212' && char.IsAsciiDigit(text[Math.Min(at + 1, text.Length - 1)]);
        int after = _measures.Amount(state, negative ? at + 1 : at, first: true);
        if (negative && after >= 0)
        {
            // Less than nothing is no amount: it is kept as printed, and nothing weighs it.
            state.Measures[0] = state.Measures[0] with { Value = new(-state.Measures[0].Value.High, -state.Measures[0].Value.Low) };
        }

        after = after < 0 ? WithoutNumber(state, at) : after;
        state.Start = after < 0 ? at : SkipOf(text, SkipHoles(state, JuiceOf(state, SkipHoles(state, after))));
    }

    // "2 chillies (or 3 if you are brave)": two to three.
    private void OrMore(LineState state)
    {
        if (state.Measures is not [{ Unit: "each" } count, ..])
        {
            return;
        }

        foreach ((int start, int end) in state.Others)
        {
            int at = NumberScan.Skip(state.Text, start);
            if (NumberScan.TryRange(state.Text, at, out int numberEnd, out Interval other) && numberEnd <= end
                && (numberEnd >= end || NumberScan.Word(state.Text, NumberScan.Skip(state.Text, numberEnd), out _) is "if" or "when" or "for" or "or")
                && !WordFolding.Words(state.Text[numberEnd..end]).Any(word => words.Is("size", word))) // "(or 2 if they are small)": no more of it
            {
                state.Measures[0] = count with { Value = new(Math.Min(count.Value.Low, other.Low), Math.Max(count.Value.High, other.High)) };
            }
        }
    }

    // "Glaze: 3 tbsp apricot jam": what stands before the colon names no food or a part of the dish, and an amount with a food stands behind it.
    private int AfterLabel(LineState state, int at)
    {
        string text = state.Text;
        int colon = text.IndexOf(':', at);
        int next = colon < 0 ? -1 : NumberScan.Skip(text, colon + 1);
        if (next <= at || next >= text.Length || !NumberScan.TryRange(text, next, out int end, out _) || text.AsSpan(at, colon - at).ContainsAnyInRange('0', '9'))
        {
            return at;
        }

        int food = NumberScan.Skip(text, words.Unit(text, NumberScan.Skip(text, end), out int unitEnd) is null ? end : unitEnd);
        int stop = text.AsSpan(food).IndexOfAny(',', ';', '(');
        string named = text[food..(stop < 0 ? text.Length : food + stop)].Split(" and ")[0].Trim();
        string label = text[at..colon].Trim(' ', '*', '_');
        return catalogue.IsFood(named) && (!catalogue.IsFood(label) || HeadingWords.Classify(label) == HeadingKind.Group) ? next : at;
    }

    // "Meat of 12 stewing hens", "kernels from 6 ears of corn": the amount is that of what the part comes from.
    private static int AfterPart(LineState state, int at)
    {
        string text = state.Text;
        int part = NumberScan.Word(text, at, out int end) is "the" ? NumberScan.Skip(text, end) : at;
        bool named = NumberScan.Word(text, part, out end) is "meat" or "flesh" or "kernels" or "pulp" or "leaves";
        int of = NumberScan.Skip(text, end);
        return named && NumberScan.Word(text, of, out int ofEnd) is "of" or "from" && NumberScan.Skip(text, ofEnd) is var number && NumberScan.TryRange(text, number, out _, out _)
            ? number
            : at;
    }

    // "About", "c.", "heaped": words before an amount that leave it as it is.
    private int AfterAbout(LineState state, int at)
    {
        string text = state.Text;
        while (true)
        {
            string word = NumberScan.Word(text, at, out int end);
            bool bound = word is "up" or "at" or "no" or "not" && NumberScan.TryRange(text, at, out _, out _);
            bool circa = word == "c" && end + 1 < text.Length && text[end] == '.' && char.IsAsciiDigit(text[NumberScan.Skip(text, end + 1) is var digit && digit < text.Length ? digit : end]);
            bool virgin = word == "extra" && NumberScan.Word(text, NumberScan.Skip(text, end), out _) is "virgin";
            if (word.Length == 0 || bound || virgin || !(circa || words.Is("about", word)))
            {
                return at;
            }

            at = SkipHoles(state, end < text.Length && text[end] == '.' ? end + 1 : end);
        }
    }

    // "Pinch of salt", "Clove of garlic", "dash pepper": a unit word without a number is one; -1 where no amount stands there.
    private int WithoutNumber(LineState state, int at)
    {
        string text = state.Text;
        int unitAt = _measures.SkipSizes(state, at);
        if (words.Unit(text, unitAt, out int unitEnd) is { } unit && unitEnd - unitAt > 2 && SkipOf(text, unitEnd) is var rest && rest < text.Length
            && (IsOf(text, unitEnd) || unit is "pinch" or "dash" or "handful" or "splash" or "drizzle" or "part" || words.Is("lone-measure", NumberScan.Word(text, unitAt, out _)) || (unitAt > at && unit is "bunch" or "sprig" or "head" or "piece")))
        {
            state.Measures.Add(new(Interval.Exactly(1), unit));
            return rest;
        }

        string few = NumberScan.Word(text, at, out int fewEnd);
        if (few is not ("few" or "some" or "several" or "a") || words.Unit(text, NumberScan.Skip(text, fewEnd), out int fewUnit) is not { } ofFew)
        {
            return -1;
        }

        return ofFew == "dash" ? SkipOf(text, fewUnit) : at; // "few shakes Worcestershire"
    }

    private static int JuiceOf(LineState state, int at)
    {
        string word = NumberScan.Word(state.Text, at, out int end);
        int start = at;
        while (word is "freshly" or "fresh" or "finely" or "squeezed" or "grated" or "strained" or "the")
        {
            at = NumberScan.Skip(state.Text, end);
            word = NumberScan.Word(state.Text, at, out end);
        }

        if (word is not ("juice" or "zest" or "rind" or "peel"))
        {
            return start;
        }

        int next = NumberScan.Skip(state.Text, end);
        next = next < state.Text.Length && state.Text[next] is '+' or '/' ? next + 1 : next; // "zest+juice of 2 oranges"
        bool joined = next > end && state.Text[next - 1] is '+' or '/';
        string second = NumberScan.Word(state.Text, next, out int secondEnd);
        string what = word == "juice" ? "juice" : "zest";
        if (joined && second is "juice" or "zest" or "rind")
        {
            what = "juice and zest";
            next = NumberScan.Skip(state.Text, secondEnd);
            second = NumberScan.Word(state.Text, next, out secondEnd);
        }
        else if (second is "and" or "&" && NumberScan.Word(state.Text, NumberScan.Skip(state.Text, secondEnd), out int thirdEnd) is "juice" or "zest" or "rind")
        {
            what = "juice and zest";
            next = NumberScan.Skip(state.Text, thirdEnd);
            second = NumberScan.Word(state.Text, next, out secondEnd);
        }

        if (second is not ("of" or "from"))
        {
            return start;
        }

        state.JuiceOrZest = what;
        return NumberScan.Skip(state.Text, secondEnd);
    }

    // "2 garlic cloves", "4 celery sticks": the last word of the phrase is the measure.
    private void LastWordIsUnit(LineState state)
    {
        if (state.Measures is not [{ Unit: "each" } count, ..])
        {
            return;
        }

        string phrase = state.Between(state.Start, state.End);
        string[] parts = phrase.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        string? first = parts.Length > 1 ? words.Unit(parts[^1], 0, out _) : null;
        string? middle = parts.Length > 1 && !parts[parts.Length > 2 ? ^2 : 0].EndsWith(',') ? words.Unit(parts[parts.Length > 2 ? ^2 : 0], 0, out _) : null;
        string? unit = first is "clove" or "stalk" or "sprig" or "leaf" or "slice" or "stick" or "head" or "strand" or "bunch" or "can" or "jar" ? first
            : middle is "clove" or "sprig" && parts.Length > 1 ? middle : null;
        if (unit is not null && !(unit == "stick" && words.Is("size", parts[0])))
        {
            state.Measures[0] = count with { Unit = unit };
        }
    }

    private void Size(LineState state)
    {
        LastWordIsUnit(state);
        foreach (string word in WordFolding.Words(state.Text))
        {
            if (state.Size is null && words.Is("size", word))
            {
                state.Size = word is "large" or "big" or "jumbo" ? "large" : word is "small" or "little" or "baby" or "mini" ? "small" : "medium";
            }
        }
    }
}
