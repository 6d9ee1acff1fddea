using PlotAgronomy.Weather;

namespace PlotAgronomy.Tests.Weather;

public class WeatherHistoryTests
{
    [Fact]
    public void Both_layouts_of_a_station_and_the_table_tell_the_same_days()
    {
        var rows = WeatherHistory.ReadStation(WeatherFiles.Text("station-rows.csv"), "station-rows.csv");
        var month = WeatherHistory.ReadStation(WeatherFiles.MonthLine, "month.dly");
        foreach (var day in rows.Days)
        {
            var same = WeatherFiles.NewYork.Days.Single(d => d.Date == day.Date);
            Assert.Equal(same.Rain!.Value.Millimeters, day.Rain!.Value.Millimeters, 9);
            Assert.Equal(same.High!.Value.DegreesCelsius, day.High!.Value.DegreesCelsius, 9);
            Assert.Equal(same.Low!.Value.DegreesCelsius, day.Low!.Value.DegreesCelsius, 9);
            if (day.Date is { Year: 2013, Month: 11 })
            {
                Assert.Equal(day.Low!.Value.DegreesCelsius, month.Days.Single(d => d.Date == day.Date).Low!.Value.DegreesCelsius, 9);
            }
        }

        Assert.Equal(91, rows.Days.Length);
    }

    [Fact]
    public void A_value_that_failed_a_check_is_left_out_and_counted()
    {
        var history = WeatherHistory.ReadStation("S,20130901,PRCP,5,,,,\nS,20130901,TMAX,300,,X,,\nS,20130901,TMIN,-9999,,,,\n", "s");
        Assert.Null(history.Days[0].High);
        Assert.Null(history.Days[0].Low);
        Assert.Equal(["weather-flagged-dropped", "weather-days-incomplete"], history.Findings.Select(f => f.Code).OrderDescending());
        Assert.Empty(WeatherFiles.NewYork.Findings);
    }

    [Fact]
    public void Units_of_the_header_are_kept_to()
    {
        var day = WeatherHistory.ReadTable("date,rain_in,high_f,low_f,wind_mph\n2026-09-01,1,86,50,10\n", "f").Days.Single();
        Assert.Equal(25.4, day.Rain!.Value.Millimeters, 9);
        Assert.Equal(30, day.High!.Value.DegreesCelsius, 9);
        Assert.Equal(10, day.Low!.Value.DegreesCelsius, 9);
        Assert.Equal(4.4704, day.Wind!.Value.MetersPerSecond, 9);
    }

    /// <summary>The clock goes back on 1 November 2026: the day has 25 hours, and each is in one day.</summary>
    [Theory]
    [InlineData(2026, 11, 1, 25)]
    [InlineData(2026, 3, 8, 23)]
    [InlineData(2026, 7, 1, 24)]
    public void Hours_sum_to_days_and_none_is_lost_where_the_clock_changes(int year, int month, int day, int hours)
    {
        var slot = TimeSlot.OfDate(new(year, month, day), WeatherFiles.Eastern);
        var starts = Enumerable.Range(-24, 71 + hours).Select(i => slot.Start.ToUniversalTime().AddHours(i)).ToList();
        string table = "time,rain_mm,temperature_c\n" + string.Concat(starts.Select((t, i) => FormattableString.Invariant($"{t:yyyy-MM-dd'T'HH:mm:sszzz},1,{i % 24}\n")));
        var history = WeatherHistory.ReadTable(table, "hours", WeatherFiles.Eastern);
        var of = history.Days.Single(d => d.Date == new DateOnly(year, month, day));
        Assert.Equal(hours, of.Rain!.Value.Millimeters, 9);
        Assert.Null(history.Days[^1].Rain);
    }

    [Fact]
    public void A_day_with_an_hour_missing_has_no_sum()
    {
        var slot = TimeSlot.OfDate(new(2026, 7, 1), WeatherFiles.Eastern);
        string table = "time,rain_mm\n" + string.Concat(Enumerable.Range(0, 24).Where(i => i != 7).Select(i => FormattableString.Invariant($"{slot.Start.AddHours(i):yyyy-MM-dd'T'HH:mm:sszzz},1\n")));
        Assert.Null(WeatherHistory.ReadTable(table, "hours", WeatherFiles.Eastern).Days.Single().Rain);
    }
}
