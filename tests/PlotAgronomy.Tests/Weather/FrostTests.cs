using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Tests.Weather;

public class FrostTests
{
    private static readonly Temperature Freeze = Temperature.FromDegreesFahrenheit(32);

    private static FrostDates Albany => FrostDates.FromQuantiles(Freeze, new(2026, 10, 3), new(2026, 10, 15), new(2026, 11, 1));

    [Fact]
    public void Few_years_are_said_and_years_without_a_freeze_counted()
    {
        var hard = FrostDates.FromHistory(WeatherFiles.NewYork, Temperature.FromDegreesCelsius(-2.2)).Value;
        Assert.Equal(4, hard.Years);
        Assert.Equal(3, hard.Observed.Length);
        Assert.Equal(["weather-few-years", "weather-years-without-freeze"], hard.Findings.Select(f => f.Code));
        Assert.Null(hard.DateWith(Fraction.FromPercent(80), 2026));
        Assert.NotNull(hard.DateWith(Fraction.FromPercent(50), 2026));
        Assert.InRange(hard.ChanceBy(new(2026, 12, 31)).Value, 0.6, 0.75);
        Assert.Empty(Albany.Findings);
    }

    [Fact]
    public void A_threshold_that_hardly_ever_came_is_asked_about() =>
        Assert.Equal("weather-ask-freeze", FrostDates.FromHistory(WeatherFiles.NewYork, Temperature.FromDegreesCelsius(-40)).Questions.Single().Code);

    /// <summary>More than ten days missing before the freeze drop the autumn; ten do not.</summary>
    [Theory]
    [InlineData(10, 4)]
    [InlineData(11, 3)]
    public void An_autumn_with_many_days_missing_is_left_out(int missing, int years)
    {
        var days = WeatherFiles.NewYork.Days.Where(d => d.Date < new DateOnly(2013, 9, 1) || d.Date >= new DateOnly(2013, 9, 1).AddDays(missing)).ToList();
        Assert.Equal(years, FrostDates.FromHistory(WeatherHistory.FromDays(days), Temperature.FromDegreesCelsius(0)).Value.Years);
    }

    /// <summary>A date after the end of the year is no date of that autumn.</summary>
    [Fact]
    public void A_freeze_that_may_come_after_the_year_has_no_date()
    {
        var late = FrostDates.FromQuantiles(Freeze, new(2026, 12, 1), new(2026, 12, 20), new(2026, 12, 31));
        Assert.Equal(new DateOnly(2026, 12, 31), late.DateWith(Fraction.FromPercent(90), 2026));
        Assert.Null(late.DateWith(Fraction.FromPercent(95), 2026));
        Assert.Empty(LatestSowing.Of(KindCatalog.Standard.Find("kale"), late, Fraction.FromPercent(95), 2026));
    }

    [Fact]
    public void Freezes_all_on_one_date_tell_no_spread_and_are_asked_about()
    {
        WeatherDay Day(int year, int at) => new() { Date = new DateOnly(year, 7, 24).AddDays(at), Low = Temperature.FromDegreesCelsius(at < 100 ? 5 : -5) };
        var history = WeatherHistory.FromDays([.. from year in Enumerable.Range(2022, 3) from at in Enumerable.Range(0, 161) select Day(year, at)]);
        Assert.Equal(AnswerState.Open, FrostDates.FromHistory(history, Freeze).State);
    }

    [Fact]
    public void A_count_back_may_end_in_the_year_before()
    {
        var spring = FrostDates.FromQuantiles(Freeze, new(2026, 1, 10), new(2026, 1, 20), new(2026, 2, 10));
        Assert.Equal(new DateOnly(2025, 11, 21), LatestSowing.Of(KindCatalog.Standard.Find("kale"), spring, Fraction.FromPercent(50), 2026).Single(s => s.Use == "best quality").Safe);
    }

    [Property]
    public bool A_later_date_is_never_less_likely_to_have_seen_frost(byte one, byte other)
    {
        var early = new DateOnly(2026, 8, 1).AddDays(Math.Min(one, other) % 150);
        var late = new DateOnly(2026, 8, 1).AddDays(Math.Max(one, other) % 150);
        return early > late || Albany.ChanceBy(early) <= Albany.ChanceBy(late);
    }

