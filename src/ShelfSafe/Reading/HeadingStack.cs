namespace ShelfSafe.Reading;

/// <summary>The headings that stand above a row.</summary>
internal sealed class HeadingStack
{
    private readonly List<(int Level, HeadingKind Kind, string Text, int Row)> _frames = [];

    /// <summary>Kind of the innermost heading that says what stands below it; a bare name where none does.</summary>
    public HeadingKind Kind { get; private set; }

    /// <summary>Words of the innermost heading, or <see langword="null"/>.</summary>
    public string? Text => _frames.Count == 0 ? null : _frames[^1].Text;

    /// <summary>Row of the heading that names the dish, or -1.</summary>
    public int Dish { get; private set; } = -1;

    /// <summary>Name of the group of foods, or <see langword="null"/> under a bare "Ingredients".</summary>
    public string? Group { get; private set; }

    /// <summary>Goes under a heading.</summary>
    public void Push(int level, HeadingKind kind, string text, int row)
    {
        while (_frames.Count > 0 && _frames[^1].Level >= level)
        {
            _frames.RemoveAt(_frames.Count - 1);
        }

        _frames.Add((level, kind, text, row));
        Update();
    }

    /// <summary>Leaves all headings.</summary>
    public void Clear()
    {
        _frames.Clear();
        Update();
    }

    private static bool IsKnown(HeadingKind kind) => kind is not (HeadingKind.Name or HeadingKind.Group);

    private void Update()
    {
        Kind = HeadingKind.Name;
        Dish = -1;
        Group = null;
        bool known = false;
        bool foods = false;
        foreach ((int level, HeadingKind kind, string text, int row) in _frames)
        {
            bool variation = kind == HeadingKind.Variation;
            if (variation || (kind == HeadingKind.Name && !known && level <= 6))
            {
                Dish = row;
            }

            bool isFoods = kind is HeadingKind.Ingredients or HeadingKind.Needs;
            Group = kind is HeadingKind.Group or HeadingKind.Serving || (kind == HeadingKind.Name && (known || level > 6)) || (isFoods && (foods || known) && text.Length <= 40)
                ? text.TrimEnd(':', ' ') : isFoods ? null : Group;
            foods |= isFoods;
            if (IsKnown(kind))
            {
                Kind = kind;
                known |= !variation;
            }
        }
    }
}
