using System.Collections.Immutable;
using ShelfSafe.Pack;

namespace ShelfSafe.Steps;

/// <summary>All rows of a table as compiled rules, filed under the first word of each, so that a sentence costs linear time.</summary>
/// <remarks>Of the built-in pack the build has compiled them; a rule is made when a sentence first has a word that it may begin with.</remarks>
internal sealed class StepRuleSet
{
    private static readonly List<StepRule> None = [];
    private readonly PackImage _image;
    private readonly int _at;
    private readonly int[] _parts;
    private readonly List<StepRule>?[] _byWord;
    private readonly StepRule?[] _rules;
    private readonly PhraseCondition?[] _conditions;

    /// <summary>Opens rules that were compiled before.</summary>
    /// <param name="image">The image.</param>
    /// <param name="section">Name of the section that holds them.</param>
    public StepRuleSet(PackImage image, string section)
    {
        (_image, _at) = (image, image.Section(section));
        _parts = [.. Enumerable.Range(0, StepRuleWriter.Parts).Select(part => _at + image.Int32(_at + (4 * part)))];
        Words = new ImageVocabulary(image, _parts[StepRuleWriter.VocabularyPart]);
        Facts = [.. Enumerable.Range(0, Count(StepRuleWriter.FactPart)).Select(fact => image.String(image.Int32(_parts[StepRuleWriter.FactPart] + 4 + (4 * fact))))];
        _byWord = new List<StepRule>?[Count(StepRuleWriter.StartPart)];
        _rules = new StepRule?[Count(StepRuleWriter.RulePart)];
        _conditions = new PhraseCondition?[Count(StepRuleWriter.ConditionPart)];
    }

    /// <summary>The words of all rules.</summary>
    public WordNumbers Words { get; }

    /// <summary>How many different conditions there are.</summary>
    public int ConditionCount => _conditions.Length;

    /// <summary>The fact ids by number.</summary>
    public ImmutableArray<string> Facts { get; }

    /// <summary>Compiles rows now; a row that is wrong is left out and added to the faults.</summary>
    public static StepRuleSet Of(IEnumerable<StepFactRow> rows, List<PackFault> faults)
    {
        PackImageWriter writer = new();
        StepRuleWriter.Write(new StepRuleCompiler(rows, faults), StepFactRow.File, writer);
        return new(PackImage.Of(writer.ToArray()), StepFactRow.File);
    }

    /// <summary>The rules that may begin at a token, in four runs: by its stem, by the word as it stands, by its beginning, and by a number.</summary>
    public StartingRules Starting(in Token token) =>
        new(Of(token.Stem), Of(token.Exact), Of(token.Prefix), double.IsNaN(token.Number) ? None : OfStart(0));

    private List<StepRule> Of(int word) => word > 0 ? OfStart(word) : None;

    private List<StepRule> OfStart(int word) =>
        _byWord[word] ??= [.. Numbers(Entry(StepRuleWriter.StartPart, word), out _).Select(rule => _rules[rule] ??= Rule(Entry(StepRuleWriter.RulePart, rule)))];

    private StepRule Rule(int at)
    {
        int fact = _image.Int32(at);
        Phrase core = Phrase(_image.Int32(at + 4));
        IEnumerable<int> needs = Numbers(at + 8, out int end);
        return new(fact, core, [.. needs.Select(Condition)], [.. Numbers(end, out _).Select(Condition)]);
    }

    private PhraseCondition Condition(int number)
    {
        int at = Entry(StepRuleWriter.ConditionPart, number);
        return _conditions[number] ??= new(number, (PhraseScope)_image.Int32(at), [.. Numbers(at + 4, out _).Select(Phrase)]);
    }

    private Phrase Phrase(int number)
    {
        int at = Entry(StepRuleWriter.PhrasePart, number);
        PhrasePlace[] places = new PhrasePlace[_image.Int32(at)];
        at += 4;
        for (int i = 0; i < places.Length; i++)
        {
            (double least, double most) = (_image.Double(at), _image.Double(at + 8));
            (bool optional, int gap) = (_image.Int32(at + 16) != 0, _image.Int32(at + 20));
            places[i] = new(Bits(Numbers(at + 24, out at)), least, most, optional, gap);
        }

        return new([.. places]);
    }

    private static ImmutableArray<ulong> Bits(int[] words)
    {
        ulong[] bits = new ulong[words.Length == 0 ? 0 : (words[^1] >> 6) + 1]; // the last word has the greatest number
        foreach (int word in words)
        {
            bits[word >> 6] |= 1UL << (word & 63);
        }

        return [.. bits];
    }

    private int Count(int part) => _image.Int32(_parts[part]);

    private int Entry(int part, int number) => _at + _image.Int32(_parts[part] + 4 + (4 * number));

    private int[] Numbers(int at, out int end)
    {
        int[] numbers = new int[_image.Int32(at)];
        for (int i = 0; i < numbers.Length; i++)
        {
            numbers[i] = _image.Int32(at + 4 + (4 * i));
        }

        end = at + 4 + (4 * numbers.Length);
        return numbers;
    }
}
