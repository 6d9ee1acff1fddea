using System.Diagnostics;
using PlotAgronomy.Reference;
using PlotAgronomy.Weather;

namespace PlotAgronomy.Tests.Weather;

/// <summary>Forecasts as plain tables: read, or refused with file, line and field.</summary>
public class ForecastTableTests
{
    private static WeatherForecast Read(string text) => WeatherForecast.ReadTable(text, "f.csv", WeatherFiles.Eastern);

    [Fact]
    public void A_table_by_days_is_the_same_as_lines_typed()
    {
        var day = Assert.Single(Read("date,chance_pct,rain_in,high_f,low_f\n2026-08-20,70,0.8,80,60\n").Days(WeatherFiles.Eastern));
        Assert.Equal(0.8, day.Rain!.Value.Inches, 9);
        Assert.Equal(80, day.High!.Value.DegreesFahrenheit, 9);
    }

    /// <summary>An hourly chance repeats that of its six hours: 48 % six times is 48 %.</summary>
    [Fact]
    public void Hours_are_joined_to_six_and_their_chances_are_not_multiplied()
    {
        string rows = string.Concat(Enumerable.Range(0, 24).Select(i => FormattableString.Invariant($"2026-08-20T{i:00}:00-04:00,48,0.5,{60 + i}\n")));
        var forecast = Read($"time,chance_pct,rain_mm,temperature_f\n{rows}");
        var rain = forecast.Rain(new(2026, 8, 20, 2, 0, 0, TimeSpan.FromHours(-4)), new(2026, 8, 20, 8, 0, 0, TimeSpan.FromHours(-4))).Value;
        Assert.Equal(0.48, rain.ChanceAtLeast.Value, 9);
        Assert.Equal(12, forecast.Days(WeatherFiles.Eastern)[0].Rain!.Value.Millimeters, 9);
    }

    [Theory]
    [InlineData("date,rain\n2026-09-01,1\n", "line 1, field 'rain': the unit must stand in the header")]
    [InlineData("date,wind_mph\n2026-09-01,1\n", "line 1, field 'wind_mph': a forecast of this sort holds")]
    [InlineData("time,high_f\n2026-09-01T00:00-04:00,1\n", "line 1, field 'high_f'")]
    [InlineData("date,chance_pct\n2026-09-01,130\n", "line 2, field 'chance_pct': 130 % is not between 0 and 100 %")]
    [InlineData("date,chance_pct\n2026-09-01,maybe\n", "line 2, field 'chance_pct': expected a number")]
    [InlineData("date,chance_pct\n2026-09-31,30\n", "line 2, field 'date'")]
    [InlineData("date,chance_pct\n2026-09-01,30\n2026-09-01,30\n", "line 3, field 'date': the date stands twice")]
    [InlineData("date,high_f,low_f\n2026-09-01,50,60\n", "line 2, field 'date': the low of")]
    [InlineData("time,chance_pct\n2026-09-01T00:00,30\n", "line 2, field 'time'")]
    [InlineData("time,chance_pct\n2026-09-01T00:00-04:00,30\n2026-09-01T00:30-04:00,30\n", "overlaps the one in line 2")]
    [InlineData("date,chance_pct\n2026-09-01,30\n2027-09-01,30\n", "more than 60 days")]
    [InlineData("chance_pct\n30\n", "expected a column 'date' or 'time'")]
    [InlineData("date,chance_pct\n", "at least one row")]
    [InlineData("", "f.csv, line 1")]
    public void A_wrong_table_is_refused_with_its_place(string text, string words)
    {
        var problem = Assert.Throws<DataFormatException>(() => Read(text));
        Assert.StartsWith("f.csv, line ", problem.Message, StringComparison.Ordinal);
        Assert.Contains(words, problem.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{")]
    [InlineData("[]")]
    [InlineData("{\"properties\":{\"periods\":7}}")]
    [InlineData("just words")]
    [InlineData("\uFEFF")]
    public void Whatever_is_no_forecast_is_refused_with_its_place(string text) =>
        Assert.StartsWith("f.txt, line ", Assert.Throws<DataFormatException>(() => WeatherForecast.Read(text, "f.txt", WeatherFiles.Eastern)).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("grid.json", true)]
    [InlineData("half-days.json", false)]
    [InlineData("hours.json", false)]
    public void The_kind_of_a_document_is_found_by_what_it_holds(string file, bool hasAmounts)
    {
        var forecast = WeatherForecast.Read(WeatherFiles.Text(file), file, WeatherFiles.Central);
        Assert.Equal(hasAmounts, forecast.Blocks.Any(b => b.Millimeters is not null));
        Assert.NotNull(forecast.Place);
    }

    [Fact]
    public void A_table_cut_off_anywhere_is_read_or_refused_with_its_line()
    {
        const string Whole = "date,chance_pct,rain_in,high_f,low_f\n2026-08-20,70,0.8,80,60\n2026-08-21,40,0.2,80,60\n";
        for (int length = 0; length < Whole.Length; length++)
        {
            if (Record.Exception(() => Read(Whole[..length])) is { } problem)
            {
                Assert.StartsWith("f.csv, line ", Assert.IsType<DataFormatException>(problem).Message, StringComparison.Ordinal);
            }
        }
    }

    [Theory]
    [InlineData("stream")]
    [InlineData("lines")]
    [InlineData("commas")]
    public void A_giant_is_refused_in_bounded_time_and_memory(string what)
    {
        byte[] giant = new byte[50_000_000];
        Array.Fill(giant, (byte)' ');
        string text = string.Concat(Enumerable.Repeat(what == "lines" ? "x\n" : ",,", 3_000_000));
        long before = GC.GetAllocatedBytesForCurrentThread();
        var watch = Stopwatch.StartNew();
        var problem = Assert.Throws<DataFormatException>(() =>
            what == "stream" ? WeatherForecast.Read(new MemoryStream(giant), "giant", WeatherFiles.Eastern) : WeatherForecast.Read(text, "giant", WeatherFiles.Eastern));
        Assert.StartsWith("giant, line ", problem.Message, StringComparison.Ordinal);
        Assert.InRange(watch.Elapsed.TotalSeconds, 0, 20);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 800_000_000);
    }

    [Theory]
    [InlineData("""{"geometry":{"type":"Polygon","coordinates":[[[0,0],["west",0]]]},"properties":{"updateTime":"2024-02-23T12:00:00Z"}}""")]
    [InlineData("""{"geometry":{"type":"Polygon","coordinates":[[[0,0],[500,0]]]},"properties":{"updateTime":"2024-02-23T12:00:00Z"}}""")]
    [InlineData("""{"geometry":{"type":"Polygon","coordinates":[[[0,0],[5]]]},"properties":{"updateTime":"2024-02-23T12:00:00Z"}}""")]
    [InlineData("""{"geometry":{"type":"Point","coordinates":7},"properties":{"updateTime":"2024-02-23T12:00:00Z"}}""")]
    public void A_place_that_is_none_is_refused(string text) =>
        Assert.StartsWith("g, line 1", Assert.Throws<DataFormatException>(() => WeatherForecast.ReadGrid(text, "g")).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("""{"geometry":null,"properties":{"updateTime":"2024-02-23T12:00:00Z"}}""")]
    [InlineData("""{"geometry":{"type":"Polygon","coordinates":[]},"properties":{"updateTime":"2024-02-23T12:00:00Z"}}""")]
    [InlineData("""{"updateTime":"2024-02-23T12:00:00Z"}""")]
    public void A_document_without_a_place_tells_none(string text) => Assert.Null(WeatherForecast.ReadGrid(text, "g").Place);
}
