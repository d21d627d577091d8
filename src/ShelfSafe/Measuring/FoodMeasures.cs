using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Pack;

namespace ShelfSafe.Measuring;

/// <summary>What is known about measuring one food in one printed state; several published foods that may stand for it are joined.</summary>
internal sealed class FoodMeasures(MeasureIndex index, FoodRow food, PrintedState printed)
{
    // A stand-in's cup differs little from its own; its pieces may be of quite another size.
    private static readonly Interval NearCup = new(0.8, 1.25);
    private static readonly Interval NearPiece = new(0.5, 2);
    private static readonly string[] EachFirst = ["each", "head", "ear", "bulb", "root", "stalk", "clove", "sprig", "leaf", "piece", "pod", "cube", "bunch"];
    private readonly ImmutableArray<LikeRow> _likes = index.Matching(food, printed);

    /// <summary>Whether it fills a measure without air gaps.</summary>
    public bool Pours => food.Has("thin-liquid") || _likes.Any(like => like.Pours);

    /// <summary>Density in the pot, g/ml.</summary>
    public Interval Density
    {
        get
        {
            Interval? joined = null;
            foreach (LikeRow like in _likes)
            {
                if (index.CompositionOf(like.Like)?.Density is { } own)
                {
                    joined = Join(joined, like.IsNear ? own * new Interval(0.95, 1.05) : own);
                }
            }

            return joined ?? index.Group(food.Group).Density;
        }
    }

    /// <summary>Scooped density, g/ml, from the spoon rows for small measures and the cup rows for large.</summary>
    /// <param name="small">Whether the measure is a spoon or less.</param>
    public Interval Bulk(bool small)
    {
        (string Measure, double Millilitres)[] first = [("cup", 236.588)];
        (string Measure, double Millilitres)[] second = [("tbsp", 14.7868), ("tsp", 4.92892), ("fl-oz", 29.5735), ("quart", 946.353)];
        Interval? own = small ? FromRows(second) ?? FromRows(first) : FromRows(first) ?? FromRows(second);
        return own ?? (Pours ? Density : index.Group(food.Group).Bulk);
    }

    /// <summary>Grams of one counted unit, or <see langword="null"/> where the unit is unknown.</summary>
    public Interval? Counted(string unit, string? size)
    {
        if (unit == "each")
        {
            foreach (string measure in EachFirst)
            {
                if (Piece(measure, size) is { } found)
                {
                    return found;
                }
            }

            return index.Group(food.Group).Each is { High: > 0 } each ? each : null; // nobody counts water or vinegar
        }

        Interval? own = Piece(unit, size);
        if (unit == "package" && Piece("envelope", size: null) is { } envelope)
        {
            own = Join(own, envelope); // the word for the packing is not kept in the unit
        }

        return own
            ?? (unit is "head" or "bulb" or "ear" or "root" or "half" or "fillet" ? Piece(unit == "bulb" ? "head" : "each", size) : null)
            ?? index.Package(food.Group, unit);
    }

    /// <summary>Grams of one counted unit by the food's own rows alone, or <see langword="null"/>.</summary>
    public Interval? OwnPiece(string unit) => Piece(unit, size: null);

    /// <summary>Grams (and millilitres) of the juice of one fruit, or grams of its zest.</summary>
    public Interval? FromFruit(string part) => Piece(part, size: null) ?? index.Package(food.Group, part);

    private Interval? Piece(string measure, string? size) => OwnOrLike(id => PieceOf(id, measure, size), NearPiece);

    private Interval? PieceOf(string id, string measure, string? size)
    {
        Interval? sized = null;
        Interval? any = null;
        foreach (MeasureRow row in index.MeasuresOf(id))
        {
            if (row.State.Length > 0 || !IsMeasure(row.Measure, measure, out ReadOnlySpan<char> rowSize))
            {
                continue;
            }

            any = Join(any, row.Grams);
            if (size is not null && rowSize.Equals(size, StringComparison.Ordinal))
            {
                sized = Join(sized, row.Grams);
            }
        }

        return sized ?? any;
    }

    private Interval? FromRows((string Measure, double Millilitres)[] measures) => OwnOrLike(id => DensityOf(id, measures), NearCup);

    private Interval? DensityOf(string id, (string Measure, double Millilitres)[] measures)
    {
        Interval? cut = null;
        Interval? any = null;
        foreach (MeasureRow row in index.MeasuresOf(id))
        {
            foreach ((string measure, double millilitres) in measures)
            {
                if (row.Measure != measure)
                {
                    continue;
                }

                Interval density = row.Grams * (1 / millilitres);
                if (row.State.Length == 0)
                {
                    any = Join(any, density);
                }
                else if (IsCut(row.State))
                {
                    cut = Join(cut, density);
                }
            }
        }

        return cut ?? any;
    }

    // A row under the food's own id comes before any stand-in; the stand-ins are joined, the near ones widened.
    private Interval? OwnOrLike(Func<string, Interval?> rows, Interval near)
    {
        if (!_likes.Any(like => like.State is "canned" or "cooked" or "frozen") && rows(food.Id) is { } own)
        {
            return own;
        }

        Interval? joined = null;
        foreach (LikeRow like in _likes)
        {
            if (like.Like.Length > 0 && rows(like.Like) is { } found)
            {
                bool isNear = _likes.Any(other => other.Like == like.Like && other.IsNear);
                joined = Join(joined, isNear ? found * near : found);
            }
        }

        return joined ?? rows(food.Id); // a stand-in without such a row leaves the food's own
    }

    private bool IsCut(string state) => state switch
    {
        "chopped" => HasAny("chopped", "diced", "cubed", "minced", "cut"),
        "sliced" => HasAny("sliced"),
        "shredded" => HasAny("shredded", "grated"),
        "halves" => HasAny("halved", "halves"),
        "mashed" => HasAny("mashed"),
        "crushed" => HasAny("crushed"),
        "pureed" => HasAny("pureed"),
        "packed" => HasAny("packed"),
        "melted" => HasAny("melted"),
        "crumbled" => HasAny("crumbled"),
        _ => false,
    };

    private bool HasAny(params ReadOnlySpan<string> words)
    {
        foreach (string word in words)
        {
            if (PrintedState.Has(printed.Words, word))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsMeasure(string row, string wanted, out ReadOnlySpan<char> size)
    {
        size = default;
        if (!row.StartsWith(wanted, StringComparison.Ordinal))
        {
            return false;
        }

        ReadOnlySpan<char> rest = row.AsSpan(wanted.Length);
        if (rest is "-small" or "-medium" or "-large")
        {
            size = rest[1..];
            return true;
        }

        return rest.Length == 0;
    }

    private static Interval Join(Interval? before, Interval next) => before is { } own ? own.Hull(next) : next;
}
