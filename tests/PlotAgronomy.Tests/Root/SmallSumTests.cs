using PlotAgronomy.Seeds;
using PlotAgronomy.Spreading;
using UnitsNet;

namespace PlotAgronomy.Tests.Root;

/// <summary>Small sums people look for; each by hand beside it.</summary>
public class SmallSumTests
{
    [Fact]
    public void Bushels_an_acre_are_pounds()
    {
        // 2 bu/ac of oats at 32 lb/bu.
        var rate = ApplicationRate.FromBushelsPerAcre(2, GateDensity(32));
        Assert.Equal(64, rate.PoundsPerAcre, 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => ApplicationRate.FromBushelsPerAcre(-1, GateDensity(32)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ApplicationRate.FromBushelsPerAcre(1, Density.Zero));
    }

    [Fact]
    public void A_wheel_rolls_pi_times_its_diameter_in_a_turn_and_rows_are_area_over_spacing()
    {
        Assert.Equal(2 * Math.PI, MeasuredRate.FeetPerWheelTurn(Length.FromInches(24)).Feet, 1e-9);
        // 43,560 ft2 in rows of 1.5 ft.
        Assert.Equal(29_040, MeasuredRate.RowLengthOn(Area.FromAcres(1), Length.FromInches(18)).Feet, 1e-6);
    }

    /// <summary>By hand: 6 bags of 50 lb on three quarters of an acre are 400 lb/ac; no bag is a rate of zero.</summary>
    [Fact]
    public void Six_bags_on_a_plot_are_a_rate()
    {
        var bag = Package.FromWeight(Mass.FromPounds(50));
        Assert.Equal(400, bag.RateOf(6, Area.FromAcres(0.75)).PoundsPerAcre, 1e-9);
        Assert.Equal(6, bag.CountFor(bag.RateOf(6, Area.FromAcres(0.75)).Over(Area.FromAcres(0.75))));
        Assert.Equal(0, bag.RateOf(0, Area.FromAcres(1)).PoundsPerAcre);
        Assert.Throws<ArgumentOutOfRangeException>(() => bag.RateOf(-1, Area.FromAcres(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => bag.RateOf(double.NaN, Area.FromAcres(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => bag.RateOf(1, Area.Zero));
    }

    [Fact]
    public void A_broadcast_rate_goes_back_to_the_drilled_one()
    {
        // 1.25 times 8 lb is 10 lb, covered and rolled.
        var drilled = BroadcastFactor.DrilledFrom(PureLiveSeedRate.BroadcastPoundsPerAcre(10), SeedbedCover.CoveredAndRolled);
        Assert.Equal(SowingMethod.Drilled, drilled.Method);
        Assert.Equal(8, drilled.PoundsPerAcre, 1e-9);
        Assert.Throws<ArgumentException>(() => BroadcastFactor.DrilledFrom(drilled, SeedbedCover.CoveredAndRolled));
    }

    [Theory]
    [InlineData(12, 0)]
    [InlineData(12.1, 1)]
    [InlineData(36, 2)]
    [InlineData(37, 3)]
    public void Refills_follow_from_a_weight(double pounds, int refills) =>
        Assert.Equal(refills, MeasuredBucket.Weighed(Mass.FromPounds(12)).RefillsFor(Mass.FromPounds(pounds)));

    [Theory]
    [InlineData("12 ft 6 in", 12.5)]
    [InlineData("0 ft 7.5 in", 0.625)]
    [InlineData("140 feet 0 inches", 140)]
    public void Feet_and_inches_are_read(string text, double feet)
    {
        Assert.True(Amounts.TryReadLength(text, out var length, out string problem), problem);
        Assert.Equal(feet, length.Feet, 1e-12);
    }

    [Theory]
    [InlineData("12 ft 13 in")]
    [InlineData("12.5 ft 6 in")]
    [InlineData("-1 ft 6 in")]
    [InlineData("12 ft 6")]
    public void What_is_no_tape_reading_is_refused(string text) => Assert.False(Amounts.TryReadLength(text, out _, out _));

    [Theory]
    [InlineData(12.5, 0, "12 ft 6 in")]
    [InlineData(11.999, 0, "12 ft 0 in")]
    [InlineData(4.27, 2, "4 ft 3.24 in")]
    public void A_length_is_printed_as_a_tape_shows_it(double feet, int decimals, string text) =>
        Assert.Equal(text, Amounts.PrintFeetAndInches(Length.FromFeet(feet), decimals));

    [Fact]
    public void Amounts_print_every_digit_of_any_size_and_refuse_odd_decimals()
    {
        Assert.Equal("100000000000000000000000000000 lb", Amounts.Print(Mass.FromPounds(1e29)));
        Assert.True(Amounts.TryReadMass(Amounts.Print(Mass.FromPounds(1e-14)), out var small, out _));
        Assert.Equal(1e-14, small.Pounds, 1e-29);
        Assert.Throws<ArgumentOutOfRangeException>(() => Amounts.Print(1.5, int.MaxValue));
        Assert.Throws<ArgumentOutOfRangeException>(() => Amounts.Print(Mass.FromPounds(1), "lb", -1));
    }

    [Fact]
    public void Products_stay_finite()
    {
        var rate = ApplicationRate.FromPoundsPerAcre(10);
        Assert.Throws<ArgumentOutOfRangeException>(() => rate * 1e308);
        Assert.Throws<ArgumentOutOfRangeException>(() => ApplicationRate.FromPoundsPerAcre(1.7e308) + ApplicationRate.FromPoundsPerAcre(1.7e308));
        Assert.Throws<ArgumentOutOfRangeException>(() => ApplicationRate.FromShortTonsPerAcre(1.7e308));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlotAgronomy.Land.StepCount.FromDoublePaces(1.7e308));
        Assert.Throws<ArgumentOutOfRangeException>(() => Package.RoundUp(Mass.FromPounds(1e20), Mass.FromPounds(1)));
    }

    private static Density GateDensity(double poundsPerBushel) => Density.FromPoundsPerCubicFoot(poundsPerBushel / (2150.42 / 1728));
}
