using System.Collections.Immutable;
using System.Text;

namespace ShelfSafe.Pack;

/// <summary>The rule pack: everything the program knows about canning, as reviewed data with a source on each row.</summary>
public sealed class RulePack
{
    private const string Resource = "rules.pack";

    private static readonly Lazy<RulePack> Embedded = new(LoadEmbedded);
    private readonly PackFiles _files;

    private RulePack(PackFiles files, PackTables tables, (string Version, string Date) of, string sha256)
    {
        _files = files;
        Tables = tables;
        (Version, Date) = of;
        Sha256 = sha256;
    }

    /// <summary>The pack that is built into the library.</summary>
    public static RulePack Default => Embedded.Value;

    /// <summary>Version of the pack, from <c>rules/pack.csv</c>.</summary>
    public string Version { get; }

    /// <summary>Date of the pack, year-month-day.</summary>
    public string Date { get; }

    /// <summary>SHA-256 over all files in ordinal order of their paths, lower-case hexadecimal.</summary>
    public string Sha256 { get; }

    /// <summary>The typed tables and cards.</summary>
    internal PackTables Tables { get; }

    /// <summary>The indexes that the build made of the built-in pack; <see langword="null"/> where the pack was read from a folder.</summary>
    internal PackImage? Image => (_files as ImageFiles)?.Image;

    /// <summary>A table of the pack, empty where it is missing.</summary>
    internal PackText Text(string path) => _files[path];

    /// <summary>Text of a card, empty where it is missing.</summary>
    internal string Card(string path) => _files.Card(path);

    /// <summary>The lessons, read anew at each call: only who teaches pays for them.</summary>
    internal LessonTables Lessons()
    {
        List<PackFault> faults = [];
        LessonTables tables = LessonTables.Read(_files, faults);
        return faults.Count == 0 ? tables : throw new InvalidDataException("The lessons of the rule pack are broken: " + faults[0]);
    }

    /// <summary>Reads a pack from a folder and validates it, but for the tables that only a vetter reads: those are named by its own faults.</summary>
    /// <param name="folder">The folder that holds foods.csv and the card folders.</param>
    /// <param name="faults">What is wrong; empty where the pack was read.</param>
    /// <returns>The pack, or <see langword="null"/> where anything is wrong: a broken pack never half loads.</returns>
    public static RulePack? Load(string folder, out ImmutableArray<PackFault> faults)
    {
        ArgumentNullException.ThrowIfNull(folder);
        return FromFiles(FilesOf(folder), validate: true, out faults);
    }

    /// <summary>The texts of a folder by path.</summary>
    internal static Dictionary<string, string> FilesOf(string folder)
    {
        Dictionary<string, string> files = new(StringComparer.Ordinal);
        foreach (string path in Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories))
        {
            string name = Path.GetRelativePath(folder, path).Replace('\\', '/');
            if ((name.EndsWith(".csv", StringComparison.Ordinal) || name.EndsWith(".md", StringComparison.Ordinal)) && name != "README.md")
            {
                files[name] = File.ReadAllText(path, Encoding.UTF8);
            }
        }

        return files;
    }

    /// <summary>Makes a pack of files that are already in memory.</summary>
    internal static RulePack? FromFiles(IReadOnlyDictionary<string, string> texts, bool validate, out ImmutableArray<PackFault> faults)
    {
        List<PackFault> found = [];
        TextFiles files = new(texts);
        PackTables tables = PackTables.Read(files, found);
        if (validate)
        {
            PackValidator.Check(tables, found);

            // No verdict reads these, so only a validation pays for them before a lesson does.
            ChemistryTables.Read(path => files[path], found);
            LessonTables.Read(files, found).Check(tables, found);
            WorkTables.Read(path => files[path], found).CheckSources(tables.Sources, found);
        }

        faults = [.. found];
        return found.Count == 0 ? new(files, tables, PackVersion.Read(texts.GetValueOrDefault("pack.csv", string.Empty)), PackVersion.Hash(texts)) : null;
    }

    /// <summary>Takes the pack out of an image.</summary>
    internal static RulePack FromImage(PackImage image)
    {
        ImageFiles files = new(image);
        (string version, string date, string sha256) = files.About;
        return new(files, new PackTables(files), (version, date), sha256);
    }

    // Build and tests validate the embedded pack, so that a start does not pay for it.
    private static RulePack LoadEmbedded() => FromImage(PackImage.Of(
        typeof(RulePack).Assembly.GetManifestResourceStream(Resource) ?? throw new InvalidOperationException($"{Resource} was not built into the library")));
}
