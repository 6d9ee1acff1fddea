using PlotAgronomy.Fertilizers;
using UnitsNet;
using static PlotAgronomy.Tests.Fertilizers.FertilizerShelfTests;

namespace PlotAgronomy.Tests.Fertilizers;

/// <summary>The salt limit of the seed row as a cap of the plan: 8 lb N + K2O for corn in 30 in rows (Kansas State University).</summary>
public class FertilizerSeedRowTests
{
    private static readonly FieldConditions InTheRow = new()
    {
        SeedRowLimit = SeedPlacedLimit.All.Single(l => l is { Crop: SeedRowCrop.Corn, Soil: SeedRowSoil.MediumToFine } && l.RowSpacingLow?.Inches == 30),
    };

    [Theory]
    [InlineData(37, true), InlineData(37.8, true), InlineData(37.9, false)]
    public void Salt_at_the_seed_is_capped(double phosphate, bool fits)
    {
        // 8 lb N from 11-52-0 is 72.7 lb, which brings 37.8 lb P2O5.
        var plan = FertilizerShelf.FromOffers(Bag("11-52-0", 40)).Cheapest(Need(0, phosphate, 0), Area.FromAcres(1), field: InTheRow);
        Assert.Equal(fits, plan.MeetsEveryNeed);
        Assert.Equal(!fits, plan.Conflict is { IncludesSeedRow: true });
        Assert.Contains(plan.Findings, f => f.Code == "fertilizer-seed-contact");
    }

    [Fact]
    public void Urea_stays_out_of_the_row()
    {
        var plan = FertilizerShelf.FromOffers(Bag("46-0-0", 24)).Cheapest(Need(4, 0, 0), Area.FromAcres(1), field: InTheRow);
        Assert.False(plan.MeetsEveryNeed);
        Assert.Empty(plan.Lines);
        Assert.Equal("nitrogen cannot be met within the salt limit of the seed row", plan.Conflict!.ToString());
        Assert.True(FertilizerShelf.FromOffers(Bag("46-0-0", 24), Bag("11-52-0", 40)).Cheapest(Need(4, 0, 0), Area.FromAcres(1), field: InTheRow).MeetsEveryNeed);
    }

    [Fact]
    public void A_limit_that_is_a_part_of_another_is_refused()
    {
        var sorghum = new FieldConditions { SeedRowLimit = SeedPlacedLimit.All.Single(l => l.Crop == SeedRowCrop.GrainSorghum) };
        Assert.Throws<ArgumentException>(() => FertilizerShelf.FromOffers(Bag("11-52-0", 40)).Cheapest(Need(0, 10, 0), Area.FromAcres(1), field: sorghum));
    }

    [Fact]
    public void A_known_temperature_puts_a_figure_on_the_loss_of_urea()
    {
        var warm = new FieldConditions { SoilTemperature = Temperature.FromDegreesFahrenheit(78) };
        var plan = FertilizerShelf.FromOffers(Bag("46-0-0", 24)).Cheapest(Need(40, 0, 0), Area.FromAcres(1), field: warm);
        Assert.Contains(plan.Findings, f => f.Code == "fertilizer-surface-urea-loss" && f.Text.Contains("20 to 40 %", StringComparison.Ordinal));
    }
}
