using PlotAgronomy.Calendar;
using PlotAgronomy.Land;
using PlotAgronomy.Reference;
using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Tests.Calendar;

/// <summary>What a decision is made of: verdicts, places, textures, clocks and the days that follow each other.</summary>
public class DecisionPartTests
{
    [Fact]
    public void The_verdict_of_several_kinds_is_care_unless_all_agree()
    {
        Assert.Equal(PlantingVerdict.Sow, Verdicts.OfSeveral([PlantingVerdict.Sow, PlantingVerdict.Sow]));
        Assert.Equal(PlantingVerdict.Wait, Verdicts.OfSeveral([PlantingVerdict.Wait, PlantingVerdict.Wait]));
        Assert.Equal(PlantingVerdict.SowWithCare, Verdicts.OfSeveral([PlantingVerdict.Sow, PlantingVerdict.Wait]));
        Assert.Equal(PlantingVerdict.SowWithCare, Verdicts.OfSeveral([PlantingVerdict.SowWithCare, PlantingVerdict.SowWithCare]));
    }

    [Fact]
    public void The_verdict_of_one_kind_is_that_of_its_most_serious_reason()
    {
        var warning = FindingCatalog.Create(CalendarCodes.TooSour, ("kind", "clover"), ("ph", "5.8"));
        var note = FindingCatalog.Create(CalendarCodes.FrostLeft, ("days", "30"), ("frost", "2026-10-03"));
        Assert.Equal(FindingSeverity.Warning, warning.Severity);
        Assert.Equal(FindingSeverity.Note, note.Severity);
        Assert.Equal(PlantingVerdict.Sow, Verdicts.Of([]));
        Assert.Equal(PlantingVerdict.Sow, Verdicts.Of([note]));
        Assert.Equal(PlantingVerdict.Wait, Verdicts.Of([note, warning]));
    }

    [Fact]
    public void A_point_goes_before_that_of_the_forecast_and_both_before_the_middle_of_a_state()
    {
        var own = GeoPoint.FromDegrees(40, -80);
        var alabama = Place.Find("Alabama");
        Assert.Equal((own, null), PlacePoint.Of(own, null, alabama)!.Value);
        var taken = PlacePoint.Of(null, null, alabama)!.Value;
        Assert.Equal((33, -87), (taken.Point.LatitudeDegrees, taken.Point.LongitudeDegrees));
        Assert.Contains("the middle of Alabama", taken.Remark!.Text, StringComparison.Ordinal);
        Assert.Null(PlacePoint.Of(null, null, null));
    }

