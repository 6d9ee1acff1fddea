using UnitsNet;

namespace PlotAgronomy.Weather;

/// <summary>The weather of one day, observed or forecast. What is not known is null.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class WeatherDay
{
    /// <summary>Gets the date.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>Gets the rain, snow melted.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, or more than ever fell in a day.</exception>
    public Length? Rain
    {
        get;
        init => field = CheckedRain(value, nameof(Rain));
    }

    /// <summary>Gets the highest air temperature.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No air was ever so hot or so cold.</exception>
    public Temperature? High
    {
        get;
        init => field = Checked(value, nameof(High));
    }

    /// <summary>Gets the lowest air temperature.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No air was ever so hot or so cold.</exception>
    public Temperature? Low
    {
        get;
        init => field = Checked(value, nameof(Low));
    }

    /// <summary>Gets the mean dew point.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No air was ever so hot or so cold.</exception>
    public Temperature? DewPoint
    {
        get;
        init => field = Checked(value, nameof(DewPoint));
    }

    /// <summary>Gets the highest relative humidity.</summary>
    public Fraction? HighestHumidity { get; init; }

    /// <summary>Gets the lowest relative humidity.</summary>
    public Fraction? LowestHumidity { get; init; }

    /// <summary>Gets the mean wind.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, or faster than a gale ever blew.</exception>
    public Speed? Wind
    {
        get;
        init
        {
            if (value is { } wind)
            {
                double metersPerSecond = wind.MetersPerSecond;
                Guard.Between(metersPerSecond, 0, WeatherRanges.MostWind, "m/s", nameof(Wind));
            }

            field = value;
        }
    }

    /// <summary>Gets the hours of bright sunshine.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or more than a day has.</exception>
    public TimeSpan? Sunshine
    {
        get;
        init
        {
            if (value is { } sunshine)
            {
                Guard.Between(sunshine.TotalHours, 0, 24, "h", nameof(Sunshine));
            }

            field = value;
        }
    }

    /// <summary>Gets the solar radiation in MJ/m2 a day.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, or more than reaches the air from the sun.</exception>
    public double? SolarMegajoulesPerSquareMeter
    {
        get;
        init
        {
            if (value is { } solar)
            {
                Guard.Between(solar, 0, WeatherRanges.MostSun, "MJ/m2", nameof(SolarMegajoulesPerSquareMeter));
            }

            field = value;
        }
    }

    /// <summary>Gets the height at which the wind is measured or forecast; 2 m where it is not told.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below half a meter, where no wind is measured, or above 200 m.</exception>
    public Length? WindHeight
    {
        get;
        init
        {
            if (value is { } height)
            {
                double meters = height.Meters;
                Guard.Between(meters, WeatherRanges.LowestWind, WeatherRanges.HighestWind, "m", nameof(WindHeight));
            }

            field = value;
        }
    }

    internal double? RainMillimeters => Rain is { Millimeters: var millimeters } ? millimeters : null;

    internal double? HighCelsius => High is { DegreesCelsius: var celsius } ? celsius : null;

    internal double? LowCelsius => Low is { DegreesCelsius: var celsius } ? celsius : null;

    /// <summary>None where the high lies below the low, which is no day.</summary>
    internal double? MeanCelsius => HighCelsius >= LowCelsius ? (HighCelsius + LowCelsius) / 2 : null;

    internal static Length? CheckedRain(Length? value, string name)
    {
        if (value is { } rain)
        {
            double millimeters = rain.Millimeters;
            Guard.Between(millimeters, 0, WeatherRanges.MostRain, "mm", name);
        }

        return value;
    }

    internal static Temperature? Checked(Temperature? value, string name)
    {
        if (value is { } temperature)
        {
            double celsius = temperature.DegreesCelsius;
            Guard.Between(celsius, WeatherRanges.Coldest, WeatherRanges.Hottest, "C", name);
        }

        return value;
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => FormattableString.Invariant($"{Date:yyyy-MM-dd}: {RainInWords}");

    private string RainInWords => Rain is { } rain ? Amounts.Print(rain, "in", 2) : "no rain figure";
}
