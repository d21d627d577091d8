using System.Buffers;
using System.Collections.Immutable;
using ShelfSafe.Reading;

namespace ShelfSafe.Steps;

/// <summary>Finds "pH 4.9", "a pH of about 3.8 to 4.2", "pH: 4,2".</summary>
internal static class PrintedPhReader
{
    private const int WordsBetween = 4;

    private static readonly SearchValues<string> Signs = SearchValues.Create(["ph"], StringComparison.OrdinalIgnoreCase);

    /// <summary>Every pH printed in the sentences.</summary>
    public static ImmutableArray<PrintedPh> Read(RecipePart part)
    {
        ImmutableArray<PrintedPh>.Builder found = ImmutableArray.CreateBuilder<PrintedPh>();
        foreach (StepSentence sentence in part.Steps)
        {
            string text = sentence.Text.Text;
            if (!text.AsSpan().ContainsAny(Signs))
            {
                continue; // most recipes print none
            }

            Vocabulary words = new();
            int ph = words.AddExact("ph");
            List<Token> tokens = Tokenizer.Cut(text, words);
            for (int at = 0; at < tokens.Count; at++)
            {
                if (tokens[at].Exact == ph)
                {
                    Add(found, sentence, tokens, at);
                }
            }
        }

        return found.ToImmutable();
    }

    private static void Add(ImmutableArray<PrintedPh>.Builder found, StepSentence sentence, List<Token> tokens, int at)
    {
        int last = Math.Min(tokens.Count - 1, at + WordsBetween + 1);
        for (int i = at + 1; i <= last; i++)
        {
            if (tokens[i].Number is >= 1 and <= 14)
            {
                int end = i;
                if (i + 1 < tokens.Count && tokens[i + 1].Number is >= 1 and <= 14)
                {
                    end = i + 1;
                }
                else if (i + 2 < tokens.Count && tokens[i + 1].End - tokens[i + 1].Start <= 3 && tokens[i + 2].Number is >= 1 and <= 14)
                {
                    end = i + 2;
                }

                double value = Math.Max(tokens[i].Number, tokens[end].Number);
                found.Add(new(value, sentence, sentence.Text.Map(tokens[at].Start, tokens[end].End)));
                return;
            }
        }
    }
}
