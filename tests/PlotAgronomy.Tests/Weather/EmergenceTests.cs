using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PlotAgronomy.Land;
using PlotAgronomy.Reference;
using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Tests.Weather;

public class EmergenceTests
{
    private static readonly DateOnly First = new(2026, 9, 1);

    private static CropKind Kind(string id) => KindCatalog.Standard.Find(id);

    private static EmergenceOutlook Of(string kind, SeedPlacement placement, params double[] rain) =>
        EmergenceOutlook.Of(SeedbedTests.Outlook(SoilTexture.Loam, SurfaceStart.Dry, rain), Kind(kind), First, placement).Value;

    private static SeedbedOutlook Warm(double[] rain) =>
        SeedbedOutlook.Of(new() { Days = [.. rain.Select((r, i) => SeedbedTests.Day(i, r, 32, 20))], Place = GeoPoint.FromDegrees(40.78, -73.97), Texture = SoilTexture.Loam }).Value;

    private static double[] Showers(int days, int every) => [.. Enumerable.Range(0, days).Select(i => i % every == 0 ? 20.0 : 0)];

    /// <summary>Inside the cardinal range more heat is more speed.</summary>
    [Property]
    public bool A_warmer_season_never_delays_emergence_inside_the_cardinal_range(NonEmptyArray<(byte Celsius, bool IsMoist)> days, byte warmer)
    {
        foreach (var rule in ThermalTime.Everything)
        {
            double best = rule.BestCelsius ?? 40;
            DateOnly? On(double add) =>
                EmergenceClock.Reached(
                    days.Get.Select((d, i) => new EmergenceDay(First.AddDays(i), Math.Min(best, (d.Celsius % 30) + add), d.IsMoist)),
                    rule.OfDay,
                    rule.At(20)
                );
            if (On(0) is { } cool && !(On(warmer % 10) <= cool))
            {
                return false;
            }
        }

        return true;
    }

    [Property]
    public bool A_drier_spring_never_hastens_it(NonEmptyArray<(byte Celsius, bool IsMoist)> days, byte drop)
    {
        var rule = ThermalTime.Find("red-clover-emergence");
        var moist = days.Get.Select((d, i) => new EmergenceDay(First.AddDays(i), d.Celsius % 26, d.IsMoist)).ToList();
        var drier = moist.Select((d, i) => d with { IsMoist = d.IsMoist && i % (2 + (drop % 5)) != 0 });
        return EmergenceClock.Reached(drier, rule.OfDay, 50) is not { } late || EmergenceClock.Reached(moist, rule.OfDay, 50) <= late;
    }

    [Theory]
    [InlineData(-1, 0)]
    [InlineData(0, 0)]
    [InlineData(13, 13)]
    [InlineData(26, 26)]
    [InlineData(31.5, 13)]
    [InlineData(37, 0)]
    [InlineData(40, 0)]
    public void The_rate_rises_to_the_best_temperature_and_falls_to_nothing(double celsius, double expected) =>
        Assert.Equal(expected, ThermalTime.Find("wheat-emergence").OfDay(celsius), 12);

    /// <summary>Mean 21 C: 104.6 / 21 = 4.98, so five moist days, the first of them the day of sowing.</summary>
    [Fact]
    public void Covered_red_clover_is_up_after_five_moist_days()
    {
        var outlook = Of("medium-red-clover", SeedPlacement.Covered, Showers(20, 2));
        Assert.True(outlook.IsByThermalTime);
        Assert.Equal(First.AddDays(4), outlook.EmergesOn);
        Assert.Equal(21, outlook.SoilTemperatureEstimate.DegreesCelsius, 9);
        Assert.Equal(0, outlook.DaysExposed);
        Assert.Contains("104.6 / (21 - 0) = 4.98 moist days", string.Join('\n', outlook.ShowWork()), StringComparison.Ordinal);
    }

    [Fact]
    public void Loose_seed_is_later_than_pressed_and_pressed_later_than_covered()
    {
        var seedbed = Warm(Showers(60, 6));
        int Days(SeedPlacement placement) => EmergenceOutlook.Of(seedbed, Kind("medium-red-clover"), First, placement).Value.EmergesOn!.Value.DayNumber;
        Assert.True(Days(SeedPlacement.OnSurface) > Days(SeedPlacement.PressedIn), "pressed");
        Assert.True(Days(SeedPlacement.PressedIn) > Days(SeedPlacement.Covered), "covered");
    }

