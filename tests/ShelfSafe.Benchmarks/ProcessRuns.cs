using System.Globalization;
using System.Text;

namespace ShelfSafe.Benchmarks;

/// <summary>Measures the command line as a whole process against a program that only parses Markdown.</summary>
internal static class ProcessRuns
{
    private const int ColdRuns = 41;
    private const int FolderRuns = 5;
    private static readonly int[] Kilobytes = [1, 10, 100, 500, 1_000, 2_000, 5_000];

    /// <summary>A cold start with one recipe, in turn with the bare parser: medians of the wall time, and the memory.</summary>
    /// <param name="shelfsafe">The native binary.</param>
    /// <param name="bare">The native binary of <c>tests/ShelfSafe.BareParser</c>.</param>
    /// <param name="recipe">A recipe.</param>
    /// <param name="output">Takes the figures.</param>
    public static int Cold(string shelfsafe, string bare, string recipe, TextWriter output)
    {
        List<WholeProcess> own = [];
        List<WholeProcess> parse = [];
        for (int i = 0; i < ColdRuns; i++)
        {
            parse.Add(WholeProcess.Run(bare, ["vet", recipe]));
            own.Add(WholeProcess.Run(shelfsafe, ["vet", recipe]));
        }

        double wall = WholeProcess.Median(own.Select(run => run.Wall.TotalMilliseconds));
        double bareWall = WholeProcess.Median(parse.Select(run => run.Wall.TotalMilliseconds));
        output.WriteLine(FormattableString.Invariant($"{ColdRuns} runs each, in turn, medians: vet {wall:0.0} ms of wall time, bare parse {bareWall:0.0} ms, {wall / bareWall:0.00} times"));
        output.WriteLine(FormattableString.Invariant($"processor time: vet {WholeProcess.Median(own.Select(run => run.Processor.TotalMilliseconds)):0.0} ms, bare parse {WholeProcess.Median(parse.Select(run => run.Processor.TotalMilliseconds)):0.0} ms"));
        output.WriteLine(FormattableString.Invariant($"largest memory {WholeProcess.LargestMegabytes(shelfsafe, ["vet", recipe]):0} MB, binary {new FileInfo(shelfsafe).Length / 1_048_576.0:0.0} MB"));
        return 0;
    }

    /// <summary>A folder of many recipes, made of the samples with other amounts: processor time, both cores, memory, and files of several sizes.</summary>
    /// <param name="shelfsafe">The native binary.</param>
    /// <param name="bare">The native binary of <c>tests/ShelfSafe.BareParser</c>.</param>
    /// <param name="samples">Folder of the sample recipes.</param>
    /// <param name="count">How many files to make.</param>
    /// <param name="output">Takes the figures.</param>
    public static int Many(string shelfsafe, string bare, string samples, int count, TextWriter output)
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("shelfsafe-many-");
        try
        {
            string[] texts = [.. Directory.EnumerateFiles(samples, "*.md").Order(StringComparer.Ordinal).Select(File.ReadAllText)];
            for (int i = 0; i < count; i++)
            {
                File.WriteAllText(Path.Combine(folder.FullName, FormattableString.Invariant($"{i:00000}.md")), WithOtherAmounts(texts[i % texts.Length], i % 7));
            }

            Folder(shelfsafe, bare, folder.FullName, output);
            Sizes(shelfsafe, texts, folder.FullName, output);
            return 0;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static void Folder(string shelfsafe, string bare, string folder, TextWriter output)
    {
        string[] arguments = ["vet", "--format", "jsonl", folder];
        List<WholeProcess> native = [];
        List<WholeProcess> compiled = [];
        List<WholeProcess> one = [];
        List<WholeProcess> all = [];
        for (int i = 0; i < FolderRuns; i++)
        {
            native.Add(WholeProcess.Run(bare, ["vet", folder]));
            compiled.Add(WholeProcess.Run(Environment.ProcessPath!, ["parse", folder]));
            one.Add(WholeProcess.Run(shelfsafe, arguments, cores: 1));
            all.Add(WholeProcess.Run(shelfsafe, arguments));
        }

        double own = WholeProcess.Median(all.Select(run => run.Processor.TotalSeconds));
        double parse = WholeProcess.Median(compiled.Select(run => run.Processor.TotalSeconds));
        double nativeParse = WholeProcess.Median(native.Select(run => run.Processor.TotalSeconds));
        output.WriteLine(FormattableString.Invariant($"{Directory.GetFiles(folder).Length} files, {FolderRuns} runs each, in turn, medians of processor time: vet {own:0.00} s"));
        output.WriteLine(FormattableString.Invariant($"bare parse by the runtime {parse:0.00} s, {own / parse:0.0} times; native {nativeParse:0.00} s, {own / nativeParse:0.0} times"));
        double single = WholeProcess.Median(one.Select(run => run.Wall.TotalSeconds));
        double both = WholeProcess.Median(all.Select(run => run.Wall.TotalSeconds));
        bool same = one.Concat(all).Select(run => run.Output).Distinct(StringComparer.Ordinal).Count() == 1;
        output.WriteLine(FormattableString.Invariant($"wall time on one core {single:0.00} s, on all {Environment.ProcessorCount} {both:0.00} s, {single / both:0.00} times as fast; output {(same ? "the same in every run" : "DIFFERS")}"));
        output.WriteLine(FormattableString.Invariant($"largest memory {WholeProcess.LargestMegabytes(shelfsafe, arguments):0} MB"));
    }

    private static void Sizes(string shelfsafe, string[] texts, string folder, TextWriter output)
    {
        string file = Path.Combine(folder, "one.md");
        foreach (int kilobytes in Kilobytes)
        {
            StringBuilder text = new();
            for (int i = 0; text.Length < kilobytes * 1_000; i++)
            {
                text.Append(WithOtherAmounts(texts[i % texts.Length], i % 7)).Append('\n');
            }

            File.WriteAllText(file, text.ToString(0, kilobytes * 1_000));
            double seconds = WholeProcess.Median(Enumerable.Range(0, 3).Select(_ => WholeProcess.Run(shelfsafe, ["vet", "--format", "jsonl", file]).Processor.TotalSeconds));
            output.WriteLine(FormattableString.Invariant($"one file of {kilobytes} kB: {seconds * 1_000:0} ms of processor time, {seconds * 1_000_000 / kilobytes:0} us a kB"));
        }

        output.WriteLine(FormattableString.Invariant($"largest memory for the last {WholeProcess.LargestMegabytes(shelfsafe, ["vet", "--format", "jsonl", file]):0} MB"));
    }

    // The first number of each list line is made larger.
    private static string WithOtherAmounts(string text, int more) => string.Join('\n', text.Split('\n').Select(line =>
    {
        int start = line.StartsWith("- ", StringComparison.Ordinal) || line.StartsWith("* ", StringComparison.Ordinal) ? 2 : line.Length;
        int end = start;
        while (end < line.Length && char.IsAsciiDigit(line[end]))
        {
            end++;
        }

        return end == start || end - start > 4 ? line
            : line[..start] + (int.Parse(line[start..end], CultureInfo.InvariantCulture) + more).ToString(CultureInfo.InvariantCulture) + line[end..];
    }));
}
