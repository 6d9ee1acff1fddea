using PlotAgronomy.Calendar;
using PlotAgronomy.Planning;
using PlotAgronomy.Tests.Support;
using PlotAgronomy.Tests.Weather;
using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Tests.Planning;

/// <summary>A plan's season, its dates, and its day of sowing by a forecast.</summary>
public class PlanTimingTests
{
    private static PlotPlan Demo => PlanFile.Read(File.ReadAllText(Repository.PathOf("samples/data/fall-blend.json"))).Plan!;

    private static readonly FrostDates Frost =
        FrostDates.FromQuantiles(Temperature.FromDegreesFahrenheit(32), new(2026, 10, 12), new(2026, 10, 26), new(2026, 11, 9));

    private static PlotPlan With(PlotSeason season) => Demo with { Season = season };

    [Fact]
    public void The_season_of_a_plan_has_its_passes_with_what_is_spread_in_them()
    {
        var answers = Demo.Solve();
        var passes = answers.Spreading.Value.Passes;
        var work = answers.SeasonWork;
        Assert.Equal(passes.Length, work.Count(w => w.Task.Pass is not null));
        foreach (var pass in passes)
        {
            var sown = work.Single(w => w.Task.Pass == pass.Number);
            Assert.Equal(pass.Load.Pounds, sown.Materials.Sum(m => m.Mass.Pounds), 1e-9);
        }

        var lime = work.Single(w => w.Task.Id == "lime-worked-in");
        Assert.Equal(Demo.LimeDate, lime.Task.Latest);
        Assert.Equal(answers.Lime.Value.Order.Value.Product.Pounds, work.Where(w => w.Task.Spreads is SeasonSpread.FirstLime or SeasonSpread.LaterLime).SelectMany(w => w.Materials).Sum(m => m.Mass.Pounds), 1e-6);
        var fertilizer = work.Single(w => w.Task.Id == "fertilizer-worked-in");
        Assert.Equal(answers.Fertilizer.Value.Purchase.Value.Lines.Length, fertilizer.Materials.Length);
        Assert.All(work, w => Assert.All(w.WaitsFor, n => Assert.InRange(n, 1, work.Length)));
    }

    [Fact]
    public void Frost_is_asked_for_until_it_is_stated_or_found_in_years_of_weather()
    {
        Assert.Contains(Demo.Solve().Dates.Questions, q => q.Code == "calendar-ask-frost");
        var stated = With(new() { Frost = Frost }).Solve();
        Assert.DoesNotContain(stated.Dates.Questions, q => q.Code == "calendar-ask-frost");
        Assert.Equal(new DateOnly(2026, 10, 12), stated.Dates.Value.Kinds[0].EarlyFrost);
        var station = With(new() { Station = WeatherFiles.NewYork }).Solve();
        Assert.Equal(11, station.Dates.Value.Kinds[0].EarlyFrost!.Value.Month);
        Assert.Contains(station.Dates.Findings, f => f.Code == "weather-few-years");
    }

    [Fact]
    public void The_weeds_of_the_plan_are_tasks_of_its_season()
    {
        var stands = Demo.Solve().Calendar;
        Assert.Contains(stands.Value.Tasks, t => t.Id == "smother-kill");
        Assert.DoesNotContain(stands.Value.Tasks, t => t.Id == "smother-sow");
        var bare = Demo with { Plot = Demo.Plot with { Cover = GroundCover.BareGround, CoverKind = null } };
        Assert.Contains(bare.Solve().Calendar.Questions, q => q.Code == "calendar-ask-weeds");
        var answers = With(new() { Weeds = new() { Way = WeedWay.SmotherCrop, SmotherKind = KindCatalog.Standard.Find("buckwheat"), SmotherSownOn = new(2026, 6, 25) } }).Solve();
        Assert.DoesNotContain(answers.Calendar.Questions, q => q.Code == "calendar-ask-weeds");
        Assert.Equal(new DateOnly(2026, 8, 4), answers.Calendar.Value.Tasks.Single(t => t.Id == "smother-kill").Latest);
    }

