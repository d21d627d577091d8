using System.Buffers;
using System.Buffers.Binary;
using System.Text;

namespace ShelfSafe.Pack;

/// <summary>Writes a <see cref="PackImage"/>.</summary>
/// <remarks>
/// Layout: the header (magic, layout, number of sections, where the offsets of the strings begin, where their bytes begin), the
/// directory (for each section its name and where it begins), the sections, the offsets of all strings and one more for the end,
/// and the strings in UTF-8. Inside a section a string is its number. Equal input gives equal bytes.
/// </remarks>
internal sealed class PackImageWriter
{
    /// <summary>Bytes before the directory.</summary>
    public const int HeaderLength = 20;

    private readonly Dictionary<string, int> _ids = new(StringComparer.Ordinal);
    private readonly List<byte[]> _texts = [];
    private readonly List<(int Name, byte[] Bytes)> _sections = [];

    /// <summary>Number of a string, the same for equal strings.</summary>
    public int Id(string text)
    {
        if (!_ids.TryGetValue(text, out int id))
        {
            id = _texts.Count;
            _ids.Add(text, id);
            _texts.Add(Encoding.UTF8.GetBytes(text));
        }

        return id;
    }

    /// <summary>Adds a section.</summary>
    public void Add(string name, ImageSection section) => _sections.Add((Id(name), section.ToArray()));

    /// <summary>The finished image.</summary>
    public byte[] ToArray()
    {
        int at = HeaderLength + (8 * _sections.Count);
        ImageSection directory = new();
        foreach ((int name, byte[] bytes) in _sections)
        {
            directory.Add(name);
            directory.Add(at);
            at += bytes.Length;
        }

        ImageSection all = new();
        foreach (int number in (ReadOnlySpan<int>)[PackImage.Magic, PackImage.Layout, _sections.Count, at, at + (4 * (_texts.Count + 1))])
        {
            all.Add(number);
        }

        all.Add(directory.ToArray());
        foreach ((int _, byte[] bytes) in _sections)
        {
            all.Add(bytes);
        }

        int offset = 0;
        foreach (byte[] text in _texts)
        {
            all.Add(offset);
            offset += text.Length;
        }

        all.Add(offset);
        foreach (byte[] text in _texts)
        {
            all.Add(text);
        }

        return all.ToArray();
    }
}

/// <summary>The bytes of one section while it is written.</summary>
internal sealed class ImageSection
{
    private readonly ArrayBufferWriter<byte> _bytes = new();

    /// <summary>How many bytes there are: where the next value will stand, counted from the beginning of the section.</summary>
    public int Length => _bytes.WrittenCount;

    /// <summary>Adds a whole number.</summary>
    public void Add(int value)
    {
        Span<byte> bytes = stackalloc byte[sizeof(int)];
        BinaryPrimitives.WriteInt32LittleEndian(bytes, value);
        _bytes.Write(bytes);
    }

    /// <summary>Adds a bit set.</summary>
    public void Add(ulong value)
    {
        Span<byte> bytes = stackalloc byte[sizeof(ulong)];
        BinaryPrimitives.WriteUInt64LittleEndian(bytes, value);
        _bytes.Write(bytes);
    }

    /// <summary>Adds a list: how many numbers, then each.</summary>
    public void Add(IReadOnlyCollection<int> numbers)
    {
        Add(numbers.Count);
        foreach (int number in numbers)
        {
            Add(number);
        }
    }

    /// <summary>Adds a number.</summary>
    public void Add(double value) => Add(BitConverter.DoubleToUInt64Bits(value));

    /// <summary>Adds bytes.</summary>
    public void Add(byte[] bytes) => _bytes.Write(bytes);

    /// <summary>The bytes.</summary>
    public byte[] ToArray() => _bytes.WrittenSpan.ToArray();
}
