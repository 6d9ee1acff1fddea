using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;
using static PlotAgronomy.Tests.Nutrients.SystemRequests;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>Facts of the publications that bite whoever programs them.</summary>
public class SystemTrapTests
{
    public static TheoryData<int> UsableEquations => [.. Enumerable.Range(1, 25).Where(n => n != 22)];

    [Theory, MemberData(nameof(UsableEquations))]
    public void No_printed_parabola_raises_the_need_as_the_index_rises(int number)
    {
        var equation = NorthCarolinaEquation.Find(number);
        Assert.True(SystemMath.Parabola(400, equation.A, equation.B, equation.C) > equation.Rate(400), "the raw curve turns up again");
        for (int i = 0; i < 1200; i++)
        {
            Assert.True(equation.Rate(i / 4.0) >= equation.Rate((i + 1) / 4.0));
        }
    }

    [Theory]
    [InlineData("NC", SoilTestUnit.NorthCarolinaIndex, 25, "low")]
    [InlineData("NC", SoilTestUnit.NorthCarolinaIndex, 25.4, "medium")]
    [InlineData("NC", SoilTestUnit.NorthCarolinaIndex, 26, "medium")]
    [InlineData("NC", SoilTestUnit.NorthCarolinaIndex, 100, "high")]
    [InlineData("NC", SoilTestUnit.NorthCarolinaIndex, 100.01, "very high")]
    [InlineData("DE", SoilTestUnit.PartsPerMillion, 50, "medium")]
    [InlineData("DE", SoilTestUnit.PartsPerMillion, 50.5, "optimum")]
    [InlineData("NJ", SoilTestUnit.PoundsPerAcre, 24, "very low")]
    [InlineData("NJ", SoilTestUnit.PoundsPerAcre, 24.5, "low")]
    [InlineData("PA", SoilTestUnit.PartsPerMillion, 29.99, "below optimum")]
    [InlineData("PA", SoilTestUnit.PartsPerMillion, 30, "optimum")]
    [InlineData("PA", SoilTestUnit.PartsPerMillion, 50, "optimum")]
    [InlineData("PA", SoilTestUnit.PartsPerMillion, 50.01, "above optimum")]
    public void A_value_in_a_printed_gap_belongs_to_the_higher_class_only_above_the_printed_limit(string system, SoilTestUnit unit, double value, string expected) =>
        Assert.Equal(expected, RatingSystem.Find(system).Rate(Report(P(value, unit, Extractant.Mehlich3))).For(SoilAnalyte.Phosphorus)!.Name);

    [Theory]
    [InlineData(19.999, "deficient", 20)]
    [InlineData(20, "optimal", 20)]
    [InlineData(39.999, "optimal", 40)]
    [InlineData(40, "sufficient", 40)]
    public void A_critical_level_itself_is_enough_and_a_maintenance_limit_itself_is_too_much(double ppm, string expected, double limit)
    {
        var need = RecommendationSystem.Find("TS-2020").Recommend(Report(P(ppm, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3)),
            CropUse.CarriedOff(CropRow.Corn, CropYield.FromBushelsPerAcre(100))).Phosphate!;
        Assert.Equal(expected, need.Rating!.Name);
        Assert.Equal(ppm < 40, need.Replacement!.Value.PoundsPerAcre > 0);
        Assert.Equal(ppm < 20, need.BuildUp!.Value.PoundsPerAcre > 0);
        Assert.Contains(need.Rating.Scale.Classes, c => c.PrintedHigh == limit);
    }

    [Fact]
    public void The_cell_that_breaks_the_grids_pattern_is_given_as_printed_with_a_caution()
    {
        NutrientRecommendation With(double potassium) => RecommendationSystem.Find("SC").Recommend(
            Report(P(10, SoilTestUnit.PoundsPerAcre, Extractant.Mehlich1), K(potassium, SoilTestUnit.PoundsPerAcre, Extractant.Mehlich1)) with { PrintedPhosphorusRating = "low" }, CropUse.Browsed(CropRow.Alfalfa));
        Assert.Equal(100, With(240).Phosphate!.Rate.PoundsPerAcre);
        Assert.Contains(With(240).Findings, f => f.Code == "nutrient-grid-breaks-pattern");
        Assert.Equal(200, With(200).Phosphate!.Rate.PoundsPerAcre);
        Assert.DoesNotContain(With(200).Findings, f => f.Code == "nutrient-grid-breaks-pattern");
    }

