namespace ShelfSafe.Reading;

/// <summary>What the lines of one list or table look like together.</summary>
internal sealed class BlockShape
{
    /// <summary>Number of lines.</summary>
    public int Lines { get; private set; }

    /// <summary>Lines that hold an amount.</summary>
    public int Amounts { get; private set; }

    /// <summary>Lines that begin with a verb.</summary>
    public int Verbs { get; private set; }

    /// <summary>Lines that state a time or a yield.</summary>
    public int Timings { get; private set; }

    /// <summary>Lines that name a tool.</summary>
    public int Tools { get; private set; }

    /// <summary>Words in all lines.</summary>
    public int Words { get; private set; }

    /// <summary>Whether it is numbered.</summary>
    public bool Ordered { get; private set; }

    /// <summary>Most lines read like directions.</summary>
    public bool IsSteps => Verbs * 2 > Lines || (Words > Lines * 14 && Amounts * 2 < Lines) || (Ordered && Words > Lines * 8 && Verbs * 3 > Lines);

    /// <summary>More lines than not begin with a verb.</summary>
    public bool IsMostlyVerbs => Verbs * 2 > Lines;

    /// <summary>Most lines are timings.</summary>
    public bool IsTimings => Timings * 2 >= Lines;

    /// <summary>Most lines name tools and few amounts of food.</summary>
    public bool IsTools => Tools * 2 > Lines;

    /// <summary>At least half the lines hold amounts, and they do not read like directions.</summary>
    public bool HasAmounts => Amounts * 2 >= Lines && Verbs * 2 < Lines && Words <= Lines * 16;

    /// <summary>Nearly all lines hold amounts.</summary>
    public bool IsFullOfAmounts => Lines > 1 && Amounts * 10 >= Lines * 7 && Verbs == 0 && !Ordered;

    /// <summary>Lines are short and name things.</summary>
    public bool IsNames => Words <= Lines * 8 && Verbs * 3 < Lines;

    /// <summary>Counts a line.</summary>
    public void Add(LineShape shape, Row row)
    {
        Lines++;
        Amounts += shape.HasAmount && !(shape.IsVerb && !shape.StartsWithAmount) ? 1 : 0;
        Verbs += shape.IsVerb ? 1 : 0;
        Timings += shape.IsTiming ? 1 : 0;
        Tools += shape.IsEquipment ? 1 : 0;
        Words += shape.Words;
        Ordered |= row.Ordered && row.Depth == 1;
    }

    /// <summary>Whether the rows are foods, under such a heading.</summary>
    /// <param name="heading">Kind of the heading above them.</param>
    /// <param name="isFirst">Whether it is the first list of a dish that has no heading for ingredients.</param>
    /// <remarks>Without a heading that says so, amounts decide, or being the first list of short names.</remarks>
    public bool HoldsFoods(HeadingKind heading, bool isFirst) => !IsTimings && heading switch
    {
        HeadingKind.Ingredients => !IsMostlyVerbs || HasAmounts,
        HeadingKind.Needs => !IsTools && (!IsSteps || HasAmounts),
        HeadingKind.Serving => IsNames || HasAmounts,
        HeadingKind.Equipment => false,
        HeadingKind.Method or HeadingKind.Note => IsFullOfAmounts && !IsTools,
        HeadingKind.Variation => (HasAmounts || IsNames) && !IsSteps,
        HeadingKind.Introduction or HeadingKind.Name or HeadingKind.Group => !IsTools && (HasAmounts || (isFirst && IsNames && !IsSteps)),
    };
}
