namespace PlotAgronomy.Weather;

/// <summary>The sun's part of FAO-56: angles in radians, radiation in MJ/m2 a day.</summary>
internal static class SunMath
{
    /// <summary>The day angle counts 365 days in leap years too.</summary>
    private const double DaysOfAngle = 365;

    internal static double YearAngle(double dayOfYear) => 2 * Math.PI * dayOfYear / DaysOfAngle;

    internal static double RelativeDistance(double swing, double cosineOfYear) => 1 + (swing * cosineOfYear);

    internal static double Declination(double tilt, double sineOfYear) => tilt * sineOfYear;

    /// <summary>Sunset hour angle; 0 where the sun does not rise, pi where it does not set.</summary>
    internal static double SunsetAngle(double latitude, double declination) =>
        Math.Acos(Math.Clamp(-Math.Tan(latitude) * Math.Tan(declination), -1, 1));

    internal static double Extraterrestrial(
        double solarConstant,
        double relativeDistance,
        double sunsetAngle,
        double sineProduct,
        double cosineProduct,
        double sineOfSunset
    ) => 24 * 60 / Math.PI * solarConstant * relativeDistance * ((sunsetAngle * sineProduct) + (cosineProduct * sineOfSunset));

    internal static double DayLengthHours(double sunsetAngle) => 24 * sunsetAngle / Math.PI;

    internal static double SolarFromSunshine(
        double overcast,
        double clear,
        double sunshineHours,
        double dayLengthHours,
        double extraterrestrial
    ) => (overcast + (clear * sunshineHours / dayLengthHours)) * extraterrestrial;

    internal static double SolarFromRange(double coefficient, double high, double low, double extraterrestrial) =>
        coefficient * Math.Sqrt(high - low) * extraterrestrial;

    internal static double ClearSky(double atSea, double perMeter, double elevation, double extraterrestrial) =>
        (atSea + (perMeter * elevation)) * extraterrestrial;
}
