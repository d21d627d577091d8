using System.Collections.Immutable;
using System.Globalization;

namespace ShelfSafe.Pack;

/// <summary>Reads the check column of a card. The grammar is closed and explained in <c>rules/README.md</c>.</summary>
internal static class CheckParser
{
    private static readonly (string Prefix, TermKind Kind, bool Negated)[] Prefixes =
    [
        ("not trait: ", TermKind.Trait, true), ("trait: ", TermKind.Trait, false),
        ("not food: ", TermKind.Food, true), ("food: ", TermKind.Food, false),
        ("not group: ", TermKind.Group, true), ("group: ", TermKind.Group, false),
        ("not acidity: ", TermKind.Acidity, true), ("acidity: ", TermKind.Acidity, false),
        ("not process: ", TermKind.Process, true), ("process: ", TermKind.Process, false),
        ("not bulk: ", TermKind.Bulk, true), ("bulk: ", TermKind.Bulk, false),
        ("line has: ", TermKind.LineHas, false), ("line lacks: ", TermKind.LineHas, true),
        ("no step: ", TermKind.Step, true), ("step: ", TermKind.Step, false),
        ("not dish: ", TermKind.Dish, true), ("dish: ", TermKind.Dish, false),
        ("batch has trait ", TermKind.BatchHasTrait, false), ("batch lacks trait ", TermKind.BatchHasTrait, true),
        ("batch has food ", TermKind.BatchHasFood, false), ("batch lacks food ", TermKind.BatchHasFood, true),
        ("batch has group ", TermKind.BatchHasGroup, false), ("batch lacks group ", TermKind.BatchHasGroup, true),
        ("batch acidity: ", TermKind.BatchAcidity, false), ("not batch acidity: ", TermKind.BatchAcidity, true),
        ("printed jar above ", TermKind.PrintedJarAbove, false),
        ("not outcome: ", TermKind.Outcome, true), ("outcome: ", TermKind.Outcome, false),
        ("beside: ", TermKind.Beside, false), ("stopped by: ", TermKind.StoppedBy, false),
    ];

    private static readonly (string Prefix, string Bound, TermKind Kind)[] Shares =
    [
        ("batch foods of group ", " above ", TermKind.BatchFoodsAbove),
        ("batch share of trait ", " below ", TermKind.BatchShareBelow), ("batch share of trait ", " above ", TermKind.BatchShareOfTrait),
        ("batch share of acidity ", " above ", TermKind.BatchShareOfAcidity),
        ("batch share of bulk ", " above ", TermKind.BatchShareOfBulk),
    ];

    private static readonly (string Prefix, TermKind Kind)[] Thresholds =
    [
        ("amount above ", TermKind.AmountAbove), ("share above ", TermKind.ShareAbove),
        ("solids share above ", TermKind.SolidsShareAbove), ("least solids share above ", TermKind.LeastSolidsShareAbove), ("fat share above ", TermKind.FatShareAbove),
        ("printed ph above ", TermKind.PrintedPhAbove),
    ];

    private static readonly (string Word, TermKind Kind, bool Negated)[] PlainTerms =
    [
        ("unidentified", TermKind.Unidentified, false), ("not unidentified", TermKind.Unidentified, true),
        ("unmeasured", TermKind.Unmeasured, false), ("not unmeasured", TermKind.Unmeasured, true), ("optional", TermKind.Optional, false),
        ("to taste", TermKind.ToTaste, false),
        ("above seasoning", TermKind.AboveSeasoning, false), ("not above seasoning", TermKind.AboveSeasoning, true),
        ("no steps", TermKind.NoSteps, false), ("printed time", TermKind.PrintedTime, false),
        ("jar acid lacking", TermKind.JarAcidLacking, false), ("by program", TermKind.ByProgram, false), ("always", TermKind.Always, false),
    ];

    /// <summary>How each term begins, but for those that deny: what a guide to the grammar must explain.</summary>
    public static IEnumerable<string> Beginnings =>
    [
        .. Prefixes.Where(static term => !term.Negated).Select(static term => term.Prefix.TrimEnd()),
        .. Shares.Select(static term => term.Prefix.TrimEnd()),
        .. Thresholds.Select(static term => term.Prefix.TrimEnd()),
        .. PlainTerms.Where(static term => !term.Negated).Select(static term => term.Word),
    ];

