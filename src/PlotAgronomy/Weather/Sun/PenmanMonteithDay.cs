namespace PlotAgronomy.Weather;

/// <summary>One day by FAO Penman-Monteith, where humidity and wind are known; the sun may be estimated from the
/// temperatures.</summary>
internal sealed class PenmanMonteithDay
{
    private readonly SunDay sun;
    private readonly double high;
    private readonly double low;
    private readonly double elevation;
    private readonly double coefficient;
    private readonly double? sunshineHours;
    private readonly (double Highest, double Lowest)? humidity;

    private PenmanMonteithDay(WeatherDay day, SunDay sun, double elevation, double coefficient, double wind, double? solar)
    {
        this.sun = sun;
        this.elevation = elevation;
        this.coefficient = coefficient;
        high = day.HighCelsius!.Value;
        low = day.LowCelsius!.Value;
        sunshineHours = day.Sunshine?.TotalHours;
        humidity = day is { DewPoint: null, HighestHumidity: { } highest, LowestHumidity: { } lowest }
            ? (highest.Percent, lowest.Percent)
            : null;
        Wind = wind;
        Vapour = VapourOf(day);
        SolarIsEstimated = solar is null && sunshineHours is null;
        Solar = solar ?? SolarBySunshine() ?? SunMath.SolarFromRange(coefficient, high, low, sun.Extraterrestrial);
    }

    internal bool SolarIsEstimated { get; }

    /// <summary>More sunshine than the day is long: a slip, or a recorder that counts twilight.</summary>
    internal bool SunshineIsTooLong => sunshineHours > sun.DayLengthHours && Solar == SolarBySunshine();

    internal double Solar { get; }

    internal double Wind { get; }

    internal double Vapour { get; }

    internal double ClearSky =>
        SunMath.ClearSky(
            WeatherConstants.All["clear-sky-at-sea"],
            WeatherConstants.All["clear-sky-per-meter"],
            elevation,
            sun.Extraterrestrial
        );

    internal double NetRadiation => Shortwave - Longwave;

    internal double Shortwave => AirMath.NetShortwave(WeatherConstants.All["grass-albedo"], Solar);

    internal double Longwave => AirMath.NetLongwave(WeatherConstants.All["stefan-boltzmann"], high, low, Vapour, RelativeSolar);

    internal double Slope => AirMath.SlopeOfPressure(SlopeFactor, AirMath.SaturationPressure(Mean), Mean, Offset);

    internal double Psychrometric =>
        AirMath.PsychrometricConstant(WeatherConstants.All["psychrometric-factor"], AirMath.Pressure(elevation));

    internal double Saturation => AirMath.MeanSaturation(AirMath.SaturationPressure(high), AirMath.SaturationPressure(low));

    /// <summary>A day's heat into the soil is nothing beside the rest.</summary>
    internal double Millimeters =>
        Math.Max(0, AirMath.PenmanMonteith(Slope, NetRadiation, 0, Psychrometric, Mean, Wind, Math.Max(0, Saturation - Vapour)));

    private static double SlopeFactor => WeatherConstants.All["slope-factor"];

    private static double Offset => WeatherConstants.All["vapour-offset"];

    private double Mean => (high + low) / 2;

    /// <summary>At most 1, as printed: air is no clearer than clear.</summary>
    private double RelativeSolar => ClearSky > 0 ? Math.Min(1, Solar / ClearSky) : 1;

    internal static PenmanMonteithDay? Of(WeatherDay day, SunDay sun, double elevation, double coefficient)
    {
        bool hasHumidity = day.DewPoint is not null || day is { HighestHumidity: not null, LowestHumidity: not null };
        return hasHumidity && WindOfDay.AtTwoMeters(day) is { } wind
            ? new(day, sun, elevation, coefficient, wind, day.SolarMegajoulesPerSquareMeter)
            : null;
    }

