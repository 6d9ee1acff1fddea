using System.Collections.Immutable;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PlotAgronomy.Land;
using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Tests.Weather;

public class SeedbedTests
{
    private static readonly GeoPoint Place = GeoPoint.FromDegrees(40.78, -73.97);
    private static readonly DateOnly First = new(2026, 9, 1);

    internal static SeedbedOutlook Outlook(SoilTexture texture, SurfaceStart start, params double[] rain) => SeedbedOutlook.Of(Request(texture, start, rain)).Value;

    internal static SeedbedRequest Request(SoilTexture? texture, SurfaceStart start, params double[] rain) =>
        new() { Days = [.. rain.Select((r, i) => Day(i, r))], Place = Place, Texture = texture, Start = start };

    internal static WeatherDay Day(int at, double? rain, double high = 27, double low = 15) =>
        new()
        {
            Date = First.AddDays(at),
            Rain = rain is { } millimeters ? Length.FromMillimeters(millimeters) : null,
            High = Temperature.FromDegreesCelsius(high),
            Low = Temperature.FromDegreesCelsius(low),
        };

    [Property]
    public bool Water_is_neither_made_nor_lost(NonEmptyArray<byte> rain, byte demand, byte exposed, bool isDry)
    {
        const double Total = 19, Readily = 9;
        double before = isDry ? Total : 0, share = 0.2 + (exposed % 9 / 10.0);
        var days = SeedbedTrack.Run(rain.Get.Select((r, i) => new SeedbedTrack.Step(First.AddDays(i), r % 40, demand % 10, 1.2)), Readily, Total, before, 0.15, share);
        double into = days.Sum(d => d.RainMillimeters);
        double out_ = days.Sum(d => d.PercolationMillimeters) + days.Sum(d => d.EvaporationMillimeters / share);
        double stored = before - days[^1].EndMillimeters;
        return Math.Abs(into - out_ - stored) <= 1e-9 * Math.Max(1, into) && days.All(d => d.EndMillimeters is >= 0 and <= Total + 1e-9 && d.EvaporationMillimeters >= 0);
    }

    [Property]
    public bool More_rain_never_makes_a_drier_surface(NonEmptyArray<byte> rain, byte more)
    {
        double[] less = [.. rain.Get.Take(20).Select(r => r % 30 / 2.0)];
        var dry = Outlook(SoilTexture.Loam, SurfaceStart.Dry, less);
        var wet = Outlook(SoilTexture.Loam, SurfaceStart.Dry, [.. less.Select(r => r + (more % 20))]);
        return dry.Days.Zip(wet.Days).All(d => d.Second.Reduction >= d.First.Reduction - 1e-12 && d.Second.EndMillimeters <= d.First.EndMillimeters + 1e-9);
    }

    [Fact]
    public void Loose_seed_dries_first_and_covered_seed_last()
    {
        var outlook = Outlook(SoilTexture.Loam, SurfaceStart.Soaked, new double[15]);
        var loose = outlook.MoistDays(First, SeedPlacement.OnSurface);
        var pressed = outlook.MoistDays(First, SeedPlacement.PressedIn);
        var covered = outlook.MoistDays(First, SeedPlacement.Covered);
        Assert.True(loose.Fewest < pressed.Most && pressed.Most < covered.Most, $"{loose} {pressed} {covered}");
        Assert.True(loose.Fewest <= loose.Most);
    }

    [Fact]
    public void Sand_dries_before_silt_loam()
    {
        int Days(SoilTexture texture) => Outlook(texture, SurfaceStart.Soaked, new double[20]).MoistDays(First, SeedPlacement.Covered).Most;
        Assert.True(Days(SoilTexture.Sand) < Days(SoilTexture.SiltLoam));
    }

    [Fact]
    public void Dry_ground_is_not_moist_until_it_rains()
    {
        var outlook = Outlook(SoilTexture.Loam, SurfaceStart.Dry, 0, 25, 0, 0);
        Assert.Equal(0, outlook.Days[0].Wetness.Value);
        Assert.Equal(1, outlook.Days[1].Wetness.Value);
        Assert.Equal((0, 0), outlook.MoistDays(First, SeedPlacement.Covered));
        Assert.True(outlook.Days[1].Percolation.Millimeters > 0);
    }

