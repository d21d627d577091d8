using System.Collections.Immutable;
using ShelfSafe.Pack;

namespace ShelfSafe.Steps;

/// <summary>Compiles the rows of a table into rules.</summary>
internal sealed class StepRuleCompiler
{
    private readonly PhraseCompiler _compiler;
    private readonly Dictionary<string, string[]> _phraseLists = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _factNumbers = new(StringComparer.Ordinal);
    private readonly List<string> _facts = [];
    private readonly Dictionary<string, PhraseCondition> _conditions = new(StringComparer.Ordinal);

    /// <summary>Compiles the rows; a row that is wrong is left out and added to the faults.</summary>
    public StepRuleCompiler(IEnumerable<StepFactRow> rows, List<PackFault> faults)
    {
        _compiler = new(Words);
        List<Func<StepRule>> pending = [];
        foreach (StepFactRow row in rows)
        {
            string? fault = row.Fact switch
            {
                ['@', ..] => _compiler.AddList(row.Fact, row.Pattern) ? null : $"the list \"{row.Fact}\" is given twice or names an unknown list",
                ['%', ..] => _phraseLists.TryAdd(row.Fact, Pieces(row.Pattern)) ? null : $"the list \"{row.Fact}\" is given twice",
                _ => AddRule(row, pending),
            };
            if (fault is not null)
            {
                faults.Add(new(StepFactRow.File, row.Line, 1, fault));
            }
        }

        _compiler.Finish();
        Rules = [.. pending.Select(make => make())];
    }

    /// <summary>The words of all rules.</summary>
    public Vocabulary Words { get; } = new();

    /// <summary>The rules in the order of the table.</summary>
    public ImmutableArray<StepRule> Rules { get; }

    /// <summary>The fact ids by number.</summary>
    public IReadOnlyList<string> Facts => _facts;

    /// <summary>The conditions by number.</summary>
    public IEnumerable<PhraseCondition> Conditions => _conditions.Values.OrderBy(condition => condition.Number);

    private static string[] Pieces(string text) => text.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    private string? AddRule(StepFactRow row, List<Func<StepRule>> pending)
    {
        int fact = Number(row.Fact);
        List<string> unless = [];
        foreach (string exception in Pieces(row.Unless))
        {
            (PhraseScope scope, string text) = Scope(exception);
            if (Condition(scope, text, unless) is { } fault)
            {
                return fault;
            }
        }

        foreach (string alternative in Pieces(row.Pattern))
        {
            List<string> needs = [];
            Phrase? made = null;
            if (Needs(alternative, needs, out string core) is { } fault)
            {
                return fault;
            }

            if (_compiler.Add(core, phrase => made = phrase) is { } wrong)
            {
                return wrong;
            }

            pending.Add(() => new(fact, made!, [.. needs.Select(key => _conditions[key].Number)], [.. unless.Select(key => _conditions[key].Number)]));
        }

        return null;
    }

    private int Number(string fact)
    {
        if (!_factNumbers.TryGetValue(fact, out int number))
        {
            number = _facts.Count;
            _factNumbers.Add(fact, number);
            _facts.Add(fact);
        }

        return number;
    }

    // The phrase itself stands first, each condition after a mark of two letters.
    private string? Needs(string alternative, List<string> needs, out string core)
    {
        int end = NextCondition(alternative, 0);
        core = alternative[..end];
        for (int from = end + 3; from <= alternative.Length; from = end + 3)
        {
            end = NextCondition(alternative, from);
            if (Condition(NeedScope(alternative[from - 2]), alternative[from..end], needs) is { } fault)
            {
                return fault;
            }
        }

        return null;
    }

    private static (PhraseScope Scope, string Text) Scope(string text) => text[0] switch
    {
        '<' when text.StartsWith("<<", StringComparison.Ordinal) => (PhraseScope.Adjacent, text[2..].Trim()),
        '<' => (PhraseScope.Before, text[1..].Trim()),
        '~' => (PhraseScope.Neighbour, text[1..].Trim()),
        '^' => (PhraseScope.Part, text[1..].Trim()),
        _ => (PhraseScope.Sentence, text),
    };

    private static PhraseScope NeedScope(char sign) => sign switch
    {
        '~' => PhraseScope.Neighbour,
        '^' => PhraseScope.Part,
        _ => PhraseScope.Sentence,
    };

    private static int NextCondition(string text, int from)
    {
        for (int at = from; at + 2 < text.Length; at++)
        {
            if (text[at] == ' ' && text[at + 1] is ('&' or '~' or '^') && text[at + 2] == ' ')
            {
                return at;
            }
        }

        return text.Length;
    }

    private string? Condition(PhraseScope scope, string text, List<string> keys)
    {
        string key = $"{(int)scope} {text}";
        keys.Add(key);
        if (_conditions.ContainsKey(key))
        {
            return null;
        }

        string[] phrases = [text];
        if (text.StartsWith('%') && !_phraseLists.TryGetValue(text, out phrases!))
        {
            return $"the list \"{text}\" is not known; its row must stand above";
        }

        PhraseCondition empty = new(_conditions.Count, scope, []);
        _conditions.Add(key, empty);
        foreach (string phrase in phrases)
        {
            if (_compiler.Add(phrase, made => _conditions[key] = _conditions[key] with { Any = _conditions[key].Any.Add(made) }) is { } fault)
            {
                return fault;
            }
        }

        return null;
    }
}
