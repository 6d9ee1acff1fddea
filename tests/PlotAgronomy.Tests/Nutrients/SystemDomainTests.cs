using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using UnitsNet;
using static PlotAgronomy.Tests.Nutrients.SystemRequests;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>A system answers inside its domain only, and says who would serve outside it.</summary>
public class SystemDomainTests
{
    private const SoilTestUnit Ppm = SoilTestUnit.PartsPerMillion;

    [Fact]
    public void A_crop_without_a_row_is_left_unanswered_and_the_systems_that_have_it_are_named()
    {
        var answer = RecommendationSystem.NorthCarolina.Recommend(Report(P(12, Ppm, Extractant.Mehlich3)), CropUse.Browsed(CropRow.Corn, CropYield.FromBushelsPerAcre(80)));
        Assert.Empty(answer.Needs);
        Assert.Equal([PlantNutrient.Phosphate, PlantNutrient.Potash], answer.Unanswered.Select(u => u.Nutrient));
        Assert.Contains(RecommendationSystem.Find("TS-2020"), answer.Unanswered[0].ServedBy);
        Assert.Contains(answer.Findings, f => f.Code == "nutrient-no-crop-row" && f.Text.Contains("TS-2020", StringComparison.Ordinal));
    }

    [Fact]
    public void Another_extractant_is_left_unanswered_and_not_converted()
    {
        var answer = RecommendationSystem.TriState1995.Recommend(Report(P(12, Ppm, Extractant.Mehlich3)), CropUse.Browsed(CropRow.Corn));
        var unanswered = answer.Unanswered.Single(u => u.Nutrient == PlantNutrient.Phosphate);
        Assert.Null(answer.Phosphate);
        Assert.Equal("nutrient-test-not-accepted", unanswered.Finding.Code);
        Assert.Contains(RecommendationSystem.Find("TS-2020"), unanswered.ServedBy);
        Assert.DoesNotContain(RecommendationSystem.TriState1995, unanswered.ServedBy);
    }

    [Fact]
    public void A_Mehlich_1_value_is_not_rated_with_a_Mehlich_3_table()
    {
        Assert.Null(RatingSystem.Delaware.Rate(Report(P(45, Ppm, Extractant.Mehlich1))).For(SoilAnalyte.Phosphorus));
        Assert.NotNull(RatingSystem.Delaware.Rate(Report(P(45, Ppm, Extractant.Mehlich3))).For(SoilAnalyte.Phosphorus));
    }

    [Fact]
    public void An_extractant_the_report_does_not_name_serves_no_system() =>
        Assert.All(RecommendationSystem.Everything, system => Assert.Null(system.Recommend(
            Report(P(10, Ppm, Extractant.NotStated), K(80, Ppm, Extractant.NotStated)), CropUse.Browsed(system.Accepts[0].Crops[0])).Phosphate));

    [Fact]
    public void Iowa_treats_ICP_as_another_test_than_colour()
    {
        var colour = RecommendationSystem.Find("IA-2013").Recommend(Report(P(22, Ppm, Extractant.Mehlich3Colorimetric)), CropUse.Browsed(CropRow.Corn));
        var icp = RecommendationSystem.Find("IA-2013").Recommend(Report(P(22, Ppm, Extractant.Mehlich3Icp)), CropUse.Browsed(CropRow.Corn));
        Assert.Equal("high", colour.Phosphate!.Rating!.Name);
        Assert.Equal("low", icp.Phosphate!.Rating!.Name);
        Assert.Null(RecommendationSystem.Find("IA-2013").Recommend(Report(P(22, Ppm, Extractant.Mehlich3)), CropUse.Browsed(CropRow.Corn)).Phosphate);
    }

    [Fact]
    public void A_missing_test_is_said_to_be_missing_and_never_read_as_zero()
    {
        var answer = RecommendationSystem.NorthCarolina.Recommend(Report(PIndex(30)), CropUse.Browsed(CropRow.DeerTurkeyPlot));
        Assert.NotNull(answer.Phosphate);
        Assert.Null(answer.Potash);
        Assert.Contains(answer.Findings, f => f.Code == "nutrient-test-missing");
    }

    [Theory]
    [InlineData("TS-2020", CropRow.Corn, Extractant.Mehlich3)]
    [InlineData("TS-1995", CropRow.Corn, Extractant.AmmoniumAcetate)]
    [InlineData("MO", CropRow.Corn, Extractant.AmmoniumAcetate)]
    [InlineData("IL", CropRow.Corn, Extractant.AmmoniumAcetate)]
    [InlineData("IA-2013", CropRow.Corn, Extractant.AmmoniumAcetate)]
    [InlineData("KS", CropRow.Corn, Extractant.AmmoniumAcetate)]
    [InlineData("SD", CropRow.Corn, Extractant.AmmoniumAcetate)]
    public void A_fact_that_is_not_known_is_asked_for_and_not_assumed(string system, CropRow crop, Extractant extractant)
    {
        var answer = RecommendationSystem.Find(system).Recommend(Report(K(80, Ppm, extractant)), CropUse.Browsed(crop));
        Assert.Null(answer.Potash);
        Assert.Contains(answer.Findings, f => f.Code == "nutrient-fact-missing");
    }

