using System.Collections.Immutable;
using ShelfSafe.Foods;
using ShelfSafe.Pack;
using ShelfSafe.Reading;

namespace ShelfSafe.Steps;

/// <summary>Reads what the sentences of a recipe say about the jar, by the rows of <c>rules/step-facts.csv</c>.</summary>
/// <remarks>
/// A fact is given once a sentence, at the first words that say it. Known gap: who or what the words are about is not read,
/// so "blend the spices" counts as blended; that errs toward more findings.
/// </remarks>
internal sealed class StepReader
{
    private readonly StepRuleSet _rules;
    private readonly ReadTexts _texts;
    private readonly TextNote<SentenceHits> _hits;
    private readonly PrintedProcessReader _processes;

    /// <summary>Compiles the rows.</summary>
    /// <param name="rows">Rows of the table in order.</param>
    /// <param name="faults">Receives what is wrong in the phrases.</param>
    /// <param name="texts">Keeps what is found in a sentence.</param>
    public StepReader(IEnumerable<StepFactRow> rows, List<PackFault> faults, ReadTexts texts)
        : this(StepRuleSet.Of(rows, faults), texts)
    {
    }

    private StepReader(StepRuleSet rules, ReadTexts texts)
    {
        (_rules, _texts, _processes) = (rules, texts, new(texts));
        _hits = texts.Note(text => new SentenceHits(text.Text, rules));
    }

    /// <summary>Makes a reader of the table in a pack.</summary>
    /// <exception cref="InvalidDataException">The table is broken; packs are validated before.</exception>
    public static StepReader Create(RulePack pack, ReadTexts texts)
    {
        if (pack.Image is { } image)
        {
            return new(new StepRuleSet(image, StepFactRow.Compiled), texts);
        }

        List<PackFault> faults = [];
        StepReader reader = new(StepFactRow.Read(pack.Text(StepFactRow.File), faults), faults, texts);
        return faults.Count == 0 ? reader : throw new InvalidDataException(faults[0].ToString());
    }

    /// <summary>Every fact id that the reader may give.</summary>
    public IReadOnlyList<string> FactIds => _rules.Facts;

    /// <summary>Every fact that the sentences of a dish say, in reading order.</summary>
    public ImmutableArray<StepFact> Read(RecipePart part)
    {
        PartReading reading = new([.. part.Steps.Select(step => _hits.Of(_texts.Of(step.Text)))]);
        ImmutableArray<StepFact>.Builder found = ImmutableArray.CreateBuilder<StepFact>();
        for (int i = 0; i < part.Steps.Length; i++)
        {
            Core.MappedText text = part.Steps[i].Text;
            foreach (SentenceHit hit in reading.Of(i))
            {
                found.Add(new(_rules.Facts[hit.Fact], part.Steps[i], text.Map(hit.Start, hit.End), text.Text[hit.Start..hit.End]));
            }
        }

        return found.ToImmutable();
    }

    /// <summary>Every processing time, pressure and jar that the sentences print.</summary>
    public ImmutableArray<PrintedProcess> PrintedProcesses(RecipePart part) => _processes.Read(part);

    /// <summary>Every pH that the sentences print, with its place.</summary>
    public static ImmutableArray<PrintedPh> PrintedPhs(RecipePart part) => PrintedPhReader.Read(part);
}
