using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;
using static PlotAgronomy.Tests.Nutrients.SystemRequests;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>What a system says of a reading: its class, its reason and its sources, below, at and above the printed limits.</summary>
public class SystemWordsTests
{
    private const SoilTestUnit Ppm = SoilTestUnit.PartsPerMillion;

    /// <summary>Bulletin 974: phosphorus by Mehlich-3, corn 20 to 40 ppm, wheat 30 to 50 ppm.</summary>
    [Theory]
    [InlineData(CropRow.Corn, 19, "is below the critical level of 20 ppm")]
    [InlineData(CropRow.Corn, 20, "lies between the critical level of 20 ppm and the limit of 40 ppm")]
    [InlineData(CropRow.Corn, 39, "lies between the critical level of 20 ppm and the limit of 40 ppm")]
    [InlineData(CropRow.Corn, 40, "is at or above the limit of 40 ppm, so none is needed")]
    [InlineData(CropRow.Wheat, 19, "is below the critical level of 30 ppm")]
    [InlineData(CropRow.Wheat, 49, "lies between the critical level of 30 ppm and the limit of 50 ppm")]
    public void Tri_State_2020_says_where_phosphorus_lies(CropRow crop, double ppm, string words) =>
        Assert.Contains(words, RecommendationSystem.Find("TS-2020").Recommend(Report(P(ppm, Ppm, Extractant.Mehlich3)), CropUse.Browsed(crop)).Phosphate!.Why, StringComparison.Ordinal);

    /// <summary>Bulletin 974: potassium on loam (CEC above 5) 120 to 170 ppm; what it is computed with is the factor of potassium.</summary>
    [Fact]
    public void Tri_State_2020_names_the_source_of_each_nutrient()
    {
        var answer = RecommendationSystem.Find("TS-2020").Recommend(Known(Report(P(10, Ppm, Extractant.Mehlich3), K(90, Ppm, Extractant.Mehlich3)), 10), CropUse.Browsed(CropRow.Corn));
        Assert.Contains("SOIL-TS1b", answer.Phosphate!.Sources.Concat(answer.Potash!.Sources).Select(s => s.Id));
        Assert.Equal(NutrientConstants.All.Find("TS-2020-P-factor").Origin.Sources.Except(answer.Phosphate.Sources), []);
        Assert.Equal(NutrientConstants.All.Find("TS-2020-K-factor-per-cec").Origin.Sources.Except(answer.Potash.Sources), []);
    }

    /// <summary>E-2567: phosphorus by Bray P-1, corn and soybean 15 ppm critical, 30 the end of maintenance, 40 of drawdown; wheat and
    /// alfalfa 25, 40, 50.</summary>
    [Theory]
    [InlineData(CropRow.Corn, 15, 30, 40)]
    [InlineData(CropRow.Soybean, 15, 30, 40)]
    [InlineData(CropRow.Wheat, 25, 40, 50)]
    public void Tri_State_1995_rates_by_the_limits_of_its_crop(CropRow crop, double critical, double maintenance, double drawdown)
    {
        NutrientRating At(double ppm) => RecommendationSystem.TriState1995.Recommend(Report(P(ppm, Ppm, Extractant.BrayP1)), CropUse.Browsed(crop)).Phosphate!.Rating!;
        Assert.Equal(1, At(critical - 0.1).Class.Order);
        Assert.Equal(2, At(critical).Class.Order);
        Assert.Equal(2, At(maintenance).Class.Order);
        Assert.Equal(3, At(maintenance + 0.1).Class.Order);
        Assert.Equal(3, At(drawdown - 0.1).Class.Order);
        Assert.Equal(critical, At(5).Class.PrintedHigh);
    }

    /// <summary>A laboratory prints 0 where it found less than it can measure: that is the lowest class.</summary>
    [Theory]
    [InlineData("KS", CropRow.Corn, Extractant.Mehlich3)]
    [InlineData("TS-2020", CropRow.Corn, Extractant.Mehlich3)]
    public void A_reading_of_nothing_has_the_lowest_class(string id, CropRow crop, Extractant extractant)
    {
        var none = RecommendationSystem.Find(id).Recommend(Report(P(0, Ppm, extractant)), CropUse.Browsed(crop, YieldFor(crop, 100)));
        Assert.Equal(1, none.Phosphate!.Rating!.Class.Order);
    }

    /// <summary>E-2567: the critical level of potassium is 75 + 2.5 x CEC, 100 ppm at CEC 10.</summary>
    [Fact]
    public void The_lowest_class_of_a_computed_scale_begins_with_nothing()
    {
        var lowest = RecommendationSystem.TriState1995.Recommend(Known(Report(K(0, Ppm, Extractant.AmmoniumAcetate)), 10), CropUse.Browsed(CropRow.Corn)).Potash!.Rating!.Class;
        Assert.Equal("build-up", lowest.Name);
        Assert.True(lowest.StartIncluded);
        Assert.Contains("100", lowest.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("above 0", lowest.ToString(), StringComparison.Ordinal);
    }
}
