using System.Collections.Immutable;
using ShelfSafe.Core;

namespace ShelfSafe.Pack;

/// <summary>Hazard and category cards of the built-in pack, read before by the build.</summary>
/// <remarks>
/// Layout of each of the two sections: number of cards, then the fields of each card in the order of its record; a list is its length and
/// its items, a flag 0 or 1. A card is read from front to back.
/// </remarks>
internal static class CardImage
{
    private const string HazardSection = "hazard-cards";
    private const string CategorySection = "category-cards";

    /// <summary>Writes the cards of a pack.</summary>
    public static void Write(PackTables tables, PackImageWriter writer)
    {
        CardWriter hazards = new(writer);
        hazards.List(tables.Hazards, card =>
        {
            hazards.Text(card.Rule);
            hazards.List(card.Rows, row =>
            {
                hazards.Number((int)row.Level);
                hazards.Check(row.Check);
                hazards.List(row.Sources, hazards.Text);
            });
            hazards.Texts(card.Message, card.StepMessage, card.Why, card.Instead);
            hazards.List([.. card.Sections.OrderBy(pair => pair.Key, StringComparer.Ordinal)], pair => hazards.Texts(pair.Key, pair.Value));
            hazards.List(card.Cases, one =>
            {
                hazards.Check(one.Check);
                hazards.Texts(one.Instead, one.Message);
            });
        });
        writer.Add(HazardSection, hazards.Section);

        CardWriter categories = new(writer);
        categories.List(tables.Categories, card =>
        {
            categories.Texts(card.Id, card.Name, card.Dish, card.Method);
            categories.List(card.Products, categories.Text);
            categories.Number(card.Rank);
            categories.Text(card.Acid);
            categories.Number(card.LongestTime ? 1 : 0);
            categories.List(card.Applies, categories.Check);
            categories.List(card.Core, categories.Check);
            categories.List(card.Allowed, categories.Check);
            categories.List(card.Gates, gate =>
            {
                categories.Text(gate.Rule);
                categories.Number(gate.Refuses ? 1 : 0);
                categories.Number((int)gate.Level);
                categories.Check(gate.Check);
                categories.Texts(gate.Message, gate.Instead);
                categories.List(gate.Sources, categories.Text);
            });
            categories.Number(card.IsSmooth ? 1 : 0);
        });
        writer.Add(CategorySection, categories.Section);
    }

    /// <summary>The hazard cards in the order of their rules.</summary>
    public static ImmutableArray<HazardCard> Hazards(PackImage image)
    {
        CardCursor at = new(image, image.Section(HazardSection));
        return at.List(() => new HazardCard(
            at.Text(),
            at.List(() => new HazardRow((FindingLevel)at.Number(), at.Check(), at.List(at.Text))),
            at.Text(),
            at.Text(),
            at.Text(),
            at.Text(),
            at.List(() => KeyValuePair.Create(at.Text(), at.Text())).ToImmutableDictionary(StringComparer.Ordinal)) { Cases = at.List(() => new HazardCase(at.Check(), at.Text(), at.Text())) });
    }

    /// <summary>The category cards in the order of their ids.</summary>
    public static ImmutableArray<CategoryCard> Categories(PackImage image)
    {
        CardCursor at = new(image, image.Section(CategorySection));
        return at.List(() => new CategoryCard(
            at.Text(),
            at.Text(),
            at.Text(),
            at.Text(),
            at.List(at.Text),
            at.Number(),
            at.Text(),
            at.Number() != 0,
            at.List(at.Check),
            at.List(at.Check),
            at.List(at.Check),
            at.List(() => new Gate(at.Text(), at.Number() != 0, (FindingLevel)at.Number(), at.Check(), at.Text(), at.Text(), at.List(at.Text)))) { IsSmooth = at.Number() != 0 });
    }

    private sealed class CardWriter(PackImageWriter writer)
    {
        public ImageSection Section { get; } = new();

        public void Number(int number) => Section.Add(number);

        public void Text(string text) => Section.Add(writer.Id(text));

        public void Texts(params ReadOnlySpan<string> texts)
        {
            foreach (string text in texts)
            {
                Text(text);
            }
        }

        public void List<T>(ImmutableArray<T> items, Action<T> write)
        {
            Section.Add(items.Length);
            foreach (T item in items)
            {
                write(item);
            }
        }

        public void Check(Check check)
        {
            List(check.Terms, term =>
            {
                Number((int)term.Kind);
                Number(term.Negated ? 1 : 0);
                List(term.Values, Text);
                Section.Add(term.Threshold);
                Text(term.Unit);
            });
            Number(check.Line);
        }
    }

    private sealed class CardCursor(PackImage image, int at)
    {
        public int Number()
        {
            at += sizeof(int);
            return image.Int32(at - sizeof(int));
        }

        public string Text() => image.String(Number());

        public ImmutableArray<T> List<T>(Func<T> read)
        {
            ImmutableArray<T>.Builder items = ImmutableArray.CreateBuilder<T>(Number());
            for (int left = items.Capacity; left > 0; left--)
            {
                items.Add(read());
            }

            return items.MoveToImmutable();
        }

        public Check Check() => new(List(Term), Number());

        private Term Term()
        {
            (TermKind kind, bool negated, ImmutableArray<string> values) = ((TermKind)Number(), Number() != 0, List(Text));
            double threshold = image.Double(at);
            at += sizeof(double);
            return new(kind, negated, values, threshold, Text());
        }
    }
}
