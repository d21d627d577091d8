using System.Collections.Immutable;
using System.Globalization;
using ShelfSafe.Core;
using ShelfSafe.Foods;
using ShelfSafe.Pack;

namespace ShelfSafe.Measuring;

/// <summary>Turns printed amounts into grams and millilitres, as ranges that hold every meaning the words may have.</summary>
/// <remarks>
/// Order: printed weights; then package sizes; then cups, spoons and counts by the food's own rows; then the wide defaults of its group.
/// Known gap: bones, peel and pits of foods weighed as bought are not taken off.
/// </remarks>
public sealed class Weigher
{
    private readonly MeasureIndex _index;
    private readonly double _absurdGrams;

    /// <summary>Makes a weigher from typed tables.</summary>
    /// <param name="tables">The measure tables.</param>
    /// <param name="absurdGrams">More than this of one food is questioned, g.</param>
    internal Weigher(MeasureTables tables, double absurdGrams)
    {
        _index = new(tables);
        _absurdGrams = absurdGrams;
        Yields = new(tables.Yields);
        Compositions = new(_index);
        Jars = new(tables.Jars, tables.JarWeights);
    }

    /// <summary>Raw to cooked, soaked and drained.</summary>
    public Yields Yields { get; }

    /// <summary>Water, protein, fat and the rest of each food.</summary>
    public CompositionTable Compositions { get; }

    /// <summary>Volume to jars.</summary>
    public JarYield Jars { get; }

    /// <summary>Makes a weigher from a rule pack.</summary>
    /// <exception cref="InvalidDataException">A measure table is missing or wrong.</exception>
    public static Weigher Create(RulePack pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        List<PackFault> faults = [];
        MeasureTables tables = MeasureTableReader.Read(pack.Text, faults);
        return faults.Count == 0 ? new(tables, pack.Tables.Limits["absurd-grams"]) : throw new InvalidDataException(faults[0].ToString());
    }

    /// <summary>Weighs one food of an ingredient line.</summary>
    /// <param name="ingredient">The line's food with its amounts.</param>
    /// <param name="food">The food it means, or one of those it may mean, or <see langword="null"/> where it is not identified.</param>
    /// <returns>The weighing; nothing is known of units in which the recipe's country matters, so all national sizes count.</returns>
    public Weighing Weigh(Ingredient ingredient, FoodRow? food) => Weigh(ingredient, food, string.Empty);

    /// <summary>Weighs one food of an ingredient line of a recipe from a known country.</summary>
    /// <param name="ingredient">The line's food with its amounts.</param>
    /// <param name="food">The food it means, or one of those it may mean, or <see langword="null"/> where it is not identified.</param>
    /// <param name="region">Country code in lower case (<c>us</c>, <c>uk</c>, <c>au</c>), or empty where it is not known.</param>
    public Weighing Weigh(Ingredient ingredient, FoodRow? food, string region)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        if (ingredient.Amount is not { } amount)
        {
            return Weighing.Nothing("no amount is printed");
        }

        if (IsNoAmount(amount.Value) || (ingredient.Package is { } package && IsNoAmount(package.Value)))
        {
            return Weighing.Nothing("the printed amount is no amount", absurd: true);
        }

        if (food is null)
        {
            return Checked(OfUnread(ingredient, region));
        }

