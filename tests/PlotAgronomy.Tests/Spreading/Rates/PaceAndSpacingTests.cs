using PlotAgronomy.Spreading;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

/// <summary>What a pace is, and what another pace or spacing does to a rate; sums by hand with 88 ft/min to a mph.</summary>
public class PaceAndSpacingTests
{
    private static readonly ApplicationRate Eight = ApplicationRate.FromPoundsPerAcre(8);
    private static readonly Speed Walk = Speed.FromMilesPerHour(3);

    private static Length Feet(double feet) => Length.FromFeet(feet);

    private static string? Refused(Action call) => Assert.Throws<ArgumentOutOfRangeException>(call).ParamName;

    [Fact]
    public void A_pace_is_the_distance_over_the_time_and_its_error_goes_with_the_clock_s()
    {
        // 88 ft in 20 s are 264 ft/min: 3 mph; a second more or less is a twentieth.
        Assert.Equal(3, WalkingPace.Over(Feet(88), TimeSpan.FromSeconds(20)).MilesPerHour, 1e-12);
        Assert.Equal(
            0.15,
            WalkingPace.ErrorOver(Feet(88), TimeSpan.FromSeconds(20), TimeSpan.FromSeconds(1)).MilesPerHour,
            1e-12
        );
        Assert.Equal(0, WalkingPace.ErrorOver(Feet(88), TimeSpan.FromSeconds(20), TimeSpan.Zero).MilesPerHour);
        // 3 mph x 16.5 ft / 495 is a tenth of an acre a minute; 80 % of six an hour.
        Assert.Equal(4.8, WalkingPace.AreaRate(Walk, Feet(16.5), Fraction.FromPercent(80)).Acres, 1e-9);
    }

    [Fact]
    public void A_pace_needs_ground_and_time()
    {
        Assert.Equal("distance", Refused(() => WalkingPace.Over(Feet(0), TimeSpan.FromSeconds(20))));
        Assert.Equal("time", Refused(() => WalkingPace.Over(Feet(88), TimeSpan.Zero)));
        Assert.Equal(
            "timeError",
            Refused(() => WalkingPace.ErrorOver(Feet(88), TimeSpan.FromSeconds(20), TimeSpan.FromSeconds(-1)))
        );
        Assert.Equal("distance", Refused(() => WalkingPace.TimeFor(Feet(0), Walk)));
        Assert.Equal("speed", Refused(() => WalkingPace.TimeFor(Feet(88), Speed.Zero)));
        Assert.Equal("speed", Refused(() => WalkingPace.AreaRate(Speed.Zero, Feet(15), Fraction.One)));
        Assert.Equal("swath", Refused(() => WalkingPace.AreaRate(Walk, Feet(0), Fraction.One)));
        Assert.Equal("pace", Refused(() => WalkingPace.Check(Speed.FromMilesPerHour(-1))));
        Assert.Equal("swath", Refused(() => WalkingPace.Check(Walk, Feet(-1))));
    }

    [Theory]
    [InlineData(100_000, true)]
    [InlineData(100_001, false)]
    public void A_walk_ends_within_its_longest_time(double hours, bool ends)
    {
        // At 1 mph an hour is 5,280 ft.
        Assert.Equal(ends, WalkingPace.Ends(Feet(5280 * hours), Speed.FromMilesPerHour(1)));
        if (ends)
        {
            Assert.Equal(hours, WalkingPace.TimeFor(Feet(5280 * hours), Speed.FromMilesPerHour(1)).TotalHours, 1e-6);
        }
        else
        {
            Assert.Equal("speed", Refused(() => WalkingPace.TimeFor(Feet(5280 * hours), Speed.FromMilesPerHour(1))));
        }
    }

    [Fact]
    public void Another_spacing_and_another_pace_are_laid_out()
    {
        // 8 x 15 / 12 = 10 lb/ac, a quarter more, on four fifths of the plot; 8 x 3 / 4 = 6 lb/ac, a quarter less.
        var close = ChangedRate.AtSpacing(Eight, Feet(15), Feet(12));
        Assert.Equal("8 x 15 / 12 = 10 lb/ac", Assert.Single(close.ShowWork()).Numbers);
        Assert.Equal(25, close.ChangePercent, 1e-9);
        Assert.Equal(0.8, close.CoveredShare, 1e-9);
        var fast = ChangedRate.AtSpeed(Eight, Walk, Speed.FromMilesPerHour(4));
        Assert.Equal("8 x 3 / 4 = 6 lb/ac", Assert.Single(fast.ShowWork()).Numbers);
        Assert.Equal(-25, fast.ChangePercent, 1e-9);
        Assert.Equal(1, fast.CoveredShare);
        Assert.Contains("3 mph", Assert.Single(fast.Findings).Text, StringComparison.Ordinal);
        Assert.Contains("-25 %", Assert.Single(fast.Findings).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_change_is_one_of_something_to_something()
    {
        Assert.Equal("rate", Refused(() => ChangedRate.AtSpacing(ApplicationRate.Zero, Feet(15), Feet(12))));
        Assert.Equal("calibratedSwath", Refused(() => ChangedRate.AtSpacing(Eight, Feet(0), Feet(12))));
        Assert.Equal("passSpacing", Refused(() => ChangedRate.AtSpacing(Eight, Feet(15), Feet(0))));
        Assert.Equal("rate", Refused(() => ChangedRate.AtSpeed(ApplicationRate.Zero, Walk, Walk)));
        Assert.Equal("plannedSpeed", Refused(() => ChangedRate.AtSpeed(Eight, Speed.Zero, Walk)));
        Assert.Equal("actualSpeed", Refused(() => ChangedRate.AtSpeed(Eight, Walk, Speed.Zero)));
    }
}
