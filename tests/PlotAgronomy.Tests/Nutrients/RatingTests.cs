using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;
using static PlotAgronomy.Tests.Nutrients.SystemRequests;

namespace PlotAgronomy.Tests.Nutrients;

public class RatingTests
{
    public static TheoryData<string> Scales => [.. RatingSystem.All.Concat(RatingSystem.Unchecked).SelectMany(s => s.Scales).Select(s => s.Id)];

    [Theory, MemberData(nameof(Scales))]
    public void A_scale_has_no_gap_and_no_overlap_and_every_limit_closes_one_side_only(string id)
    {
        var scale = RatingSystem.All.Concat(RatingSystem.Unchecked).SelectMany(s => s.Scales).Single(s => s.Id == id);
        Assert.Equal(0, scale.Classes[0].PrintedLow);
        Assert.True(scale.Classes[^1].PrintedHigh is null || id == "NI-P");
        foreach (var (below, above) in scale.Classes.Zip(scale.Classes.Skip(1)))
        {
            double limit = below.PrintedHigh!.Value;
            Assert.True(above.PrintedLow >= limit && above.PrintedLow - limit <= 1, "the printed limits follow each other");
            foreach (double value in new[] { Math.BitDecrement(limit), limit, Math.BitIncrement(limit) })
            {
                Assert.Same(Assert.Single(scale.Classes, c => IsBetweenItsLimits(c, value)), scale.ClassOf(value));
            }

            Assert.Equal(below.HighIncluded, scale.ClassOf(limit) == below);
            Assert.Equal(!below.HighIncluded, scale.ClassOf(limit) == above);
        }
    }

    /// <summary>A second way to the class: limit by limit, as it is printed.</summary>
    private static bool IsBetweenItsLimits(RatingClass of, double value) =>
        (value > of.StartsAt || (of.StartIncluded && value == of.StartsAt))
        && (of.PrintedHigh is not { } high || value < high || (of.HighIncluded && value == high));

    [Fact]
    public void The_limits_say_in_words_which_side_is_closed()
    {
        var classes = RatingSystem.Delaware.Scales.Single(s => s.Id == "DE-P").Classes;
        Assert.Equal("up to 25", classes[0].LimitsInWords());
        Assert.Equal("above 25, up to 50", classes[1].LimitsInWords());
        Assert.Equal("above 100", classes[^1].LimitsInWords());
        Assert.Equal("from 20, below 40", RatingSystem.Find("TS-2020").Scales.Single(s => s.Id == "TS-2020-P-corn").Classes[1].LimitsInWords());
    }

    [Fact]
    public void Every_class_is_in_sight_in_the_result()
    {
        var ratings = RatingSystem.Delaware.Rate(Report(P(38, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3)));
        Assert.Equal(4, ratings.For(SoilAnalyte.Phosphorus)!.Scale.Classes.Length);
        Assert.Equal("phosphorus 38 ppm: medium (above 25, up to 50 ppm)", ratings.For(SoilAnalyte.Phosphorus)!.ToString());
        Assert.Contains("optimum (above 50, up to 100)", Assert.Single(ratings.ShowWork()).Numbers, StringComparison.Ordinal);
    }

    [Fact]
    public void New_Jersey_rates_manganese_by_test_and_pH_together()
    {
        var manganese = SoilReading.FromPrinted(SoilAnalyte.Manganese, 5, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3);
        SoilReport With(double ph) => new() { Laboratory = "a laboratory", Readings = [manganese], WaterPh = WaterPh.FromValue(ph) };
        Assert.Equal("adequate", RatingSystem.NewJersey.Rate(With(6)).For(SoilAnalyte.Manganese)!.Name);
        Assert.Equal("deficient", RatingSystem.NewJersey.Rate(With(6.5)).For(SoilAnalyte.Manganese)!.Name);
        Assert.Null(RatingSystem.NewJersey.Rate(Report(manganese)).For(SoilAnalyte.Manganese));
    }

