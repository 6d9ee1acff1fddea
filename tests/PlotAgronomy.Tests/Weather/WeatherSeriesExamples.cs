using System.Collections.Concurrent;
using System.Globalization;
using PlotAgronomy.Land;
using PlotAgronomy.Reference;
using PlotAgronomy.Tests.Support;
using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Tests.Weather;

/// <summary>Four years of a city's days, year by year, against a second program that shares no code with the library; a topic is one
/// quantity.</summary>
public class WeatherSeriesExamples
{
    private const string Worked = "Weather/worked-series.csv";

    private static readonly GeoPoint Place = GeoPoint.FromDegrees(40.78, -73.97);
    private static readonly Length Elevation = Length.FromMeters(40);
    private static readonly ConcurrentDictionary<int, SeedbedOutlook> Autumns = new();

    public static TheoryData<string> Ids => WorkedExamples.Ids(Worked);

    [Theory, MemberData(nameof(Ids))]
    public void Matches_what_a_second_program_found(string id)
    {
        var row = WorkedExamples.Find(Worked, id);
        double[] x = [.. (row.TextOrNull("inputs") ?? "").Split(';', StringSplitOptions.RemoveEmptyEntries).Select(n => double.Parse(n, CultureInfo.InvariantCulture))];
        string topic = row.Text("topic");
        double answer =
            topic.StartsWith("year-degree-", StringComparison.Ordinal) ? Degrees(topic, (int)x[0])
            : topic.StartsWith("year-", StringComparison.Ordinal) ? OfYear(topic["year-".Length..], Year((int)x[0]))
            : topic.StartsWith("autumn-", StringComparison.Ordinal) ? OfAutumn(topic["autumn-".Length..], (int)x[0], (SeedPlacement)(int)x[1])
            : topic.StartsWith("grid-", StringComparison.Ordinal) ? OfGrid(topic["grid-".Length..], x)
            : OfFrost(topic, x);
        WorkedExamples.AssertMatches(row, answer);
    }

    private static List<WeatherDay> Year(int year) => [.. WeatherFiles.NewYork.Days.Where(d => d.Date.Year == year)];

    private static double OfYear(string quantity, List<WeatherDay> days) => Sun(quantity, days) ?? Air(quantity, days) ?? Ground(quantity, days);

    private static double? Sun(string quantity, List<WeatherDay> days)
    {
        double Sum(Func<SunDay, double> of) => days.Sum(d => of(new SunDay(Place, d.Date.DayOfYear)));
        return quantity switch
        {
            "distance" => Sum(s => s.RelativeDistance),
            "declination" => Sum(s => Math.Abs(s.Declination)),
            "sunset" => Sum(s => s.SunsetAngle),
            "extraterrestrial" => Sum(s => s.Extraterrestrial),
            "day-length" => Sum(s => s.DayLengthHours),
            "solar-by-sunshine" => days.Sum(d => Full(d, sunshine: 0.4 * new SunDay(Place, d.Date.DayOfYear).DayLengthHours).Solar),
            _ => null,
        };
    }

    private static double? Air(string quantity, List<WeatherDay> days)
    {
        double Sum(Func<PenmanMonteithDay, double> of) => days.Sum(d => of(Full(d)));
        return quantity switch
        {
            "solar-from-range" => Sum(d => d.Solar),
            "clear-sky" => Sum(d => d.ClearSky),
            "slope" => Sum(d => d.Slope),
            "shortwave" => Sum(d => d.Shortwave),
            "longwave" => Sum(d => d.Longwave),
            "net-radiation" => Sum(d => d.NetRadiation),
            "deficit" => Sum(d => d.Saturation - d.Vapour),
            "saturation" => Sum(d => d.Saturation),
            "vapour" => Sum(d => d.Vapour),
            "vapour-of-humidity" => days.Sum(d => Full(d, isByHumidity: true).Vapour),
            "penman" => days.Sum(d => ReferenceEvaporation.Of(Place, Told(d), Elevation).Value.Depth.Millimeters),
            _ => null,
        };
    }

    private static double Ground(string quantity, List<WeatherDay> days)
    {
        double Bed(Func<SeedbedDay, double> of) => SeedbedOf(days).Days.Sum(of);
        return quantity switch
        {
            "start-depletion" => Bed(d => d.StartMillimeters),
            "wetness" => Bed(d => d.Reduction),
            "coefficient" => Bed(d => d.Coefficient),
            "soil-evaporation" => Bed(d => d.EvaporationMillimeters),
            "percolation" => Bed(d => d.PercolationMillimeters),
            "depletion" => Bed(d => d.EndMillimeters),
            "greatest-coefficient" => SeedbedOf([.. days.Select(d => Told(d, isByHumidity: true))]).Days.Sum(d => d.GreatestCoefficient),
            "soil-temperature" => days.Select((_, i) => SoilTemperature.Estimate([.. days], i)).Sum(),
            "thermal-falling" => days.Where(d => d.MeanCelsius > 26).Sum(d => ThermalTime.Find("wheat-emergence").OfDay(d.MeanCelsius!.Value)),
            _ => throw new InvalidOperationException(quantity),
        };
    }

