using System.Diagnostics;
using System.Globalization;
using ShelfSafe.Heat;

namespace ShelfSafe.Benchmarks;

/// <summary>Prints error against the exact series and time of the conduction solver for several grids.</summary>
internal static class HeatRun
{
    private static readonly Cylinder Jar = new(0.038, 0.055);
    private static readonly ThermalProperties Food = new(1_000, 4_000, 0.6);

    /// <summary>Runs all grids.</summary>
    public static int Run(TextWriter output)
    {
        output.WriteLine("nodes  worst error in K from 2 min on  a whole canner run in ms");
        foreach (int nodes in new[] { 6, 12, 16, 20, 24, 40 })
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{nodes,5}  {WorstError(nodes),31:0.0000}  {Milliseconds(nodes),26:0.0}"));
        }

        return 0;
    }

    /// <summary>A pint of thick food through come-up, 75 minutes, pressure drop and an hour in the room.</summary>
    public static HeatHistory Pint(int nodes) =>
        new ConductionModel(new(Jar, Food, 60, 0.003), new(nodes, (2 * nodes) + 1)).Run(RetortProfile.Canner(80, 600, 115.6, 4_500, 99, 1_500, 20, 3_600));

    private static double WorstError(int nodes)
    {
        FiniteCylinderSeries exact = new(Jar, Food, 300);
        HeatHistory history = new ConductionModel(new(Jar, Food, 25), new(nodes, (2 * nodes) + 1)).Run(RetortProfile.Constant(7_200, 115, 300));
        double worst = 0;
        for (int i = 0; i < history.Seconds.Length; i++)
        {
            if (history.Seconds[i] >= 120)
            {
                worst = Math.Max(worst, Math.Abs(history.CentreCelsius[i] - exact.TemperatureCelsius(history.Seconds[i], 115, 25)));
            }
        }

        return worst;
    }

    private static double Milliseconds(int nodes)
    {
        const int Runs = 20;
        for (int i = 0; i < Runs; i++)
        {
            Pint(nodes);
        }

        long start = Stopwatch.GetTimestamp();
        for (int i = 0; i < Runs; i++)
        {
            Pint(nodes);
        }

        return Stopwatch.GetElapsedTime(start).TotalMilliseconds / Runs;
    }
}