    [Fact]
    public void In_that_row_the_phosphate_is_not_guessed_when_potassium_was_not_tested() =>
        Assert.Null(RecommendationSystem.Find("SC").Recommend(Report(P(10, SoilTestUnit.PoundsPerAcre, Extractant.Mehlich1)) with { PrintedPhosphorusRating = "low" },
            CropUse.Browsed(CropRow.Alfalfa)).Phosphate);

    [Fact]
    public void South_Carolinas_phosphorus_limits_are_not_invented()
    {
        var answer = RecommendationSystem.Find("SC").Recommend(Report(P(10, SoilTestUnit.PoundsPerAcre, Extractant.Mehlich1)), CropUse.Browsed(CropRow.SmallGrain));
        Assert.Null(answer.Phosphate);
        Assert.Contains(answer.Findings, f => f.Code == "nutrient-fact-missing");
        Assert.Null(RatingSystem.Find("SC").Rate(Report(P(10, SoilTestUnit.PoundsPerAcre, Extractant.Mehlich1))).For(SoilAnalyte.Phosphorus));
    }

    [Fact]
    public void Phosphate_printed_as_P2O5_is_not_phosphorus()
    {
        var element = RecommendationSystem.Find("TS-2020").Recommend(Report(P(10, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3)), CropUse.Browsed(CropRow.Corn));
        var oxide = RecommendationSystem.Find("TS-2020").Recommend(
            Report(SoilReading.FromPrinted(SoilAnalyte.Phosphorus, 22.914, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3, PrintedForm.Oxide)), CropUse.Browsed(CropRow.Corn));
        Assert.Equal(element.Phosphate!.Rate.PoundsPerAcre, oxide.Phosphate!.Rate.PoundsPerAcre, 0.01);
    }

    [Fact]
    public void Oklahomas_index_is_already_doubled_and_not_doubled_again()
    {
        NutrientNeed Need(double value, SoilTestUnit unit) =>
            RecommendationSystem.Oklahoma.Recommend(Report(P(value, unit, Extractant.Mehlich3)), CropUse.Browsed(CropRow.SmallGrain)).Phosphate!;
        Assert.Equal(Need(30, SoilTestUnit.OklahomaIndex).Rate, Need(30, SoilTestUnit.PoundsPerAcre).Rate);
        Assert.Equal(Need(30, SoilTestUnit.OklahomaIndex).Rate, Need(15, SoilTestUnit.PartsPerMillion).Rate);
    }

    [Fact]
    public void Hay_potash_is_not_put_on_a_plot_that_is_only_browsed()
    {
        var report = Report(K(140, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3));
        var hay = RecommendationSystem.Find("TS-2020").Recommend(Known(report, 10), CropUse.CarriedOff(CropRow.Alfalfa, CropYield.FromTonsPerAcre(4)));
        var browsed = RecommendationSystem.Find("TS-2020").Recommend(Known(report, 10), CropUse.Browsed(CropRow.Alfalfa, CropYield.FromTonsPerAcre(4)));
        Assert.Equal(129.6, hay.Potash!.Rate.PoundsPerAcre, 1e-9);
        Assert.Equal(0, browsed.Potash!.Rate.PoundsPerAcre);
        Assert.Contains(browsed.Findings, f => f.Code == "nutrient-nothing-carried-off");
    }

    [Fact]
    public void Removal_stated_as_nothing_is_a_browsed_plot()
    {
        var report = Report(K(140, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3));
        var use = CropUse.CarriedOff(CropRow.Alfalfa, CropYield.FromTonsPerAcre(4), default, default);
        Assert.Equal(0, RecommendationSystem.Find("TS-2020").Recommend(Known(report, 10), use).Potash!.Rate.PoundsPerAcre);
    }

    [Fact]
    public void The_yearly_cap_on_alfalfa_is_a_step_of_its_own()
    {
        var report = Report(K(40, SoilTestUnit.PartsPerMillion, Extractant.AmmoniumAcetate));
        var answer = RecommendationSystem.TriState1995.Recommend(Known(report, 8), CropUse.CarriedOff(CropRow.Alfalfa, CropYield.FromTonsPerAcre(5)));
        Assert.Equal(300, answer.Potash!.Rate.PoundsPerAcre);
        Assert.Equal((95 - 40) * 1.4, answer.Potash.BuildUp!.Value.PoundsPerAcre, 1e-9);
        Assert.Contains(answer.Findings, f => f.Code == "nutrient-yearly-cap");
    }