    [Theory]
    [InlineData(SoilTexture.SandyLoam, SoilTexture.SandyLoam, null)]
    [InlineData(SoilTexture.ClayLoam, SoilTexture.SiltyClayLoam, "nothing is printed for clay loam")]
    [InlineData(SoilTexture.SandyClay, SoilTexture.Clay, "nothing is printed for sandy clay")]
    public void A_texture_that_is_not_printed_is_taken_as_the_nearest(SoilTexture texture, SoilTexture taken, string? reason)
    {
        var (found, remark) = SurfaceTexture.Of(texture);
        Assert.Equal(taken, found);
        Assert.Equal(reason is null, remark is null);
        Assert.Contains(reason ?? "", remark?.Text ?? "", StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_texture_loam_is_taken_aloud()
    {
        var (found, remark) = SurfaceTexture.Of(null);
        Assert.Equal(SoilTexture.Loam, found);
        Assert.Contains("neither report nor plot tells it", remark!.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-87.5, -6)] // 5.83 hours
    [InlineData(-75, -5)]
    [InlineData(-82.4, -5)]
    [InlineData(-82.5, -6)]
    [InlineData(0, 0)]
    [InlineData(10, 1)]
    public void A_sun_clock_goes_by_whole_hours_of_longitude(double longitude, int hours) =>
        Assert.Equal(TimeSpan.FromHours(hours), SunClock.Of(GeoPoint.FromDegrees(33, longitude)).BaseUtcOffset);

    [Fact]
    public void Without_a_place_the_clock_is_universal_time() => Assert.Equal(TimeZoneInfo.Utc, SunClock.Of(null));

    private static TypedForecastLine Told(int day, double chance = 0) => new()
    {
        Date = new(2026, 9, day),
        Chance = Fraction.FromPercent(chance),
        Rain = Length.FromInches(chance > 0 ? 0.2 : 0),
        High = Temperature.FromDegreesFahrenheit(70),
        Low = Temperature.FromDegreesFahrenheit(50),
    };

    private static WeatherDay Seen(int day, bool isWhole = true) => new()
    {
        Date = new(2026, 9, day),
        Rain = isWhole ? Length.Zero : null,
        High = Temperature.FromDegreesFahrenheit(70),
        Low = Temperature.FromDegreesFahrenheit(50),
    };

    [Fact]
    public void Observed_days_count_as_far_back_as_none_is_missing()
    {
        var forecast = WeatherForecast.FromLines([Told(10), Told(11)], TimeZoneInfo.Utc);
        var seen = WeatherHistory.FromDays([Seen(5), Seen(6, isWhole: false), Seen(7), Seen(8), Seen(9)]);
        var run = DayRun.Of(forecast, seen, TimeZoneInfo.Utc)!;
        Assert.Equal([7, 8, 9, 10, 11], run.Days.Select(d => d.Date.Day));
        Assert.Equal(new DateOnly(2026, 9, 10), run.First);
        Assert.Equal([10, 11], DayRun.Of(forecast, null, TimeZoneInfo.Utc)!.Days.Select(d => d.Date.Day));
        Assert.Equal(
            [10, 11],
            DayRun.Of(forecast, WeatherHistory.FromDays([Seen(7), Seen(8)]), TimeZoneInfo.Utc)!.Days.Select(d => d.Date.Day)
        );
    }

    [Theory]
    [InlineData(29, null, true)]
    [InlineData(30, null, false)]
    [InlineData(49, null, false)]
    [InlineData(50, 0, false)]
    public void Dry_hours_end_where_rain_is_as_likely_as_not_and_work_where_it_is_reckoned_with(
        double chance,
        int? hours,
        bool isEnough
    )
    {
        var forecast = WeatherForecast.FromLines([Told(10, chance), Told(11)], TimeZoneInfo.Utc);
        Assert.Equal(hours, DryHours.On(new(2026, 9, 10), forecast, TimeZoneInfo.Utc));
        Assert.Equal(isEnough, DryHours.AreEnough(new(2026, 9, 10), forecast, TimeZoneInfo.Utc));
        Assert.Null(DryHours.On(new(2026, 9, 11), forecast, TimeZoneInfo.Utc));
    }

    [Fact]
    public void Rain_of_another_day_is_hours_away()
    {
        // From six in the morning of the 10th to midnight, when the 11th begins.
        var forecast = WeatherForecast.FromLines([Told(10), Told(11, 80)], TimeZoneInfo.Utc);
        Assert.Equal(18, DryHours.On(new(2026, 9, 10), forecast, TimeZoneInfo.Utc));
        Assert.True(DryHours.AreEnough(new(2026, 9, 10), forecast, TimeZoneInfo.Utc));
    }

    [Fact]
    public void What_a_decision_cannot_do_without_is_refused_by_name()
    {
        var refused = Assert.Throws<ArgumentNullException>(() => new KindToSow
        {
            Kind = null!,
            Placement = SeedPlacement.PressedIn,
        });
        Assert.Equal("Kind", refused.ParamName);
        Assert.ThrowsAny<ArgumentException>(() => new KindToSow
        {
            Kind = KindCatalog.Standard.Find("kale"),
            Placement = (SeedPlacement)99,
        });
        var kale = new KindToSow { Kind = KindCatalog.Standard.Find("kale"), Placement = SeedPlacement.PressedIn };
        var forecast = WeatherForecast.FromLines([Told(10)], TimeZoneInfo.Utc);
        Assert.ThrowsAny<ArgumentException>(() => new DecisionRequest
        {
            Kinds = [],
            Forecast = forecast,
            Zone = TimeZoneInfo.Utc,
        });
        Assert.ThrowsAny<ArgumentException>(() => new DecisionRequest
        {
            Kinds = [kale],
            Forecast = null!,
            Zone = TimeZoneInfo.Utc,
        });
        Assert.ThrowsAny<ArgumentException>(() => new DecisionRequest { Kinds = [kale], Forecast = forecast, Zone = null! });
        Assert.ThrowsAny<ArgumentException>(() => new DecisionRequest
        {
            Kinds = [kale],
            Forecast = forecast,
            Zone = TimeZoneInfo.Utc,
            Texture = (SoilTexture)99,
        });
        Assert.Throws<ArgumentNullException>(() => PlantingDecision.Of(null!));
    }
}
