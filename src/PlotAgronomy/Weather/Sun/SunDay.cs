using PlotAgronomy.Land;

namespace PlotAgronomy.Weather;

/// <summary>The sun over a place on a date, by the daily equations of FAO-56.</summary>
/// <remarks>The day is counted from sunrise to sunset of the sun's middle, without the bending of light: about a third of an hour
/// shorter than clocks of sunrise tell.</remarks>
internal sealed class SunDay
{
    private readonly double latitude;
    private readonly double cosineOfYear;
    private readonly double sineOfYear;

    internal SunDay(GeoPoint place, int dayOfYear)
    {
        latitude = place.LatitudeDegrees * Math.PI / 180;
        double angle = SunMath.YearAngle(dayOfYear);
        cosineOfYear = Math.Cos(angle);
        sineOfYear = Math.Sin(angle - Lag);
        RelativeDistance = SunMath.RelativeDistance(Swing, cosineOfYear);
        Declination = SunMath.Declination(Tilt, sineOfYear);
        SunsetAngle = SunMath.SunsetAngle(latitude, Declination);
        Extraterrestrial = SunMath.Extraterrestrial(
            SolarConstant,
            RelativeDistance,
            SunsetAngle,
            SineProduct,
            CosineProduct,
            Math.Sin(SunsetAngle)
        );
    }

    internal double RelativeDistance { get; }

    internal double Declination { get; }

    internal double SunsetAngle { get; }

    /// <summary>In MJ/m2 a day.</summary>
    internal double Extraterrestrial { get; }

    internal double DayLengthHours => SunMath.DayLengthHours(SunsetAngle);

    private static double Swing => WeatherConstants.All["sun-distance-swing"];

    private static double Tilt => WeatherConstants.All["sun-tilt"];

    private static double Lag => WeatherConstants.All["sun-lag"];

    private static double SolarConstant => WeatherConstants.All["solar-constant"];

    private double SineProduct => Math.Sin(latitude) * Math.Sin(Declination);

    private double CosineProduct => Math.Cos(latitude) * Math.Cos(Declination);

    internal IEnumerable<WorkedLine> Lines()
    {
        var formulas = WeatherFormulas.All;
        yield return formulas["weather-sun-distance"]
            .Line(
                Amounts.Print(RelativeDistance, 4),
                ("swing", Amounts.Print(Swing, 3)),
                ("cosine of the year's angle", Amounts.Print(cosineOfYear, 4))
            );
        yield return formulas["weather-declination"]
            .Line(
                $"{Amounts.Print(Declination, 4)} rad",
                ("tilt", Amounts.Print(Tilt, 3)),
                ("sine of the year's angle", Amounts.Print(sineOfYear, 4))
            );
        yield return formulas["weather-extraterrestrial"]
            .Line(
                $"{Amounts.Print(Extraterrestrial, 2)} MJ/m2",
                ("pi", Amounts.Print(Math.PI, 4)),
                ("solar constant", Amounts.Print(SolarConstant, 4)),
                ("distance", Amounts.Print(RelativeDistance, 4)),
                ("sunset angle", Amounts.Print(SunsetAngle, 4)),
                ("sine product", Amounts.Print(SineProduct, 4)),
                ("cosine product", Amounts.Print(CosineProduct, 4)),
                ("sine of the sunset angle", Amounts.Print(Math.Sin(SunsetAngle), 4))
            );
        yield return formulas["weather-day-length"]
            .Line(
                $"{Amounts.Print(DayLengthHours, 2)} h",
                ("sunset angle", Amounts.Print(SunsetAngle, 4)),
                ("pi", Amounts.Print(Math.PI, 4))
            );
    }
}
