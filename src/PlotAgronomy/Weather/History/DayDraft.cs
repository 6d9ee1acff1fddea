using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Weather;

/// <summary>One day as it is put together from a file, in the units that are held.</summary>
internal sealed class DayDraft(string file, int line)
{
    internal int Line => line;

    internal double? Rain { get; set; }

    internal double? High { get; set; }

    internal double? Low { get; set; }

    internal double? DewPoint { get; set; }

    internal double? HighestHumidity { get; set; }

    internal double? LowestHumidity { get; set; }

    internal double? Wind { get; set; }

    internal double? SunshineHours { get; set; }

    internal double? Solar { get; set; }

    internal WeatherDay Day(DateOnly date)
    {
        if (High < Low)
        {
            throw new DataFormatException(
                file,
                line,
                null,
                FormattableString.Invariant($"the low of {Low} C is above the high of {High} C")
            );
        }

        return new()
        {
            Date = date,
            Rain = Rain is { } rain ? Length.FromMillimeters(rain) : null,
            High = Degrees(High),
            Low = Degrees(Low),
            DewPoint = Degrees(DewPoint),
            HighestHumidity = HighestHumidity is { } highest ? Fraction.FromPercent(highest) : null,
            LowestHumidity = LowestHumidity is { } lowest ? Fraction.FromPercent(lowest) : null,
            Wind = Wind is { } wind ? Speed.FromMetersPerSecond(wind) : null,
            Sunshine = SunshineHours is { } hours ? TimeSpan.FromHours(hours) : null,
            SolarMegajoulesPerSquareMeter = Solar,
        };
    }

    private static Temperature? Degrees(double? celsius) => celsius is { } c ? Temperature.FromDegreesCelsius(c) : null;
}
