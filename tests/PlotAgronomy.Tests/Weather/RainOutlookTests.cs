using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Tests.Weather;

public class RainOutlookTests
{
    private static readonly DateTimeOffset Start = WeatherFiles.Utc(2026, 9, 1, 0);

    [Fact]
    public void The_dry_time_after_ends_with_the_next_slight_chance()
    {
        var rain = new RainOutlook(Of((80, 10), (10, 0), (19, 1), (20, 1)), new(Start, Start.AddHours(6)));
        Assert.Equal(12, rain.DryAfter.TotalHours);
        Assert.False(rain.DryAfterIsCutShort);
        var last = new RainOutlook(Of((80, 10), (10, 0)), new(Start, Start.AddHours(6)));
        Assert.Equal(6, last.DryAfter.TotalHours);
        Assert.True(last.DryAfterIsCutShort);
    }

    /// <summary>0.30 in an hour belongs to moderate rain: 0.30 x 25.4 x 6 h = 45.72 mm if it rains for sure.</summary>
    [Theory]
    [InlineData(100, 45.71, RainIntensity.Moderate)]
    [InlineData(100, 45.72, RainIntensity.Moderate)]
    [InlineData(100, 45.73, RainIntensity.Heavy)]
    [InlineData(50, 22.87, RainIntensity.Heavy)]
    public void A_heavy_period_warns_of_seed_washed_away(double chance, double millimeters, RainIntensity intensity)
    {
        var rain = new RainOutlook(Of((chance, millimeters)), new(Start, Start.AddHours(6)));
        Assert.Equal(intensity, rain.LeastIntensity);
        Assert.Equal(intensity == RainIntensity.Heavy, rain.Findings.Any(f => f.Code == "weather-wash-off"));
    }

    [Fact]
    public void No_rain_is_no_chance_of_enough()
    {
        var rain = new RainOutlook(Of((0, 0), (20, 0)), new(Start, Start.AddHours(12)));
        Assert.Equal(0, rain.AtLeast(Length.FromInches(0.25)).High.Value);
        Assert.Equal(0, rain.ExceededWith(Fraction.FromPercent(10)).Millimeters);
        Assert.Empty(rain.ShowWork(Length.FromInches(0.25)));
        Assert.Throws<ArgumentOutOfRangeException>(() => rain.AtLeast(Length.Zero));
        Assert.Throws<ArgumentException>(() => Of((0, 0)).Rain(Start, Start));
    }

    [Fact]
    public void The_working_shows_each_period_and_both_shapes()
    {
        var rain = new RainOutlook(Of((40, 5), (60, 10)), new(Start, Start.AddHours(12)));
        string work = string.Join('\n', rain.ShowWork().Concat(rain.ShowWork(Length.FromMillimeters(6))).Concat(rain.ShowWork(Length.FromMillimeters(6), RainShape.General)).Concat(rain.ShowWork(Fraction.FromPercent(30))));
        Assert.Contains("1 - (1 - 0.4) x (1 - 0.6) = 0.76", work, StringComparison.Ordinal);
        Assert.Contains("min(1, 0.4 + 0.6) = 1", work, StringComparison.Ordinal);
        Assert.Contains("[WX-PQPF]", work, StringComparison.Ordinal);
        Assert.Contains("[WX-WAF2015]", work, StringComparison.Ordinal);
    }

    private static WeatherForecast Of(params (double Percent, double Millimeters)[] periods) =>
        new()
        {
            FileName = "drawn",
            Blocks = [.. periods.Select((p, i) => new RainBlock(new(Start.AddHours(6 * i), Start.AddHours(6 * (i + 1))), p.Percent / 100, p.Millimeters))],
        };
}
