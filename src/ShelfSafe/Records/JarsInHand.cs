using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Pack;

namespace ShelfSafe.Records;

/// <summary>The signs that a jar can show, and the answer to each. Of all cases that may hold, the stricter is given.</summary>
/// <param name="pack">The rule pack.</param>
public sealed class JarsInHand(RulePack pack)
{
    private const int HoursOfADay = 24;
    private const int MostNear = 3;

    /// <summary>All signs, by name.</summary>
    public ImmutableArray<JarSignCard> Signs => pack.Tables.JarSigns;

    /// <summary>The sign that the words name, by its id or by one of its other words.</summary>
    /// <param name="words">What the cook calls it.</param>
    public JarSignCard? Find(string words)
    {
        ArgumentNullException.ThrowIfNull(words);
        string plain = Plain(words);
        return Signs.FirstOrDefault(card => Names(card).Contains(plain, StringComparer.Ordinal));
    }

    /// <summary>The signs nearest to words that name none, best first.</summary>
    /// <param name="words">What the cook calls it.</param>
    public ImmutableArray<JarSignCard> Nearest(string words)
    {
        ArgumentNullException.ThrowIfNull(words);
        string plain = Plain(words);
        return [.. Signs.OrderBy(card => Names(card).Append(Plain(card.Title)).Min(name => Distance(plain, name))).ThenBy(static card => card.Id, StringComparer.Ordinal).Take(MostNear)];
    }

    /// <summary>Answers for a sign.</summary>
    /// <param name="card">The sign.</param>
    /// <param name="batch">The batch, or <see langword="null"/> where it is not known: every case is then given.</param>
    /// <param name="today">The day on which the jar is looked at.</param>
    public JarAnswer Answer(JarSignCard card, BatchRecord? batch, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(card);
        ImmutableArray<JarCaution>.Builder cautions = ImmutableArray.CreateBuilder<JarCaution>();
        List<string> keys = [.. card.Sources];
        foreach (string name in card.Also)
        {
            string text = pack.Card($"cautions/{name}.md");
            Dictionary<string, string> fields = CardText.Read(text).Rows
                .Where(static row => row.Section.Length == 0 && row.Cells.Length == 2)
                .ToDictionary(static row => row.Cells[0], static row => row.Cells[1], StringComparer.Ordinal);
            cautions.Add(new(fields.GetValueOrDefault("title", name), CardList.Read(text, "Text")));
            keys.AddRange(fields.GetValueOrDefault("source", string.Empty).Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries));
        }

        ImmutableArray<SourceRow> sources = [.. keys.Distinct(StringComparer.Ordinal).Select(key => pack.Tables.Sources.FirstOrDefault(row => row.Id == key)).OfType<SourceRow>()];
        return new(card, batch, Cases(card, batch, today), cautions.ToImmutable(), sources);
    }

    private static ImmutableArray<JarCase> Cases(JarSignCard card, BatchRecord? batch, DateOnly today)
    {
        JarCase any = new("hand.any", card.Any);
        JarCase hot = new("hand.hot", card.Hot);
        JarCase raw = new("hand.raw", card.Raw);
        JarCase late = new("hand.late", card.TooLate);
        JarCase none = new("hand.not-published", card.NotPublished);
        ImmutableArray<JarCase> cases = batch is null ? [any, hot, raw, late, none]
            : !batch.Published ? [any, none]
            : Lateness(card, batch, today) switch
            {
                Late.Yes => [any, late],
                Late.Perhaps => [any, batch.Process.Pack == "hot" ? hot : raw, late],
                _ => [any, batch.Process.Pack == "hot" ? hot : raw],
            };
        return [.. cases.Where(static one => !one.Steps.IsEmpty)];
    }

    // Only days are known. From the first moment at which the hours may be over both answers are given; once they are
    // over however late in the day the jar was put up, only the late one. A date before the batch's own says nothing.
    private static Late Lateness(JarSignCard card, BatchRecord batch, DateOnly today)
    {
        int days = today.DayNumber - batch.Date.DayNumber;
        return card.Hours is not { } hours ? Late.No
            : days < 0 ? Late.Perhaps
            : (days - 1) * HoursOfADay >= hours ? Late.Yes
            : (days + 1) * HoursOfADay > hours ? Late.Perhaps
            : Late.No;
    }

    private static IEnumerable<string> Names(JarSignCard card) => card.Words.Append(card.Id).Select(Plain);

    private static string Plain(string words) =>
        string.Join(' ', words.ToLowerInvariant().Split([' ', '-', '_', '\t'], StringSplitOptions.RemoveEmptyEntries));

    // Shared words count most, then the letters that must change.
    private static int Distance(string one, string other)
    {
        string[] words = one.Split(' ');
        int shared = words.Intersect(other.Split(' '), StringComparer.Ordinal).Count();
        return EditDistance.Between(one, other) - (shared * 10);
    }

    private enum Late
    {
        No,
        Perhaps,
        Yes,
    }
}
