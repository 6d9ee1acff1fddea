using System.Globalization;
using PlotAgronomy.Land;
using PlotAgronomy.Reference;
using PlotAgronomy.Tests.Support;
using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Tests.Weather;

/// <summary>Published examples, documents of the service against each other, and sums worked apart.</summary>
public class WeatherWorkedExamples
{
    private const string Worked = "Weather/worked-weather.csv";

    public static TheoryData<string> Ids => WorkedExamples.Ids(Worked);

    [Theory, MemberData(nameof(Ids))]
    public void Matches_the_answer_in_print_or_worked_apart(string id)
    {
        var row = WorkedExamples.Find(Worked, id);
        double[] x = [.. (row.TextOrNull("inputs") ?? "").Split(';', StringSplitOptions.RemoveEmptyEntries).Select(n => double.Parse(n, CultureInfo.InvariantCulture))];
        WorkedExamples.AssertMatches(row, Answer(row.Text("topic"), x));
    }

    internal static double Answer(string topic, double[] x) =>
        topic.StartsWith("bangkok-", StringComparison.Ordinal) ? Bangkok(topic["bangkok-".Length..], x)
        : topic.StartsWith("grid-", StringComparison.Ordinal) ? Grid(topic["grid-".Length..], x)
        : topic.StartsWith("ny-", StringComparison.Ordinal) ? NewYork(topic["ny-".Length..], x)
        : Air(topic, x) ?? Other(topic, x);

    private static double? Air(string topic, double[] x) => topic switch
    {
        "pressure" => AirMath.Pressure(x[0]),
        "gamma" => AirMath.PsychrometricConstant(.000665, AirMath.Pressure(x[0])),
        "saturation" => AirMath.SaturationPressure(x[0]),
        "mean-saturation" => Saturation(x[0], x[1]),
        "psychrometer" => AirMath.VapourFromPsychrometer(AirMath.SaturationPressure(x[0]), x[3], AirMath.Pressure(x[2]), x[1], x[0]),
        "vapour-extremes" => Extremes(x),
        "vapour-mean" => AirMath.VapourFromMean(x[2], Saturation(x[0], x[1])),
        "deficit" => Saturation(x[0], x[1]) - Extremes(x),
        "radians" => (x[0] + (x[1] / 60)) * Math.PI / 180,
        "distance" => Sun(x).RelativeDistance,
        "declination" => Sun(x).Declination,
        "sunset" => Sun(x).SunsetAngle,
        "ra" => Sun(x).Extraterrestrial,
        "ra-water" => WeatherConstants.All["depth-of-radiation"] * Sun(x).Extraterrestrial,
        "day-length" => Sun(x).DayLengthHours,
        "solar-sunshine" => BySunshine(x),
        "solar-sunshine-water" => WeatherConstants.All["depth-of-radiation"] * BySunshine(x),
        "solar-range" => SunMath.SolarFromRange(x[4], x[2], x[3], Sun(x).Extraterrestrial),
        "solar-range-water" => WeatherConstants.All["depth-of-radiation"] * SunMath.SolarFromRange(x[4], x[2], x[3], Sun(x).Extraterrestrial),
        "net" => AirMath.NetShortwave(.23, x[0]) - x[1],
        "soil-heat" => AirMath.HeatIntoSoilOfMonth(x[0], x[1], x[2]),
        "wind" => AirMath.WindAtTwoMeters(x[0], x[1]),
        _ => null,
    };

    private static double Saturation(double high, double low) => AirMath.MeanSaturation(AirMath.SaturationPressure(high), AirMath.SaturationPressure(low));

    private static double Extremes(double[] x) => AirMath.VapourFromExtremes(AirMath.SaturationPressure(x[0]), AirMath.SaturationPressure(x[1]), x[2], x[3]);

    private static SunDay Sun(double[] x) => new(GeoPoint.FromDegrees(x[0], 0), (int)x[1]);

    private static double BySunshine(double[] x) => SunMath.SolarFromSunshine(.25, .5, x[2], Sun(x).DayLengthHours, Sun(x).Extraterrestrial);

