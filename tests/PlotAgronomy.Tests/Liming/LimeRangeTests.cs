using PlotAgronomy.Liming;
using PlotAgronomy.Soil;
using static PlotAgronomy.Tests.Liming.LimeSamples;

namespace PlotAgronomy.Tests.Liming;

/// <summary>The range about a rate, and readings at the edge of what a method covers.</summary>
public class LimeRangeTests
{
    [Fact]
    public void Earlier_lime_is_taken_off_the_range_as_off_the_rate()
    {
        // North Carolina, hand algebra: Ac = 4 x (6.6 - reading), rate = Ac x (6.0 - 5.2) / (6.6 - 5.2), off by 0.1 either way;
        // a ton five months ago still stands for 1 - 5 x 0.08 = 0.6 ton.
        var earlier = EarlierLime.FromRate(ApplicationRate.FromShortTonsPerAcre(1), 5);
        var need = LimeMethod.NorthCarolina.NeedFor(Report(5.2, SoilBuffer.Mehlich, 6.0), 6.0, earlier);
        Assert.Equal((2.4 * 0.8 / 1.4) - 0.6, need.Rate!.OfBasis.ShortTonsPerAcre, 1e-9);
        Assert.Equal((2.0 * 0.8 / 1.4) - 0.6, need.Lowest!.OfBasis.ShortTonsPerAcre, 1e-9);
        Assert.Equal((2.8 * 0.8 / 1.4) - 0.6, need.Highest!.OfBasis.ShortTonsPerAcre, 1e-9);
    }

    /// <summary>The Minnesota food plot table is for soils below water pH 6.0, which is its only target too (University of Minnesota,
    /// Fertilizing wildlife food plots).</summary>
    [Theory]
    [InlineData("minnesota-food-plot-east", 5.99, 3000)]
    [InlineData("minnesota-food-plot-east", 6.0, 0)]
    [InlineData("minnesota-food-plot-east", 6.2, 0)]
    [InlineData("minnesota-food-plot-west", 5.99, 2000)]
    [InlineData("minnesota-food-plot-west", 6.0, 0)]
    public void A_table_for_sour_soil_asks_for_no_lime_from_its_water_pH_on(string id, double waterPh, double pounds) =>
        Assert.Equal(pounds, LimeMethod.Find(id).NeedFor(Report(waterPh, SoilBuffer.Smp, 6.4), 6.0).Rate!.OfBasis.PoundsPerAcre, 1e-9);

    /// <summary>A buffer pH of 7 is what some laboratories print where none was measured (common practice).</summary>
    [Theory]
    [InlineData("wisconsin-a2809", SoilBuffer.Smp, 6.4, false)]
    [InlineData("wisconsin-a2809", SoilBuffer.Smp, 7.0, false)]
    [InlineData("wisconsin-a2809", SoilBuffer.Smp, 7.01, true)]
    [InlineData("oregon-2025-sikora", SoilBuffer.Sikora, 6.4, false)]
    [InlineData("oregon-2025-sikora", SoilBuffer.Sikora, 7.2, true)]
    [InlineData("north-carolina-mehlich", SoilBuffer.Mehlich, 6.5, false)]
    public void Only_a_buffer_pH_above_7_is_doubted(string id, SoilBuffer buffer, double reading, bool isDoubted)
    {
        var method = LimeMethod.Find(id);
        double target = method.TargetPhs is [.., var highest] ? highest : 6.5;
        Assert.Equal(isDoubted, method.NeedFor(Report(5.2, buffer, reading), target).Has("lime-buffer-high"));
    }

    [Fact]
    public void Above_the_highest_reading_that_asks_for_lime_the_range_ends_in_none()
    {
        // Tri-State 1995 asks for none above its buffer index of 6.9: a reading of 6.85 that is 0.1 too low asks for none.
        var need = LimeMethod.Find("tri-state-1995-smp").NeedFor(Report(5.2, SoilBuffer.Smp, 6.85), 6.5);
        Assert.Equal(0, need.Lowest!.OfBasis.PoundsPerAcre);
        Assert.True(need.Highest!.OfBasis.PoundsPerAcre > need.Rate!.OfBasis.PoundsPerAcre);
        Assert.False(need.Has("lime-range-open"));
        // The Oregon table ends at 6.9 and says nothing of what lies above.
        var open = LimeMethod.Find("oregon-2025-sikora").NeedFor(Report(5.2, SoilBuffer.Sikora, 6.85), 6.4);
        Assert.Null(open.Lowest);
        Assert.True(open.Has("lime-range-open"));
    }
}
