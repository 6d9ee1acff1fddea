using System.Globalization;
using PlotAgronomy.Calendar;
using PlotAgronomy.Land;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;
using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Tests.Calendar;

/// <summary>Days of tasks and kinds, counted apart on a calendar.</summary>
public class CalendarWorkedExamples
{
    private const string Worked = "Calendar/worked-calendar.csv";

    private static readonly DateOnly SowOn = new(2026, 9, 12);

    public static TheoryData<string> Ids => WorkedExamples.Ids(Worked);

    [Theory, MemberData(nameof(Ids))]
    public void Matches_the_day_counted_apart(string id)
    {
        var row = WorkedExamples.Find(Worked, id);
        double[] x = [.. row.Text("inputs").Split(';').Select(n => double.Parse(n, CultureInfo.InvariantCulture))];
        string topic = row.Text("topic");
        WorkedExamples.AssertMatches(row, topic.StartsWith("task-", StringComparison.Ordinal) ? OfTask(topic["task-".Length..], x[0] == 0) : OfKind(topic, x));
    }

    private static double Number(DateOnly? day) => (day!.Value.Year * 10_000) + (day.Value.Month * 100) + day.Value.Day;

    private static double OfTask(string id, bool isFrom)
    {
        var weeds = id switch
        {
            "smother-kill" => new WeedControl { Way = WeedWay.SmotherCrop, SmotherKind = Kind("buckwheat"), SmotherSownOn = new(2026, 6, 25) },
            "weeds-label" => new WeedControl { Way = WeedWay.Herbicide, LabelDays = 30 },
            _ => new WeedControl { Way = WeedWay.RepeatedTillage },
        };
        bool isStanding = id.StartsWith("standing", StringComparison.Ordinal);
        var season = SeasonCalendar.Of(
            new()
            {
                SowOn = isStanding ? new(2026, 3, 1) : SowOn,
                Passes = [new() { Kinds = [Kind("cereal-rye")], IsCovered = true }, new() { Kinds = [Kind("medium-red-clover")] }],
                Ground = GroundWork.Tilled,
                NeedsLime = true,
                LimeIsWorkedIn = true,
                NeedsFertilizer = true,
                Weeds = weeds,
                IsStanding = isStanding,
                KillingFrost = new(2026, 10, 3),
            }
        ).Value;
        var task = season.Tasks.Single(t => t.Id == id);
        return Number(isFrom ? task.Earliest : task.Latest);
    }

    private static double OfKind(string topic, double[] x)
    {
        if (topic == "sun-clock")
        {
            return SunClock.Of(GeoPoint.FromDegrees(40, x[0])).BaseUtcOffset.TotalHours;
        }

        var frost = FrostDates.FromQuantiles(Temperature.FromDegreesFahrenheit(32), new(2026, 10, 5), new(2026, 10, 18), new(2026, 11, 3));
        var days = new DayRange { From = (int)x[0], To = (int)x[1], Evidence = Origin.FromUser("the example") };
        var dates = KindDates.Of(Kind("cereal-rye") with { UsableForage = days }, new(2026, 9, 14), null, frost);
        return topic switch
        {
            "forage-from" => Number(dates.ForageFrom),
            "forage-by" => Number(dates.ForageBy),
            "days-to-frost" => dates.DaysToEarlyFrost!.Value,
            _ => throw new InvalidOperationException(topic),
        };
    }

    private static CropKind Kind(string id) => KindCatalog.Standard.Find(id);
}
