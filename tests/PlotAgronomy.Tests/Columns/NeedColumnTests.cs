using PlotAgronomy.Columns;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;
using static PlotAgronomy.Tests.Nutrients.SystemRequests;

namespace PlotAgronomy.Tests.Columns;

/// <summary>A column of needs gives, row by row, what the system gives.</summary>
public class NeedColumnTests
{
    private static readonly double[] Odd = [double.NaN, -1, -double.Epsilon, -0.0, 0, double.Epsilon, 301, 1e9, double.PositiveInfinity, double.NegativeInfinity];

    private static readonly SoilTestUnit[] Units =
    [
        SoilTestUnit.PartsPerMillion, SoilTestUnit.PoundsPerAcre, SoilTestUnit.KilogramsPerHectare, SoilTestUnit.MilligramsPerCubicDecimeter,
        SoilTestUnit.OklahomaIndex, SoilTestUnit.NorthCarolinaIndex, SoilTestUnit.DelawareIndex,
    ];

    public static TheoryData<string> Systems => [.. RecommendationSystem.Everything.Select(s => s.Id)];

    private static SoilReport Bare => Report() with { SampleMoisture = SampleMoisture.FieldMoist, PrintedPhosphorusRating = "medium" };

    private static PlotSoil Known => PlotSoil.For(Bare) with { SoilClass = SoilClass.Mineral, PhosphorusSupply = SoilSupply.Medium, ExchangeCapacityGroup = SoilSupply.High };

    [Fact]
    public void Every_system_of_the_catalog_is_asked() => Assert.True(Systems.Count >= 15);

    [Theory, MemberData(nameof(Systems))]
    public void Every_row_of_every_crop_and_test_is_what_the_system_gives(string id)
    {
        var system = RecommendationSystem.Find(id);
        var random = new Random(7919 * id.Length);
        var wrong = new List<string>();
        foreach (var test in system.Accepts)
        {
            foreach (var (crop, extractant) in test.Crops.SelectMany(c => test.Extractants.Select(e => (c, e))))
            {
                foreach (var use in UsesOf(crop))
                {
                    var (reading, capacity) = Rows(random);
                    wrong.AddRange(NeedCalls.Of(system, test.Nutrient, use, Known, extractant, test.Unit).Differences(reading, capacity));
                }
            }
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong.Take(10)));
    }

    [Theory, MemberData(nameof(Systems))]
    public void Another_unit_form_soil_or_years_is_what_the_system_gives(string id)
    {
        var system = RecommendationSystem.Find(id);
        var random = new Random(31 * id.Length);
        var wrong = new List<string>();
        foreach (var test in system.Accepts)
        {
            var crop = test.Crops[^1];
            var use = CropUse.CarriedOff(crop, YieldFor(crop, 4), ApplicationRate.FromPoundsPerAcre(31), ApplicationRate.FromPoundsPerAcre(0)) with { BuildUpYears = 4 };
            foreach (var unit in Units)
            {
                foreach (var form in Enum.GetValues<PrintedForm>())
                {
                    var (reading, capacity) = Rows(random, drawn: 20);
                    wrong.AddRange(NeedCalls.Of(system, test.Nutrient, use, Heavy, test.Extractants[0], unit, form).Differences(reading, capacity));
                }
            }

            foreach (var soil in OtherSoils)
            {
                var (reading, capacity) = Rows(random, drawn: 20);
                wrong.AddRange(NeedCalls.Of(system, test.Nutrient, use, soil, test.Extractants[^1], test.Unit).Differences(reading, capacity));
                wrong.AddRange(NeedCalls.Of(system, test.Nutrient, use with { BuildUpYears = 6 }, soil, Extractant.Mehlich3Icp, test.Unit).Differences(reading, capacity));
            }
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong.Take(10)));
    }

    [Theory, MemberData(nameof(Systems))]
    public void A_crop_or_test_outside_the_system_is_refused_as_the_system_does(string id)
    {
        var system = RecommendationSystem.Find(id);
        var (reading, capacity) = Rows(new Random(3), drawn: 5);
        foreach (var nutrient in system.Accepts.Select(t => t.Nutrient).Distinct())
        {
            foreach (var crop in Enum.GetValues<CropRow>())
            {
                var rows = NeedCalls.Of(system, nutrient, CropUse.Browsed(crop), Known, Extractant.Morgan, SoilTestUnit.PartsPerMillion);
                Assert.NotNull(rows.Column.Unanswered);
                Assert.Empty(rows.Differences(reading, capacity));
            }
        }
    }

    /// <summary>A soil that states its weight per volume.</summary>
    private static PlotSoil Heavy =>
        Known.ReportedBy(Bare with { WeightPerVolume = UnitsNet.Density.FromGramsPerCubicCentimeter(1.13) });

    private static IEnumerable<PlotSoil> OtherSoils =>
        [
            PlotSoil.For(Report()),
            Known with { SoilClass = SoilClass.Organic },
            Known with { SoilClass = SoilClass.MineralOrganic, PhosphorusSupply = SoilSupply.Low, ExchangeCapacityGroup = SoilSupply.Low },
            Known with { ExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(5), PhosphorusSupply = SoilSupply.High },
            Known.ReportedBy(Bare with { SampleMoisture = SampleMoisture.Dried, PrintedPhosphorusRating = "low", SubsoilPotassium = K(100, SoilTestUnit.PoundsPerAcre, Extractant.Mehlich1) }),
            Known.ReportedBy(Bare with { SampledDepth = UnitsNet.Length.FromInches(3), WaterPh = WaterPh.FromValue(5.1) }),
        ];

    private static CropUse[] UsesOf(CropRow crop) =>
        [
            CropUse.Browsed(crop, YieldFor(crop, 5.5)),
            CropUse.CarriedOff(crop, YieldFor(crop, 63)),
            CropUse.Browsed(crop),
            CropUse.CarriedOff(crop, YieldFor(crop, 5.5), ApplicationRate.FromPoundsPerAcre(44.7), ApplicationRate.FromPoundsPerAcre(285.3)),
        ];

    /// <summary>A grid over and beyond the printed limits with their neighbors, drawn rows, and values that cannot be.</summary>
    private static (double[] Reading, double[] Capacity) Rows(Random random, int drawn = 120)
    {
        var rows = new List<(double Reading, double Capacity)>();
        foreach (int limit in Enumerable.Range(0, 41).Select(i => i * 5).Concat([9, 71, 156, 182, 201, 235, 236, 240, 241, 250, 260, 300, 360, 400]))
        {
            rows.AddRange([(limit, 5), (Math.BitIncrement(limit), 12), (Math.BitDecrement(limit), 5.000001)]);
        }

        rows.AddRange(Enumerable.Range(0, drawn).Select(_ => (Math.Pow(random.NextDouble(), 2) * 420, random.NextDouble() * 40)));
        rows.AddRange(Odd.SelectMany(reading => Odd.Append(9.5).Select(capacity => (reading, capacity))));
        rows.AddRange(Odd.Select(capacity => (40.0, capacity)));
        return ([.. rows.Select(r => r.Reading)], [.. rows.Select(r => r.Capacity)]);
    }
}