        PrintedState printed = new(ingredient);
        FoodMeasures measures = new(_index, food, printed);
        Weighing found = Cube(ingredient, food) is { } cube ? OfGrams(ingredient.Amount.Value * cube * measures.Density, measures, "cubes of the printed length")
            : ingredient.Package is not null ? OfPackages(ingredient, measures, region)
            : ingredient.JuiceOrZestOf is { } part && Of(amount, region) is null ? OfFruit(amount.Value, part, measures)
            : OfMeasures(ingredient, measures, region);
        return Checked(AfterPreparation(found, food, printed));
    }

    private static bool IsEnvelope(string line)
    {
        foreach (string word in new[] { "envelope", "envelopes", "packet", "packets", "pkt", "sachet", "sachets", "pouch", "pouches" })
        {
            if (PrintedState.Has(line, word))
            {
                return true;
            }
        }

        return false;
    }

    // "7 3/4-inch pieces of pork": no piece is more than a cube of its length, ml; null for all other food and sizes.
    private static Interval? Cube(Ingredient ingredient, FoodRow food) =>
        food.Group is "meat" or "poultry" && ingredient.Amount is { Unit: "piece" } && ingredient.Package is { } size && UnitFactors.Ratio(size.Unit, "cm") is { } centimetres
            ? new(0, Math.Pow(size.Value.High * centimetres, 3))
            : null;

    private static bool IsNoAmount(Interval value) =>
        !(value.Low >= 0) || !(value.High > 0) || value.High < value.Low || double.IsPositiveInfinity(value.Low);

    private UnitFactorRow? Of(Amount amount, string region) => _index.Unit(amount.Unit, region);

    private Weighing OfMeasures(Ingredient ingredient, FoodMeasures measures, string region)
    {
        // A printed weight beats a cup or a count; of two printed weights both count.
        Weighing? best = null;
        ImmutableArray<Amount> all = ingredient.Measures.IsDefaultOrEmpty ? [ingredient.Amount!] : ingredient.Measures;
        foreach (Amount amount in all)
        {
            if (!IsNoAmount(amount.Value) && Of(amount, region) is { IsMass: true })
            {
                Weighing own = OfAmount(amount, ingredient, measures, region);
                best = best is null ? own : Hull(best, own);
            }
        }

        return best ?? OfAmount(ingredient.Amount!, ingredient, measures, region);
    }

    private Weighing OfUnread(Ingredient ingredient, string region)
    {
        // Of a food that is not identified only weights and volumes speak; a count of it may be anything.
        Amount amount = ingredient.Amount!;
        Interval count = Interval.Exactly(1);
        if (ingredient.Package is { } package && Of(amount, region) is null)
        {
            (amount, count) = (package, amount.Value);
        }

        GroupWeightRow any = _index.Group("*");
        return Of(amount, region) switch
        {
            { IsMass: true } unit => new(count * amount.Value * unit.Factor, Over(count * amount.Value * unit.Factor, any.Density), Basis(amount, null)),
            { } unit => new(count * amount.Value * unit.Factor * any.Bulk, count * amount.Value * unit.Factor, Basis(amount, null)),
            null => Weighing.Nothing("neither the food nor a weight is known"),
        };
    }

    private Weighing OfAmount(Amount amount, Ingredient ingredient, FoodMeasures measures, string region)
    {
        if (Of(amount, region) is { } unit)
        {
            return OfUnit(amount.Value * unit.Factor, unit, amount, measures, region);
        }

        string? can = amount.Unit is "can" or "each" ? CanNumber.In(ingredient.Line.Text.Text) : null;
        Interval? each = can is null ? null : measures.Counted(can, size: null);
        each ??= amount.Unit == "package" && IsEnvelope(ingredient.Line.Text.Text) ? measures.OwnPiece("envelope") : null;
        each ??= measures.Counted(amount.Unit, ingredient.Size);
        if (each is not { } grams)
        {
            return Weighing.Nothing($"\"{amount.Unit}\" is no measure that can be weighed");
        }

        Weighing found = OfGrams(amount.Value * grams, measures, Basis(amount, grams));
        return can is null && amount.Unit != "can" ? found : found with { CupMillilitres = found.Millilitres }; // a can is full
    }

    private Weighing OfUnit(Interval size, UnitFactorRow unit, Amount amount, FoodMeasures measures, string region)
    {
        if (!unit.IsMass)
        {
            return OfVolume(size, measures, small: unit.Factor.High < 100, Basis(amount, null));
        }

        Weighing weighed = OfGrams(size, measures, Basis(amount, null));
        return unit.Unit == "oz" && measures.Pours && _index.Unit("fl-oz", region) is { } fluid
            ? Hull(weighed, OfVolume(amount.Value * fluid.Factor, measures, small: false, weighed.Basis))
            : weighed;
    }

    private Weighing OfPackages(Ingredient ingredient, FoodMeasures measures, string region)
    {
        Amount package = ingredient.Package!;
        Weighing one = OfAmount(package, ingredient, measures, region);
        Interval count = ingredient.Amount!.Value;
        return Of(ingredient.Amount, region) is not null
            ? OfMeasures(ingredient, measures, region) // "1 lb (2 cups) ..." misread as a package: the amount itself has a unit
            : one with { Grams = one.Grams * count, Millilitres = one.Millilitres * count, CupMillilitres = one.CupMillilitres * count };
    }

    private static Weighing OfFruit(Interval count, string part, FoodMeasures measures)
    {
        Interval? juice = part.Contains("juice", StringComparison.Ordinal) ? measures.FromFruit("juice") * count : null;
        Interval? zest = part.Contains("zest", StringComparison.Ordinal) ? measures.FromFruit("zest") * count : null;
        Interval? grams = juice is { } wet ? wet + (zest ?? Interval.Zero) : zest;
        Interval zestCup = new(1.5, 3); // ml a gram: grated peel lies loose, about 2 g to a teaspoon
        return new(grams, grams, $"the {part} of the counted fruit", juice ?? (zest * zestCup));
    }

    private static Weighing OfVolume(Interval millilitres, FoodMeasures measures, bool small, string basis)
    {
        Interval grams = millilitres * measures.Bulk(small);
        return new(grams, measures.Pours ? millilitres : Over(grams, measures.Density), basis, millilitres);
    }

    private static Weighing OfGrams(Interval grams, FoodMeasures measures, string basis) =>
        new(grams, Over(grams, measures.Density), basis, Over(grams, measures.Bulk(small: false)));

    private Weighing AfterPreparation(Weighing found, FoodRow food, PrintedState printed)
    {
        if (printed.Then is not { } to)
        {
            return found;
        }

        string from = printed.IsCanned ? "canned" : food.Group is "legume-dried" or "grain" or "pasta" ? "dry" : "raw";
        if (from == "dry" && printed.IsCooked)
        {
            return found;
        }

        if (Yields.Factor(food, from, to) is not { } factor)
        {
            return found;
        }

        return found with
        {
            Grams = found.Grams * factor,
            Millilitres = found.Millilitres * factor,
            CupMillilitres = found.CupMillilitres * factor,
            Basis = found.Basis + ", " + to,
        };
    }

    private Weighing Checked(Weighing found) =>
        found.Grams is { } grams && (grams.Low > _absurdGrams || (grams.IsBounded && grams.High > _absurdGrams))
            ? Weighing.Nothing("more than any kitchen's", absurd: true)
            : found;

    private static Interval Over(Interval grams, Interval density) => new(grams.Low / density.High, grams.High / density.Low);

    private static Weighing Hull(Weighing left, Weighing right) => left with
    {
        Grams = Hull(left.Grams, right.Grams),
        Millilitres = Hull(left.Millilitres, right.Millilitres),
        CupMillilitres = Hull(left.CupMillilitres, right.CupMillilitres),
    };

    private static Interval? Hull(Interval? left, Interval? right) => left is { } own && right is { } other ? own.Hull(other) : left ?? right;

    private static string Basis(Amount amount, Interval? each)
    {
        string count = Text(amount.Value) + " " + amount.Unit;
        return each is { } one ? $"{count} at {Text(one)} g" : count;
    }

    private static string Text(Interval value) => value.Low == value.High
        ? value.Low.ToString("0.##", CultureInfo.InvariantCulture)
        : string.Create(CultureInfo.InvariantCulture, $"{value.Low:0.##} to {value.High:0.##}");
}