    [Fact]
    public void A_crop_carried_off_without_a_removal_figure_is_asked_for_it()
    {
        var use = CropUse.CarriedOff(CropRow.Forage, CropYield.FromTonsPerAcre(3));
        Assert.Null(RecommendationSystem.Find("TS-2020").Recommend(Report(P(35, Ppm, Extractant.Mehlich3)), use).Phosphate);

        var stated = CropUse.CarriedOff(CropRow.Forage, CropYield.FromTonsPerAcre(3), ApplicationRate.FromPoundsPerAcre(36), ApplicationRate.FromPoundsPerAcre(150));
        Assert.Equal(36, RecommendationSystem.Find("TS-2020").Recommend(Report(P(35, Ppm, Extractant.Mehlich3)), stated).Phosphate!.Rate.PoundsPerAcre);
    }

    [Fact]
    public void A_superseded_edition_says_so()
    {
        var answer = RecommendationSystem.TriState1995.Recommend(Report(P(12, Ppm, Extractant.BrayP1)), CropUse.Browsed(CropRow.Corn));
        Assert.Contains(answer.Findings, f => f.Code == "nutrient-system-superseded" && f.Text.Contains("TS-2020", StringComparison.Ordinal));
        Assert.DoesNotContain(RecommendationSystem.Find("TS-2020").Recommend(Report(P(12, Ppm, Extractant.Mehlich3)), CropUse.Browsed(CropRow.Corn)).Findings, f => f.Code == "nutrient-system-superseded");
    }

    [Theory]
    [InlineData(4.9, true)]
    [InlineData(5, false)]
    [InlineData(9, false)]
    [InlineData(9.1, true)]
    public void A_sample_of_another_depth_than_the_systems_is_remarked(double inches, bool isRemarked)
    {
        var report = new SoilReport { Laboratory = "a laboratory", Readings = [PIndex(30)], SampledDepth = Length.FromInches(inches) };
        var findings = RecommendationSystem.NorthCarolina.Recommend(report, CropUse.Browsed(CropRow.DeerTurkeyPlot)).Findings;
        Assert.Equal(isRemarked, findings.Any(f => f.Code == "nutrient-sample-depth"));
    }

    [Theory]
    [InlineData(300, false)]
    [InlineData(300.1, true)]
    public void A_yield_no_plot_bears_is_questioned(double bushels, bool isQuestioned)
    {
        var answer = RecommendationSystem.Kansas.Recommend(Report(P(10, Ppm, Extractant.BrayP1)), CropUse.Browsed(CropRow.Corn, CropYield.FromBushelsPerAcre(bushels)));
        Assert.Equal(isQuestioned, answer.Findings.Any(f => f.Code == "nutrient-yield-unusual"));
    }

    [Fact]
    public void Every_system_names_its_institution_edition_philosophy_and_a_known_source() => Assert.All(RecommendationSystem.Everything, system =>
    {
        Assert.Contains(system.Institution, Institution.All);
        Assert.NotEmpty(system.Edition);
        Assert.NotEmpty(system.InWords);
        Assert.NotEmpty(system.Accepts);
        Assert.All(system.Sources, source => Assert.Contains(source, Source.All));
    });

    [Fact]
    public void An_unknown_id_names_the_known_ones() =>
        Assert.Contains("TS-2020", Assert.Throws<KeyNotFoundException>(() => RecommendationSystem.Find("XX")).Message, StringComparison.Ordinal);

    [Theory, MemberData(nameof(CultureScope.Treacherous), MemberType = typeof(CultureScope))]
    public void Text_and_numbers_do_not_depend_on_the_culture(string culture)
    {
        string Answer() => string.Join("\n", RecommendationSystem.Everything.SelectMany(s =>
        {
            var crop = s.Accepts[0].Crops[0];
            var test = s.Accepts[0];
            var reading = SoilReading.FromPrinted(test.Analyte, 12.5, test.Unit, test.Extractants[0]);
            var answer = s.Recommend(Known(Report(reading), 7.5), CropUse.Browsed(crop, YieldFor(crop, 2.5)));
            return answer.Needs.Select(n => n.ToString()).Concat(answer.ShowWork().Select(l => l.ToString())).Concat(answer.Findings.Select(f => f.ToString()));
        }));
        string expected = Answer();
        using var scope = new CultureScope(culture);
        Assert.Equal(expected, Answer());
    }
}
