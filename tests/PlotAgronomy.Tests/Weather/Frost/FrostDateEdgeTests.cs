using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Tests.Weather;

/// <summary>First freezes counted, spread and turned into dates; a normal curve has a tenth beyond 1.2816 deviations.</summary>
public class FrostDateEdgeTests
{
    private static readonly Temperature Freeze = Temperature.FromDegreesCelsius(0);

    /// <summary>Autumns from 24 July on, each with its first freeze so many days after 24 July; none for null.</summary>
    private static WeatherHistory Autumns(params int?[] freezes) => WeatherHistory.FromDays(
    [
        .. from year in Enumerable.Range(0, freezes.Length)
           from at in Enumerable.Range(-20, 181)
           select new WeatherDay
           {
               Date = new DateOnly(2001 + year, 7, 24).AddDays(at),
               Low = Temperature.FromDegreesCelsius(at == -10 || (freezes[year] is { } first && at >= first) ? -1 : 5),
           },
    ]);

    [Fact]
    public void A_freeze_before_the_autumn_is_none_of_it()
    {
        var dates = FrostDates.FromHistory(Autumns(80, 90, 100), Freeze).Value;
        Assert.Equal(3, dates.Years);
        Assert.Equal([new DateOnly(2001, 10, 12), new DateOnly(2002, 10, 22), new DateOnly(2003, 11, 1)], dates.Observed);
        // 205 is 24 July: mean 295, deviations of -10, 0 and 10 over two degrees of freedom.
        Assert.Equal(295, dates.Mean, 1e-9);
        Assert.Equal(10, dates.Spread, 1e-9);
        Assert.Equal("295 + -1.2816 x 10 = day 282.2 of the year", Assert.Single(dates.ShowWork()).Numbers);
    }

    [Fact]
    public void A_low_just_at_the_threshold_is_a_freeze()
    {
        var history = Autumns(80, 90, 100);
        Assert.Equal(3, FrostDates.FromHistory(history, Temperature.FromDegreesCelsius(-1)).Value.Observed.Length);
        Assert.Equal(AnswerState.Open, FrostDates.FromHistory(history, Temperature.FromDegreesCelsius(-1.1)).State);
    }

    [Fact]
    public void Years_without_a_freeze_leave_the_late_chances_without_a_date()
    {
        var dates = FrostDates.FromHistory(Autumns(80, 90, null, null), Freeze).Value;
        Assert.Equal(0.5, dates.YearsWithout, 1e-12);
        Assert.Equal(
            "2",
            dates.Findings.Single(f => f.Code == "weather-years-without-freeze").Values.Single(v => v.Name == "count").Text
        );
        Assert.NotNull(dates.DateWith(Fraction.FromPercent(40), 2026));
        Assert.Null(dates.DateWith(Fraction.FromPercent(50), 2026));
        // Half of the years, and half of those by the mean.
        Assert.Equal(0.25, dates.ChanceBy(new(2026, 10, 17)).Value, 1e-9);
    }

    [Theory]
    [InlineData(29, true)]
    [InlineData(30, false)]
    public void Thirty_years_are_enough(int years, bool isSaid)
    {
        var history = Autumns([.. Enumerable.Range(0, years).Select(i => (int?)(80 + (i % 5)))]);
        var dates = FrostDates.FromHistory(history, Freeze).Value;
        Assert.Equal(isSaid, dates.Findings.Any(f => f.Code == "weather-few-years"));
    }

