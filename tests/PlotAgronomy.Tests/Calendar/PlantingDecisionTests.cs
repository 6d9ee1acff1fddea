using System.Globalization;
using System.Text.RegularExpressions;
using PlotAgronomy.Calendar;
using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Weather;
using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Tests.Calendar;

/// <summary>A real forecast turned into a decision; the same without its rain; in December; and typed by hand.</summary>
public partial class PlantingDecisionTests
{
    /// <summary>Red clover of the central states, whose printed dates hold late February (KIND-UKY-RED: 1 February to 15 April).</summary>
    private static PlantingDecision Of(WeatherForecast forecast, FrostDates? frost = null, double? waitsForPh = null, DateOnly? limedOn = null, WeatherHistory? observed = null, params string[] kinds) =>
        PlantingDecision.Of(new()
        {
            Kinds =
            [
                .. (kinds is [] ? ["medium-red-clover"] : kinds).Select(k => new KindToSow
                {
                    Kind = KindCatalog.Standard.Find(k), Placement = SeedPlacement.PressedIn, WaitsForPh = waitsForPh,
                }),
            ],
            Forecast = forecast,
            Observed = observed,
            Zone = WeatherFiles.Central,
            Texture = SoilTexture.SandyLoam,
            Region = PlantingRegion.Find("central"),
            Where = PlotAgronomy.Land.GeoPoint.FromDegrees(33.211, -87.566),
            Frost = frost,
            LimedOn = limedOn,
            WorksTheGround = true,
        }).Value;

    private static WeatherForecast Grid(Func<string, string> changed) => WeatherForecast.ReadGrid(changed(WeatherFiles.Text("grid.json")), "grid.json");

    /// <summary>Every amount and chance of rain set to nothing, the rest as it was.</summary>
    private static WeatherForecast Dry() =>
        WeatherForecast.FromLines([.. Lines().Select(l => new TypedForecastLine { Date = l.Date, Chance = Fraction.Zero, Rain = Length.Zero, High = l.High, Low = l.Low })], WeatherFiles.Central);

    /// <summary>As any forecast prints it: the chance of a day is that of its likeliest part.</summary>
    private static List<TypedForecastLine> Lines() =>
        [
            .. from day in WeatherFiles.Grid.Days(WeatherFiles.Central)
               where day.Date >= new DateOnly(2024, 2, 24) && day.Date <= new DateOnly(2024, 3, 1)
               let rain = new RainOutlook(WeatherFiles.Grid, TimeSlot.OfDate(day.Date, WeatherFiles.Central))
               select new TypedForecastLine { Date = day.Date, Chance = rain.ChanceAtLeast, Rain = rain.Amount, High = day.High, Low = day.Low },
        ];

    [Fact]
    public void A_real_forecast_becomes_a_decision_with_its_reasons()
    {
        var decision = Of(WeatherFiles.Grid);
        Assert.Equal(new DateOnly(2024, 2, 24), decision.Days[0].Date);
        Assert.True(decision.IsRainInSight);
        Assert.NotEqual(PlantingVerdict.Wait, decision.Now);
        Assert.All(decision.Days, d => Assert.NotEmpty(d.Reasons));
        Assert.Contains(decision.Days[0].Reasons, r => r.Code == "weather-rain-unsure");
        Assert.Contains("a forecast that makes half an inch within a week surer", decision.Days[0].WouldChangeIt);
        Assert.Equal(decision.Days.Length - 1, decision.Costs.Length);
        Assert.NotEmpty(decision.TimeLeft);
        Assert.Equal(new DateOnly(2024, 4, 15), decision.TimeLeft[0].LastSensible);
        Assert.Contains(decision.Findings, f => f.Code == "weather-soil-is-estimated");
    }

    /// <summary>The rain of the document begins on 28 February, at six in the morning: until then the chance of enough is the same, and
    /// ground that is tilled is worked the day before.</summary>
    [Fact]
    public void The_day_just_ahead_of_the_rain_is_named()
    {
        Assert.Equal(new DateOnly(2024, 2, 27), Of(WeatherFiles.Grid).JustAheadOfRain!.Date);
        Assert.Null(Of(Dry()).JustAheadOfRain);
    }

    /// <summary>Dry until a day, and wet from then on: no sprout dries.</summary>
    private static WeatherForecast RainOn(int day, double chance = 80, double inches = 0.9) =>
        WeatherForecast.FromLines([.. Enumerable.Range(0, 7).Select(i => Typed(new DateOnly(2024, 3, 1).AddDays(i), i >= day ? chance : 5, i >= day ? inches : 0))], WeatherFiles.Central);

