using PublicApiGenerator;
using ShelfSafe.Tests.Samples;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Architecture;

/// <summary>The public surface of the library is what was approved; <c>SHELFSAFE_APPROVE=1</c> writes it anew, to be read in the diff.</summary>
public sealed class PublicSurfaceTests
{
    [Fact]
    public void Surface_OfTheLibrary_IsTheApprovedOne()
    {
        string path = Path.Combine(SampleFolder.Root, "tests", "ShelfSafe.Tests", "Architecture", "public-surface.txt");
        string actual = typeof(RecipeVetter).Assembly.GeneratePublicApi(new ApiGeneratorOptions { IncludeAssemblyAttributes = false, DenyNamespacePrefixes = [] }).ReplaceLineEndings("\n");
        if (Environment.GetEnvironmentVariable("SHELFSAFE_APPROVE") == "1")
        {
            File.WriteAllText(path, actual);
        }

        Assert.Equal(File.ReadAllText(path).ReplaceLineEndings("\n"), actual);
    }
}
