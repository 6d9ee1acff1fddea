using System.Collections.Immutable;
using PlotAgronomy.Columns;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Nutrients;
using PlotAgronomy.Tests.Support;
using static PlotAgronomy.Tests.Nutrients.SystemRequests;

namespace PlotAgronomy.Tests.Columns;

/// <summary>A column of ratings gives, row by row, the class that the rating system gives: it is the check, whose own checks lie in
/// Nutrients.</summary>
public class RatingColumnTests
{
    private const string File = "Nutrients/worked-systems.csv";

    private static readonly double[] Odd = [double.NaN, -1, -0.0, 0, double.Epsilon, 1e9, double.PositiveInfinity, double.NegativeInfinity];

    public static TheoryData<string> Systems => [.. RatingSystem.All.Concat(RatingSystem.Unchecked).Select(s => s.Id)];

    public static TheoryData<string> Ratings => WorkedExamples.Ids(File, "rating");

    private static PlotSoil[] Soils =>
        [
            PlotSoil.For(Report()),
            PlotSoil.For(Report() with { SampleMoisture = SampleMoisture.Dried, WaterPh = WaterPh.FromValue(6.4), WeightPerVolume = UnitsNet.Density.FromGramsPerCubicCentimeter(1.1) })
                with { ExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(4), Texture = SoilTexture.Sand, Region = SoilRegion.Piedmont },
            PlotSoil.For(Report() with { SampleMoisture = SampleMoisture.FieldMoist, WaterPh = WaterPh.FromValue(7.2) })
                with { ExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(14), Texture = SoilTexture.SiltLoam, Region = SoilRegion.CoastalPlain },
        ];

    [Fact]
    public void Every_system_of_the_catalog_is_asked() => Assert.True(Systems.Count >= 17);

    [Theory, MemberData(nameof(Systems))]
    public void Every_row_is_rated_as_the_system_rates_it(string id)
    {
        var system = RatingSystem.Find(id);
        int rated = 0;
        foreach (var scale in system.Scales)
        {
            double[] reading = RowsOf(scale);
            foreach (var crop in scale.Crops.Select(c => (CropRow?)c).Append(null))
            {
                foreach (var (soil, unit) in Soils.SelectMany(s => UnitsOf(scale).Select(u => (s, u))))
                {
                    var column = RatingColumn.ForSystem(system, scale.Analyte, scale.Extractants[^1], unit, soil, crop);
                    rated += AssertEqualsCalls(column, soil, scale.Extractants[^1], unit, crop, reading);
                }
            }
        }

        Assert.True(rated > 100);
    }

    [Theory, MemberData(nameof(Ratings))]
    public void A_column_gives_the_published_rating(string id)
    {
        var row = WorkedExamples.Find(File, id);
        var column = RatingColumn.ForSystem(RatingSystem.Find(row.Text("system")), row.Choice<SoilAnalyte>("nutrient"), row.Choice<Extractant>("extractant"), row.Choice<SoilTestUnit>("test_unit"), SystemRequests.Known(Report(), row));
        byte[] place = [0];
        column.Places([row.Number("test")], place, new RowStatus[1]);
        WorkedExamples.AssertMatches(row, place[0]);
    }

    [Fact]
    public void Ten_thousand_rows_allocate_nothing_and_slices_give_what_the_whole_gives()
    {
        var column = RatingColumn.ForSystem(RatingSystem.Delaware, SoilAnalyte.Phosphorus, Extractant.Mehlich3, SoilTestUnit.PoundsPerAcre, Soils[0]);
        var random = new Random(5);
        double[] reading = [.. Enumerable.Range(0, 10_000).Select(_ => 300 * random.NextDouble())];
        byte[] whole = new byte[10_000], sliced = new byte[10_000];
        var status = new RowStatus[10_000];
        Assert.Equal(0, Allocations.LeastOf(() => column.Places(reading, whole, status)));
        Parallel.For(0, 2, half => column.Places(reading.AsSpan(half * 5000, 5000), sliced.AsSpan(half * 5000, 5000), new RowStatus[5000]));
        Assert.Equal(whole, sliced);
    }