    [Fact]
    public void Printed_tails_have_the_spread_that_the_normal_curve_gives_them()
    {
        var printed = FrostDates.FromQuantiles(Freeze, new(2026, 10, 3), new(2026, 10, 15), new(2026, 11, 1));
        // 29 days between the tenths: 29 / (2 x 1.2816).
        Assert.Equal(29 / (2 * 1.2815515655446004), printed.Spread, 1e-9);
        Assert.Equal("(305 - 276) / 2.5631 = 11.3 days", printed.ShowWork()[0].Numbers);
        Assert.Equal(288, printed.Mean);
        Assert.Equal(0.5, printed.ChanceBy(new(2026, 10, 15)).Value, 1e-9);
        Assert.Equal(["WX-GCMD"], printed.Sources.Select(s => s.Id).Where(id => id.StartsWith("WX", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_chance_is_neither_none_nor_all_and_a_year_is_one_of_weather_stations()
    {
        var printed = FrostDates.FromQuantiles(Freeze, new(2026, 10, 3), new(2026, 10, 15), new(2026, 11, 1));
        Assert.Equal("chance", Assert.Throws<ArgumentOutOfRangeException>(() => printed.DateWith(Fraction.One, 2026)).ParamName);
        Assert.Equal(
            "year",
            Assert.Throws<ArgumentOutOfRangeException>(() => printed.DateWith(Fraction.FromPercent(50), 1749)).ParamName
        );
        Assert.Equal(
            "year",
            Assert.Throws<ArgumentOutOfRangeException>(() => printed.DateWith(Fraction.FromPercent(50), 2201)).ParamName
        );
        DateOnly early = new(2026, 10, 3), late = new(2026, 11, 1);
        foreach (var middle in new[] { early, late })
        {
            var refused = Assert.Throws<ArgumentException>(() => FrostDates.FromQuantiles(Freeze, early, middle, late));
            Assert.Equal("middle", refused.ParamName);
        }
    }

    [Theory]
    [InlineData(2024, 1, 1, 1)]
    [InlineData(2024, 2, 28, 59)]
    [InlineData(2024, 2, 29, 59)]
    [InlineData(2024, 3, 1, 60)]
    [InlineData(2023, 3, 1, 60)]
    [InlineData(2024, 12, 31, 365)]
    public void A_date_has_the_same_number_every_year(int year, int month, int day, int number)
    {
        Assert.Equal(number, YearDay.Of(new DateOnly(year, month, day)));
        if (day != 29)
        {
            Assert.Equal(new DateOnly(year, month, day), YearDay.In(year, number));
        }
    }

    [Fact]
    public void The_buffer_of_a_sowing_is_a_part_of_a_year()
    {
        var printed = FrostDates.FromQuantiles(Freeze, new(2026, 10, 3), new(2026, 10, 15), new(2026, 11, 1));
        var kale = KindCatalog.Standard.Find("kale");
        Assert.NotEmpty(LatestSowing.Of(kale, printed, Fraction.FromPercent(50), 2026, 365));
        var half = Fraction.FromPercent(50);
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() => LatestSowing.Of(kale, printed, half, 2026, 366));
        Assert.Equal("bufferDays", refused.ParamName);
        Assert.Equal(
            "chance",
            Assert.Throws<ArgumentOutOfRangeException>(() => LatestSowing.Of(kale, printed, Fraction.One, 2026)).ParamName
        );
        Assert.Equal(
            "kind",
            Assert.Throws<ArgumentNullException>(() => LatestSowing.Of(null!, printed, Fraction.FromPercent(50), 2026)).ParamName
        );
        Assert.Equal(
            "frost",
            Assert.Throws<ArgumentNullException>(() => LatestSowing.Of(kale, null!, Fraction.FromPercent(50), 2026)).ParamName
        );
        Assert.Equal("kind", Assert.Throws<ArgumentNullException>(() => ColdLimit.Of(null!)).ParamName);
        var plain = LatestSowing.Of(kale, printed, Fraction.FromPercent(50), 2026);
        var buffered = LatestSowing.Of(kale, printed, Fraction.FromPercent(50), 2026, 10);
        Assert.Equal(plain.Select(s => s.Safe.AddDays(-10)), buffered.Select(s => s.Safe));
        Assert.Equal(plain.Select(s => s.Latest.AddDays(-10)), buffered.Select(s => s.Latest));
    }
}
