using BenchmarkDotNet.Attributes;
using PlotAgronomy.Land;
using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Benchmarks.Rooms;

/// <summary>The water that the air takes of a day, from its temperatures.</summary>
[MemoryDiagnoser]
public class WeatherBenchmarks
{
    private const int Rows = 300;
    private const double Latitude = 42.74;

    private static readonly DateOnly First = new(2026, 3, 1);
    private static readonly GeoPoint Place = GeoPoint.FromDegrees(Latitude, -73.81);

    private readonly double[] low = Drawn.Between(1, 0, 12, Rows);
    private readonly double[] range = Drawn.Between(2, 4, 18, Rows);
    private readonly WeatherDay[] days;

    /// <summary>Makes a day of each row.</summary>
    public WeatherBenchmarks() => days = [.. Enumerable.Range(0, Rows).Select(DayOf)];

    /// <summary>By a loop written by hand.</summary>
    /// <returns>The millimeters of all.</returns>
    [Benchmark(Baseline = true, OperationsPerInvoke = Rows)]
    public double ByHand() => HandSums.Hargreaves(Latitude, First.DayOfYear, low, range);

    /// <summary>By the typed call.</summary>
    /// <returns>The millimeters of all.</returns>
    [Benchmark(OperationsPerInvoke = Rows)]
    public double Typed() => days.Sum(day => ReferenceEvaporation.Of(Place, day).Value.Depth.Millimeters);

    private WeatherDay DayOf(int row) =>
        new()
        {
            Date = First.AddDays(row),
            Low = Temperature.FromDegreesCelsius(low[row]),
            High = Temperature.FromDegreesCelsius(low[row] + range[row]),
        };
}
