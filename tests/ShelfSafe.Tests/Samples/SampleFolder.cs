namespace ShelfSafe.Tests.Samples;

/// <summary>The folder <c>sample-recipes</c> of the repository that the test program was built in.</summary>
internal static class SampleFolder
{
    /// <summary>Top of the repository.</summary>
    public static string Root { get; } = Find();

    /// <summary>Folder of the sample recipes.</summary>
    public static string Path { get; } = System.IO.Path.Combine(Root, "sample-recipes");

    /// <summary>Names of the sample recipes, in ordinal order.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. Directory.GetFiles(Path, "*.md").Select(static path => System.IO.Path.GetFileName(path)!).Order(StringComparer.Ordinal)];

    /// <summary>Path of a sample.</summary>
    public static string Of(string name) => System.IO.Path.Combine(Path, name);

    private static string Find()
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            if (File.Exists(System.IO.Path.Combine(at.FullName, "ShelfSafe.sln")))
            {
                return at.FullName;
            }
        }

        throw new DirectoryNotFoundException("ShelfSafe.sln does not stand above the test program");
    }
}
