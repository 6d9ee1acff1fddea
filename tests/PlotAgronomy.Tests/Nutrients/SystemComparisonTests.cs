using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;
using static PlotAgronomy.Tests.Nutrients.SystemRequests;

namespace PlotAgronomy.Tests.Nutrients;

public class SystemComparisonTests
{
    private const SoilTestUnit Ppm = SoilTestUnit.PartsPerMillion;
    private static readonly CropUse Corn = CropUse.CarriedOff(CropRow.Corn, CropYield.FromBushelsPerAcre(100));
    private static readonly SoilReport Everything = Report(
        P(14, Ppm, Extractant.BrayP1), P(18, Ppm, Extractant.Mehlich3), P(9, Ppm, Extractant.Olsen), K(100, Ppm, Extractant.AmmoniumAcetate), K(114, Ppm, Extractant.Mehlich3));

    private static PlotSoil Known(SoilReport report) => PlotSoil.For(report with
    {
        SampleMoisture = SampleMoisture.FieldMoist,
    }) with
    {
        ExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(10),
        PhosphorusSupply = SoilSupply.Medium,
        ExchangeCapacityGroup = SoilSupply.High,
    };

    [Fact]
    public void Every_system_that_accepts_the_report_stands_side_by_side()
    {
        var comparison = SystemComparison.For(Known(Everything), Corn, RecommendationSystem.Everything);
        string[] expected = ["IA-2013", "IL", "KS", "ND-2017", "NE", "NE-OLD", "SD", "TS-1995", "TS-2020"];
        Assert.Equal(expected, comparison.Answers.Select(a => a.System.Id).Order(StringComparer.Ordinal));
        Assert.All(comparison.LeftOut, a => Assert.NotEmpty(a.Unanswered));
        Assert.Equal(RecommendationSystem.Everything.Length, comparison.Answers.Length + comparison.LeftOut.Length);
    }

    [Fact]
    public void A_system_that_was_not_asked_by_name_keeps_numbers_from_memory_to_itself()
    {
        var comparison = SystemComparison.For(Known(Everything), Corn);
        Assert.All(comparison.Rows, r => Assert.NotEqual(DataStatus.Memory, r.Need.Status));
        Assert.DoesNotContain(comparison.Findings, f => f.Code == "data-from-memory");
        Assert.Contains(comparison.LeftOut.SelectMany(a => a.Findings), f => f.Code == "nutrient-memory-by-name");
    }

    [Fact]
    public void The_disagreement_is_the_gap_between_least_and_most()
    {
        var comparison = SystemComparison.For(Known(Everything), Corn, [RecommendationSystem.Find("TS-2020"), RecommendationSystem.Kansas]);
        var potash = comparison.About(PlantNutrient.Potash)!;
        // Tri-State 2020: (120 - 114) x 1.5 + 100 x 0.20 + 20 = 49; Kansas: 73 + 21 - 0.565 x 100 - 0.0016 x 100 x 100 = 21.5.
        Assert.Equal("KS", potash.Lowest.System.Id);
        Assert.Equal("TS-2020", potash.Highest.System.Id);
        Assert.Equal(27.5, potash.Difference.PoundsPerAcre, 1e-9);
        Assert.Contains("sufficiency", potash.Why, StringComparison.Ordinal);
        Assert.Contains("put back", potash.Why, StringComparison.Ordinal);
        Assert.Equal("K2O: 21.5 (Kansas sufficiency equations) to 49 (Tri-State 2020), 27.5 lb/ac apart", potash.ToString());
    }

    [Fact]
    public void Systems_of_one_idea_are_said_to_differ_by_their_soils() =>
        Assert.Contains("Both follow", SystemComparison.For(Known(Everything), Corn, [RecommendationSystem.Find("TS-2020"), RecommendationSystem.TriState1995]).About(PlantNutrient.Phosphate)!.Why, StringComparison.Ordinal);

    [Fact]
    public void Each_system_may_take_the_plot_as_another_row()
    {
        var report = Report(PIndex(30), K(80, SoilTestUnit.PoundsPerAcre, Extractant.Mehlich1));
        var comparison = SystemComparison.For(report, s => s.Id switch
        {
            "NC" => CropUse.Browsed(CropRow.DeerTurkeyPlot),
            "SC" => CropUse.Browsed(CropRow.SmallGrain),
            _ => null,
        });
        Assert.Equal(["NC", "SC"], comparison.Answers.Select(a => a.System.Id));
        Assert.Equal(CropRow.SmallGrain, comparison.Rows.Single(r => r.System.Id == "SC" && r.Need.Nutrient == PlantNutrient.Potash).Crop.Row);
    }

    [Fact]
    public void A_legal_ceiling_is_no_advice_to_disagree_with()
    {
        var report = Report(P(12, SoilTestUnit.MilligramsPerCubicDecimeter, Extractant.Olsen));
        var comparison = SystemComparison.For(report, CropUse.Browsed(CropRow.GrassEstablishment));
        Assert.True(Assert.Single(comparison.Rows).Need.IsLegalMaximum);
        Assert.Null(comparison.About(PlantNutrient.Phosphate));
    }

    [Fact]
    public void The_working_names_the_system_on_every_line() =>
        Assert.All(SystemComparison.For(Known(Everything), Corn, RecommendationSystem.Everything).ShowWork(), l => Assert.Contains(", ", l.Label, StringComparison.Ordinal));
}
