using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Tests.Weather;

/// <summary>Degree days on and beside the base and the upper limit; sums by hand.</summary>
public class DegreeDayEdgeTests
{
    private static WeatherDay Day(double high, double low, int at = 0) => new()
    {
        Date = new DateOnly(2026, 5, 1).AddDays(at),
        High = Temperature.FromDegreesCelsius(high),
        Low = Temperature.FromDegreesCelsius(low),
    };

    private static readonly Temperature Ten = Temperature.FromDegreesCelsius(10);

    private static double Sum(DegreeDayMethod method, double? upper, params WeatherDay[] days)
    {
        Temperature? limit = upper is { } degrees ? Temperature.FromDegreesCelsius(degrees) : null;
        return DegreeDays.Of(days, Ten, method, limit).Value.SumCelsius;
    }

    [Theory]
    [InlineData(10, 4, 0)] // never above the base
    [InlineData(20, 10, 5)] // never below it: (20 + 10) / 2 - 10
    [InlineData(15, 5, 1.5915494309189535)] // half a wave of 5 degrees: 5 / pi
    public void The_sine_is_cut_at_the_base(double high, double low, double expected) =>
        Assert.Equal(expected, DegreeDayMath.SingleSine(high, low, 10), 1e-12);

    [Fact]
    public void The_three_methods_differ_where_the_low_lies_below_the_base()
    {
        // 16 and 6 over base 10: mean 11 gives 1; the low raised to 10 gives (16 + 10) / 2 - 10 = 3.
        Assert.Equal(1, Sum(DegreeDayMethod.SimpleAverage, null, Day(16, 6)), 1e-12);
        Assert.Equal(3, Sum(DegreeDayMethod.Clipped, null, Day(16, 6)), 1e-12);
        Assert.InRange(Sum(DegreeDayMethod.SingleSine, null, Day(16, 6)), 1.5, 2.5);
        Assert.Equal(0, Sum(DegreeDayMethod.SimpleAverage, null, Day(9, 1)));
        Assert.Equal(0, Sum(DegreeDayMethod.Clipped, null, Day(9, 1)));
    }

    [Fact]
    public void An_upper_limit_cuts_what_lies_above_it()
    {
        // 40 and 20 with a limit of 30: clipped (30 + 20) / 2 - 10 = 15; the sine loses half a wave of 10 degrees, 10 / pi, of
        // 20.
        Assert.Equal(15, Sum(DegreeDayMethod.Clipped, 30, Day(40, 20)), 1e-12);
        Assert.Equal(20 - (10 / Math.PI), Sum(DegreeDayMethod.SingleSine, 30, Day(40, 20)), 1e-12);
        Assert.Equal(20, Sum(DegreeDayMethod.SingleSine, null, Day(40, 20)), 1e-12);
        Assert.Equal(15, Sum(DegreeDayMethod.SingleSine, 30, Day(30, 20)), 1e-12);
    }

    /// <summary>By hand: mean 11 and swing 5 meet base 10 at the angle asin(-0.2) = -0.201, whose cosine is 0.980.</summary>
    [Fact]
    public void The_working_of_a_sine_shows_the_angle_at_which_it_meets_the_base()
    {
        string line = DegreeDays.Of([Day(16, 6)], Ten, DegreeDayMethod.SingleSine).Value.ShowWork()[0].Numbers;
        Assert.Contains("-0.201", line, StringComparison.Ordinal);
        Assert.Contains("0.98", line, StringComparison.Ordinal);
    }

    [Fact]
    public void Days_add_up_in_both_units()
    {
        var days = DegreeDays.Of([Day(20, 10), Day(24, 12, 1)], Ten, DegreeDayMethod.SimpleAverage).Value;
        Assert.Equal(13, days.SumCelsius, 1e-12);
        Assert.Equal(23.4, days.SumFahrenheit, 1e-12);
        Assert.Equal(
            ["max((20 + 10) / 2 - 10, 0) = 5 C days", "max((24 + 12) / 2 - 10, 0) = 8 C days"],
            days.ShowWork().Select(l => l.Numbers)
        );
    }

    [Theory]
    [InlineData(DegreeDayMethod.SimpleAverage)]
    [InlineData(DegreeDayMethod.Clipped)]
    [InlineData(DegreeDayMethod.SingleSine)]
    public void Each_method_names_its_publication(DegreeDayMethod method)
    {
        string[] sources = [.. DegreeDays.Of([Day(20, 10)], Ten, method).Value.Sources.Select(s => s.Id)];
        Assert.Contains(method == DegreeDayMethod.SingleSine ? "WX-TRENCH" : "WX-USDA1997", sources);
    }

    [Fact]
    public void Without_an_upper_limit_the_clipped_sum_shows_the_high_itself()
    {
        var work = DegreeDays.Of(
            [Day(16, 6), Day(8, 2, 1)],
            Temperature.FromDegreesCelsius(10),
            DegreeDayMethod.Clipped).Value.ShowWork(
        );
        Assert.Equal("(min(max(16, 10), 16) + min(max(6, 10), 16)) / 2 - 10 = 3 C days", work[0].Numbers);
        Assert.Equal("(min(max(8, 10), 10) + min(max(2, 10), 10)) / 2 - 10 = 0 C days", work[1].Numbers);
    }

    [Fact]
    public void The_working_of_the_sine_says_which_branch_it_took()
    {
        var work = DegreeDays.Of(
            [Day(20, 10), Day(10, 4, 1), Day(15, 5, 2), Day(30, 20, 3), Day(31, 20, 4)],
            Temperature.FromDegreesCelsius(10),
            DegreeDayMethod.SingleSine,
            Temperature.FromDegreesCelsius(30)).Value.ShowWork(
        );
        Assert.Equal("max((20 + 10) / 2 - 10, 0) = 5 C days", work[0].Numbers);
        Assert.Equal("max((10 + 4) / 2 - 10, 0) = 0 C days", work[1].Numbers);
        Assert.Equal("((10 - 10) x (1.571 - 0) + 5 x 1) / (2 x 1.571) = 1.592 C days", work[2].Numbers);
        Assert.StartsWith("max(", work[3].Numbers, StringComparison.Ordinal);
        Assert.EndsWith("cut level", work[4].Label, StringComparison.Ordinal);
    }

    [Fact]
    public void A_limit_is_above_the_base_and_there_is_a_day()
    {
        Assert.Equal(
            "upperLimit",
            Assert.Throws<ArgumentOutOfRangeException>(() => Sum(DegreeDayMethod.Clipped, 10, Day(20, 10))).ParamName
        );
        Assert.ThrowsAny<ArgumentException>(() => Sum(DegreeDayMethod.Clipped, null));
        Assert.ThrowsAny<ArgumentException>(() => Sum((DegreeDayMethod)9, null, Day(20, 10)));
    }
}
