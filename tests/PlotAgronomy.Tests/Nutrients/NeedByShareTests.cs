using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using static PlotAgronomy.Tests.Nutrients.NeedSamples;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>A mixture is fed by the shares of its kinds, and annual clover in grain is no alfalfa hay.</summary>
public class NeedByShareTests
{
    private static SoilReport SouthCarolina => new()
    {
        Laboratory = "South Carolina",
        WaterPh = WaterPh.FromValue(5.5),
        PrintedPhosphorusRating = "low",
        Readings =
        [
            SystemRequests.P(5, SoilTestUnit.PoundsPerAcre, Extractant.Mehlich1),
            SystemRequests.K(100, SoilTestUnit.PoundsPerAcre, Extractant.Mehlich1),
        ],
    };

    private static SoilReport Oklahoma => new()
    {
        Laboratory = "Oklahoma",
        Readings = [SystemRequests.P(32, SoilTestUnit.OklahomaIndex, Extractant.Mehlich3), SystemRequests.K(250, SoilTestUnit.OklahomaIndex, Extractant.Mehlich3)],
    };

    private static PlotNeed Need(string system, SoilReport report, params KindShare[] kinds) => PlotNeed.For(With(RecommendationSystem.Find(system), report, kinds));

    /// <summary>Published: Clemson's grid for small grain (crop code 029) gives 80 lb P2O5 at low phosphorus and 60 lb K2O at medium potassium, however much
    /// annual clover stands in it; that for alfalfa gives 200 and 200.</summary>
    [Theory]
    [InlineData(0.19), InlineData(0.20), InlineData(0.5)]
    public void Annual_clover_in_browsed_grain_takes_the_row_of_small_grain(double clover)
    {
        var need = Need("SC", SouthCarolina, Kind("oats-winter", 0.5), Kind("winter-wheat", 0.25), Kind("crimson-clover", clover), Kind("arrowleaf-clover", 0.06));
        Assert.Equal(80, need.Pounds(PlantNutrient.Phosphate), 1e-9);
        Assert.Equal(60, need.Pounds(PlantNutrient.Potash), 1e-9);
    }

    /// <summary>Published points of Oklahoma's table for small grain, 40 lb at index 20 and 20 lb at 40: 28 lb at 32, by hand; alfalfa's 76 lb is for hay.</summary>
    [Theory]
    [InlineData("cowpea-iron-clay"), InlineData("lablab"), InlineData("austrian-winter-pea"), InlineData("hairy-vetch")]
    public void Browsed_peas_do_not_take_the_row_of_alfalfa(string kind) =>
        Assert.Equal(28, Need("OK", Oklahoma, Kind(kind, 1)).Pounds(PlantNutrient.Phosphate), 1e-9);

    /// <summary>Hand algebra on Clemson's two grids: 0.8 of a stand at 80 and 0.2 at 200 lb P2O5 are 104, at 60 and 200 lb K2O 88.</summary>
    [Fact]
    public void Two_rows_are_weighed_by_their_shares()
    {
        var need = Need("SC", SouthCarolina, Kind("oats-winter", 0.8), Kind("alfalfa", 0.2));
        Assert.Equal(104, need.Pounds(PlantNutrient.Phosphate), 1e-9);
        Assert.Equal(88, need.Pounds(PlantNutrient.Potash), 1e-9);
        Assert.Contains(need.ShowWork(PlantNutrient.Phosphate), l => l.ToString().Contains("104 / 1 = 104.0 lb/ac", StringComparison.Ordinal));
        Assert.Equal(
            "By the shares of the stand: 0.2 of a stand at 200 lb/ac (row for alfalfa: Alfalfa); 0.8 of a stand at 80 lb/ac (row for small grain: Winter oats).",
            need.Find(PlantNutrient.Phosphate)!.Reason);
    }

    /// <summary>Hand algebra: one hundredth more of a kind moves the need by no more than a hundredth of what parts the rows, 1.2 and 1.4 lb here.</summary>
    [Fact]
    public void A_hundredth_of_a_stand_moves_the_need_by_a_hundredth_of_the_gap()
    {
        double last = 80, lastPotash = 60;
        for (int hundredths = 1; hundredths <= 99; hundredths++)
        {
            var need = Need("SC", SouthCarolina, Kind("oats-winter", 1 - (hundredths / 100.0)), Kind("alfalfa", hundredths / 100.0));
            Assert.InRange(need.Pounds(PlantNutrient.Phosphate) - last, 1.2 - 1e-9, 1.2 + 1e-9);
            Assert.InRange(need.Pounds(PlantNutrient.Potash) - lastPotash, 1.4 - 1e-9, 1.4 + 1e-9);
            (last, lastPotash) = (need.Pounds(PlantNutrient.Phosphate), need.Pounds(PlantNutrient.Potash));
        }
    }

    /// <summary>Published grids: a perennial clover taken as alfalfa is asked 200 lb, as small grain 80; more than a third apart, so it is asked.</summary>
    [Fact]
    public void Where_the_next_row_says_much_else_it_is_asked()
    {
        var need = Need("SC", SouthCarolina, Kind("ladino-clover", 1));
        var asked = need.Findings.Where(f => f.Code == NutrientCodes.RowsDiffer).ToList();
        Assert.Equal(2, asked.Count);
        Assert.Contains("P2O5 200 lb/ac). As small grain it would be 80 lb/ac", asked[0].Text, StringComparison.Ordinal);
        Assert.False(need.Has(NutrientCodes.TakenAs));
        Assert.False(Need("SC", SouthCarolina, Kind("crimson-clover", 1)).Has(NutrientCodes.RowsDiffer));
    }

    /// <summary>Practice: what fills more than half of the stand and has no figure leaves the mixture without one; a smaller part is left out of the mean.</summary>
    [Theory]
    [InlineData(0.6, true), InlineData(0.4, false)]
    public void Kinds_without_a_row_that_fill_most_of_the_stand_leave_it_unknown(double turnip, bool isOpen)
    {
        var report = new SoilReport
        {
            Laboratory = "Iowa",
            Readings = [SystemRequests.P(14, SoilTestUnit.PartsPerMillion, Extractant.BrayP1), SystemRequests.K(125, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3)],
        };
        var need = Need("IA-2013", report, Kind("purple-top-turnip", turnip), Kind("soybean-forage", 1 - turnip));
        Assert.Equal(isOpen, need.StateOf(PlantNutrient.Phosphate) == AnswerState.Open);
    }
}