    [Theory]
    [InlineData(null)]
    [InlineData(SoilTexture.ClayLoam)]
    public void A_texture_that_is_not_printed_is_asked_for_with_its_cases(SoilTexture? texture)
    {
        var answer = SeedbedOutlook.Of(Request(texture, SurfaceStart.Dry, 10, 0));
        Assert.Equal("weather-ask-texture", Assert.Single(answer.Questions).Code);
        Assert.Equal(5, answer.Cases.Length);
    }

    [Fact]
    public void Rain_and_temperatures_that_are_not_known_are_asked_for()
    {
        var request = Request(SoilTexture.Loam, SurfaceStart.Dry, 0, 0);
        var noRain = new SeedbedRequest { Days = [Day(0, 0), Day(1, null)], Place = Place, Texture = SoilTexture.Loam };
        var noLow = new SeedbedRequest { Days = [new() { Date = First, Rain = Length.Zero, High = Temperature.FromDegreesCelsius(20) }], Place = Place, Texture = SoilTexture.Loam };
        Assert.Equal(AnswerState.Given, SeedbedOutlook.Of(request).State);
        Assert.Equal("weather-ask-rain", SeedbedOutlook.Of(noRain).Questions.Single().Code);
        Assert.Equal("weather-ask-temperatures", SeedbedOutlook.Of(noLow).Questions.Single().Code);
        Assert.Throws<ArgumentException>(() => new SeedbedRequest { Days = [Day(0, 0), Day(2, 0)], Place = Place });
        Assert.Throws<ArgumentException>(() => new SeedbedRequest { Days = [], Place = Place });
    }

    /// <summary>The printed ranges rise with the fineness of the texture, and what is lost readily is part of the whole.</summary>
    [Fact]
    public void The_table_of_textures_has_nine_rows_that_hold_together()
    {
        ImmutableArray<SurfaceLayer> layers = [.. Enum.GetValues<SoilTexture>().Select(SurfaceLayer.Of).OfType<SurfaceLayer>()];
        Assert.Equal(9, layers.Length);
        Assert.All(layers, l => Assert.True(l.ReadilyLow < l.ReadilyHigh && l.TotalLow < l.TotalHigh && l.ReadilyHigh < l.TotalLow + 1e-9 || l.Texture is SoilTexture.Sand));
    }

    [Fact]
    public void The_working_shows_each_step_and_that_the_layer_is_from_memory()
    {
        var outlook = Outlook(SoilTexture.Loam, SurfaceStart.Soaked, 0, 0, 0, 0, 3);
        string work = string.Join('\n', outlook.ShowWork());
        Assert.Contains("2026-09-05: depletion after the rain", work, StringComparison.Ordinal);
        Assert.Contains("wetness = (total - depletion) / (total - readily)", work, StringComparison.Ordinal);
        Assert.Contains(outlook.Findings, f => f.Code == "data-from-memory");
        Assert.Contains(outlook.Findings, f => f.Code == "weather-layer-is-deeper" && f.Text.Contains("0.4 in", StringComparison.Ordinal));
    }

    /// <summary>FAO-56 example 14: 3.2 m/s at 10 m are 2.4 m/s at 2 m.</summary>
    [Fact]
    public void Wind_from_ten_meters_is_brought_down_to_two()
    {
        WeatherDay Windy(double speed, Length? height) => new() { Date = First, Wind = Speed.FromMetersPerSecond(speed), WindHeight = height };
        Assert.Equal(2.39344, SeedbedClimate.Of(Windy(3.2, Length.FromMeters(10))).Wind, 5);
        Assert.Equal(3.2, SeedbedClimate.Of(Windy(3.2, null)).Wind, 12);
        Assert.Equal(3.2, SeedbedClimate.Of(Windy(3.2, Length.FromMeters(2))).Wind, 12);
        Assert.Equal(2, SeedbedClimate.Of(Day(0, 0)).Wind, 12);
    }

    [Fact]
    public void The_soil_is_the_mean_of_three_days_of_air()
    {
        ImmutableArray<WeatherDay> days = [Day(0, 0, 10, 0), Day(1, 0, 20, 10), Day(2, 0, 30, 20), Day(3, 0, 30, 20)];
        Assert.Equal([5, 10, 15, 65.0 / 3], Enumerable.Range(0, 4).Select(i => SoilTemperature.Estimate(days, i)), (a, b) => Math.Abs(a - b) < 1e-12);
    }
}
