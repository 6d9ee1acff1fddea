using PlotAgronomy.Reference;
using PlotAgronomy.Tests.Support;
using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Tests.Weather;

public class ForecastDocumentTests
{
    [Fact]
    public void The_points_document_tells_cell_zone_and_addresses()
    {
        var point = ForecastPoint.Read(WeatherFiles.Text("points.json"), "points.json");
        Assert.Equal("BMX 32,69", point.Cell);
        Assert.Equal("America/Chicago", point.TimeZoneName);
        Assert.EndsWith("/gridpoints/BMX/32,69", point.GridAddress, StringComparison.Ordinal);
    }

    [Fact]
    public void The_grid_is_cut_into_the_six_hours_that_its_chances_are_given_for()
    {
        var forecast = WeatherFiles.Grid;
        Assert.All(forecast.Blocks, b => Assert.Equal(6, b.Slot.Hours));
        Assert.Equal(31, forecast.Blocks.Length);
        Assert.Equal(71.0184, forecast.Elevation!.Value.Meters, 6);
    }

    [Fact]
    public void Chances_beyond_the_last_amount_have_none_and_are_not_dry()
    {
        var last = WeatherFiles.Grid.Blocks[^1];
        Assert.Equal(0.34, last.Chance!.Value, 12);
        Assert.Null(last.Millimeters);
        var answer = WeatherFiles.Grid.Rain(WeatherFiles.Utc(2024, 3, 1, 18), WeatherFiles.Utc(2024, 3, 2, 6));
        Assert.Equal(AnswerState.Open, answer.State);
        Assert.True(answer.TryGetPart(out var part));
        Assert.Equal(50, part.PartTold.Percent, 9);
        Assert.Equal("weather-ask-rain", Assert.Single(answer.Questions).Code);
    }

    [Fact]
    public void A_document_may_be_linked_json_without_properties()
    {
        string text = """{"updateTime":"2024-02-23T12:00:00Z","quantitativePrecipitation":{"uom":"unit:mm","values":[{"validTime":"2024-02-23T12:00:00+0000/PT6H","value":3}]}}""";
        Assert.Equal(3, WeatherForecast.ReadGrid(text, "f").Blocks.Single().Millimeters);
    }

    [Theory]
    [InlineData("2024-02-23T12:00:00+00:00/PT6H", 12, 18)]
    [InlineData("2024-02-23T12:00:00Z/2024-02-23T18:00:00Z", 12, 18)]
    [InlineData("PT6H/2024-02-23T18:00:00+0000", 12, 18)]
    [InlineData("NOW/PT2H", 15, 17)]
    [InlineData("2024-02-23T06:00:00-06:00/PT90M", 12, 13.5)]
    [InlineData("2024-02-22T18:00:00Z/P1DT6H", -6, 24)]
    public void Every_form_of_an_interval_is_read(string text, double from, double to)
    {
        Assert.True(IsoInterval.TryRead(text, WeatherFiles.Utc(2024, 2, 23, 15), out var slot, out string problem), problem);
        Assert.Equal(WeatherFiles.Utc(2024, 2, 23, 0).AddHours(from), slot.Start);
        Assert.Equal(WeatherFiles.Utc(2024, 2, 23, 0).AddHours(to), slot.End);
    }

    [Theory]
    [InlineData("2024-02-23T12:00:00/PT6H")]
    [InlineData("2024-02-23T12:00:00Z/PT")]
    [InlineData("2024-02-23T12:00:00Z/P")]
    [InlineData("2024-02-23T12:00:00Z/P9999Y")]
    [InlineData("2024-02-23T12:00:00Z/P61D")]
    [InlineData("PT6H/PT6H")]
    [InlineData("2024-02-23T18:00:00Z/2024-02-23T12:00:00Z")]
    [InlineData("0001-01-01T00:00:00+14:00/PT6H")]
    [InlineData("")]
    public void What_is_no_interval_is_refused(string text) => Assert.False(IsoInterval.TryRead(text, null, out _, out _));

    [Fact]
    public void Half_days_tell_chances_and_temperatures_and_no_amounts()
    {
        var forecast = WeatherForecast.ReadPeriods(WeatherFiles.Text("half-days.json"), "half-days.json");
        Assert.Contains(forecast.Findings, f => f.Code == "weather-chance-below-mention");
        var days = forecast.Days(WeatherFiles.Central);
        Assert.Equal(69, days[0].High!.Value.DegreesFahrenheit, 9);
        Assert.Equal(44, days[1].Low!.Value.DegreesFahrenheit, 9);
        Assert.All(days, d => Assert.Null(d.Rain));
    }

