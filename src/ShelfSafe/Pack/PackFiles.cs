namespace ShelfSafe.Pack;

/// <summary>The files of a pack, wherever they come from.</summary>
internal abstract class PackFiles
{
    /// <summary>Paths of the cards, in ordinal order.</summary>
    public abstract IEnumerable<string> Cards { get; }

    /// <summary>A file; empty where it is missing.</summary>
    public abstract PackText this[string path] { get; }

    /// <summary>Whether the file exists.</summary>
    public abstract bool Has(string path);

    /// <summary>The cards of a folder, named with its <c>/</c>, in ordinal order.</summary>
    public IEnumerable<string> CardsOf(string folder) => Cards.Where(path => path.StartsWith(folder, StringComparison.Ordinal));

    /// <summary>Text of a card; empty where it is missing.</summary>
    public string Card(string path) => this[path].ToString();
}

/// <summary>Files that were read from a folder.</summary>
internal sealed class TextFiles(IReadOnlyDictionary<string, string> files) : PackFiles
{
    /// <inheritdoc/>
    public override IEnumerable<string> Cards => files.Keys.Where(static path => path.EndsWith(".md", StringComparison.Ordinal)).Order(StringComparer.Ordinal);

    /// <inheritdoc/>
    public override PackText this[string path] => files.GetValueOrDefault(path, string.Empty);

    /// <inheritdoc/>
    public override bool Has(string path) => files.ContainsKey(path);
}