    /// <summary>Latitude, elevation, day, high, low, vapour, wind, sunshine, mean of the month and of the one before.</summary>
    private static double Bangkok(string part, double[] x)
    {
        var sun = new SunDay(GeoPoint.FromDegrees(x[0], 0), (int)x[2]);
        double mean = (x[3] + x[4]) / 2;
        double solar = SunMath.SolarFromSunshine(.25, .5, x[7], sun.DayLengthHours, sun.Extraterrestrial);
        double clear = SunMath.ClearSky(.75, .00002, x[1], sun.Extraterrestrial);
        double slope = AirMath.SlopeOfPressure(4098, AirMath.SaturationPressure(mean), mean, 237.3);
        double gamma = AirMath.PsychrometricConstant(.000665, AirMath.Pressure(x[1]));
        double longwave = AirMath.NetLongwave(4.903e-9, x[3], x[4], x[5], solar / clear);
        double net = AirMath.NetShortwave(.23, solar) - longwave;
        double heat = AirMath.HeatIntoSoilOfMonth(.14, x[8], x[9]);
        return part switch
        {
            "slope" => slope,
            "gamma" => gamma,
            "saturation" => Saturation(x[3], x[4]),
            "ra" => sun.Extraterrestrial,
            "day" => sun.DayLengthHours,
            "rs" => solar,
            "rso" => clear,
            "rnl" => longwave,
            "rn" => net,
            "heat" => heat,
            _ => AirMath.PenmanMonteith(slope, net, heat, gamma, mean, x[6], Saturation(x[3], x[4]) - x[5]),
        };
    }

    private static double Grid(string part, double[] x)
    {
        var forecast = WeatherFiles.Grid;
        int[] n = [.. x.Take(8).Select(v => (int)v)];
        if (part is "high" or "low")
        {
            var day = forecast.Days(WeatherFiles.Central).Single(d => d.Date == new DateOnly(n[0], n[1], n[2]));
            return (part == "high" ? day.High : day.Low)!.Value.DegreesFahrenheit;
        }

        var from = WeatherFiles.Utc(n[0], n[1], n[2], n[3]);
        if (part == "chance")
        {
            forecast.Rain(from, from.AddHours(12)).TryGetPart(out var half);
            return Math.Round(half!.ChanceAtLeast.Percent / 10, MidpointRounding.AwayFromZero) * 10;
        }

        forecast.Rain(from, WeatherFiles.Utc(n[4], n[5], n[6], n[7])).TryGetPart(out var rain);
        return part switch
        {
            "amount" => rain!.Amount.Millimeters,
            "independent" => rain!.ChanceOfAny.Value,
            "strongest" => rain!.ChanceAtLeast.Value,
            "one" => rain!.AtLeast(Length.FromMillimeters(x[8])).AsOneOfIndependent.Value,
            "strong" => rain!.AtLeast(Length.FromMillimeters(x[8])).AsStrongestPeriod.Value,
            "folded" => rain!.AtLeast(Length.FromMillimeters(x[8])).AsIndependentPeriods.Value,
            _ => throw new InvalidOperationException(part),
        };
    }

    private static double NewYork(string part, double[] x)
    {
        var history = WeatherFiles.NewYork;
        if (part.StartsWith("frost", StringComparison.Ordinal))
        {
            double celsius = x.Length == 2 ? x[1] : x[0];
            var frost = FrostDates.FromHistory(history, Temperature.FromDegreesCelsius(celsius)).Value;
            return part switch
            {
                "frost-mean" => frost.Mean,
                "frost-spread" => frost.Spread,
                "frost-early" => frost.DayWith(.1)!.Value,
                "frost-without" => frost.YearsWithout,
                _ => YearDay.Of(frost.Observed.Single(d => d.Year == (int)x[0])),
            };
        }

        if (part == "evaporation")
        {
            var place = GeoPoint.FromDegrees(x[1], -73.97);
            return history.Days.Where(d => d.Date.Year == (int)x[0]).Sum(d => ReferenceEvaporation.Of(place, d).Value.Depth.Millimeters);
        }

        if (part.StartsWith("thermal", StringComparison.Ordinal))
        {
            var sown = new DateOnly((int)x[0], (int)x[1], (int)x[2]);
            var days = history.Days.Where(d => d.Date >= sown).Take(60).Select(d => new EmergenceDay(d.Date, d.MeanCelsius!.Value, true)).ToList();
            double Of(double celsius) => EmergenceMath.OfDay(celsius, x[part == "thermal" ? 3 : 4], null, null);
            return part == "thermal" ? EmergenceClock.Reached(days, Of, x[4])!.Value.DayNumber - sown.DayNumber : EmergenceClock.Sum(days.Take((int)x[3]), Of);
        }

        var month = history.Days.Where(d => d.Date.Year == (int)x[0] && d.Date.Month == (int)x[1]).ToList();
        return part switch
        {
            "rain" => month.Sum(d => d.Rain!.Value.Millimeters),
            "wet-days" => month.Count(d => d.Rain!.Value.Millimeters >= x[2]),
            _ => DegreeDays.Of(month, Temperature.FromDegreesCelsius(x[2]), (DegreeDayMethod)(int)x[3]).Value.SumCelsius,
        };
    }