    /// <summary>Practice: ground is worked dry, so seed goes on the day before the rain; if that comes tomorrow, today.</summary>
    [Theory]
    [InlineData(1, 0), InlineData(2, 1), InlineData(4, 3)]
    public void Tilled_ground_is_sown_the_day_before_the_rain(int rain, int sown)
    {
        var decision = Of(RainOn(rain));
        Assert.Equal(new DateOnly(2024, 3, 1).AddDays(sown), decision.JustAheadOfRain!.Date);
        Assert.True(decision.JustAheadOfRain.CanBeWorked);
        Assert.False(decision.Days[rain].CanBeWorked);
    }

    [Fact]
    public void Ground_that_is_not_worked_may_be_sown_on_the_day_of_the_rain()
    {
        var request = Of(RainOn(2)).Request;
        var standing = PlantingDecision.Of(new() { Kinds = request.Kinds, Forecast = request.Forecast, Zone = request.Zone, Where = request.Where, Texture = request.Texture, Region = request.Region }).Value;
        Assert.True(standing.JustAheadOfRain!.Date >= Of(RainOn(2)).JustAheadOfRain!.Date);
    }

    [Fact]
    public void Rain_that_begins_today_leaves_no_day_ahead_of_it_for_the_soaked_day_after()
    {
        var decision = Of(RainOn(0, 90, 2));
        Assert.False(decision.Days[0].CanBeWorked);
        Assert.False(decision.Days[1].CanBeWorked);
    }

    [Fact]
    public void The_same_without_its_rain_says_wait_and_until_when_waiting_leaves_time()
    {
        var decision = Of(Dry());
        Assert.Equal(PlantingVerdict.Wait, decision.Now);
        Assert.False(decision.IsRainInSight);
        Assert.All(decision.Days, d => Assert.Equal(PlantingVerdict.Wait, d.Verdict));
        Assert.Null(decision.WaitUntil);
        Assert.Equal(new DateOnly(2024, 4, 15), decision.TimeLeft[0].LastSensible);
    }

