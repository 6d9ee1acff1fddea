using PlotAgronomy.Calendar;
using PlotAgronomy.Land;
using PlotAgronomy.Planning;
using PlotAgronomy.Weather;
using UnitsNet;
using static PlotAgronomy.PlanFiles.Value;

namespace PlotAgronomy.PlanFiles;

/// <summary>What the owner knows of place, frost and weeds.</summary>
internal sealed class SeasonShape : PlanShape<PlotSeason>
{
    internal SeasonShape()
        : base("season", "What is known of place, frost and weeds.")
    {
        var point = new PlanPair().As(
            c => GeoPoint.FromDegrees(c.Latitude, c.Longitude),
            p => (p.LatitudeDegrees, p.LongitudeDegrees)
        );
        var where = Optional("where", point, "Where the plot lies, near enough for sun and evaporation.", s => s.Where);
        var frost = Optional("firstFreeze", new FreezeShape(), "First freeze of fall, as a station prints it.", s => s.Frost)
            .Answers(CalendarCodes.AskFrost);
        var weeds = Optional("weeds", new WeedShape(), "How what grows there is got rid of.", s => s.Weeds)
            .Answers(CalendarCodes.AskWeeds);
        Unsaid("weather of past years", s => s.Station is not null);

        ReadAs(at =>
            new()
            {
                Where = at.Maybe(where),
                Frost = at.Find(frost),
                Weeds = at.Find(weeds),
            }
        );
    }

    /// <summary>Three dates of the first freeze.</summary>
    private sealed class FreezeShape : PlanShape<FrostDates>
    {
        private const int AnyYear = 2001;

        internal FreezeShape()
            : base("firstFreeze", "First freeze of fall: dates by which it has come. The year does not matter.")
        {
            var degrees = Optional("degreesF", Number(0.0, 50), "Temperature that counts as a freeze; 32 unless stated.", f =>
                f.Threshold is { DegreesFahrenheit: var fahrenheit }
                    ? Math.Round(fahrenheit, 6, MidpointRounding.AwayFromZero)
                    : null
            );
            var early = Required("oneYearInTen", Date, "By this date in one year of ten.", f => Of(f, 10));
            var middle = Required("halfOfYears", Date, "By this date in half of the years.", f => Of(f, 50));
            var late = Required("nineYearsInTen", Date, "By this date in nine years of ten.", f => Of(f, 90));
            Unsaid("first freezes found in years of weather", f => f.Years > 0);

            ReadAs(at =>
                at.Try(middle, () =>
                    FrostDates.FromQuantiles(
                        Temperature.FromDegreesFahrenheit(at.Maybe(degrees) ?? 32),
                        at.Get(early),
                        at.Get(middle),
                        at.Get(late)
                    )
                )
            );
        }

        private static DateOnly? Of(FrostDates frost, double percent) => frost.DateWith(Fraction.FromPercent(percent), AnyYear);
    }
}