    private static double Other(string topic, double[] x) => topic switch
    {
        "hargreaves-lyon" => ReferenceEvaporation.Of(GeoPoint.FromDegrees(x[0], 4.85), Day(new((int)x[1], (int)x[2], (int)x[3]), x[4], x[5])).Value.Depth.Millimeters,
        "degree-simple" => DegreeDayMath.Simple(x[0], x[1], x[2]),
        "degree-clipped" => DegreeDayMath.Clipped(x[0], x[1], x[2], x[3]),
        "degree-sine" => DegreeDayMath.SingleSine(x[0], x[1], x[2], x[3]),
        "one-event-patchy" or "one-event-general" => RainMath.AtLeast(x[3] == 1 ? RainShape.Patchy : RainShape.General, x[0], x[2], x[1]),
        "exceeded" => RainMath.ExceededWith(RainMath.MeanIfItRains(x[1], x[0]), x[0], x[2]),
        "intensity" => (double)RainOutlook.Classed(x[0]),
        "bed-end" => Bed(x).EndMillimeters,
        "bed-wetness" => Bed(x).Reduction,
        "kc-max" => SeedbedMath.GreatestCoefficient(1.2, x[0], x[1], x[2], x[3]),
        "tew" => SeedbedMath.TotalEvaporable(x[0], x[1], x[2]),
        "wheat-depth" => ThermalTime.Find("wheat-emergence").At(x[0]),
        "days-needed" => EmergenceMath.DaysNeeded(x[0], x[1], x[2]),
        "albany-date" => Albany().DayWith(x[0] / 100)!.Value,
        "albany-spread" => Albany().Spread,
        "sow-by" => YearDay.Of(FullYield(x).Latest),
        "growth-days" => Growth((int)x[0]),
        _ => Station(topic),
    };

    private static WeatherDay Day(DateOnly date, double high, double low) =>
        new() { Date = date, High = Temperature.FromDegreesCelsius(high), Low = Temperature.FromDegreesCelsius(low) };

    /// <summary>Total, readily, reference, greatest and basal coefficient, depletion before, which day, and the rain of the days.</summary>
    private static SeedbedDay Bed(double[] x)
    {
        var steps = x.Skip(7).Select((rain, i) => new SeedbedTrack.Step(new DateOnly(2026, 9, 1).AddDays(i), rain, x[2], x[3]));
        return SeedbedTrack.Run(steps, x[1], x[0], x[5], x[4])[(int)x[6]];
    }

    private static FrostDates Albany() =>
        FrostDates.FromQuantiles(Temperature.FromDegreesFahrenheit(32), new(2026, 10, 3), new(2026, 10, 15), new(2026, 11, 1));

    /// <summary>70 days is the fewest that are printed for full yield.</summary>
    private static LatestSowing FullYield(double[] x) =>
        LatestSowing.Of(KindCatalog.Standard.Find("forage-turnip"), Albany(), Fraction.FromPercent(x[0]), 2026, (int)x[1]).Single(s => s.Use == "full yield");

    private static double Growth(int which)
    {
        var needs = GrowthNeed.Of(KindCatalog.Standard.Find("kale")).ToDictionary(n => n.Use);
        return which == 0 ? needs["best quality"].DaysLow : which == 1 ? needs["full yield"].DaysLow : needs["full yield"].DaysHigh;
    }

    private static double Station(string topic)
    {
        var days = WeatherHistory.ReadStation(WeatherFiles.MonthLine, "month.dly").Days.Where(d => d.Low is not null).ToList();
        var lowest = days.MinBy(d => d.Low!.Value.DegreesCelsius)!;
        return topic switch
        {
            "station-mean" => days.Average(d => d.Low!.Value.DegreesCelsius),
            "station-first" => days.First(d => d.Low!.Value.DegreesCelsius <= 0).Date.Day,
            "station-lowest" => lowest.Low!.Value.DegreesCelsius,
            "station-lowest-day" => lowest.Date.Day,
            _ => throw new InvalidOperationException(topic),
        };
    }
}
