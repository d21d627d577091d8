using ShelfSafe.Core;

namespace ShelfSafe.Reading;

/// <summary>Collects ingredient lines and sentences in reading order.</summary>
internal sealed class SortedLines
{
    private readonly List<SortedLine> _lines = [];
    private readonly List<MappedText> _sentences = [];

    /// <summary>Adds an ingredient line.</summary>
    public void AddIngredient(MappedText text, string? group, bool atServing, int dish) =>
        _lines.Add(new(text, true, group, atServing, StepRole.Step, false, dish));

    /// <summary>Adds the sentences of a text.</summary>
    public void AddProse(MappedText text, IReadOnlyList<LineBreak> breaks, StepRole role, bool loose, string? heading, int dish, bool mayHoldFoods = false)
    {
        _sentences.Clear();
        SentenceSplitter.Split(text, breaks, _sentences);
        foreach (MappedText sentence in _sentences)
        {
            _lines.Add(new(sentence, false, heading, false, role, loose, dish, mayHoldFoods));
        }
    }

    /// <summary>All lines; loose prose before the first ingredient turns out to be an introduction.</summary>
    public List<SortedLine> Settle()
    {
        int first = _lines.FindIndex(line => line.IsIngredient);
        for (int i = 0; i < first; i++)
        {
            if (_lines[i] is { IsLoose: true, Role: StepRole.Step } loose)
            {
                _lines[i] = loose with { Role = StepRole.Introduction };
            }
        }

        return _lines;
    }
}
