using System.Diagnostics;
using System.Globalization;
using Markdig;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Reports;
using ShelfSafe.Verdict;

namespace ShelfSafe.Benchmarks;

/// <summary>Measures the processor time of vetting a folder against a bare Markdown parse of the same files.</summary>
/// <remarks>User and system time of this process. The files are read into memory first, repeated up to 1,000, and each side is warmed up once.</remarks>
internal static class FolderRun
{
    private const int Files = 1_000;
    private const int Rounds = 5;

    /// <summary>Prints both times, their ratio, and the memory held after a quarter and after all files.</summary>
    public static int Run(string path, TextWriter output)
    {
        string[] texts = Directory.Exists(path)
            ? [.. Directory.EnumerateFiles(path, "*.md", SearchOption.AllDirectories).Order(StringComparer.Ordinal).Select(File.ReadAllText)]
            : [];
        if (texts.Length == 0)
        {
            Console.Error.WriteLine($"{path}: no folder with .md files");
            return 2;
        }

        TimeSpan start = Spent();
        RecipeVetter vetter = RecipeVetter.Create(RulePack.Default);
        TimeSpan load = Spent() - start;
        JsonLinesReport json = new();
        MarkdownPipeline pipeline = new MarkdownPipelineBuilder().UsePreciseSourceLocation().UsePipeTables().UseYamlFrontMatter().Build();
        void Vet(string text, int number) => json.Write(TextWriter.Null, number.ToString(CultureInfo.InvariantCulture), vetter.Vet(text, Kitchen.Unknown));
        void Parse(string text, int number) => _ = Markdown.Parse(text, pipeline);

        _ = Time(texts, Parse);
        _ = Time(texts, Vet);
        List<double> ratios = [];
        output.WriteLine(FormattableString.Invariant($"{texts.Length} files, repeated to {Files}; rules read once in {load.TotalMilliseconds:0} ms"));
        for (int round = 0; round < Rounds; round++)
        {
            double parse = Time(texts, Parse).TotalMilliseconds;
            double vet = Time(texts, Vet).TotalMilliseconds;
            ratios.Add(vet / parse);
            output.WriteLine(FormattableString.Invariant($"parse {parse:0} ms, vet with JSON Lines {vet:0} ms, {vet / parse:0.00} times; memory held {GC.GetTotalMemory(forceFullCollection: true) / 1_048_576.0:0.0} MB"));
        }

        ratios.Sort();
        output.WriteLine(FormattableString.Invariant($"median {ratios[Rounds / 2]:0.00} times a bare parse"));
        return 0;
    }

    /// <summary>Reads and parses each file once and does nothing else, for comparing whole processes under <c>time</c>.</summary>
    public static int ParseOnly(string path, TextWriter output)
    {
        if (!Directory.Exists(path))
        {
            Console.Error.WriteLine($"{path}: no such folder");
            return 2;
        }

        MarkdownPipeline pipeline = new MarkdownPipelineBuilder().UsePreciseSourceLocation().UsePipeTables().UseYamlFrontMatter().Build();
        int blocks = 0;
        foreach (string file in Directory.EnumerateFiles(path, "*.md", SearchOption.AllDirectories))
        {
            blocks += Markdown.Parse(File.ReadAllText(file), pipeline).Count;
        }

        output.WriteLine(FormattableString.Invariant($"{blocks} blocks, {Spent().TotalMilliseconds:0} ms of processor time"));
        return 0;
    }

    private static TimeSpan Time(string[] texts, Action<string, int> work)
    {
        TimeSpan start = Spent();
        for (int i = 0; i < Files; i++)
        {
            work(texts[i % texts.Length], i);
        }

        return Spent() - start;
    }

    private static TimeSpan Spent()
    {
        using Process process = Process.GetCurrentProcess();
        return process.TotalProcessorTime;
    }
}
