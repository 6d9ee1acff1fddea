using System.Collections.Immutable;

namespace PlotAgronomy.Weather;

/// <summary>One period of the forecast by half days or hours.</summary>
internal sealed record ForecastPeriod(TimeSlot Slot, int Line, bool IsDaytime, double Celsius, double? Chance)
{
    internal static ForecastPeriod Read(WeatherJson at)
    {
        var start = at.Need("startTime");
        var slot = new TimeSlot(start.Moment(), at.Need("endTime").Moment());
        if (slot.End <= slot.Start)
        {
            throw start.Problem("the period ends before it starts");
        }

        var daytime = at.Need("isDaytime");
        return new(slot, at.Line, daytime.Flag(), Temperature(at), ChanceOf(at));
    }

    internal ImmutableArray<SlotValue> Chances() => Chance is { } chance ? [new(Slot, 100 * chance, Line)] : [];

    private static double Temperature(WeatherJson at)
    {
        var value = at.Need("temperature");
        var unit = value.IsObject ? value.Need("unitCode") : at.Need("temperatureUnit");
        var number = value.IsObject ? value.Need("value") : value;
        var convert = WeatherUnit.ToCelsius(WeatherUnit.Bare(unit.Text()))
            ?? throw unit.Problem($"unknown unit '{IsoInterval.Shortened(unit.Text())}'");
        return WeatherRanges.Check(convert(number.Number()), WeatherRanges.Coldest, WeatherRanges.Hottest, "C", number.Problem);
    }

    private static double? ChanceOf(WeatherJson at)
    {
        if (
            at.Find("probabilityOfPrecipitation") is not { IsNull: false } chance
            || chance.Need("value") is not { IsNull: false } value
        )
        {
            return null;
        }

        var unit = chance.Need("unitCode");
        var convert = WeatherUnit.ToPercent(WeatherUnit.Bare(unit.Text()))
            ?? throw unit.Problem($"unknown unit '{IsoInterval.Shortened(unit.Text())}'");
        return WeatherRanges.Check(convert(value.Number()), 0, 100, "%", value.Problem) / 100;
    }
}
