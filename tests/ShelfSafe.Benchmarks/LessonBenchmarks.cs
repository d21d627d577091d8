using BenchmarkDotNet.Attributes;
using ShelfSafe.Core;
using ShelfSafe.Lessons;
using ShelfSafe.Pack;
using ShelfSafe.Reports;
using ShelfSafe.Reports.Teaching;
using ShelfSafe.Verdict;

namespace ShelfSafe.Benchmarks;

/// <summary>A whole lesson, warm: four jars solved, both pictures drawn, the page written.</summary>
[MemoryDiagnoser]
public class LessonBenchmarks
{
    private const string Stew = "# Stew\n\n- 1 kg venison, cubed\n- 500 g carrots, sliced\n- 1 l water\n- 40 g flour\n\n1. Boil for 5 minutes.\n2. Stir in the flour.\n";

    private readonly RecipeVetter _vetter = RecipeVetter.Create(RulePack.Default);
    private readonly LessonBook _book = LessonBook.Create(RulePack.Default);
    private LessonReport _report = null!;

    /// <summary>Form of the page.</summary>
    [Params("text", "html")]
    public string Format { get; set; } = "text";

    /// <summary>Takes the writer.</summary>
    [GlobalSetup]
    public void Setup() => _report = LessonReport.Create(Format, new TextStyle());

    /// <summary>The worked example: solver, pictures and page.</summary>
    [Benchmark]
    public string Worked()
    {
        Lesson lesson = _book.Find("thickener", out _)!;
        return _report.Page(lesson, _book.Illustrator.Worked(lesson.Picture, Kitchen.Unknown), null);
    }

    /// <summary>The same for a recipe, which is vetted first.</summary>
    [Benchmark]
    public string ForRecipe()
    {
        Lesson lesson = _book.Find("thickener", out _)!;
        VettingReport vetted = _vetter.Vet(Stew, Kitchen.Unknown);
        return _report.Page(lesson, _book.Illustrator.ForRecipe(lesson.Picture, vetted, Kitchen.Unknown), vetted.Title);
    }

    /// <summary>What the first lesson of a run pays besides: reading the cards and tables.</summary>
    [Benchmark]
    public LessonBook Book() => LessonBook.Create(RulePack.Default);
}
