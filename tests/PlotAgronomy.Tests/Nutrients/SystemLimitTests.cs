using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;
using static PlotAgronomy.Tests.Nutrients.SystemRequests;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>Just below, on and just above the limits of the systems; expected rates by hand from the published numbers.</summary>
public class SystemLimitTests
{
    private const SoilTestUnit Ppm = SoilTestUnit.PartsPerMillion;
    private const SoilTestUnit Pounds = SoilTestUnit.PoundsPerAcre;
    private static readonly CropUse Corn100 = CropUse.CarriedOff(CropRow.Corn, CropYield.FromBushelsPerAcre(100));

    [Theory]
    [InlineData(4.9, 0)]
    [InlineData(5, 0)]
    [InlineData(5.1, 12.55)] // (120 - 110) x (1 + 0.05 x 5.1)
    public void Tri_State_2020_changes_its_potassium_level_above_CEC_5(double cec, double expected) =>
        Assert.Equal(expected, RecommendationSystem.Find("TS-2020").Recommend(Known(Report(K(110, Ppm, Extractant.Mehlich3)), cec), CropUse.Browsed(CropRow.Corn)).Potash!.Rate.PoundsPerAcre, 1e-9);

    [Theory]
    [InlineData(30, 37)] // 100 bu x 0.37
    [InlineData(32.5, 27.75)] // a quarter of the taper gone
    [InlineData(35, 18.5)]
    [InlineData(39.999, 0.0037)]
    [InlineData(40, 0)]
    public void Tri_State_1995_tapers_phosphate_from_30_to_40(double ppm, double expected) =>
        Assert.Equal(expected, RecommendationSystem.TriState1995.Recommend(Report(P(ppm, Ppm, Extractant.BrayP1)), Corn100).Phosphate!.Rate.PoundsPerAcre, 1e-6);

    [Theory]
    [InlineData(129.9, 47)] // CEC 10: level 100, maintenance to 130: 100 x 0.27 + 20
    [InlineData(130, 47)]
    [InlineData(140, 23.5)]
    [InlineData(150, 0)]
    public void Tri_State_1995_tapers_potash_over_20_ppm(double ppm, double expected) =>
        Assert.Equal(expected, RecommendationSystem.TriState1995.Recommend(Known(Report(K(ppm, Ppm, Extractant.AmmoniumAcetate)), 10), Corn100).Potash!.Rate.PoundsPerAcre, 1e-9);

    [Theory]
    [InlineData(SoilSupply.High, 60)]
    [InlineData(SoilSupply.Medium, 65)]
    [InlineData(SoilSupply.Low, 70)]
    public void Illinois_puts_back_phosphate_up_to_its_limit_and_none_above(SoilSupply supply, double limit)
    {
        double At(double test) => RecommendationSystem.Find("IL").Recommend(PlotSoil.For(Report(P(test, Pounds, Extractant.BrayP1))) with { PhosphorusSupply = supply }, Corn100).Phosphate!.Rate.PoundsPerAcre;
        Assert.Equal(37, At(limit - 0.01), 1e-9);
        Assert.Equal(37, At(limit), 1e-9);
        Assert.Equal(0, At(limit + 0.01));
    }

    [Fact]
    public void Illinois_puts_back_half_as_much_again_for_wheat_but_only_phosphate()
    {
        var wheat = CropUse.CarriedOff(CropRow.Wheat, CropYield.FromBushelsPerAcre(50));
        var soil = PlotSoil.For(Report(P(50, Pounds, Extractant.BrayP1), K(300, Pounds, Extractant.AmmoniumAcetate))) with { PhosphorusSupply = SoilSupply.Medium, ExchangeCapacityGroup = SoilSupply.Low };
        var answer = RecommendationSystem.Find("IL").Recommend(soil, wheat);
        Assert.Equal(50 * 0.46 * 1.5, answer.Phosphate!.Rate.PoundsPerAcre, 1e-9);
        Assert.Equal(50 * 0.28, answer.Potash!.Rate.PoundsPerAcre, 1e-9);
    }

