namespace ShelfSafe.Foods;

/// <summary>A set of kinds of words, one bit each.</summary>
/// <param name="Low">The first 128 kinds.</param>
/// <param name="High">The next 128.</param>
internal readonly record struct KindBits(UInt128 Low, UInt128 High)
{
    /// <summary>How many kinds there may be.</summary>
    public const int Most = 256;

    /// <summary>The set of one kind.</summary>
    /// <param name="place">Its place, 0 to 255.</param>
    public static KindBits At(int place) => place < Most / 2 ? new(UInt128.One << place, 0) : new(0, UInt128.One << (place - (Most / 2)));

    /// <summary>The kinds of both sets.</summary>
    public static KindBits operator |(KindBits one, KindBits other) => new(one.Low | other.Low, one.High | other.High);

    /// <summary>Whether both sets have a kind in common.</summary>
    public bool Meets(KindBits other) => ((Low & other.Low) | (High & other.High)) != 0;
}
