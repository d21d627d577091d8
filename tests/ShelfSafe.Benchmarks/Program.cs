using BenchmarkDotNet.Running;
using ShelfSafe.Benchmarks;

return args switch
{
    ["corpus", string path, ..] => CorpusRun.Run(path, Console.Out),
    ["adapt", string path, ..] => AdaptRun.Run(path, Console.Out),
    ["folder", string path, ..] => FolderRun.Run(path, Console.Out),
    ["parse", string path, ..] => FolderRun.ParseOnly(path, Console.Out),
    ["cold", string shelfsafe, string bare, string recipe] => ProcessRuns.Cold(shelfsafe, bare, recipe, Console.Out),
    ["many", string shelfsafe, string bare, string samples, string count] => ProcessRuns.Many(shelfsafe, bare, samples, int.Parse(count, System.Globalization.CultureInfo.InvariantCulture), Console.Out),
    ["lookup", string path] => LookupRun.Run(path, Console.Out),
    ["heat"] => HeatRun.Run(Console.Out),
    ["bench", .. string[] rest] => Bench(rest),
    _ => Usage(),
};

static int Bench(string[] rest)
{
    BenchmarkSwitcher.FromTypes([typeof(VetBenchmarks), typeof(HeatBenchmarks), typeof(LessonBenchmarks)]).Run(rest.Length == 0 ? ["--filter", "*"] : rest);
    return 0;
}

static int Usage()
{
    Console.Error.WriteLine("use: corpus PATH | adapt PATH | folder PATH | parse PATH | cold SHELFSAFE BARE RECIPE | many SHELFSAFE BARE SAMPLES COUNT | heat | bench [options]");
    return 2;
}
