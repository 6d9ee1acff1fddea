using System.Collections.Immutable;
using MathNet.Numerics.Distributions;
using PlotAgronomy.Land;
using PlotAgronomy.Tests.Weather;
using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Tests.Calendar;

/// <summary>Four years of a city's days sown again by three rules, and judged by the rain that was observed.</summary>
/// <remarks>All limits are fixed here before anything is counted. An owner is ready on a day, looks at the forecast each morning,
/// sows on the first day that the rule allows, and on the last day whatever it says.</remarks>
internal sealed class SeasonReplay
{
    /// <summary>Half an inch within two weeks (WX-PFI).</summary>
    internal const double EnoughMillimeters = 12.7;

    /// <summary>Moisture must come within ten days (NRCS, Agronomy 36): a longer dry gap is a failure.</summary>
    internal const int LongestDryGap = 10;

    internal const int DaysJudged = 14;

    /// <summary>An owner waits three weeks at most (practice).</summary>
    internal const int MostDaysWaited = 21;

    /// <summary>A day counts as wet from a hundredth of an inch on (WX-AMS).</summary>
    internal const double WetMillimeters = 0.254;

    internal const int Horizon = 7;

    internal const int Seeds = 5;

    /// <summary>Share of the climate's uncertainty that a forecast takes away, day by day: from memory, no publication was
    /// seen.</summary>
    internal static readonly ImmutableArray<double> Skill = [0.45, 0.38, 0.31, 0.24, 0.17, 0.11, 0.06];

    private const int DaysBefore = 10;

    private static readonly GeoPoint Place = GeoPoint.FromDegrees(40.8, -74);

    private static readonly TimeZoneInfo Zone = WeatherFiles.Eastern;

    private readonly Dictionary<DateOnly, WeatherDay> days = WeatherFiles.NewYork.Days.ToDictionary(d => d.Date);

    private readonly Dictionary<(DateOnly Date, int? Seed), bool> says = [];

    private readonly Dictionary<(DateOnly Date, int? Seed), WeatherForecast> forecasts = [];

    /// <summary>Ready every fifth day, from 1 April to 1 May and from 1 August to 10 September, of every year.</summary>
    internal static IEnumerable<(string Block, DateOnly Ready)> Starts =>
        from year in Enumerable.Range(2012, 4)
        from season in new[] { (Name: "spring", First: new DateOnly(year, 4, 1), Count: 7), (Name: "late summer", First: new DateOnly(year, 8, 1), Count: 9) }
        from step in Enumerable.Range(0, season.Count)
        select ($"{season.Name} {year}", season.First.AddDays(5 * step));

    /// <summary>Sown on the day one is ready.</summary>
    internal static DateOnly FixedDate(DateOnly ready) => ready;

    /// <summary>Sown on the first day whose forecast tells half an inch within the week.</summary>
    internal DateOnly FirstHalfInch(DateOnly ready, int? seed) =>
        First(ready, day => AmountTold(Forecast(day, seed), day) >= EnoughMillimeters);

    /// <summary>Sown on the first day that the outlook does not say to wait.</summary>
    internal DateOnly Outlook(DateOnly ready, int? seed) => First(ready, day => DoesNotWait(day, seed));

    /// <summary>By what was observed in the two weeks from the day of sowing on.</summary>
    internal bool Succeeds(DateOnly sown)
    {
        double rain = 0;
        int gap = 0,
            longest = 0;
        for (int i = 0; i < DaysJudged; i++)
        {
            double fell = RainOn(sown.AddDays(i));
            rain += fell;
            gap = fell >= WetMillimeters ? 0 : gap + 1;
            longest = Math.Max(longest, gap);
        }

        return rain >= EnoughMillimeters && longest <= LongestDryGap;
    }

    private static DateOnly First(DateOnly ready, Func<DateOnly, bool> says)
    {
        for (int i = 0; i < MostDaysWaited; i++)
        {
            if (says(ready.AddDays(i)))
            {
                return ready.AddDays(i);
            }
        }

        return ready.AddDays(MostDaysWaited);
    }

