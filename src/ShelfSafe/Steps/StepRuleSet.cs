using System.Collections.Immutable;
using System.Runtime.InteropServices;
using ShelfSafe.Core;
using ShelfSafe.Pack;

namespace ShelfSafe.Steps;

/// <summary>All rows of a table as compiled rules, filed under the first word of each, so that a sentence costs linear time.</summary>
/// <remarks>Of the built-in pack the build has compiled them; a rule is made when a sentence first has a word that it may begin with.</remarks>
internal sealed class StepRuleSet
{
    private readonly PackImage _image;
    private readonly int _at;
    private readonly int[] _parts;
    private readonly StepRule[]?[] _byWord;
    private readonly StepRule?[] _rules;
    private readonly PhraseCondition?[] _conditions;
    private readonly Memo<string, SentenceHits> _sentences = new();

    /// <summary>Opens rules that were compiled before.</summary>
    /// <param name="image">The image.</param>
    /// <param name="section">Name of the section that holds them.</param>
    public StepRuleSet(PackImage image, string section)
    {
        (_image, _at) = (image, image.Section(section));
        _parts = new int[StepRuleWriter.Parts];
        for (int part = 0; part < _parts.Length; part++)
        {
            _parts[part] = _at + image.Int32(_at + (4 * part));
        }

        Words = new ImageVocabulary(image, _parts[StepRuleWriter.VocabularyPart]);
        string[] facts = new string[Count(StepRuleWriter.FactPart)];
        for (int fact = 0; fact < facts.Length; fact++)
        {
            facts[fact] = image.String(image.Int32(_parts[StepRuleWriter.FactPart] + 4 + (4 * fact)));
        }

        Facts = ImmutableCollectionsMarshal.AsImmutableArray(facts);
        _byWord = new StepRule[]?[Count(StepRuleWriter.StartPart)];
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
        return new(PackImage.Of(writer => StepRuleWriter.Write(new StepRuleCompiler(rows, faults), StepFactRow.File, writer)), StepFactRow.File);
    }

    /// <summary>What the rules find in a sentence by itself.</summary>
    public SentenceHits Read(string sentence) => _sentences.TryGet(sentence, out SentenceHits? known) ? known : _sentences.Keep(sentence, sentence.Length, new(sentence, this));

    /// <summary>The rules that may begin at a token, in four runs: by its stem, by the word as it stands, by its beginning, and by a number.</summary>
    public StartingRules Starting(in Token token) =>
        new(Of(token.Stem), Of(token.Exact), Of(token.Prefix), double.IsNaN(token.Number) ? [] : OfStart(0));

    /// <summary>A condition by its number, made when the words of a rule are first found.</summary>
    public PhraseCondition Condition(int number) => _conditions[number] ??= ReadCondition(number);

    private StepRule[] Of(int word) => word > 0 ? OfStart(word) : [];

    private StepRule[] OfStart(int word) =>
        _byWord[word] ??= Array.ConvertAll(Numbers(Entry(StepRuleWriter.StartPart, word), out _), rule => _rules[rule] ??= Rule(Entry(StepRuleWriter.RulePart, rule)));

    private StepRule Rule(int at)
    {
        int fact = _image.Int32(at);
        Phrase core = Phrase(_image.Int32(at + 4));
        int[] needs = Numbers(at + 8, out int end);
        return new(fact, core, needs, Numbers(end, out _));
    }

    private PhraseCondition ReadCondition(int number)
    {
        int at = Entry(StepRuleWriter.ConditionPart, number);
        return new(number, (PhraseScope)_image.Int32(at), ImmutableCollectionsMarshal.AsImmutableArray(Array.ConvertAll(Numbers(at + 4, out _), Phrase)));
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
            places[i] = new(new(Numbers(at + 24, out at)), least, most, optional, gap);
        }

        return new(ImmutableCollectionsMarshal.AsImmutableArray(places));
    }

    private int Count(int part) => _image.Int32(_parts[part]);

    private int Entry(int part, int number) => _at + _image.Int32(_parts[part] + 4 + (4 * number));

    private int[] Numbers(int at, out int end)
    {
        int count = _image.Int32(at);
        int[] numbers = count == 0 ? [] : new int[count];
        for (int i = 0; i < numbers.Length; i++)
        {
            numbers[i] = _image.Int32(at + 4 + (4 * i));
        }

        end = at + 4 + (4 * numbers.Length);
        return numbers;
    }
}