    [Fact]
    public void The_same_in_December_says_no()
    {
        var december = Grid(text => Dates().Replace(text, m => DateOnly.Parse(m.Value, CultureInfo.InvariantCulture).AddDays(-70).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)));
        var decision = Of(december);
        Assert.Equal(12, decision.Days[0].Date.Month);
        Assert.Equal(PlantingVerdict.Wait, decision.Now);
        Assert.All(decision.Days, d => Assert.Equal("calendar-outside-window", d.Reasons.First(r => r.Code.StartsWith("calendar", StringComparison.Ordinal)).Code));
        Assert.Empty(decision.TimeLeft);
        Assert.Contains("another kind, or the printed season", decision.Days[0].WouldChangeIt);
    }

    /// <summary>Up to the rain. Once it has begun a typed day is one period where the document has four, so that enough is a little
    /// less likely if the periods are independent.</summary>
    [Fact]
    public void The_same_typed_as_seven_lines_says_the_same()
    {
        var typed = Of(WeatherForecast.FromLines(Lines(), WeatherFiles.Central));
        var document = Of(WeatherFiles.Grid);
        Assert.Equal(7, Lines().Count);
        Assert.Equal(document.Days.Take(5).Select(d => (d.Date, d.Verdict)), typed.Days.Take(5).Select(d => (d.Date, d.Verdict)));
        Assert.Equal(document.Now, typed.Now);
        Assert.Equal(document.JustAheadOfRain!.Date, typed.JustAheadOfRain!.Date);
        Assert.Equal(document.WaitUntil?.Date, typed.WaitUntil?.Date);
        Assert.Equal(document.Days[0].Rain.Amount.Millimeters, typed.Days[0].Rain.Amount.Millimeters, 0.5);
    }

    [Fact]
    public void The_same_as_a_plain_table_says_the_same()
    {
        string table = "date,chance_pct,rain_mm,high_c,low_c\n" + string.Concat(Lines().Select(l => string.Create(
            CultureInfo.InvariantCulture,
            $"{l.Date:yyyy-MM-dd},{l.Chance!.Value.Percent:R},{l.Rain!.Value.Millimeters:R},{l.High?.DegreesCelsius:R},{l.Low?.DegreesCelsius:R}\n")));
        var read = Of(WeatherForecast.Read(new MemoryStream(System.Text.Encoding.UTF8.GetBytes(table)), "f.csv", WeatherFiles.Central));
        Assert.Equal(Of(WeatherForecast.FromLines(Lines(), WeatherFiles.Central)).Days.Select(d => d.Verdict), read.Days.Select(d => d.Verdict));
    }

    [Fact]
    public void A_kind_that_the_soil_is_too_sour_for_waits_while_the_others_are_sown()
    {
        var clover = new KindToSow { Kind = KindCatalog.Standard.Find("medium-red-clover"), Placement = SeedPlacement.PressedIn, WaitsForPh = 5.8 };
        var rye = new KindToSow { Kind = KindCatalog.Standard.Find("cereal-rye"), Placement = SeedPlacement.Covered };
        var decision = PlantingDecision.Of(new() { Kinds = [rye, clover], Forecast = WeatherFiles.Grid, Zone = WeatherFiles.Central, Texture = SoilTexture.SandyLoam }).Value;
        Assert.NotEqual(PlantingVerdict.Wait, decision.Now);
        Assert.Equal("Medium red clover", Assert.Single(decision.Days[0].Without).ShortName);
        Assert.Contains(decision.Days[0].Kinds[1].Reasons, r => r.Code == "calendar-too-sour" && r.Text.Contains("5.8", StringComparison.Ordinal));
        Assert.Equal(["calendar-ask-where", "calendar-ask-frost"], PlantingDecision.Of(decision.Request).Questions.Select(q => q.Code));
    }

    [Fact]
    public void Lime_at_work_and_days_to_frost_are_parts_of_a_day()
    {
        var frost = FrostDates.FromQuantiles(Temperature.FromDegreesFahrenheit(32), new(2024, 10, 20), new(2024, 11, 5), new(2024, 11, 20));
        var day = Of(WeatherFiles.Grid, frost, 5.8, new(2024, 1, 25)).Days[0];
        Assert.Equal(30, day.LimeDays);
        Assert.Equal(239, day.DaysToFrost);
        Assert.Contains(day.Reasons, r => r.Code == "calendar-lime-days-short");
        Assert.Contains(Of(WeatherFiles.Grid, frost, null, new(2024, 1, 25)).Days[0].Reasons, r => r.Code == "calendar-lime-days");
    }

    /// <summary>Lime of the day after is not at work yet.</summary>
    [Fact]
    public void Lime_that_is_not_on_yet_is_not_counted() => Assert.Null(Of(WeatherFiles.Grid, limedOn: new(2024, 3, 1)).Days[0].LimeDays);

    [Theory]
    [InlineData(80, 0.6, "calendar-rain-that-day")]
    [InlineData(10, 0.0, null)]
    public void The_dry_time_to_do_the_work_is_told(double chance, double inches, string? code)
    {
        var lines = Enumerable.Range(0, 7).Select(i => Typed(new DateOnly(2024, 3, 1).AddDays(i), i == 0 ? chance : 10, i == 0 ? inches : 0)).ToList();
        var day = Of(WeatherForecast.FromLines(lines, WeatherFiles.Central)).Days[0];
        Assert.Equal(code, day.Reasons.Select(r => r.Code).FirstOrDefault(c => c is "calendar-rain-that-day" or "calendar-dry-that-day"));
        Assert.Equal(code is null ? null : 0, day.DryHours);
    }

    /// <summary>Rain from six in the evening leaves twelve hours from six in the morning.</summary>
    [Fact]
    public void Rain_of_the_night_leaves_the_day_to_work()
    {
        var date = new DateOnly(2024, 3, 1);
        var lines = Enumerable.Range(0, 7).SelectMany(i => new[]
        {
            new TypedForecastLine { Date = date.AddDays(i), Part = TypedForecastPart.Daytime, Chance = Fraction.Zero, Rain = Length.Zero, High = Temperature.FromDegreesFahrenheit(65) },
            new TypedForecastLine { Date = date.AddDays(i), Part = TypedForecastPart.Night, Chance = Fraction.FromPercent(i == 1 ? 80 : 0), Rain = Length.FromInches(i == 1 ? 0.8 : 0), Low = Temperature.FromDegreesFahrenheit(45) },
        });
        var decision = Of(WeatherForecast.FromLines([.. lines], WeatherFiles.Central));
        var second = decision.Days.Single(d => d.Date == date.AddDays(1));
        Assert.Equal(12, second.DryHours);
        Assert.Contains(second.Reasons, r => r.Code == "calendar-dry-that-day");
    }

    [Fact]
    public void Ground_that_took_no_rain_the_day_before_is_worked()
    {
        var observed = WeatherHistory.FromDays([
            .. new[] { 3.0, 0 }.Select((inches, i) => new WeatherDay { Date = new DateOnly(2024, 2, 28).AddDays(i), Rain = Length.FromInches(inches), High = Temperature.FromDegreesFahrenheit(36), Low = Temperature.FromDegreesFahrenheit(33) }),
        ]);
        var lines = Enumerable.Range(0, 7).Select(i => Typed(new DateOnly(2024, 3, 1).AddDays(i), 60, 0.3)).ToList();
        Assert.DoesNotContain(Of(WeatherForecast.FromLines(lines, WeatherFiles.Central), observed: observed).Days[0].Reasons, r => r.Code == "calendar-too-wet");
    }

    [Fact]
    public void Ground_that_was_soaked_the_day_before_is_not_worked()
    {
        var observed = WeatherHistory.FromDays([new() { Date = new(2024, 2, 29), Rain = Length.FromInches(2), High = Temperature.FromDegreesFahrenheit(60), Low = Temperature.FromDegreesFahrenheit(45) }]);
        var lines = Enumerable.Range(0, 7).Select(i => Typed(new DateOnly(2024, 3, 1).AddDays(i), 60, 0.3)).ToList();
        var forecast = WeatherForecast.FromLines(lines, WeatherFiles.Central);
        Assert.Contains(Of(forecast, observed: observed).Days[0].Reasons, r => r.Code == "calendar-too-wet");
        Assert.DoesNotContain(Of(forecast).Days[0].Reasons, r => r.Code == "calendar-too-wet");
        Assert.Equal(new DateOnly(2024, 3, 1), Of(forecast, observed: observed).Days[0].Date);
    }

    [Fact]
    public void A_day_on_which_a_kind_drops_out_is_a_cost_of_waiting()
    {
        var lines = Enumerable.Range(0, 5).Select(i => Typed(new DateOnly(2024, 4, 13).AddDays(i), 80, 0.4)).ToList();
        var decision = Of(WeatherForecast.FromLines(lines, WeatherFiles.Central));
        var cost = Assert.Single(decision.Costs, c => !c.DropsOut.IsEmpty);
        Assert.Equal((new DateOnly(2024, 4, 15), new DateOnly(2024, 4, 16)), (cost.Go.Date, cost.Wait.Date));
    }

    [Fact]
    public void What_is_not_known_is_asked_or_said()
    {
        var kind = new KindToSow { Kind = KindCatalog.Standard.Find("medium-red-clover"), Placement = SeedPlacement.PressedIn };
        var forecast = WeatherForecast.FromLines(Lines(), WeatherFiles.Central);
        var nowhere = PlantingDecision.Of(new() { Kinds = [kind], Forecast = forecast, Zone = WeatherFiles.Central });
        Assert.Equal("calendar-ask-where", Assert.Single(nowhere.Questions).Code);
        var state = PlantingDecision.Of(new() { Kinds = [kind], Forecast = forecast, Zone = WeatherFiles.Central, Place = Place.Find("Alabama") }).Value;
        Assert.Contains(state.Findings, f => f.Code == "calendar-place-taken");
        Assert.Contains(state.Findings, f => f.Code == "calendar-texture-taken");
        var halfDays = PlantingDecision.Of(new() { Kinds = [kind], Forecast = WeatherForecast.ReadPeriods(WeatherFiles.Text("half-days.json"), "h"), Zone = WeatherFiles.Central });
        Assert.Equal("calendar-ask-forecast", Assert.Single(halfDays.Questions).Code);
    }

    /// <summary>The middle of the grid cell whose corners the document prints.</summary>
    [Fact]
    public void A_document_tells_its_own_place()
    {
        Assert.Equal(33.207, WeatherFiles.Grid.Place!.Value.LatitudeDegrees, 0.002);
        Assert.Equal(-87.568, WeatherFiles.Grid.Place!.Value.LongitudeDegrees, 0.002);
        Assert.Null(WeatherForecast.FromLines(Lines(), WeatherFiles.Central).Place);
    }

    [Fact]
    public void The_verdict_is_the_same_wherever_the_clock_stands()
    {
        var here = Of(WeatherFiles.Grid);
        Assert.Equal(here.Days.Length, here.Days.Select(d => d.Date).Distinct().Count());
        Assert.Equal(Enumerable.Range(0, here.Days.Length).Select(i => here.Days[0].Date.AddDays(i)), here.Days.Select(d => d.Date));
    }

    private static TypedForecastLine Typed(DateOnly date, double chance, double inches) =>
        new()
        {
            Date = date,
            Chance = Fraction.FromPercent(chance),
            Rain = Length.FromInches(inches),
            High = Temperature.FromDegreesFahrenheit(65),
            Low = Temperature.FromDegreesFahrenheit(45),
        };

    [GeneratedRegex("20[0-9]{2}-[0-9]{2}-[0-9]{2}")]
    private static partial Regex Dates();
}