    [Fact]
    public void A_kind_that_is_held_back_asks_for_a_test_before_sowing()
    {
        var sour = Demo with { Report = Demo.Report! with { WaterPh = WaterPh.FromValue(5.4) } };
        Assert.Contains(sour.Solve().Calendar.Value.Tasks, t => t.Id == "retest");
        var typed = WeatherForecast.FromLines([.. Enumerable.Range(0, 7).Select(i => Line(new DateOnly(2026, 9, 12).AddDays(i), 80, 0.4))], WeatherFiles.Eastern);
        var decision = (sour with { Season = new() { Where = PlotAgronomy.Land.GeoPoint.FromDegrees(35.5, -79) } }).When(typed, WeatherFiles.Eastern).Value;
        Assert.NotEmpty(decision.Days[0].Without);
        Assert.Contains(decision.Days[0].Reasons, r => r.Code == "calendar-too-sour");
    }

    /// <summary>Shallow seed is pressed in, deep seed covered; on a drilled plot all is covered, on frozen ground none.</summary>
    [Theory]
    [InlineData(PlantingMethod.TilledAndPacked, "medium-red-clover", SeedPlacement.PressedIn)]
    [InlineData(PlantingMethod.TilledAndPacked, "cereal-rye", SeedPlacement.Covered)]
    [InlineData(PlantingMethod.Drilled, "medium-red-clover", SeedPlacement.Covered)]
    [InlineData(PlantingMethod.FrostSeeded, "medium-red-clover", SeedPlacement.OnSurface)]
    [InlineData(PlantingMethod.BroadcastThenMown, "cereal-rye", SeedPlacement.OnSurface)]
    [InlineData(PlantingMethod.BroadcastThenRolled, "cereal-rye", SeedPlacement.PressedIn)]
    public void Seed_lies_where_the_method_leaves_it(PlantingMethod method, string kind, SeedPlacement placement) =>
        Assert.Equal(placement, SeedPlacing.Of(KindCatalog.Standard.Find(kind), method));

    [Fact]
    public void Years_that_were_observed_tell_the_frost_where_the_plan_does_not()
    {
        var forecast = WeatherForecast.FromLines([.. Enumerable.Range(0, 7).Select(i => Line(new DateOnly(2026, 9, 12).AddDays(i), 80, 0.4))], WeatherFiles.Eastern);
        var plan = Demo with { Season = new() { Where = PlotAgronomy.Land.GeoPoint.FromDegrees(40.8, -74) } };
        Assert.NotNull(plan.When(forecast, WeatherFiles.Eastern, WeatherFiles.NewYork).Value.Days[0].DaysToFrost);
        Assert.Null(plan.When(forecast, WeatherFiles.Eastern).Value.Days[0].DaysToFrost);
        Assert.Equal(30, (plan with { Season = plan.Season! with { Frost = Frost } }).When(forecast, WeatherFiles.Eastern, WeatherFiles.NewYork).Value.Days[0].DaysToFrost);
    }

    [Fact]
    public void The_clock_by_the_sun_is_that_of_the_place()
    {
        Assert.Equal(TimeSpan.FromHours(-5), With(new() { Where = PlotAgronomy.Land.GeoPoint.FromDegrees(42.7, -73.8) }).ZoneOf().BaseUtcOffset);
        Assert.Equal(TimeSpan.FromHours(-6), Demo.ZoneOf(WeatherFiles.Grid).BaseUtcOffset);
        Assert.Equal(TimeSpan.Zero, Demo.ZoneOf().BaseUtcOffset);
    }

    [Fact]
    public void Place_frost_and_weeds_are_written_to_a_file_and_read_back()
    {
        var plan = With(new()
        {
            Where = PlotAgronomy.Land.GeoPoint.FromDegrees(35.5, -79),
            Frost = Frost,
            Weeds = new() { Way = WeedWay.Herbicide, LabelDays = 30 },
        });
        var back = PlanFile.Read(PlanFile.Write(plan)).Plan!.Season!;
        Assert.Equal(35.5, back.Where!.Value.LatitudeDegrees, 9);
        Assert.Equal(30, back.Weeds!.LabelDays);
        Assert.Equal(new DateOnly(2026, 10, 26), back.Frost!.DateWith(Fraction.FromPercent(50), 2026));
        Assert.Equal(32, back.Frost.Threshold.DegreesFahrenheit, 9);
    }

    private static TypedForecastLine Line(DateOnly date, double chance, double inches) =>
        new()
        {
            Date = date,
            Chance = Fraction.FromPercent(chance),
            Rain = Length.FromInches(inches),
            High = Temperature.FromDegreesFahrenheit(78),
            Low = Temperature.FromDegreesFahrenheit(58),
        };
}
