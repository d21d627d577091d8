using System.CommandLine;
using Microsoft.Extensions.FileSystemGlobbing;

namespace ShelfSafe.Cli;

/// <summary>Patterns that say which files of a folder are taken; one without a slash fits at any depth.</summary>
internal sealed class PathGlobs(IReadOnlyList<string> include, IReadOnlyList<string> exclude)
{
    private readonly Matcher? _include = Of(include);
    private readonly Matcher? _exclude = Of(exclude);

    /// <summary>What was asked for, or <see langword="null"/> where nothing was.</summary>
    public string? Wanted => include.Count == 0 ? null : string.Join(", ", include);

    /// <summary>Whether a file is taken.</summary>
    /// <param name="path">Path below the folder, parts divided by <c>/</c>.</param>
    /// <param name="known">Whether its ending is one of a recipe.</param>
    public bool Takes(string path, bool known) =>
        (_include?.Match(path).HasMatches ?? known) && _exclude?.Match(path).HasMatches is not true;

    /// <summary>Lets an option take only patterns that can fit a file.</summary>
    public static void Limit(Option<string[]> option) => option.Validators.Add(result =>
    {
        foreach (string glob in result.Tokens.Select(static token => token.Value))
        {
            string? wrong = string.IsNullOrWhiteSpace(glob) ? "the pattern is empty; write one such as \"*.md\""
                : glob.Contains('?', StringComparison.Ordinal) ? $"\"{glob}\": a question mark is no sign here; * stands for any letters of a name"
                : RecipePaths.Shown(glob).Split('/').Contains("..", StringComparer.Ordinal) ? $"\"{glob}\": a pattern begins in the folder and cannot leave it by \"..\""
                : null;
            if (wrong is not null)
            {
                result.AddError($"{result.Option.Name}: {wrong}");
            }
        }
    });

    private static Matcher? Of(IReadOnlyList<string> globs)
    {
        if (globs.Count == 0)
        {
            return null;
        }

        Matcher matcher = new(StringComparison.Ordinal);
        foreach (string glob in globs)
        {
            string pattern = RecipePaths.Shown(glob);
            matcher.AddInclude(pattern.Contains('/', StringComparison.Ordinal) ? pattern : $"**/{pattern}");
        }

        return matcher;
    }
}
