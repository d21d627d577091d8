using BenchmarkDotNet.Attributes;
using ShelfSafe.Heat;

namespace ShelfSafe.Benchmarks;

/// <summary>Cost of the conduction solver against the fineness of its grid; <see cref="HeatRun"/> prints the error beside it.</summary>
[MemoryDiagnoser]
public class HeatBenchmarks
{
    /// <summary>Nodes from axis to wall.</summary>
    [Params(6, 12, 20, 40)]
    public int Nodes { get; set; }

    /// <summary>A pint of thick food through come-up, 75 minutes, pressure drop and an hour in the room.</summary>
    [Benchmark]
    public HeatHistory Pint() => HeatRun.Pint(Nodes);
}
