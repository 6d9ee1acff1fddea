using FsCheck.Xunit;
using PlotAgronomy.Spreading;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

[Properties(Arbitrary = [typeof(PlotArbitraries)])]
public class CarrierTests
{
    private static readonly ApplicationRate Five = ApplicationRate.FromPoundsPerAcre(5);
    private static readonly Speed Walk = Speed.FromMilesPerHour(3);
    private static readonly Length Swath = Length.FromFeet(10);

    [Fact]
    public void The_smallest_steady_flow_sets_the_carrier()
    {
        // Algebra: 0.75 lb/min at 3 mph and 10 ft is 12.375 lb/ac; 5 lb of seed takes 7.375 lb of carrier.
        var plan = CarrierMix.ForSteadyFlow(Five, MassFlow.FromPoundsPerMinute(0.75), Walk, Swath, Carrier.DrySand);
        Near.Assert(12.375, plan.BlendRate.PoundsPerAcre);
        Near.Assert(7.375, plan.CarrierRate.PoundsPerAcre);
        Near.Assert(5 / 12.375, plan.SeedShare.Value);
        Assert.Contains(plan.Findings, f => f.Code == "spread-calibrate-blend");
        Assert.Null(plan.PartsByVolume);
    }

    [Fact]
    public void Four_parts_by_weight_on_a_quarter_acre()
    {
        // Algebra: 25 lb/ac of blend = 0.5739 lb/1000 ft2; 1.25 lb of seed and 5 lb of carrier on 10,890 ft2.
        var plan = CarrierMix.ForParts(Five, 4, Carrier.DrySand);
        Near.Assert(25, plan.BlendRate.PoundsPerAcre);
        Assert.Equal(0.5739, plan.BlendRate.PoundsPerThousandSquareFeet, 0.00005);
        Near.Assert(1.25, plan.SeedFor(Area.FromSquareFeet(10_890)).Pounds, 1e-9);
        Near.Assert(5, plan.CarrierFor(Area.FromSquareFeet(10_890)).Pounds, 1e-9);
        Near.Assert(0.2, plan.SeedShare.Value);
    }

    [Fact]
    public void Parts_by_volume_need_both_bulk_densities()
    {
        var seed = Density.FromKilogramsPerCubicMeter(800);
        var sand = Density.FromKilogramsPerCubicMeter(1600);
        Near.Assert(8, CarrierMix.PartsByWeightOf(4, seed, sand));
        Near.Assert(4, CarrierMix.ForParts(Five, 8, Carrier.DrySand, seed, sand).PartsByVolume!.Value);
    }

    [Fact]
    public void Feed_and_fertilizer_are_warned_of()
    {
        Assert.Contains(CarrierMix.ForParts(Five, 3, Carrier.Find("cracked-corn")).Findings, f => f.Code == "spread-carrier-feed");
        Assert.Contains(CarrierMix.ForParts(Five, 3, Carrier.Find("nitrogen-fertilizer")).Findings, f => f is { Code: "spread-carrier-unfit", Severity: FindingSeverity.Warning });
        Assert.Equal(["spread-carrier-feed", "spread-carrier-unfit"], CarrierMix.ForParts(Five, 3, Carrier.Find("small-grain")).Findings.Where(f => f.Severity == FindingSeverity.Warning).Select(f => f.Code).Order(StringComparer.Ordinal));
        Assert.Equal("spread-no-carrier-needed", Assert.Single(CarrierMix.ForSteadyFlow(Five, MassFlow.FromPoundsPerMinute(0.1), Walk, Swath, Carrier.DrySand).Findings).Code);
        Assert.Contains("dry-sand", Assert.Throws<KeyNotFoundException>(() => Carrier.Find("gravel")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_table_of_carriers_is_whole()
    {
        Assert.Equal(8, Carrier.All.Length);
        Assert.All(Carrier.All, c => Assert.True(c.PartsLow is null || c.PartsLow <= c.PartsHigh));
        Assert.Empty(Carrier.Unchecked);
        Assert.True(Carrier.TryFind(" Dry-Sand ", out var sand, out _) && sand.Id == "dry-sand");
        Assert.False(Carrier.TryFind("gravel", out _, out string problem));
        Assert.Contains("dry-sand", problem, StringComparison.Ordinal);
        Assert.Equal([("dry-sand", false), ("pelletized-lime", true), ("rice-hulls", false)], new[] { Carrier.DrySand, Carrier.PelletizedLime, Carrier.RiceHulls }.Select(c => (c.Id, c.PartsByWeight)));
        Assert.Equal(["nitrogen-fertilizer", "small-grain"], Carrier.All.Where(c => !c.IsFit).Select(c => c.Id).Order(StringComparer.Ordinal));
    }

    [Theory, InlineData(-1), InlineData(0)]
    public void A_blend_needs_seed_and_flow(double bad)
    {
        Assert.ThrowsAny<ArgumentException>(() => CarrierMix.ForSteadyFlow(ApplicationRate.Zero, MassFlow.FromPoundsPerMinute(1), Walk, Swath, Carrier.DrySand));
        Assert.ThrowsAny<ArgumentException>(() => CarrierMix.ForSteadyFlow(Five, MassFlow.FromPoundsPerMinute(bad), Walk, Swath, Carrier.DrySand));
        Assert.ThrowsAny<ArgumentException>(() => CarrierMix.ForParts(Five, bad - 1, Carrier.DrySand));
        Assert.ThrowsAny<ArgumentException>(() => CarrierMix.PartsByWeightOf(1, Density.FromKilogramsPerCubicMeter(bad), Density.FromKilogramsPerCubicMeter(1)));
    }

    [Property]
    public bool Seed_and_carrier_together_reach_the_smallest_flow(ApplicationRate seed, FsCheck.PositiveInt flow)
    {
        if (seed.PoundsPerAcre == 0)
        {
            return true;
        }

        var smallest = MassFlow.FromPoundsPerMinute(flow.Get / 10.0);
        var plan = CarrierMix.ForSteadyFlow(seed, smallest, Walk, Swath, Carrier.DrySand);
        double needed = SpreaderSetting.FlowFor(plan.BlendRate, Walk, Swath).Flow.PoundsPerMinute;
        return needed >= (flow.Get / 10.0) * (1 - 1e-12) && Near.Equal(plan.SeedRate.PoundsPerAcre, plan.BlendRate.PoundsPerAcre * plan.SeedShare.Value)
            && (plan.CarrierRate.PoundsPerAcre == 0 || Near.Equal(needed, flow.Get / 10.0, 1e-9));
    }
}
