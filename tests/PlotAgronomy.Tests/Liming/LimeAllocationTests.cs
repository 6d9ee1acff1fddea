using PlotAgronomy.Liming;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using UnitsNet;
using static PlotAgronomy.Tests.Liming.LimeSamples;

namespace PlotAgronomy.Tests.Liming;

/// <summary>A call that asks for no text makes none: what it allocates stays below a ceiling.</summary>
public class LimeAllocationTests
{
    private static readonly LimeRate OregonRate = Rate(2, targetPh: 6.4);

    private static readonly LimingMaterial Pellets = LimingMaterial.FromLabel("pellets", LimingForm.Pelletized, LimeFigure.FromPercent(LimeIndex.OregonScore, 92));

    [Theory]
    [InlineData("north-carolina-mehlich", SoilBuffer.Mehlich, 6.0)]
    [InlineData("oregon-2025-sikora", SoilBuffer.Sikora, 6.4)]
    [InlineData("iowa-pm1688-table", SoilBuffer.Smp, 6.5)]
    public void A_lime_call_without_text_allocates_little(string methodId, SoilBuffer buffer, double targetPh)
    {
        var method = LimeMethod.Find(methodId);
        var report = Report(5.3, buffer, 6.2);
        Assert.True(method.NeedFor(report, targetPh).Rate!.OfBasis.PoundsPerAcre > 0);
        AssertAtMost(330, () => method.NeedFor(report, targetPh).Rate);
    }

    [Fact]
    public void An_order_of_lime_without_text_allocates_little()
    {
        var request = new LimeOrderRequest { Rate = OregonRate, Material = Pellets, Area = Area.FromAcres(0.6), Package = Package.FromWeight(Mass.FromPounds(40)), Price = 5 };
        AssertAtMost(520, () => LimeOrder.For(request));
    }

    [Fact]
    public void A_target_without_text_allocates_little()
    {
        var kind = KindCatalog.Standard.Find("alfalfa");
        AssertAtMost(240, () => LimeTarget.For(kind, Institution.Find("pennsylvania")));
    }

    [Fact]
    public void A_printed_rate_without_text_allocates_little() =>
        AssertAtMost(230, () => PrintedLimeRate.Read(OregonRate.OfBasis, 6.4, Length.FromInches(6), LimeBasis.Find("oregon-score-100"), OregonRate.Institution));

    private static void AssertAtMost(long bytesACall, Func<object?> call)
    {
        Assert.NotNull(call());
        Assert.InRange(Allocations.BytesOf(call), 1, bytesACall);
    }
}
