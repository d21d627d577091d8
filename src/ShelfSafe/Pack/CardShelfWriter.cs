using System.Collections.Immutable;

namespace ShelfSafe.Pack;

/// <summary>Writes the cards that <see cref="CardShelf{T}"/> reads, each with its signs.</summary>
/// <remarks>
/// A sign is a trait, food, group, step fact or kind of dish that a term asks for. A check none of whose signs is in a batch cannot hold, so
/// a card is meant only where one of its signs is, or where a check has none. Layout: where the names and the words of the five kinds of sign
/// begin, counted from the section; the cards (number of signs, or -1 where it is always meant; then each; then the fields); the names, each
/// with where its card begins; the words, each with the number of its sign.
/// </remarks>
internal static class CardShelfWriter
{
    private const int Parts = 6;

    /// <summary>Writes cards as a section.</summary>
    /// <param name="writer">Takes it.</param>
    /// <param name="section">Its name.</param>
    /// <param name="cards">The cards.</param>
    /// <param name="name">Gives the name of a card.</param>
    /// <param name="checks">Gives the checks one of which must hold for the card to say anything.</param>
    /// <param name="write">Writes the fields of a card.</param>
    public static void Write<T>(PackImageWriter writer, string section, ImmutableArray<T> cards, Func<T, string> name, Func<T, IEnumerable<Check>> checks, Action<T, CardWriter> write)
    {
        ImageParts parts = new(Parts);
        CardWriter body = new(writer, parts.Body);
        List<(string, int)> places = [];
        Dictionary<(CardSign, string), int> signs = [];
        foreach (T card in cards)
        {
            places.Add((name(card), parts.Here));
            WriteSigns(SignsOf(checks(card)), signs, body);
            write(card, body);
        }

        parts.Map(writer, places);
        foreach (CardSign kind in Enum.GetValues<CardSign>())
        {
            parts.Map(writer, [.. signs.Where(sign => sign.Key.Item1 == kind).Select(static sign => (sign.Key.Item2, sign.Value))]);
        }

        writer.Add(section, parts.ToSection());
    }

    private static void WriteSigns(List<(CardSign, string)>? own, Dictionary<(CardSign, string), int> signs, CardWriter body)
    {
        body.Number(own?.Count ?? -1);
        foreach ((CardSign, string) sign in own ?? [])
        {
            if (!signs.TryGetValue(sign, out int number))
            {
                signs.Add(sign, number = signs.Count);
            }

            body.Number(number);
        }
    }

    // Of each check the term with the fewest words; null where a check has no such term, so that it may always hold.
    private static List<(CardSign, string)>? SignsOf(IEnumerable<Check> checks)
    {
        List<(CardSign, string)> signs = [];
        foreach (Check check in checks.Where(static check => check.Terms[0].Kind != TermKind.ByProgram))
        {
            Term? fewest = check.Terms.Where(static term => !term.Negated && SignOf(term.Kind) is not null).MinBy(static term => term.Values.Length);
            if (fewest is null)
            {
                return null;
            }

            signs.AddRange(fewest.Values.Select(word => (SignOf(fewest.Kind)!.Value, word)));
        }

        return [.. signs.Distinct()];
    }

    private static CardSign? SignOf(TermKind kind) => kind switch
    {
        TermKind.Trait or TermKind.BatchHasTrait => CardSign.Trait,
        TermKind.Food or TermKind.BatchHasFood => CardSign.Food,
        TermKind.Group or TermKind.BatchHasGroup => CardSign.Group,
        TermKind.Step => CardSign.Step,
        TermKind.Dish => CardSign.Dish,
        _ => null,
    };
}