    /// <summary>Seen in the documents: the hourly product repeats the chance of its six hours.</summary>
    [Fact]
    public void Hours_are_joined_to_the_six_that_their_chance_is_given_for()
    {
        var hours = WeatherForecast.ReadPeriods(WeatherFiles.Text("hours.json"), "hours.json");
        var from = WeatherFiles.Utc(2024, 2, 28, 18);
        hours.Rain(from, from.AddHours(6)).TryGetPart(out var byHours);
        WeatherFiles.Grid.Rain(from, from.AddHours(6)).TryGetPart(out var byGrid);
        Assert.Equal(0.48, byHours!.ChanceOfAny.Value, 12);
        Assert.Equal(byGrid!.ChanceOfAny.Value, byHours.ChanceOfAny.Value, 12);
    }

    [Fact]
    public void What_is_typed_by_hand_makes_the_same_object()
    {
        var zone = WeatherFiles.Central;
        TypedForecastLine[] lines =
        [
            new() { Date = new(2026, 9, 2), Part = TypedForecastPart.Daytime, Chance = Fraction.FromPercent(60), Rain = Length.FromInches(0.5), High = Temperature.FromDegreesFahrenheit(80) },
            new() { Date = new(2026, 9, 2), Part = TypedForecastPart.Night, Chance = Fraction.FromPercent(30), Rain = Length.Zero, Low = Temperature.FromDegreesFahrenheit(60) },
            new() { Date = new(2026, 9, 4), Chance = Fraction.Zero, Rain = Length.Zero, High = Temperature.FromDegreesFahrenheit(75), Low = Temperature.FromDegreesFahrenheit(55) },
        ];
        var forecast = WeatherForecast.FromLines(lines, zone);
        var rain = forecast.Rain(new(2026, 9, 2, 6, 0, 0, TimeSpan.FromHours(-5)), new(2026, 9, 3, 6, 0, 0, TimeSpan.FromHours(-5))).Value;
        Assert.Equal(12.7, rain.Amount.Millimeters, 9);
        Assert.Equal(0.72, rain.ChanceOfAny.Value, 12);
        Assert.Equal(0.6, rain.ChanceAtLeast.Value, 12);
        Assert.Equal(0.9, rain.ChanceAtMost.Value, 12);
        Assert.Equal(60, forecast.Days(zone)[1].Low!.Value.DegreesFahrenheit, 9);
        var twice = Assert.Throws<ArgumentException>(() => WeatherForecast.FromLines([lines[0], new() { Date = lines[0].Date }], zone));
        Assert.Contains("2026-09-02", twice.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_amount_without_a_chance_is_asked_about()
    {
        var forecast = WeatherForecast.FromLines([new() { Date = new(2026, 9, 2), Rain = Length.FromInches(0.5) }], WeatherFiles.Central);
        var start = TimeSlot.OfDate(new(2026, 9, 2), WeatherFiles.Central).Start;
        Assert.Equal(AnswerState.Open, forecast.Rain(start, start.AddHours(24)).State);
        Assert.Contains(forecast.Findings, f => f.Code == "weather-rain-without-chance");
    }

    /// <summary>The clock goes forward on 8 March 2026 and back on 1 November 2026 in the United States.</summary>
    [Theory]
    [InlineData(3, 8, 23)]
    [InlineData(3, 9, 24)]
    [InlineData(11, 1, 25)]
    public void A_day_has_as_many_hours_as_its_clock(int month, int day, int hours) =>
        Assert.Equal(hours, TimeSlot.OfDate(new(2026, month, day), WeatherFiles.Central).Hours);

    [Theory, MemberData(nameof(CultureScope.Treacherous), MemberType = typeof(CultureScope))]
    public void The_culture_does_not_matter(string culture)
    {
        using var scope = new CultureScope(culture);
        Assert.Equal(7.112, WeatherFiles.Grid.AmountIn(new(WeatherFiles.Utc(2024, 2, 28, 12), WeatherFiles.Utc(2024, 2, 29, 12))).Millimeters, 9);
        var problem = Assert.Throws<DataFormatException>(() => WeatherHistory.ReadTable("date,rain_mm\n2026-09-01,2000.5\n", "f.csv"));
        Assert.Contains("2000.5 mm is not between 0 and 2000 mm", problem.Message, StringComparison.Ordinal);
    }
}
