using PlotAgronomy.Calendar;
using PlotAgronomy.Land;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;
using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Tests.Calendar;

public class CalendarDocTests
{
    [Fact]
    public void The_page_shows_what_the_code_does() =>
        DocExample.AssertCurrent("docs/calendar.md", "tests/PlotAgronomy.Tests/Calendar/CalendarDocTests.cs", Example);

    [Fact]
    public void The_page_lists_every_finding_of_the_room()
    {
        string page = File.ReadAllText(Repository.PathOf("docs/calendar.md"));
        Assert.Empty(FindingCatalog.Codes.Concat(QuestionCatalog.Codes).Where(c => c.StartsWith("calendar-", StringComparison.Ordinal) && !page.Contains($"`{c}`", StringComparison.Ordinal)));
    }

    [Fact]
    public void The_page_lists_every_task_of_the_room()
    {
        string page = File.ReadAllText(Repository.PathOf("docs/calendar.md"));
        Assert.Empty(TaskRow.All.Select(r => r.Id).Where(id => !page.Contains($"`{id}`", StringComparison.Ordinal)));
    }

    private static void Example(TextWriter output)
    {
        // begin example
        // A season around 12 September: buckwheat first, then rye and red clover.
        CropKind rye = KindCatalog.Standard.Find("cereal rye");
        CropKind clover = KindCatalog.Standard.Find("medium red clover");
        FrostDates frost = FrostDates.FromQuantiles(Temperature.FromDegreesFahrenheit(32), new(2026, 10, 3), new(2026, 10, 15), new(2026, 11, 1));
        Answer<SeasonCalendar> season = SeasonCalendar.Of(new()
        {
            SowOn = new(2026, 9, 12),
            Passes = [new() { Kinds = [rye], IsCovered = true }, new() { Kinds = [clover] }],
            Ground = GroundWork.Tilled,
            SampledOn = new(2026, 3, 14),
            NeedsLime = true,
            LimeIsWorkedIn = true,
            LimeOn = new(2026, 4, 4),
            NeedsRetest = true,
            NeedsFertilizer = true,
            Weeds = new() { Way = WeedWay.SmotherCrop, SmotherKind = KindCatalog.Standard.Find("buckwheat") },
        });
        foreach (SeasonTask task in season.Value.Tasks.Take(8))
        {
            output.WriteLine($"{task} ({task.Origin})");
        }

        // Until when, and which kind drops out first?
        SowingDates dates = SowingDates.Of([rye, clover, KindCatalog.Standard.Find("forage radish")], new(2026, 8, 10), PlantingRegion.North, frost);
        foreach (KindDates kind in dates.DropOut)
        {
            output.WriteLine($"{kind}; first forage {kind.ForageFrom:yyyy-MM-dd}");
        }

        // Sow now or wait? Seven lines of a forecast: chance, inches, high, low.
        var zone = TimeZoneInfo.CreateCustomTimeZone("plot", TimeSpan.FromHours(-5), "plot", "plot");
        (double Chance, double Inches)[] told = [(10, 0), (20, 0), (80, 0.7), (60, 0.3), (30, 0.1), (20, 0.05), (40, 0.2)];
        WeatherForecast forecast = WeatherForecast.FromLines([.. told.Select((day, i) => new TypedForecastLine
        {
            Date = new DateOnly(2026, 8, 10).AddDays(i),
            Chance = Fraction.FromPercent(day.Chance),
            Rain = Length.FromInches(day.Inches),
            High = Temperature.FromDegreesFahrenheit(80),
            Low = Temperature.FromDegreesFahrenheit(60),
        })], zone);
        PlantingDecision decision = PlantingDecision.Of(new()
        {
            Kinds = [new KindToSow { Kind = clover, Placement = SeedPlacement.PressedIn }],
            Forecast = forecast,
            Zone = zone,
            Where = GeoPoint.FromDegrees(42.74, -73.81),
            Texture = SoilTexture.SiltLoam,
            Region = PlantingRegion.North,
            Frost = frost,
        }).Value;
        foreach (DecisionDay day in decision.Days.Take(3))
        {
            output.WriteLine($"{day}; half an inch {day.Enough}");
            foreach (Finding reason in day.Reasons.Take(2))
            {
                output.WriteLine($"  {reason.Text}");
            }
        }

        WaitingCost cost = decision.Costs[0];
        output.WriteLine($"{cost}; {cost.DropsOut.Length} kinds drop out");
        // end example
    }
}