    private static double Degrees(string topic, int year)
    {
        DegreeDays Of(DegreeDayMethod method, Temperature at, Temperature? limit) => DegreeDays.Of(Year(year), at, method, limit).Value;
        var (ten, limit) = (Temperature.FromDegreesCelsius(10), Temperature.FromDegreesCelsius(25));
        return topic switch
        {
            "year-degree-sine-cut" => Of(DegreeDayMethod.SingleSine, ten, limit).SumCelsius,
            "year-degree-clipped-cut" => Of(DegreeDayMethod.Clipped, ten, limit).SumCelsius,
            "year-degree-fahrenheit" => Of(DegreeDayMethod.SimpleAverage, Temperature.FromDegreesFahrenheit(50), null).SumFahrenheit,
            _ => throw new InvalidOperationException(topic),
        };
    }

    private static double OfAutumn(string quantity, int year, SeedPlacement placement)
    {
        var seedbed = Autumns.GetOrAdd(year, y => SeedbedOf([.. Year(y).Where(d => d.Date.Month is >= 9 and <= 11)]));
        var sown = new DateOnly(year, 9, 5);
        EmergenceOutlook Of(string kind) => EmergenceOutlook.Of(seedbed, KindCatalog.Standard.Find(kind), sown, placement).Value;
        int After(DateOnly? day) => day!.Value.DayNumber - sown.DayNumber;
        var moist = seedbed.MoistDays(new(year, 9, 10), placement);
        return quantity switch
        {
            "emergence" => After(Of("medium-red-clover").EmergesOn),
            "sprout" => After(Of("medium-red-clover").SproutsOn),
            "moist-days" => Of("medium-red-clover").MoistDays,
            "dry-before" => Of("timothy").DryDaysBeforeSprouting,
            "dry-after" => Of("medium-red-clover").DryDaysAfterSprouting,
            "exposed" => Of("medium-red-clover").DaysExposed,
            "soil-mean" => Of("medium-red-clover").SoilTemperatureEstimate.DegreesCelsius,
            "printed-days" => After(Of("cereal-rye").EmergesOn),
            "moist-fewest" => moist.Fewest,
            "moist-most" => moist.Most,
            _ => throw new InvalidOperationException(quantity),
        };
    }

    private static double OfGrid(string quantity, double[] x)
    {
        DateTimeOffset At(int i) => WeatherFiles.Utc((int)x[i], (int)x[i + 1], (int)x[i + 2], (int)x[i + 3]);
        WeatherFiles.Grid.Rain(At(0), At(4)).TryGetPart(out var rain);
        return quantity switch
        {
            "most" => rain!.ChanceAtMost.Value,
            "heaviest" => rain!.HeaviestRate,
            "exceeded" => rain!.ExceededWith(Fraction.FromValue(x[8])).Millimeters,
            "dry-after" => rain!.DryAfter.TotalHours,
            "told" => rain!.PartTold.Value,
            "folded-general" => rain!.AtLeast(Length.FromMillimeters(x[8]), RainShape.General).AsIndependentPeriods.Value,
            _ => throw new InvalidOperationException(quantity),
        };
    }

    private static double OfFrost(string topic, double[] x)
    {
        FrostDates Frost() => FrostDates.FromHistory(WeatherFiles.NewYork, Temperature.FromDegreesCelsius(x[0])).Value;
        return topic switch
        {
            "frost-chance" or "frost-chance-some-years" => Frost().ChanceBy(new(2013, (int)x[1], (int)x[2])).Value,
            "frost-day" or "frost-day-some-years" => Frost().DayWith(x[1])!.Value,
            "between-tails" => FrostMath.DeviationsBetweenTails,
            "spread-from-tails" => FrostMath.SpreadFromTails(x[0], x[1], FrostMath.DeviationsBetweenTails),
            "mean-if-rains" => RainMath.MeanIfItRains(x[0], x[1]),
            "rain-rate" => RainMath.Rate(x[0], x[1]),
            _ => throw new InvalidOperationException(topic),
        };
    }

    private static SeedbedOutlook SeedbedOf(IReadOnlyList<WeatherDay> days) =>
        SeedbedOutlook.Of(new() { Days = [.. days], Place = Place, Texture = SoilTexture.Loam, Start = SurfaceStart.Dry }).Value;

    private static PenmanMonteithDay Full(WeatherDay day, double? sunshine = null, bool isByHumidity = false) =>
        PenmanMonteithDay.Of(Told(day, sunshine, isByHumidity), new SunDay(Place, day.Date.DayOfYear), Elevation.Meters, 0.16)!;

    /// <summary>The day with dew at its low, or 48 to 92 % of humidity, and a wind of 3 m/s at 10 m.</summary>
    private static WeatherDay Told(WeatherDay day, double? sunshine = null, bool isByHumidity = false) =>
        new()
        {
            Date = day.Date,
            Rain = day.Rain,
            High = day.High,
            Low = day.Low,
            DewPoint = isByHumidity ? null : day.Low,
            HighestHumidity = isByHumidity ? Fraction.FromPercent(92) : null,
            LowestHumidity = isByHumidity ? Fraction.FromPercent(48) : null,
            Wind = Speed.FromMetersPerSecond(3),
            WindHeight = Length.FromMeters(10),
            Sunshine = sunshine is { } hours ? TimeSpan.FromHours(hours) : null,
        };
}
