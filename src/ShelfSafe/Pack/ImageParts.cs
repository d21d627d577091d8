namespace ShelfSafe.Pack;

/// <summary>A section in the making that has several parts: first where each begins, counted from the section, then their bytes.</summary>
/// <param name="count">How many parts there are.</param>
internal sealed class ImageParts(int count)
{
    private readonly ImageSection _begins = new();

    /// <summary>The bytes behind the beginnings.</summary>
    public ImageSection Body { get; } = new();

    /// <summary>Where the next value will stand, counted from the section.</summary>
    public int Here => (count * sizeof(int)) + Body.Length;

    /// <summary>Begins the next part.</summary>
    public void Begin() => _begins.Add(Here);

    /// <summary>Begins a part of entries: their number, where each begins, and the entries.</summary>
    public void Entries<T>(IReadOnlyList<T> all, Action<T, ImageSection> write)
    {
        Begin();
        ImageSection entries = new();
        int first = Here + sizeof(int) + (sizeof(int) * all.Count);
        Body.Add(all.Count);
        foreach (T one in all)
        {
            Body.Add(first + entries.Length);
            write(one, entries);
        }

        Body.Add(entries.ToArray());
    }

    /// <summary>Begins a part that is a map.</summary>
    public void Map(PackImageWriter writer, IReadOnlyList<(string Key, int Value)> pairs)
    {
        Begin();
        ImageMap.Write(writer, Body, pairs);
    }

    /// <summary>The finished section, once every part was begun.</summary>
    public ImageSection ToSection()
    {
        ImageSection section = new();
        section.Add(_begins.ToArray());
        section.Add(Body.ToArray());
        return section;
    }
}