    internal IEnumerable<WorkedLine> Lines()
    {
        var formulas = WeatherFormulas.All;
        (string, string) extraterrestrial = ("extraterrestrial", Amounts.Print(sun.Extraterrestrial, 2));
        (string, string) highPlace = ("high", Amounts.Print(high, 1));
        (string, string) lowPlace = ("low", Amounts.Print(low, 1));
        if (SolarIsEstimated)
        {
            yield return formulas["weather-solar-from-range"]
                .Line(
                    $"{Amounts.Print(Solar, 2)} MJ/m2",
                    ("coefficient", Amounts.Print(coefficient, 2)),
                    highPlace,
                    lowPlace,
                    extraterrestrial
                );
        }
        else if (sunshineHours is { } hours && Solar == SolarBySunshine())
        {
            yield return formulas["weather-solar-from-sunshine"]
                .Line(
                    $"{Amounts.Print(Solar, 2)} MJ/m2",
                    ("overcast", Amounts.Print(WeatherConstants.All["sunshine-overcast"], 2)),
                    ("clear", Amounts.Print(WeatherConstants.All["sunshine-clear"], 2)),
                    ("sunshine", Amounts.Print(Math.Min(hours, sun.DayLengthHours), 2)),
                    ("day length", Amounts.Print(sun.DayLengthHours, 2)),
                    extraterrestrial
                );
        }

        yield return formulas["weather-clear-sky"]
            .Line(
                $"{Amounts.Print(ClearSky, 2)} MJ/m2",
                ("at sea", Amounts.Print(WeatherConstants.All["clear-sky-at-sea"], 2)),
                ("per meter", Amounts.Print(WeatherConstants.All["clear-sky-per-meter"], 5)),
                ("elevation", Amounts.Print(elevation, 0)),
                extraterrestrial
            );
        yield return formulas["weather-saturation"]
            .Line(
                $"{Amounts.Print(AirMath.SaturationPressure(Mean), 3)} kPa",
                ("scale", Amounts.Print(WeatherConstants.All["vapour-scale"], 4)),
                ("slope", Amounts.Print(WeatherConstants.All["vapour-slope"], 2)),
                ("temperature", Amounts.Print(Mean, 2)),
                ("offset", Amounts.Print(Offset, 1))
            );
        yield return formulas["weather-slope"]
            .Line(
                $"{Amounts.Print(Slope, 4)} kPa/C",
                ("factor", Amounts.Print(SlopeFactor, 0)),
                ("saturation", Amounts.Print(AirMath.SaturationPressure(Mean), 4)),
                ("temperature", Amounts.Print(Mean, 2)),
                ("offset", Amounts.Print(Offset, 1))
            );
        yield return formulas["weather-pressure"]
            .Line($"{Amounts.Print(AirMath.Pressure(elevation), 2)} kPa", ("elevation", Amounts.Print(elevation, 0)));
        yield return formulas["weather-psychrometric"]
            .Line(
                $"{Amounts.Print(Psychrometric, 4)} kPa/C",
                ("factor", Amounts.Print(WeatherConstants.All["psychrometric-factor"], 6)),
                ("pressure", Amounts.Print(AirMath.Pressure(elevation), 2))
            );
        if (humidity is { } h)
        {
            yield return formulas["weather-vapour"]
                .Line(
                    $"{Amounts.Print(Vapour, 3)} kPa",
                    ("of the low", Amounts.Print(AirMath.SaturationPressure(low), 3)),
                    ("highest humidity", Amounts.Print(h.Highest, 0)),
                    ("of the high", Amounts.Print(AirMath.SaturationPressure(high), 3)),
                    ("lowest humidity", Amounts.Print(h.Lowest, 0))
                );
        }

        yield return formulas["weather-net-shortwave"]
            .Line(
                $"{Amounts.Print(Shortwave, 2)} MJ/m2",
                ("albedo", Amounts.Print(WeatherConstants.All["grass-albedo"], 2)),
                ("solar", Amounts.Print(Solar, 2))
            );
        yield return formulas["weather-net-longwave"]
            .Line(
                $"{Amounts.Print(Longwave, 2)} MJ/m2",
                ("sigma", Amounts.Print(WeatherConstants.All["stefan-boltzmann"], 12)),
                highPlace,
                lowPlace,
                ("vapour", Amounts.Print(Vapour, 3)),
                ("relative solar", Amounts.Print(RelativeSolar, 3))
            );
        yield return formulas["weather-penman-monteith"]
            .Line(
                $"{Amounts.Print(Millimeters, 2)} mm",
                ("slope", Amounts.Print(Slope, 4)),
                ("net radiation", Amounts.Print(NetRadiation, 2)),
                ("heat into the soil", "0"),
                ("psychrometric", Amounts.Print(Psychrometric, 4)),
                ("mean", Amounts.Print(Mean, 2)),
                ("wind", Amounts.Print(Wind, 2)),
                ("deficit", Amounts.Print(Math.Max(0, Saturation - Vapour), 3))
            );
    }

    private double? SolarBySunshine() =>
        sunshineHours is { } hours && sun.DayLengthHours > 0
            ? SunMath.SolarFromSunshine(
                WeatherConstants.All["sunshine-overcast"],
                WeatherConstants.All["sunshine-clear"],
                Math.Min(hours, sun.DayLengthHours),
                sun.DayLengthHours,
                sun.Extraterrestrial
            )
            : null;

    private double VapourOf(WeatherDay day) =>
        humidity is { } h
            ? AirMath.VapourFromExtremes(AirMath.SaturationPressure(low), AirMath.SaturationPressure(high), h.Highest, h.Lowest)
            : AirMath.SaturationPressure(day.DewPoint!.Value.DegreesCelsius);
}
