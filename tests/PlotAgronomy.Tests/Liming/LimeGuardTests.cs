using PlotAgronomy.Liming;
using PlotAgronomy.Soil;
using UnitsNet;
using static PlotAgronomy.Tests.Liming.LimeSamples;

namespace PlotAgronomy.Tests.Liming;

/// <summary>Impossible input throws and names its limit.</summary>
public class LimeGuardTests
{
    private static readonly Mass Fifty = Mass.FromPounds(50);

    private static LimeOrder Order(Mass? bag = null, decimal? price = null, int? months = null, ApplicationRate? most = null) =>
        LimeOrder.For(new LimeOrderRequest { Rate = Rate(1, LimeBasis.Find("ohio-enp")), Material = LimingMaterial.PureCarbonate, Area = Area.FromAcres(1), Package = bag is { } weight ? Package.FromWeight(weight) : Package.BulkByTheTon, Price = price, MonthsBetween = months, MostAtOnce = most });

    [Fact]
    public void Order_terms_are_checked()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Order(bag: Mass.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => Order(bag: Mass.FromPounds(-1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Order(bag: Fifty, price: -0.01m));
        Assert.Throws<ArgumentOutOfRangeException>(() => Order(price: -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Order(months: 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Order(most: ApplicationRate.Zero));
        Assert.Equal(0m, Order(bag: Fifty, price: 0).Cost);
        Assert.Single(Order(months: 1).Dressings);
    }

    [Theory]
    [InlineData(-0.001)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Months_are_finite_and_not_negative(double months)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => EarlierLime.FromRate(ApplicationRate.Zero, months));
        Assert.Throws<ArgumentOutOfRangeException>(() => LimeReaction.After(LimingMaterial.PureCarbonate, months));
    }

    [Theory]
    [InlineData(0, false)]
    [InlineData(0.001, true)]
    [InlineData(1200, true)]
    [InlineData(1200.001, false)]
    [InlineData(double.NaN, false)]
    public void A_thirty_minute_capacity_has_limits(double value, bool allowed) => AssertAllowed(allowed, () => LimeBufferCapacity.FromThirtyMinutes(value));

    [Theory]
    [InlineData(0, false)]
    [InlineData(5000, true)]
    [InlineData(5000.001, false)]
    public void A_capacity_at_equilibrium_has_limits(double value, bool allowed) => AssertAllowed(allowed, () => LimeBufferCapacity.AtEquilibrium(value));

    [Theory]
    [InlineData(3.999, false)]
    [InlineData(4, true)]
    [InlineData(9, true)]
    [InlineData(9.001, false)]
    [InlineData(double.NegativeInfinity, false)]
    public void A_target_pH_has_limits(double target, bool allowed)
    {
        AssertAllowed(allowed, () => Rate(1, targetPh: target));
        AssertAllowed(allowed, () => LimeTrigger.Below(target, 0.2));
        AssertAllowed(allowed, () => LimeMethodComparison.For(Report(5), target, Length.FromInches(6)));
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(double.NaN)]
    public void A_margin_is_not_negative(double margin) => Assert.Throws<ArgumentOutOfRangeException>(() => LimeTrigger.Below(6.5, margin));

    [Fact]
    public void Plots_offers_and_applications_are_checked()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => LimePlotNeed.FromRate("1", Area.Zero, null));
        Assert.Throws<ArgumentException>(() => LimePlotNeed.FromRate(" ", Area.FromAcres(1), null));
        Assert.Throws<ArgumentException>(() => LimeByTest.Compare([], Rate(1), LimingMaterial.PureCarbonate));
        Assert.Throws<ArgumentOutOfRangeException>(() => Offer.InBulk(LimingMaterial.PureCarbonate, -0.01m));
        Assert.Throws<ArgumentOutOfRangeException>(() => Offer.InBags(LimingMaterial.PureCarbonate, Mass.Zero, 1));
        Assert.Throws<ArgumentException>(() => LimingMaterialComparison.For(Rate(1), Area.FromAcres(1), []));
        Assert.Throws<ArgumentOutOfRangeException>(() => LimeApplication.FromMass(Mass.FromPounds(-1), LimingMaterial.PureCarbonate));
        Assert.Throws<ArgumentOutOfRangeException>(() => LimeApplication.FromBags(-1, Fifty, LimingMaterial.PureCarbonate));
        Assert.Throws<ArgumentOutOfRangeException>(() => LimeBalance.For(Rate(1), Area.Zero, []));
        Assert.Throws<ArgumentOutOfRangeException>(() => LimeFigure.FromPoundsEqualToOneTon(0));
        Assert.Throws<ArgumentNullException>(() => LimeRate.FromBasis(ApplicationRate.Zero, 6.5, Length.FromInches(6), LimeBasis.Find("ohio-enp"), null!));
        Assert.Throws<KeyNotFoundException>(() => LimeIndex.Find("enp"));
        Assert.Throws<KeyNotFoundException>(() => LimingCompound.Find("chalk"));
    }

    [Theory]
    [InlineData(6.999, true)]
    [InlineData(7, false)]
    public void The_weakly_buffered_rule_ends_at_a_capacity_of_seven(double cec, bool allowed)
    {
        var sample = PlotSoil.For(Report(5.4, cec: cec));
        if (allowed)
        {
            Assert.NotNull(WeaklyBufferedLime.For(sample, 6.5));
        }
        else
        {
            Assert.Throws<ArgumentException>(() => WeaklyBufferedLime.For(sample, 6.5));
        }

        Assert.Throws<ArgumentException>(() => WeaklyBufferedLime.For(PlotSoil.For(Report(null, cec: 4)), 6.5));
        Assert.Throws<ArgumentException>(() => WeaklyBufferedLime.For(PlotSoil.For(Report(5.4)), 6.5));
    }

    [Fact]
    public void No_lime_on_weakly_buffered_soil_at_its_target()
    {
        var weak = WeaklyBufferedLime.For(PlotSoil.For(Report(6.6, cec: 4)), 6.5);
        Assert.Equal(0, weak.AdviceHigh.OfBasis.PoundsPerAcre);
        Assert.Equal(0, weak.FirstDressing.OfBasis.PoundsPerAcre);
    }

    [Fact]
    public void A_moisture_of_all_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LimingMaterial.FromAnalysis("water", LimingForm.Other, 90, moisture: Fraction.One));

    private static void AssertAllowed(bool allowed, Func<object> make)
    {
        if (allowed)
        {
            Assert.NotNull(make());
        }
        else
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => make());
        }
    }
}