    /// <summary>Reads a check; <see langword="null"/> with a message where it is not in the grammar.</summary>
    /// <param name="text">The cell of the card.</param>
    /// <param name="line">Its line, from 1.</param>
    /// <param name="lists">Gives the words of <c>@name</c>, which may stand among the words of a term.</param>
    /// <param name="wrong">What is wrong, or <see langword="null"/>.</param>
    public static Check? Parse(string text, int line, RuleLists lists, out string? wrong)
    {
        ImmutableArray<Term>.Builder terms = ImmutableArray.CreateBuilder<Term>();
        foreach (string piece in text.Replace("`", string.Empty, StringComparison.Ordinal)
            .Split(" and ", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            if (ParseTerm(piece, lists) is not { } term)
            {
                wrong = UnknownList(piece, lists) is { } list ? $"no list \"{list}\" stands in {TableKeys.Lists.File}" : $"\"{piece}\" is no term of the card grammar";
                return null;
            }

            terms.Add(term);
        }

        wrong = terms.Count == 0 ? "the check is empty" : null;
        return wrong is null ? new Check(terms.ToImmutable(), line) : null;
    }

    private static Term? ParseTerm(string text, RuleLists lists)
    {
        foreach ((string word, TermKind kind, bool negated) in PlainTerms)
        {
            if (string.Equals(word, text, StringComparison.Ordinal))
            {
                return new(kind, negated, []);
            }
        }

        foreach ((string prefix, TermKind kind, bool negated) in Prefixes)
        {
            if (text.StartsWith(prefix, StringComparison.Ordinal))
            {
                ImmutableArray<string> values = Values(text[prefix.Length..], lists);
                return values.IsEmpty ? null : new(kind, negated, values);
            }
        }

        return ParseShare(text, lists) ?? ParseThreshold(text);
    }

    // The words between bars, those of a named list in its place; none where a list is unknown.
    private static ImmutableArray<string> Values(string text, RuleLists lists) =>
        UnknownList(text, lists) is not null ? [] : [.. Words(text).SelectMany(word => RuleLists.IsOfCards(word) ? lists.WordsOf(word) : [word])];

    private static string? UnknownList(string text, RuleLists lists) =>
        text.Split('|', ' ').FirstOrDefault(word => RuleLists.IsOfCards(word) && lists.WordsOf(word).IsEmpty);

    private static string[] Words(string text) => text.Split('|', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

    private static Term? ParseShare(string text, RuleLists lists)
    {
        foreach ((string prefix, string bound, TermKind kind) in Shares)
        {
            int at = text.IndexOf(bound, StringComparison.Ordinal);
            if (text.StartsWith(prefix, StringComparison.Ordinal) && at > prefix.Length && TryNumber(text[(at + bound.Length)..], out double number))
            {
                ImmutableArray<string> values = Values(text[prefix.Length..at], lists);
                return values.IsEmpty ? null : new(kind, false, values, number);
            }
        }

        return null;
    }

    private static Term? ParseThreshold(string text)
    {
        bool negated = text.StartsWith("not ", StringComparison.Ordinal);
        string bare = negated ? text[4..] : text;
        foreach ((string prefix, TermKind kind) in Thresholds)
        {
            if (bare.StartsWith(prefix, StringComparison.Ordinal))
            {
                string[] words = bare[prefix.Length..].Split(' ', StringSplitOptions.RemoveEmptyEntries);
                string unit = words.Length == 2 ? words[1] : string.Empty;
                bool unitFits = kind == TermKind.AmountAbove ? unit is "g" or "ml" : unit.Length == 0;
                return words.Length is 1 or 2 && unitFits && TryNumber(words[0], out double number) ? new(kind, negated, [], number, unit) : null;
            }
        }

        return null;
    }

    private static bool TryNumber(string text, out double number) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out number) && double.IsFinite(number);
}