    [Fact]
    public void What_a_column_is_made_of_and_filled_with_is_checked()
    {
        Assert.Equal("system", Assert.Throws<ArgumentException>(() => RatingColumn.ForSystem(RatingSystem.Delaware, SoilAnalyte.Boron, Extractant.Mehlich3, SoilTestUnit.PartsPerMillion, Soils[0])).ParamName);
        Assert.Equal("crop", Assert.Throws<ArgumentOutOfRangeException>(() => RatingColumn.ForSystem(RatingSystem.Delaware, SoilAnalyte.Boron, Extractant.Mehlich3, SoilTestUnit.PartsPerMillion, Soils[0], (CropRow)999)).ParamName);
        var silent = RatingColumn.ForSystem(RatingSystem.Delaware, SoilAnalyte.Phosphorus, Extractant.Olsen, SoilTestUnit.PartsPerMillion, Soils[0]);
        Assert.Contains("Mehlich-3", silent.Unrated!.Reason, StringComparison.Ordinal);
        Assert.Equal("places", Assert.Throws<ArgumentException>(() => silent.Places([1, 2], new byte[1], new RowStatus[2])).ParamName);
        Assert.Equal("status", Assert.Throws<ArgumentException>(() => silent.Places([1, 2], new byte[2], new RowStatus[3])).ParamName);
    }

    private static int AssertEqualsCalls(RatingColumn column, PlotSoil soil, Extractant extractant, SoilTestUnit unit, CropRow? crop, double[] reading)
    {
        byte[] places = new byte[reading.Length];
        var status = new RowStatus[reading.Length];
        column.Places(reading, places, status);
        for (int i = 0; i < reading.Length; i++)
        {
            var (place, wanted) = Call(column, soil, extractant, unit, crop, reading[i]);
            Assert.True(place == places[i] && wanted == status[i], $"{column} {crop} {unit} {reading[i]:R}: wanted {place} {wanted}, found {places[i]} {status[i]}");
        }

        return places.Count(p => p > 0);
    }

    private static (int Place, RowStatus Status) Call(RatingColumn column, PlotSoil soil, Extractant extractant, SoilTestUnit unit, CropRow? crop, double reading)
    {
        if (double.IsNaN(reading))
        {
            return (0, RowStatus.Missing);
        }

        ImmutableArray<SoilReading> readings;
        try
        {
            readings = [SoilReading.FromPrinted(column.Analyte, reading, unit, extractant)];
        }
        catch (ArgumentOutOfRangeException)
        {
            return (0, RowStatus.Implausible);
        }

        return column.System.Rate(soil.ReportedBy(soil.Report with { Readings = readings }), crop).For(column.Analyte) is { } rating
            ? (rating.Class.Order, RowStatus.Answered)
            : (0, RowStatus.OutsideDomain);
    }

    private static IEnumerable<SoilTestUnit> UnitsOf(RatingScale scale) =>
        scale.Unit is SoilTestUnit.DecisiemensPerMeter ? [SoilTestUnit.DecisiemensPerMeter]
        : [scale.Unit ?? SoilTestUnit.PartsPerMillion, SoilTestUnit.PoundsPerAcre];

    /// <summary>Every limit with its neighbors, drawn rows and values that cannot be.</summary>
    private static double[] RowsOf(RatingScale scale)
    {
        var random = new Random(scale.Id.Length);
        double[] limits = [.. scale.Classes.Select(c => c.PrintedHigh).OfType<double>()];
        return [.. Odd, .. limits.SelectMany(l => new[] { l, Math.BitIncrement(l), Math.BitDecrement(l), 2 * l }), .. Enumerable.Range(0, 30).Select(_ => 1.5 * limits[^1] * random.NextDouble())];
    }
}