    [Fact]
    public void A_sprout_that_dries_is_warned_of_and_swollen_seed_is_not_lost()
    {
        var dries = Of("medium-red-clover", SeedPlacement.PressedIn, [20, .. new double[19]]);
        Assert.NotNull(dries.SproutsOn);
        Assert.Null(dries.EmergesOn);
        Assert.True(dries.DryDaysAfterSprouting > 0);
        Assert.Contains(dries.Findings, f => f is { Code: "weather-sprouts-dry", Severity: FindingSeverity.Warning });
        var stays = Of("medium-red-clover", SeedPlacement.Covered, Showers(20, 2));
        Assert.DoesNotContain(stays.Findings, f => f.Code is "weather-sprouts-dry" or "weather-swollen-dries");
        var swollen = Of("timothy", SeedPlacement.OnSurface, Showers(60, 8));
        Assert.Contains(swollen.Findings, f => f.Code == "weather-swollen-dries");
        Assert.NotNull(Of("timothy", SeedPlacement.Covered, Showers(60, 4)).EmergesOn);
    }

    /// <summary>Large seed was gone in 3 days, small seed still there after 36.</summary>
    [Fact]
    public void Large_seed_on_the_surface_is_eaten_and_small_seed_waits()
    {
        double[] rain = [.. new double[10], .. Showers(30, 1)];
        Assert.Contains(Of("field-pea", SeedPlacement.OnSurface, rain).Findings, f => f.Code == "weather-seed-eaters");
        Assert.DoesNotContain(Of("field-pea", SeedPlacement.Covered, rain).Findings, f => f.Code == "weather-seed-eaters");
        Assert.DoesNotContain(Of("white-dutch-clover", SeedPlacement.OnSurface, rain).Findings, f => f.Code == "weather-seed-eaters");
        Assert.Contains(Of("white-dutch-clover", SeedPlacement.OnSurface, new double[36]).Findings, f => f.Code == "weather-seed-eaters");
        Assert.DoesNotContain(Of("white-dutch-clover", SeedPlacement.OnSurface, new double[35]).Findings, f => f.Code == "weather-seed-eaters");
    }

    [Fact]
    public void A_thermal_time_from_memory_answers_only_by_name_and_says_so()
    {
        var seedbed = SeedbedTests.Outlook(SoilTexture.Loam, SurfaceStart.Dry, Showers(30, 2));
        var own = EmergenceOutlook.Of(seedbed, Kind("white-dutch-clover"), First, SeedPlacement.Covered).Value;
        var named = EmergenceOutlook.Of(seedbed, Kind("white-dutch-clover"), First, SeedPlacement.Covered, thermalTimeId: "white-clover-emergence").Value;
        Assert.False(own.IsByThermalTime);
        Assert.Contains(own.Findings, f => f.Code == "weather-printed-days-counted");
        Assert.True(named.IsByThermalTime);
        Assert.Contains(named.Findings, f => f.Code == "data-from-memory");
        Assert.Throws<KeyNotFoundException>(() => EmergenceOutlook.Of(seedbed, Kind("oats-winter"), First, SeedPlacement.Covered, thermalTimeId: "no such"));
    }

    [Fact]
    public void Cold_soil_is_said()
    {
        var days = Enumerable.Range(0, 20).Select(i => SeedbedTests.Day(i, 5, 6, 0)).ToArray();
        var seedbed = SeedbedOutlook.Of(new() { Days = [.. days], Place = GeoPoint.FromDegrees(40, -80), Texture = SoilTexture.Loam }).Value;
        var corn = EmergenceOutlook.Of(seedbed, Kind("corn"), First, SeedPlacement.Covered).Value;
        Assert.Null(corn.EmergesOn);
        Assert.Contains(corn.Findings, f => f.Code == "weather-soil-too-cold");
        Assert.Throws<ArgumentOutOfRangeException>(() => EmergenceOutlook.Of(seedbed, Kind("corn"), First.AddDays(-1), SeedPlacement.Covered));
        Assert.Throws<ArgumentOutOfRangeException>(() => EmergenceOutlook.Of(seedbed, Kind("corn"), First, SeedPlacement.Covered, Length.FromInches(-1)));
    }

    [Fact]
    public void Every_kind_of_the_catalog_has_a_clock_or_a_question()
    {
        var seedbed = Warm(Showers(60, 1));
        Assert.All(KindCatalog.Standard.Kinds, kind => Assert.True(EmergenceOutlook.Of(seedbed, kind, First, SeedPlacement.Covered) is var answer && (answer.State == AnswerState.Open || answer.Value.EmergesOn is not null), kind.Id));
    }

    [Fact]
    public void The_kinds_of_the_tables_are_kinds_of_the_catalog()
    {
        Assert.All(ThermalTime.Everything.SelectMany(t => t.KindIds), id => Assert.True(KindCatalog.Standard.TryFind(id, out _, out _), id));
        Assert.All(CsvTable.Embedded("Weather/Data/cold-limits.csv").Rows.Concat(CsvTable.Embedded("Weather/Data/growth-needs.csv").Rows).SelectMany(r => r.List("kind_ids")), id => Assert.True(KindCatalog.Standard.TryFind(id, out _, out _), id));
    }
}
