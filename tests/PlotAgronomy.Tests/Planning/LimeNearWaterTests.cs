using PlotAgronomy.Planning;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Planning;

/// <summary>Lime is a smaller hazard to water than fertilizer, and its dust is kept out of it all the same.</summary>
/// <remarks>Expected: practice; no publication that was read prints a setback for lime.</remarks>
public class LimeNearWaterTests
{
    private const string Code = "plan-lime-near-water";

    private static PlotAnswers Solve(bool withFertilizer, bool? isNear)
    {
        var plan = PlanFile.Read(File.ReadAllText(Repository.PathOf("samples/data/fall-blend.json"))).Plan!;
        return (plan with { FertilizerOffers = withFertilizer ? plan.FertilizerOffers : [], Plot = plan.Plot with { IsNearWater = isNear } }).Solve();
    }

    [Theory]
    [InlineData(false, null, true), InlineData(false, true, true), InlineData(false, false, false)]
    [InlineData(true, null, false), InlineData(true, true, true), InlineData(true, false, false)]
    public void Lime_alone_or_near_water_is_kept_off_it(bool withFertilizer, bool? isNear, bool isSaid) =>
        Assert.Equal(isSaid, Solve(withFertilizer, isNear).Findings.Any(f => f.Code == Code));

    [Fact]
    public void It_stands_at_the_step_that_spreads_the_lime()
    {
        var step = Solve(withFertilizer: false, isNear: null).Field.Steps.Single(s => s.Minded.Any(f => f.Code == Code));
        Assert.StartsWith("Spread the lime", step.Work.Task.Title, StringComparison.Ordinal);
    }
}
