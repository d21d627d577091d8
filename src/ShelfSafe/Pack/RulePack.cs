using System.Collections.Immutable;
using System.Reflection;
using System.Security.Cryptography;
using System.Text;

namespace ShelfSafe.Pack;

/// <summary>The rule pack: everything the program knows about canning, as reviewed data with a source on each row.</summary>
public sealed class RulePack
{
    private static readonly Lazy<RulePack> Embedded = new(LoadEmbedded);
    private readonly IReadOnlyDictionary<string, string> _files;

    private RulePack(IReadOnlyDictionary<string, string> files, PackTables tables)
    {
        _files = files;
        Tables = tables;
        (Version, Date) = PackVersion.Read(files);
        Sha256 = Hash(files);
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

    /// <summary>Text of a file of the pack, empty where it is missing.</summary>
    internal string Text(string path) => _files.GetValueOrDefault(path, string.Empty);

    /// <summary>The lessons, read anew at each call: only who teaches pays for them.</summary>
    internal LessonTables Lessons()
    {
        List<PackFault> faults = [];
        LessonTables tables = LessonTables.Read(_files, faults);
        return faults.Count == 0 ? tables : throw new InvalidDataException("The lessons of the rule pack are broken: " + faults[0]);
    }

    /// <summary>Reads a pack from a folder and validates it whole.</summary>
    /// <param name="folder">The folder that holds foods.csv and the card folders.</param>
    /// <param name="faults">What is wrong; empty where the pack was read.</param>
    /// <returns>The pack, or <see langword="null"/> where anything is wrong: a broken pack never half loads.</returns>
    public static RulePack? Load(string folder, out ImmutableArray<PackFault> faults)
    {
        ArgumentNullException.ThrowIfNull(folder);
        Dictionary<string, string> files = new(StringComparer.Ordinal);
        foreach (string path in Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories))
        {
            string name = Path.GetRelativePath(folder, path).Replace('\\', '/');
            if ((name.EndsWith(".csv", StringComparison.Ordinal) || name.EndsWith(".md", StringComparison.Ordinal)) && name != "README.md")
            {
                files[name] = File.ReadAllText(path, Encoding.UTF8);
            }
        }

        return FromFiles(files, validate: true, out faults);
    }

    /// <summary>Makes a pack of files that are already in memory.</summary>
    internal static RulePack? FromFiles(IReadOnlyDictionary<string, string> files, bool validate, out ImmutableArray<PackFault> faults)
    {
        List<PackFault> found = [];
        PackTables tables = PackTables.Read(files, found);
        if (validate)
        {
            PackValidator.Check(tables, found);

            // No verdict reads these, so only a validation pays for them before a lesson does.
            ChemistryTables.Read(name => files.GetValueOrDefault(name, string.Empty), found);
            LessonTables.Read(files, found).Check(tables, found);
            WorkTables.Read(name => files.GetValueOrDefault(name, string.Empty), found).CheckSources(tables.Sources, found);
        }

        faults = [.. found];
        return found.Count == 0 ? new(files, tables) : null;
    }

    /// <summary>The embedded files by path.</summary>
    internal static Dictionary<string, string> EmbeddedFiles()
    {
        Dictionary<string, string> files = new(StringComparer.Ordinal);
        Assembly assembly = typeof(RulePack).Assembly;
        foreach (string name in assembly.GetManifestResourceNames())
        {
            if (name.StartsWith("rules/", StringComparison.Ordinal))
            {
                using StreamReader reader = new(assembly.GetManifestResourceStream(name)!, Encoding.UTF8);
                files[name["rules/".Length..].Replace('\\', '/')] = reader.ReadToEnd();
            }
        }

        return files;
    }

    // Build and tests validate the embedded pack, so that a start does not pay for it.
    private static RulePack LoadEmbedded() =>
        FromFiles(EmbeddedFiles(), validate: false, out ImmutableArray<PackFault> faults)
        ?? throw new InvalidDataException("The built-in rule pack is broken: " + faults[0]);

    private static string Hash(IReadOnlyDictionary<string, string> files)
    {
        using IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (string name in files.Keys.Order(StringComparer.Ordinal))
        {
            hash.AppendData(Encoding.UTF8.GetBytes(name));
            hash.AppendData([0]);
            hash.AppendData(Encoding.UTF8.GetBytes(files[name]));
            hash.AppendData([0]);
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }
}
