using System.Text;

namespace ShelfSafe.Foods;

/// <summary>The words of a text, folded and singular, in one buffer, so that any run of them is a key without a copy.</summary>
internal sealed class RunningText
{
    private readonly List<(int Start, int End, int KeyStart, int KeyEnd)> _words = [];
    private readonly string _keys;

    /// <summary>Folds the text once, in time linear in its length.</summary>
    public RunningText(string text)
    {
        StringBuilder keys = new(text.Length + 8);
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
                string[] folded = WordFolding.Words(text[start..i]);
                int keyStart = keys.Length;
                keys.Append(folded.Length == 1 ? WordFolding.Singular(folded[0]) : string.Empty);
                _words.Add((start, i, keyStart, keys.Length));
                keys.Append(' ');
                start = -1;
            }
        }

        _keys = keys.ToString();
    }

    /// <summary>Number of words.</summary>
    public int Count => _words.Count;

    /// <summary>Offset of a word in the text.</summary>
    public int Start(int word) => _words[word].Start;

    /// <summary>Offset after a word in the text.</summary>
    public int End(int word) => _words[word].End;

    /// <summary>The key of a run of words.</summary>
    public ReadOnlySpan<char> Key(int word, int count) => _keys.AsSpan(_words[word].KeyStart, _words[word + count - 1].KeyEnd - _words[word].KeyStart);
}