    [Theory]
    [InlineData(44.9)]
    [InlineData(45)]
    [InlineData(45.1)]
    public void Missouri_builds_below_45_only(double test) =>
        Assert.Equal(test < 45, RecommendationSystem.Find("MO").Recommend(Report(P(test, Pounds, Extractant.BrayP1)), CropUse.Browsed(CropRow.Corn)).Phosphate!.Rate.PoundsPerAcre > 0);

    [Fact]
    public void Missouri_says_that_no_limit_ends_the_replacement()
    {
        var use = CropUse.CarriedOff(CropRow.Corn, CropYield.FromBushelsPerAcre(100), ApplicationRate.FromPoundsPerAcre(37), ApplicationRate.FromPoundsPerAcre(24));
        var answer = RecommendationSystem.Find("MO").Recommend(Report(P(200, Pounds, Extractant.BrayP1)), use);
        Assert.Equal(37, answer.Phosphate!.Rate.PoundsPerAcre);
        Assert.Contains(answer.Findings, f => f.Code == "nutrient-no-upper-limit");
    }

    [Fact]
    public void Missouri_builds_over_4_or_8_years_only() =>
        Assert.Null(RecommendationSystem.Find("MO").Recommend(Report(P(20, Pounds, Extractant.BrayP1)), CropUse.Browsed(CropRow.Corn) with { BuildUpYears = 5 }).Phosphate);

    [Theory]
    [InlineData(50, 130)]
    [InlineData(50.1, 90)]
    [InlineData(85, 90)]
    [InlineData(85.1, 45)]
    [InlineData(120, 45)]
    [InlineData(120.1, 0)]
    public void Iowas_classes_close_at_their_upper_limit(double ppm, double expected) =>
        Assert.Equal(expected, RecommendationSystem.Find("IA-2013").Recommend(Report(K(ppm, Ppm, Extractant.AmmoniumAcetate)) with { SampleMoisture = SampleMoisture.FieldMoist },
            CropUse.Browsed(CropRow.Corn)).Potash!.Rate.PoundsPerAcre);

    [Fact]
    public void Iowas_dried_sample_is_rated_and_its_rate_not_guessed()
    {
        var answer = RecommendationSystem.Find("IA-2013").Recommend(Report(K(170, Ppm, Extractant.AmmoniumAcetate)) with { SampleMoisture = SampleMoisture.Dried }, CropUse.Browsed(CropRow.Corn));
        Assert.Null(answer.Potash);
        Assert.Equal("optimum", answer.Unanswered.Single(u => u.Nutrient == PlantNutrient.Potash).Rating!.Name);
        Assert.Contains(answer.Findings, f => f.Code == "nutrient-rates-not-held");
    }

    [Theory]
    [InlineData(71, 300)]
    [InlineData(71.5, 200)]
    [InlineData(156, 200)]
    [InlineData(157, 100)]
    public void South_Carolinas_potassium_rating_picks_the_column(double test, double expected) =>
        Assert.Equal(expected, RecommendationSystem.Find("SC").Recommend(Report(K(test, Pounds, Extractant.Mehlich1)), CropUse.Browsed(CropRow.Alfalfa)).Potash!.Rate.PoundsPerAcre);

    [Theory]
    [InlineData(0, 80)]
    [InlineData(10, 60)]
    [InlineData(64.9, 0.08)] // 20 lb over 25 index units: 0.8 lb a unit
    [InlineData(65, 0)]
    [InlineData(200, 0)]
    public void Oklahomas_points_are_met_and_end_at_65(double index, double expected) =>
        Assert.Equal(expected, RecommendationSystem.Oklahoma.Recommend(Report(P(index, SoilTestUnit.OklahomaIndex, Extractant.Mehlich3)), CropUse.Browsed(CropRow.SmallGrain)).Phosphate!.Rate.PoundsPerAcre, 1e-9);

