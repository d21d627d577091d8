using System.Collections.Concurrent;
using System.Collections.Immutable;

namespace ShelfSafe.Pack;

/// <summary>What a card asks for without which it has nothing to say.</summary>
internal enum CardSign
{
    /// <summary>A trait of a food.</summary>
    Trait,

    /// <summary>A food.</summary>
    Food,

    /// <summary>A group of foods.</summary>
    Group,

    /// <summary>A step fact.</summary>
    Step,

    /// <summary>A kind of dish.</summary>
    Dish,
}

/// <summary>Cards of an image, each read when it is first asked for; by its signs a card is known to be beside the point without being read.</summary>
/// <remarks><see cref="CardShelfWriter"/> explains the layout.</remarks>
internal sealed class CardShelf<T>
    where T : class
{
    private readonly PackImage _image;
    private readonly int _at;
    private readonly Func<CardCursor, T> _read;
    private readonly ImageMap _names;
    private readonly PackWords[] _signs;
    private readonly T?[] _cards;
    private readonly ConcurrentDictionary<string, int[]> _ofFoods = new(StringComparer.Ordinal); // no more than the pack has foods

    /// <summary>Opens the cards of an image.</summary>
    /// <param name="image">The image.</param>
    /// <param name="section">Name of the section that holds them.</param>
    /// <param name="read">Reads the fields of a card.</param>
    public CardShelf(PackImage image, string section, Func<CardCursor, T> read)
    {
        (_image, _at, _read) = (image, image.Section(section), read);
        _names = new(image, _at + image.Int32(_at));
        _cards = new T?[_names.Count];
        _signs = new PackWords[(int)CardSign.Dish + 1];
        for (int kind = 0; kind < _signs.Length; kind++)
        {
            _signs[kind] = new(image, _at + image.Int32(_at + (4 * (kind + 1))));
            SignCount += _signs[kind].Count;
        }
    }

    /// <summary>How many cards there are.</summary>
    public int Count => _cards.Length;

    /// <summary>How many different signs there are.</summary>
    public int SignCount { get; }

    /// <summary>Every card in order.</summary>
    public ImmutableArray<T> All => [.. Enumerable.Range(0, Count).Select(card => this[card])];

    /// <summary>The card at a place, always the same object.</summary>
    public T this[int card] => _cards[card] ?? Interlocked.CompareExchange(ref _cards[card], Read(card), null) ?? _cards[card]!;

    /// <summary>Place of the card with a name, or -1.</summary>
    public int Find(string name) => _names.Find(name);

    /// <summary>Marks a sign where any card has it.</summary>
    /// <param name="marks">One for each sign.</param>
    /// <param name="kind">Kind of the sign.</param>
    /// <param name="word">Its word.</param>
    public void Mark(bool[] marks, CardSign kind, string word)
    {
        if (_signs[(int)kind].TryGet(word, out int sign))
        {
            marks[sign] = true;
        }
    }

    /// <summary>Marks the signs that a food brings: itself, its group and its traits.</summary>
    /// <param name="marks">One for each sign.</param>
    /// <param name="food">A food of the pack.</param>
    public void Mark(bool[] marks, FoodRow food)
    {
        if (!_ofFoods.TryGetValue(food.Id, out int[]? signs))
        {
            bool[] own = new bool[SignCount];
            Mark(own, CardSign.Food, food.Id);
            Mark(own, CardSign.Group, food.Group);
            foreach (string trait in food.Traits)
            {
                Mark(own, CardSign.Trait, trait);
            }

            _ofFoods[food.Id] = signs = [.. Enumerable.Range(0, own.Length).Where(sign => own[sign])];
        }

        foreach (int sign in signs)
        {
            marks[sign] = true;
        }
    }

    /// <summary>Whether a card may have something to say where these signs are.</summary>
    public bool IsMeant(int card, bool[] marks)
    {
        int at = _at + _names.Value(card);
        int count = _image.Int32(at);
        for (int i = 1; i <= count; i++)
        {
            if (marks[_image.Int32(at + (4 * i))])
            {
                return true;
            }
        }

        return count < 0;
    }

    private T Read(int card)
    {
        int at = _at + _names.Value(card);
        return _read(new(_image, at + 4 + (4 * Math.Max(0, _image.Int32(at)))));
    }
}