    [Theory]
    [InlineData(20, 15)]
    [InlineData(20.01, 0)]
    public void Kansas_gives_at_least_15_pounds_up_to_its_limit_and_none_above(double ppm, double expected) =>
        Assert.Equal(expected, RecommendationSystem.Kansas.Recommend(Report(P(ppm, SoilTestUnit.PartsPerMillion, Extractant.BrayP1)),
            CropUse.Browsed(CropRow.Corn, CropYield.FromBushelsPerAcre(100))).Phosphate!.Rate.PoundsPerAcre, 1e-9);

    [Theory]
    [InlineData(14.99, false)]
    [InlineData(15, true)]
    public void Nebraska_says_yes_without_a_rate_or_none(double ppm, bool isNone)
    {
        var answer = RecommendationSystem.Find("NE").Recommend(Report(P(ppm, SoilTestUnit.PartsPerMillion, Extractant.BrayP1)), CropUse.Browsed(CropRow.Corn));
        Assert.Equal(isNone, answer.Phosphate?.Rate.PoundsPerAcre == 0);
        Assert.Equal(!isNone, answer.Findings.Any(f => f.Code == "nutrient-yes-without-rate"));
        Assert.Equal(!isNone, answer.Unanswered.Any(u => u.Rating?.Name == "responsive"));
    }

    [Fact]
    public void A_legal_ceiling_is_marked_as_one_and_ends_with_the_printed_table()
    {
        NutrientRecommendation With(double value) => RecommendationSystem.Find("NI").Recommend(
            Report(P(value, SoilTestUnit.MilligramsPerCubicDecimeter, Extractant.Olsen)), CropUse.Browsed(CropRow.GrassEstablishment));
        Assert.True(With(12).Phosphate!.IsLegalMaximum);
        Assert.Contains(With(12).Findings, f => f.Code == "nutrient-legal-maximum");
        Assert.Equal(0, With(70).Phosphate!.Rate.PoundsPerAcre);
        Assert.Null(With(70.1).Phosphate);
    }

    [Fact]
    public void Iowas_optimum_rate_is_said_to_replace_a_harvest_on_a_browsed_plot()
    {
        var report = Report(K(100, SoilTestUnit.PartsPerMillion, Extractant.AmmoniumAcetate)) with { SampleMoisture = SampleMoisture.FieldMoist };
        Assert.Contains(RecommendationSystem.Find("IA-2013").Recommend(report, CropUse.Browsed(CropRow.Corn)).Findings, f => f.Code == "nutrient-maintenance-printed");
        Assert.DoesNotContain(RecommendationSystem.Find("IA-2013").Recommend(report, CropUse.CarriedOff(CropRow.Corn, CropYield.FromBushelsPerAcre(150))).Findings, f => f.Code == "nutrient-maintenance-printed");
    }

    [Fact]
    public void A_printed_range_is_shown_whole_and_its_lower_end_taken()
    {
        var answer = RecommendationSystem.Find("MT").Recommend(Report(P(5, SoilTestUnit.PartsPerMillion, Extractant.Olsen)), CropUse.Browsed(CropRow.Alfalfa, CropYield.FromTonsPerAcre(2)));
        Assert.Equal(answer.Phosphate!.PublishedLow, answer.Phosphate.Rate);
        Assert.True(answer.Phosphate.PublishedHigh > answer.Phosphate.Rate);
        Assert.Contains(answer.Findings, f => f.Code == "nutrient-range-only");
    }

    [Theory]
    [InlineData("corn", 50, 0.2)]
    [InlineData("soybean", 40, 1)]
    [InlineData("wheat", 40, 1)]
    public void Each_Kansas_equation_nearly_reaches_zero_at_its_own_limit(string crop, double yield, double tolerance)
    {
        double atLimit = crop switch
        {
            "corn" => SystemMath.Linear(50, 0.2, -2.5, -0.01, yield, 20),
            "soybean" => SystemMath.Linear(56, 0.31, -2.8, -0.0156, yield, 20),
            _ => SystemMath.Linear(46, 0.42, -2.3, -0.021, yield, 20),
        };
        Assert.InRange(atLimit, -tolerance, tolerance);
    }
}
