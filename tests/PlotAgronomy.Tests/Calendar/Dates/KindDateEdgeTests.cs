using PlotAgronomy.Calendar;
using PlotAgronomy.Seeds;
using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Tests.Calendar;

/// <summary>Red clover in the central states (KIND-UKY-RED): 1 February to 15 April, and 1 August to 15 September.</summary>
public class KindDateEdgeTests
{
    private static readonly FrostDates Frost = FrostDates.FromQuantiles(
        Temperature.FromDegreesFahrenheit(32),
        new(2026, 10, 3),
        new(2026, 10, 15),
        new(2026, 11, 1)
    );

    private static CropKind Clover => KindCatalog.Standard.Find("medium-red-clover");

    private static PlantingRegion Central => PlantingRegion.Find("central");

    private static KindDates On(int month, int day, FrostDates? frost = null) =>
        KindDates.Of(Clover, new(2026, month, day), Central, frost);

    [Theory]
    [InlineData(1, 31, false)]
    [InlineData(2, 1, true)]
    [InlineData(4, 15, true)]
    [InlineData(4, 16, false)]
    [InlineData(7, 31, false)]
    [InlineData(8, 1, true)]
    [InlineData(9, 15, true)]
    [InlineData(9, 16, false)]
    public void Both_ends_of_a_printed_window_belong_to_it(int month, int day, bool isInSeason)
    {
        Assert.Equal(isInSeason, On(month, day).IsInSeason);
        Assert.Equal(isInSeason, On(month, day).LastPrinted is not null);
    }

    [Theory]
    [InlineData(3, 1, 4, 15)]
    [InlineData(8, 20, 9, 15)]
    public void The_last_day_is_that_of_the_window_that_is_open(int month, int day, int lastMonth, int lastDay) =>
        Assert.Equal(new DateOnly(2026, lastMonth, lastDay), On(month, day, Frost).LastSensible);

    [Theory]
    [InlineData(1, 15, 2026, 2, 1)]
    [InlineData(2, 1, 2026, 8, 1)]
    [InlineData(5, 1, 2026, 8, 1)]
    [InlineData(10, 1, 2027, 2, 1)]
    public void A_window_opens_again_this_year_or_the_next(int month, int day, int year, int opensMonth, int opensDay) =>
        Assert.Equal(new DateOnly(year, opensMonth, opensDay), On(month, day).OpensAgain);

    [Fact]
    public void Without_a_region_nothing_is_in_or_out_of_season()
    {
        var anywhere = KindDates.Of(Clover, new(2026, 12, 10));
        Assert.Null(anywhere.IsInSeason);
        Assert.Null(anywhere.LastPrinted);
        Assert.Null(anywhere.OpensAgain);
        Assert.Null(anywhere.EarlyFrost);
        Assert.Null(anywhere.DaysToEarlyFrost);
        Assert.Empty(anywhere.BeforeMiddleFrost);
        Assert.Equal("kind", Assert.Throws<ArgumentNullException>(() => KindDates.Of(null!, new(2026, 12, 10))).ParamName);
    }

    [Fact]
    public void Frost_is_counted_in_days_from_the_sowing()
    {
        var dates = On(9, 3, Frost);
        Assert.Equal(new DateOnly(2026, 10, 3), dates.EarlyFrost);
        Assert.Equal(new DateOnly(2026, 10, 15), dates.MiddleFrost);
        Assert.Equal(30, dates.DaysToEarlyFrost);
        Assert.Equal(-7, On(10, 10, Frost).DaysToEarlyFrost);
    }

    [Fact]
    public void Forage_is_counted_on_from_the_sowing_and_back_from_the_frost()
    {
        var oats = KindCatalog.Standard.Find("spring-oats") with
        {
            UsableForage = new DayRange { From = 30, To = 45, Evidence = Origin.FromUser("the case") },
        };
        var dates = KindDates.Of(oats, new(2026, 8, 1), null, Frost);
        Assert.Equal((new DateOnly(2026, 8, 31), new DateOnly(2026, 9, 15)), (dates.ForageFrom!.Value, dates.ForageBy!.Value));
        Assert.Equal(new DateOnly(2026, 9, 3), dates.LastBeforeFrost);
        Assert.Equal(new DateOnly(2026, 9, 15), dates.LastForForage(Fraction.FromPercent(50)));
        Assert.Equal(new DateOnly(2026, 8, 31), dates.SafeForForage(Fraction.FromPercent(50)));
        var without = KindDates.Of(oats with { UsableForage = null }, new(2026, 8, 1), null, Frost);
        Assert.Null(without.ForageFrom);
        Assert.Null(without.LastForForage(Fraction.FromPercent(50)));
        Assert.Null(KindDates.Of(oats, new(2026, 8, 1)).LastForForage(Fraction.FromPercent(50)));
    }

    [Theory]
    [InlineData(4, 14, 4, 15, false)]
    [InlineData(4, 15, 4, 16, true)]
    [InlineData(4, 15, 4, 15, false)]
    public void A_kind_drops_out_after_its_last_day(int month, int day, int toMonth, int toDay, bool drops)
    {
        var dates = SowingDates.Of([Clover], new(2026, month, day), Central);
        Assert.Equal(drops, dates.DroppingOut(new(2026, month, day), new(2026, toMonth, toDay)).Any());
        Assert.Empty(dates.DroppingOut(new(2026, 4, 16), new(2026, 4, 20)));
    }

    [Fact]
    public void All_kinds_are_sown_between_the_latest_first_and_the_earliest_last_day()
    {
        var dates = SowingDates.Of([Clover], new(2026, 3, 1), Central);
        Assert.Equal((new DateOnly(2026, 2, 1), new DateOnly(2026, 4, 15)), (dates.From!.Value, dates.To!.Value));
        Assert.Empty(dates.OutOfSeason);
        Assert.Single(SowingDates.Of([Clover], new(2026, 5, 1), Central).OutOfSeason);
        Assert.ThrowsAny<ArgumentException>(() => SowingDates.Of([], new(2026, 3, 1)));
    }
}