    private bool DoesNotWait(DateOnly date, int? seed)
    {
        if (!says.TryGetValue((date, seed), out bool goes))
        {
            says[(date, seed)] = goes = Reasons(date, Forecast(date, seed)).All(r => r.Severity != FindingSeverity.Warning);
        }

        return goes;
    }

    private ImmutableArray<Finding> Reasons(DateOnly date, WeatherForecast forecast)
    {
        var before = Enumerable.Range(1, DaysBefore).Reverse().Select(i => days[date.AddDays(-i)]);
        var seedbed = SeedbedOutlook.Of(new() { Days = [.. before, .. forecast.Days(Zone)], Place = Place, Texture = SoilTexture.SiltLoam }).Value;
        var kind = KindCatalog.Standard.Find("medium-red-clover");
        var request = new PlantingRequest { Kind = kind, Placement = SeedPlacement.PressedIn, Seedbed = seedbed, Forecast = forecast, Zone = Zone };
        var emergence = EmergenceOutlook.Of(seedbed, kind, date, SeedPlacement.PressedIn).Value;
        var rain = new RainOutlook(forecast, new(TimeSlot.OfDate(date, Zone).Start, TimeSlot.OfDate(date.AddDays(Horizon), Zone).Start));
        return new PlantingReasons(request, date, rain, rain.AtLeast(PlantingReasons.EnoughRain), emergence).All;
    }

    private static double AmountTold(WeatherForecast forecast, DateOnly date) =>
        forecast.AmountIn(new(TimeSlot.OfDate(date, Zone).Start, TimeSlot.OfDate(date.AddDays(Horizon), Zone).Start)).Millimeters;

    /// <summary>Perfect without a seed; else as sure as the skill of its day allows, and right on the mean.</summary>
    private WeatherForecast Forecast(DateOnly issued, int? seed)
    {
        if (!forecasts.TryGetValue((issued, seed), out var forecast))
        {
            var random = new Random(HashOf(issued, seed ?? 0));
            var lines = Enumerable.Range(0, Horizon).Select(i => Line(issued.AddDays(i), seed is null ? null : Skill[i], random)).ToList();
            forecasts[(issued, seed)] = forecast = WeatherForecast.FromLines(lines, Zone);
        }

        return forecast;
    }

    /// <summary>Where a chance is drawn from a beta distribution about the climate's, and then from what that becomes once the day
    /// is known, the forecast is reliable and has just this skill: a Brier skill of 1 / (1 + a + b).</summary>
    private TypedForecastLine Line(DateOnly date, double? skill, Random random)
    {
        double fell = RainOn(date);
        bool isWet = fell >= WetMillimeters;
        double chance = isWet ? 1 : 0;
        double amount = fell;
        if (skill is { } known)
        {
            var (share, mean) = Climate(date.Month);
            double weight = (1 / known) - 1;
            chance = new Beta((share * weight) + (isWet ? 1 : 0), ((1 - share) * weight) + (isWet ? 0 : 1), random).Sample();
            double ifItRains = isWet ? (Math.Sqrt(known) * fell) + ((1 - Math.Sqrt(known)) * mean) : mean;
            amount = chance * ifItRains;
        }

        return new()
        {
            Date = date,
            Chance = Fraction.FromValue(chance),
            Rain = Length.FromMillimeters(amount),
            High = days[date].High,
            Low = days[date].Low,
        };
    }

    /// <summary>Share of wet days and their mean amount, in the month over all years.</summary>
    private (double Share, double Mean) Climate(int month)
    {
        if (!climate.TryGetValue(month, out var known))
        {
            var all = days.Values.Where(d => d.Date.Month == month).Select(d => RainOn(d.Date)).ToList();
            var wet = all.Where(r => r >= WetMillimeters).ToList();
            climate[month] = known = ((double)wet.Count / all.Count, wet.Average());
        }

        return known;
    }

    private readonly Dictionary<int, (double, double)> climate = [];

    private double RainOn(DateOnly date) => days[date].Rain is { } rain ? rain.Millimeters : 0;

    private static int HashOf(DateOnly date, int seed) => (date.DayNumber * 31) + (seed * 7919);
}