    /// <summary>Printed by Oklahoma State: below pH 5.5 without lime band 30 lb P2O5 more with the wheat.</summary>
    [Theory]
    [InlineData(CropRow.Wheat, 5.4, true)]
    [InlineData(CropRow.Wheat, 5.5, false)]
    [InlineData(CropRow.Wheat, 5.6, false)]
    [InlineData(CropRow.Alfalfa, 5.4, false)]
    public void Oklahoma_speaks_of_banded_phosphate_for_wheat_on_acid_soil(CropRow crop, double ph, bool isSaid)
    {
        var report = new SoilReport { Laboratory = "a laboratory", WaterPh = WaterPh.FromValue(ph), Readings = [P(20, SoilTestUnit.OklahomaIndex, Extractant.Mehlich3)] };
        var said = RecommendationSystem.Oklahoma.Recommend(report, CropUse.Browsed(crop)).Findings.Where(f => f.Code == "nutrient-acid-soil-phosphate").ToList();
        Assert.Equal(isSaid ? 1 : 0, said.Count);
        Assert.All(said, f => Assert.Contains("30 lb/ac", f.Text, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(85.0, true)]
    [InlineData(85.2, false)]
    public void North_Carolinas_equation_14_ends_at_index_85_1(double index, bool isSome) =>
        Assert.Equal(isSome, RecommendationSystem.NorthCarolina.Recommend(Report(PIndex(index)), CropUse.Browsed(CropRow.DeerTurkeyPlot)).Phosphate!.Rate.PoundsPerAcre > 0);

    [Theory]
    [InlineData(71, 200)]
    [InlineData(72, 150)]
    [InlineData(156, 150)]
    [InlineData(156.5, 100)]
    public void South_Carolina_cuts_potash_where_the_subsoil_holds_enough(double subsoil, double expected) =>
        Assert.Equal(expected, RecommendationSystem.Find("SC").Recommend(Report(K(150, Pounds, Extractant.Mehlich1)) with { SubsoilPotassium = K(subsoil, Pounds, Extractant.Mehlich1) },
            CropUse.Browsed(CropRow.Alfalfa)).Potash!.Rate.PoundsPerAcre);

    [Fact]
    public void A_subsoil_reading_by_another_extractant_is_refused() =>
        Assert.Throws<ArgumentException>(() => RecommendationSystem.Find("SC").Recommend(Report(K(150, Pounds, Extractant.Mehlich1)) with { SubsoilPotassium = K(80, Ppm, Extractant.Mehlich3) },
            CropUse.Browsed(CropRow.Alfalfa)));

    [Fact]
    public void The_working_of_an_equation_leaves_out_what_it_does_not_hold()
    {
        var line = RecommendationSystem.Find("SD").Recommend(Report(P(10, Ppm, Extractant.BrayP1)), CropUse.Browsed(CropRow.Corn, CropYield.FromBushelsPerAcre(100))).ShowWork().Single();
        Assert.Equal("max(0, 0.7 x 100 - 0.035 x 100 x 10) = 35.0 lb/ac", line.Numbers);
    }

    [Theory]
    [InlineData(19, "max(15, 50 + 0.2 x 100 - 2.5 x 19 - 0.01 x 100 x 19) = 15.0 lb/ac")]
    [InlineData(30, "the reading of 30 ppm lies at or beyond the end, 20 ppm: 0 lb/ac")]
    public void The_working_says_where_a_limit_holds_the_sum(double ppm, string expected)
    {
        var line = RecommendationSystem.Kansas.Recommend(Report(P(ppm, Ppm, Extractant.BrayP1)), CropUse.Browsed(CropRow.Corn, CropYield.FromBushelsPerAcre(100))).ShowWork().Single();
        Assert.Equal(expected, line.Numbers);
    }
}
