using System.Buffers.Binary;
using System.Runtime.CompilerServices;
using System.Text;

namespace ShelfSafe.Pack;

/// <summary>A pack as one binary: strings and sections that are read where they lie, each only when it is asked for.</summary>
/// <remarks>
/// Written by <see cref="PackImageWriter"/>, which explains the layout. All numbers are little-endian. The bytes are those of the
/// program file itself, so that a start neither copies nor decodes what a recipe does not need.
/// </remarks>
internal sealed unsafe class PackImage
{
    /// <summary>First four bytes.</summary>
    public const int Magic = 0x4B505353;

    /// <summary>Number of the layout; another one is refused.</summary>
    public const int Layout = 1;

    private readonly object _owner; // keeps the bytes where they are
    private readonly byte* _start;
    private readonly int _length;
    private readonly int _sections;
    private readonly int _offsets;
    private readonly int _texts;

    private PackImage(object owner, byte* start, int length)
    {
        _owner = owner;
        _start = start;
        _length = length;
        if (length < PackImageWriter.HeaderLength || Int32(0) != Magic || Int32(4) != Layout)
        {
            throw new InvalidDataException("the built-in rule pack is of another layout than the program; build both together");
        }

        (_sections, _offsets, _texts) = (Int32(8), Int32(12), Int32(16));
    }

    /// <summary>Takes an image that is built into the program.</summary>
    public static PackImage Of(Stream resource)
    {
        if (resource is UnmanagedMemoryStream mapped)
        {
            return new(mapped, mapped.PositionPointer, checked((int)mapped.Length));
        }

        using MemoryStream copy = new();
        resource.CopyTo(copy);
        return Of(copy.ToArray());
    }

    /// <summary>Takes an image that was made in memory.</summary>
    public static PackImage Of(ReadOnlySpan<byte> bytes)
    {
        byte[] pinned = GC.AllocateUninitializedArray<byte>(bytes.Length, pinned: true);
        bytes.CopyTo(pinned);
        fixed (byte* start = pinned)
        {
            return new(pinned, start, pinned.Length); // a pinned array stays at its place after the block
        }
    }

    /// <summary>Makes an image in memory.</summary>
    /// <param name="write">Writes what it holds.</param>
    public static PackImage Of(Action<PackImageWriter> write)
    {
        PackImageWriter writer = new();
        write(writer);
        return Of(writer.ToArray());
    }

    /// <summary>The whole image.</summary>
    public ReadOnlySpan<byte> Bytes => new(_start, _length);

    /// <summary>A whole number.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public int Int32(int at)
    {
        if ((uint)at > (uint)(_length - sizeof(int)))
        {
            ThrowOutside();
        }

        return BinaryPrimitives.ReadInt32LittleEndian(new ReadOnlySpan<byte>(_start + at, sizeof(int)));
    }

    /// <summary>A bit set.</summary>
    public ulong UInt64(int at) => BinaryPrimitives.ReadUInt64LittleEndian(Bytes[at..]);

    /// <summary>A number.</summary>
    public double Double(int at) => BinaryPrimitives.ReadDoubleLittleEndian(Bytes[at..]);

    /// <summary>A string, decoded anew at each call.</summary>
    public string String(int id)
    {
        ReadOnlySpan<byte> utf8 = Utf8(id);
        return Ascii.IsValid(utf8)
            ? string.Create(utf8.Length, utf8, static (text, bytes) => Ascii.ToUtf16(bytes, text, out _))
            : Encoding.UTF8.GetString(utf8);
    }

    /// <summary>Whether a string is the same as a text of plain ASCII.</summary>
    public bool Is(int id, string ascii) => Ascii.Equals(Utf8(id), ascii);

    /// <summary>A string as it is stored.</summary>
    public ReadOnlySpan<byte> Utf8(int id)
    {
        int from = Int32(_offsets + (4 * id));
        return Bytes.Slice(_texts + from, Int32(_offsets + (4 * id) + 4) - from);
    }

    /// <summary>Where a section begins, or -1.</summary>
    public int Section(string name)
    {
        Span<byte> utf8 = stackalloc byte[3 * name.Length];
        ReadOnlySpan<byte> wanted = utf8[..Encoding.UTF8.GetBytes(name, utf8)];
        for (int at = PackImageWriter.HeaderLength; at < PackImageWriter.HeaderLength + (8 * _sections); at += 8)
        {
            if (Utf8(Int32(at)).SequenceEqual(wanted))
            {
                return Int32(at + 4);
            }
        }

        return -1;
    }

    private static void ThrowOutside() => throw new InvalidDataException("the built-in rule pack ends before what it tells of; build pack and program together");

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{_length} bytes in {_owner.GetType().Name}");
}
