using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Blends;

/// <summary>A call that is asked for numbers makes no text.</summary>
public class BlendAllocationTests
{
    private static readonly Blend FallFour = SampleBlends.FallFour();
    private static readonly (BlendComponent Component, double Share)[] Shares = [.. FallFour.Parts.Select(p => (p.Component, p.ShareOfFullStand.Chosen))];
    private static readonly Area Plot = Area.FromAcres(0.6);

    [Fact]
    public void A_blend_of_four_without_text_allocates_little() =>
        Assert.InRange(Allocations.BytesOf(() => Blend.FromSharesOfFullStand(Shares)), 1, 1_300);

    [Fact]
    public void The_reports_on_a_blend_without_text_allocate_little()
    {
        Assert.InRange(Allocations.BytesOf(() => CrowdingReport.For(FallFour)), 1, 1_000);
        Assert.InRange(Allocations.BytesOf(() => SeasonCoverage.For(FallFour)), 1, 1_100);
        Assert.InRange(Allocations.BytesOf(() => BatchSpread.For(FallFour, BulkSeedMass.FromPounds(0.25))), 1, 550);
        Assert.InRange(Allocations.BytesOf(() => Diversity.For(FallFour, BlendMeasure.Stand)), 1, 160);
        Assert.InRange(Allocations.BytesOf(() => BagOrder.For(FallFour, Plot)), 1, 3_000);
    }

    [Fact]
    public void A_fit_without_text_allocates_little()
    {
        var batch = FallFour.WeighFor(Plot);
        Assert.InRange(Allocations.BytesOf(() => BlendFit.For(batch)), 1, 6_000);
    }
}
