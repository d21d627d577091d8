using System.Collections.Immutable;
using ShelfSafe.Core;

namespace ShelfSafe.Reading;

/// <summary>Groups the sorted lines into dishes.</summary>
/// <remarks>
/// A heading makes a dish only if it has foods and directions of its own and no other dish of the file names it;
/// whatever is unclear stays in one part, which is the cautious reading: everything is judged as one batch.
/// </remarks>
internal static class PartSplitter
{
    private const int SharedWord = int.MinValue;

    /// <summary>The parts of a file, at least one.</summary>
    public static ImmutableArray<RecipePart> Split(List<SortedLine> lines, List<Row> rows, int textLength)
    {
        List<int> dishes = Dishes(lines, rows);
        if (dishes.Count < 2)
        {
            return [Part(null, new(0, textLength), lines)];
        }

        ImmutableArray<RecipePart>.Builder parts = ImmutableArray.CreateBuilder<RecipePart>(dishes.Count);
        int next = 0;
        for (int i = 0; i < dishes.Count; i++)
        {
            int from = i == 0 ? 0 : rows[dishes[i]].Text.Span.Start;
            int to = i + 1 < dishes.Count ? rows[dishes[i + 1]].Text.Span.Start : textLength;
            int first = next;
            while (next < lines.Count && (i + 1 == dishes.Count || lines[next].Text.Span.Start < to))
            {
                next++;
            }

            parts.Add(Part(dishes[i] < 0 ? null : rows[dishes[i]].Text.Text, new(from, to), lines.GetRange(first, next - first)));
        }

        return parts.MoveToImmutable();
    }

    /// <summary>Heading rows of the dishes in reading order; fewer than two where the file holds one.</summary>
    private static List<int> Dishes(List<SortedLine> lines, List<Row> rows)
    {
        List<int> order = [];
        Dictionary<int, (int Foods, int Steps)> counts = [];
        foreach (SortedLine line in lines)
        {
            if (!counts.TryGetValue(line.Dish, out (int Foods, int Steps) count))
            {
                order.Add(line.Dish);
            }

            counts[line.Dish] = line.IsIngredient ? (count.Foods + 1, count.Steps)
                : (count.Foods, count.Steps + (line.Role == StepRole.Step ? 1 : 0));
        }

        List<int> dishes = [];
        int last = -2;
        foreach (int dish in order)
        {
            (int foods, int steps) = counts[dish];
            bool variation = dish >= 0 && rows[dish].Announces == HeadingKind.Variation;
            bool own = foods >= 1 && steps > 0;
            if (dish > last && (own || (variation && foods >= 3)))
            {
                dishes.Add(dish);
                last = dish;
            }
        }

        return dishes.Count > 1 && AreCombined(dishes, lines, rows) ? [] : dishes;
    }

    /// <summary>Whether the lines of one dish name another: "add the dumplings".</summary>
    /// <remarks>One pass over the names and one over the words of all lines, so that long files stay linear.</remarks>
    private static bool AreCombined(List<int> dishes, List<SortedLine> lines, List<Row> rows)
    {
        Dictionary<string, int> owners = new(StringComparer.Ordinal);
        foreach (int dish in dishes)
        {
            if (dish < 0 || rows[dish].Announces == HeadingKind.Variation)
            {
                continue;
            }

            foreach (string word in HeadingWords.Normalise(rows[dish].Text.Text).Split(' '))
            {
                string stem = Stem(word);
                if (stem.Length >= 4)
                {
                    // A word in two names ("jam") tells nothing apart.
                    owners[stem] = owners.TryGetValue(stem, out int other) && other != dish ? SharedWord : dish;
                }
            }
        }

        HashSet<int> known = [.. dishes.FindAll(dish => dish < 0 || rows[dish].Announces != HeadingKind.Variation)];
        foreach (SortedLine line in lines)
        {
            if (known.Contains(line.Dish) && NamesOther(line, owners))
            {
                return true;
            }
        }

        return false;
    }

    private static bool NamesOther(SortedLine line, Dictionary<string, int> owners)
    {
        string text = line.Text.Text;
        for (int start = 0; start < text.Length; start++)
        {
            int end = start;
            while (end < text.Length && char.IsLetter(text[end]))
            {
                end++;
            }

            if (end - start is >= 4 and <= 40
                && owners.TryGetValue(Stem(text[start..end].ToLowerInvariant()), out int dish) && dish != SharedWord && dish != line.Dish)
            {
                return true;
            }

            start = end;
        }

        return false;
    }

    private static string Stem(string word) => word.EndsWith('s') ? word[..^1] : word;

    private static RecipePart Part(string? name, SourceSpan span, List<SortedLine> lines)
    {
        ImmutableArray<IngredientLine>.Builder foods = ImmutableArray.CreateBuilder<IngredientLine>();
        ImmutableArray<StepSentence>.Builder steps = ImmutableArray.CreateBuilder<StepSentence>();
        foreach (SortedLine line in lines)
        {
            if (line.IsIngredient)
            {
                foods.Add(new(line.Text, line.Heading, line.AtServing, FromProse: false));
            }
            else
            {
                steps.Add(new(line.Text, line.Heading, line.Role));
            }
        }

        bool none = foods.Count == 0;
        foreach (SortedLine line in lines)
        {
            if (!line.IsIngredient && (none || line.MayHoldFoods))
            {
                foods.AddRange(ProsePhrases.Cut(line.Text).Select(phrase => new IngredientLine(phrase, null, line.Role == StepRole.Serving, FromProse: true)));
            }
        }

        return new(name, span, foods.ToImmutable(), steps.ToImmutable());
    }
}
