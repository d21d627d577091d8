using System.Collections.Immutable;
using ShelfSafe.Core;

namespace ShelfSafe.Pack;

/// <summary>Hazard and category cards of the built-in pack, read before by the build.</summary>
/// <remarks>
/// Two sections, see <see cref="CardShelfWriter"/>. The fields of a card stand in the order of its record; a list is its length and its
/// items, a flag 0 or 1. A card is read from front to back.
/// </remarks>
internal static class CardImage
{
    private const string HazardSection = "hazard-cards";
    private const string CategorySection = "category-cards";

    /// <summary>Writes the cards of a pack.</summary>
    public static void Write(PackTables tables, PackImageWriter writer)
    {
        WriteHazards(tables.Hazards, writer);
        WriteCategories(tables.Categories, writer);
    }

    /// <summary>Writes hazard cards.</summary>
    public static void WriteHazards(ImmutableArray<HazardCard> cards, PackImageWriter writer) => CardShelfWriter.Write(
        writer,
        HazardSection,
        cards,
        static card => card.Rule,
        static card => card.Rows.Select(static row => row.Check),
        (card, to) =>
        {
            to.Text(card.Rule);
            to.List(card.Rows, row =>
            {
                to.Number((int)row.Level);
                to.Check(row.Check);
                to.List(row.Sources, to.Text);
            });
            to.Texts(card.Message, card.StepMessage, card.Why, card.Instead);
            to.List([.. card.Sections.OrderBy(static pair => pair.Key, StringComparer.Ordinal)], pair => to.Texts(pair.Key, pair.Value));
            to.List(card.Cases, one =>
            {
                to.Check(one.Check);
                to.Texts(one.Instead, one.Message);
            });
        });

    /// <summary>Writes category cards.</summary>
    public static void WriteCategories(ImmutableArray<CategoryCard> cards, PackImageWriter writer) => CardShelfWriter.Write(
        writer,
        CategorySection,
        cards,
        static card => card.Id,
        static card => card.Applies,
        (card, to) =>
        {
            to.Texts(card.Id, card.Name, card.Dish, card.Method);
            to.List(card.Products, to.Text);
            to.Number(card.Rank);
            to.Text(card.Acid);
            to.Number(card.LongestTime ? 1 : 0);
            to.List(card.Applies, to.Check);
            to.List(card.Core, to.Check);
            to.List(card.Allowed, to.Check);
            to.List(card.Gates, gate =>
            {
                to.Text(gate.Rule);
                to.Number(gate.Refuses ? 1 : 0);
                to.Number((int)gate.Level);
                to.Check(gate.Check);
                to.Texts(gate.Message, gate.Instead);
                to.List(gate.Sources, to.Text);
            });
            to.Number(card.IsSmooth ? 1 : 0);
            to.List(card.SeafoodProducts, to.Text);
        });

    /// <summary>The hazard cards in the order of their rules.</summary>
    public static CardShelf<HazardCard> Hazards(PackImage image) => new(image, HazardSection, static at => new HazardCard(
        at.Text(),
        at.List(() => new HazardRow((FindingLevel)at.Number(), at.Check(), at.List(at.Text))),
        at.Text(),
        at.Text(),
        at.Text(),
        at.Text(),
        at.List(() => KeyValuePair.Create(at.Text(), at.Text())).ToImmutableDictionary(StringComparer.Ordinal)) { Cases = at.List(() => new HazardCase(at.Check(), at.Text(), at.Text())) });

    /// <summary>The category cards in the order of their ids.</summary>
    public static CardShelf<CategoryCard> Categories(PackImage image) => new(image, CategorySection, static at => new CategoryCard(
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
        at.List(() => new Gate(at.Text(), at.Number() != 0, (FindingLevel)at.Number(), at.Check(), at.Text(), at.Text(), at.List(at.Text)))) { IsSmooth = at.Number() != 0, SeafoodProducts = at.List(at.Text) });
}
