using BenchmarkDotNet.Attributes;
using PlotAgronomy.Calendar;
using PlotAgronomy.Seeds;
using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Benchmarks.Rooms;

/// <summary>What frost and printed windows leave of three kinds.</summary>
[MemoryDiagnoser]
public class CalendarBenchmarks
{
    private static readonly CropKind[] Kinds =
        [.. new[] { "cereal-rye", "medium-red-clover", "daikon-radish" }.Select(kind => KindCatalog.Standard.Find(kind))];

    private static readonly FrostDates Frost =
        FrostDates.FromQuantiles(Temperature.FromDegreesFahrenheit(32), new(2026, 10, 3), new(2026, 10, 15), new(2026, 11, 1));

    /// <summary>By the typed call.</summary>
    /// <returns>The dates.</returns>
    [Benchmark]
    public object Typed() => SowingDates.Of(Kinds, new(2026, 8, 10), PlantingRegion.North, Frost).DropOut;
}
