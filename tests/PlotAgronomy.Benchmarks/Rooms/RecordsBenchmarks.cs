using BenchmarkDotNet.Attributes;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Liming;
using PlotAgronomy.Records;
using UnitsNet;

namespace PlotAgronomy.Benchmarks.Rooms;

/// <summary>What a plot is owed after a season of entries.</summary>
[MemoryDiagnoser]
public class RecordsBenchmarks
{
    private const string Plot = "north";

    private static readonly PlotBook Book = PlotBook.Empty.With(
        "anna",
        new NeedEntry { On = new(2024, 3, 20), Plot = Plot, Phosphate = ApplicationRate.FromPoundsPerAcre(60) },
        new FertilizerEntry
        {
            On = new(2024, 8, 30),
            Plot = Plot,
            Product = FertilizerProduct.Create("13-13-13", FertilizerAnalysis.FromGrade("13-13-13")),
            Loads = [SpreadLoad.FromBags(3, Mass.FromPounds(50))],
        });

    /// <summary>By the typed call.</summary>
    /// <returns>What is owed.</returns>
    [Benchmark]
    public object Typed() => PlotOwed.Of(Book, Plot, Area.FromAcres(0.5), new(2025, 11, 1)).Nutrients;
}