    [Theory]
    [InlineData(2, "non-saline")]
    [InlineData(2.01, "slightly saline")]
    [InlineData(4.01, "moderately saline")]
    [InlineData(8.01, "highly saline")]
    [InlineData(16.01, "extremely saline")]
    public void Salts_are_classed_by_saturated_paste_only(double conductivity, string expected)
    {
        SoilReading Salts(Extractant by) => SoilReading.FromPrinted(SoilAnalyte.SolubleSalts, conductivity, SoilTestUnit.DecisiemensPerMeter, by);
        Assert.Equal(expected, RatingSystem.Salinity.Rate(Report(Salts(Extractant.SaturatedPaste))).For(SoilAnalyte.SolubleSalts)!.Name);
        Assert.Null(RatingSystem.Salinity.Rate(Report(Salts(Extractant.NotStated))).For(SoilAnalyte.SolubleSalts));
    }

    [Fact]
    public void Limits_that_differ_by_region_crop_or_texture_are_asked_for()
    {
        var georgia = RatingSystem.Find("GA").Rate(Report(P(43, SoilTestUnit.PoundsPerAcre, Extractant.Mehlich1)));
        Assert.Empty(georgia.Ratings);
        Assert.Contains("region", Assert.Single(georgia.Unrated).Reason, StringComparison.Ordinal);

        var report = Report(P(20, SoilTestUnit.PartsPerMillion, Extractant.BrayP1));
        Assert.Contains("crop", Assert.Single(RatingSystem.Find("WI").Rate(report).Unrated).Reason, StringComparison.Ordinal);
        Assert.Contains("texture", Assert.Single(RatingSystem.Find("WI").Rate(report, CropRow.Alfalfa).Unrated).Reason, StringComparison.Ordinal);
        Assert.Contains("no limits for corn", Assert.Single(RatingSystem.Find("WI").Rate(report, CropRow.Corn).Unrated).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Texture_parts_Wisconsins_limits()
    {
        SoilReport On(SoilTexture texture) => new() { Laboratory = "a laboratory", Readings = [P(20, SoilTestUnit.PartsPerMillion, Extractant.BrayP1)], Texture = texture };
        Assert.Equal("optimum", RatingSystem.Find("WI").Rate(On(SoilTexture.SiltLoam), CropRow.Alfalfa).Ratings.Single().Name);
        Assert.Equal("low", RatingSystem.Find("WI").Rate(On(SoilTexture.LoamySand), CropRow.Alfalfa).Ratings.Single().Name);
    }

    [Fact]
    public void A_rating_from_memory_carries_the_finding_and_one_that_was_read_does_not()
    {
        var soil = PlotSoil.For(Report(P(43, SoilTestUnit.PoundsPerAcre, Extractant.Mehlich1))) with { Region = SoilRegion.Piedmont };
        Assert.Contains(RatingSystem.Find("GA").Rate(soil).Findings, f => f.Code == "data-from-memory");
        Assert.DoesNotContain(RatingSystem.Delaware.Rate(Report(P(43, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3))).Findings, f => f.Code == "data-from-memory");
    }

    [Fact]
    public void South_Carolina_does_not_rate_phosphorus_here() =>
        Assert.DoesNotContain(RatingSystem.Find("SC").Scales, s => s.Analyte == SoilAnalyte.Phosphorus);

    [Fact]
    public void An_unknown_id_names_the_known_ones() =>
        Assert.Contains("DE", Assert.Throws<KeyNotFoundException>(() => RatingSystem.Find("XX")).Message, StringComparison.Ordinal);

    [Fact]
    public void The_manganese_index_takes_manganese_in_its_own_unit_only() => Assert.Throws<ArgumentException>(() =>
        ManganeseAvailability.NorthCarolinaA(SoilReading.FromPrinted(SoilAnalyte.Manganese, 40, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3), WaterPh.FromValue(6)));
}