    [Fact]
    public void Printed_quantiles_come_back_as_printed()
    {
        Assert.Equal(new DateOnly(2026, 10, 3), Albany.DateWith(Fraction.FromPercent(10), 2026));
        Assert.Equal(new DateOnly(2028, 10, 15), Albany.DateWith(Fraction.FromPercent(50), 2028));
        Assert.Equal(new DateOnly(2026, 11, 1), Albany.DateWith(Fraction.FromPercent(90), 2026));
        Assert.Throws<ArgumentException>(() => FrostDates.FromQuantiles(Freeze, new(2026, 10, 15), new(2026, 10, 3), new(2026, 11, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Albany.DateWith(Fraction.Zero, 2026));
        Assert.Equal(2, Albany.ShowWork().Length);
    }

    [Fact]
    public void The_count_back_spares_days_and_shows_its_sum()
    {
        var turnip = KindCatalog.Standard.Find("forage-turnip");
        var quality = LatestSowing.Of(turnip, Albany, Fraction.FromPercent(50), 2026, 7).Single(s => s.Use == "best quality");
        Assert.Equal(new DateOnly(2026, 8, 9), quality.Safe);
        Assert.Equal(quality.Safe, quality.Latest);
        Assert.Contains("288 - 60 - 7 = day 221 of the year, 2026-08-09", quality.ShowWork()[0].ToString(), StringComparison.Ordinal);
        var cover = LatestSowing.Of(KindCatalog.Standard.Find("cereal-rye"), Albany, Fraction.FromPercent(50), 2026).Single();
        Assert.True(cover.Safe < cover.Latest);
        Assert.Throws<ArgumentOutOfRangeException>(() => LatestSowing.Of(turnip, Albany, Fraction.FromPercent(50), 2026, -1));
    }

    /// <summary>With a chance that no normals print the date falls within a day: that is the day of the frost, not the next.</summary>
    [Theory, InlineData(20), InlineData(30), InlineData(70)]
    public void The_frost_counted_back_from_is_the_date_of_that_chance(double percent)
    {
        var chance = Fraction.FromPercent(percent);
        var latest = LatestSowing.Of(KindCatalog.Standard.Find("forage-turnip"), Albany, chance, 2026)[0];
        Assert.Equal(Albany.DateWith(chance, 2026), latest.Frost);
        Assert.Equal(latest.Frost.AddDays(-60), latest.Latest);
    }

    [Fact]
    public void Cold_limits_of_several_publications_stand_side_by_side()
    {
        var kale = ColdLimit.Of(KindCatalog.Standard.Find("kale"));
        Assert.Equal(3, kale.Length);
        Assert.Equal(3, kale.Select(l => l.Origin.Sources[0].Id).Distinct().Count());
        Assert.Equal(17, kale.Single(l => l.Words == "killed").Milder.DegreesFahrenheit, 0);
        Assert.Empty(ColdLimit.Of(KindCatalog.Standard.Find("switchgrass")));
        var turnip = KindCatalog.Standard.Find("forage-turnip");
        Assert.Equal(ColdLimit.Of(turnip), LatestSowing.Of(turnip, Albany, Fraction.FromPercent(50), 2026)[0].HarmedBy);
    }

    [Property]
    public bool The_methods_agree_where_the_low_is_above_the_base(byte low, byte range)
    {
        double cold = 5 + (low % 20), high = cold + (range % 15);
        return Math.Abs(DegreeDayMath.Simple(high, cold, 5) - DegreeDayMath.Clipped(high, cold, 5, double.PositiveInfinity)) < 1e-9
            && Math.Abs(DegreeDayMath.Simple(high, cold, 5) - DegreeDayMath.SingleSine(high, cold, 5)) < 1e-9;
    }

    [Property]
    public bool The_simple_average_is_the_smallest_of_the_three(sbyte low, byte range)
    {
        double cold = low / 4.0, high = cold + 0.1 + (range / 8.0);
        double simple = DegreeDayMath.Simple(high, cold, 4);
        return simple <= DegreeDayMath.SingleSine(high, cold, 4) + 1e-9 && DegreeDayMath.SingleSine(high, cold, 4) <= DegreeDayMath.Clipped(high, cold, 4, double.PositiveInfinity) + 1e-9;
    }

    [Fact]
    public void Degree_days_show_each_day_by_the_method_and_branch_it_used()
    {
        WeatherDay Day(int at, double high, double low) => new() { Date = new DateOnly(2026, 5, 1).AddDays(at), High = Temperature.FromDegreesCelsius(high), Low = Temperature.FromDegreesCelsius(low) };
        WeatherDay[] days = [Day(0, 14, 7), Day(1, 30, 20), Day(2, 8, 2), Day(3, 40, 20)];
        string Work(DegreeDayMethod method) => string.Join('\n', DegreeDays.Of(days, Temperature.FromDegreesCelsius(12), method, Temperature.FromDegreesCelsius(33)).Value.ShowWork());
        Assert.Contains("half pi", Work(DegreeDayMethod.SingleSine), StringComparison.Ordinal);
        Assert.Contains("cut level", Work(DegreeDayMethod.SingleSine), StringComparison.Ordinal);
        Assert.Contains("min(max(40, 12), 33)", Work(DegreeDayMethod.Clipped), StringComparison.Ordinal);
        Assert.Contains("max((8 + 2) / 2 - 12, 0) = 0", Work(DegreeDayMethod.SimpleAverage), StringComparison.Ordinal);
        Assert.Equal("weather-ask-temperatures", DegreeDays.Of([new() { Date = new(2026, 5, 1) }], Temperature.FromDegreesCelsius(12), DegreeDayMethod.Clipped).Questions.Single().Code);
    }
}
