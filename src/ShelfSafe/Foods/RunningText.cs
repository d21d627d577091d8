namespace ShelfSafe.Foods;

/// <summary>The words of a text, folded and singular, in one buffer, so that any run of them is a key without a copy.</summary>
internal sealed class RunningText
{
    private readonly (int Start, int End, int KeyStart, int KeyEnd)[] _words;
    private readonly char[] _keys;

    /// <summary>Folds the text once, in time linear in its length.</summary>
    public RunningText(string text)
    {
        _keys = new char[(3 * text.Length) + 2];
        _words = new (int, int, int, int)[(text.Length / 2) + 1];
        int at = 0;
        int start = -1;
        for (int i = 0; i <= text.Length; i++)
        {
            bool letter = i < text.Length && (char.IsLetterOrDigit(text[i]) || text[i] is '\'' or '\u2019');
            if (letter && start < 0)
            {
                start = i;
            }
            else if (!letter && start >= 0)
            {
                int length = Math.Max(0, WordFolding.Fold(text.AsSpan(start, i - start), _keys.AsSpan(at)));
                length = WordFolding.Singular(_keys.AsSpan(at, length));
                _words[Count++] = (start, i, at, at + length);
                at += length;
                _keys[at++] = ' ';
                start = -1;
            }
        }
    }

    /// <summary>Number of words.</summary>
    public int Count { get; }

    /// <summary>Offset of a word in the text.</summary>
    public int Start(int word) => _words[word].Start;

    /// <summary>Offset after a word in the text.</summary>
    public int End(int word) => _words[word].End;

    /// <summary>The key of a run of words.</summary>
    public ReadOnlySpan<char> Key(int word, int count) => _keys.AsSpan(_words[word].KeyStart, _words[word + count - 1].KeyEnd - _words[word].KeyStart);
}
