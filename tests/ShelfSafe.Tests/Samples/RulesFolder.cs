using ShelfSafe.Pack;

namespace ShelfSafe.Tests.Samples;

/// <summary>The folder <c>rules</c> of the repository that the test program was built in.</summary>
internal static class RulesFolder
{
    /// <summary>Path of the folder.</summary>
    public static string Path { get; } = System.IO.Path.Combine(SampleFolder.Root, "rules");

    /// <summary>Its texts by path, read anew.</summary>
    public static Dictionary<string, string> Files() => RulePack.FilesOf(Path);
}
