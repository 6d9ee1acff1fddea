using System.Globalization;
using PlotAgronomy.Calendar;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;
using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Tests.Calendar;

public class KindDatesTests
{
    private static readonly Temperature Freeze = Temperature.FromDegreesFahrenheit(32);

    /// <summary>Albany's normals of 1991 to 2020: 3 and 15 October, 1 November (WX-NCEI).</summary>
    private static readonly FrostDates Albany = FrostDates.FromQuantiles(Freeze, new(2026, 10, 3), new(2026, 10, 15), new(2026, 11, 1));

    private static CropKind Kind(string name) => KindCatalog.Standard.Find(name);

    private static DayRange Days(int from, int to) => new() { From = from, To = to, Evidence = Origin.FromUser("the case") };

    private static void Matches(string caseId, string quantity, DateOnly? date)
    {
        string text = date!.Value.ToString("MM-dd", CultureInfo.InvariantCulture);
        PracticeCase.Note(caseId, quantity, text);
        var row = WorkedExamples.Table(Path.Combine("Support", "cases.csv")).Rows.Single(r => r.Text("case") == caseId && r.Text("quantity") == quantity);
        Assert.Equal(row.Text("expected"), text);
    }

    /// <summary>Best quality after 60 days, full yield after 70 and more (WX-OSU2003).</summary>
    [Fact]
    public void Practice_case_C61_last_days_for_a_brassica()
    {
        var dates = KindDates.Of(Kind("forage-turnip"), new(2026, 8, 1), null, Albany);
        Matches("C61", "60 d, median", dates.BeforeMiddleFrost.Single(l => l.Use == "best quality").Latest);
        Matches("C61", "70 d, median", dates.BeforeMiddleFrost.Single(l => l.Use == "full yield").Latest);
        Matches("C61", "60 d, 10 % date", dates.BeforeEarlyFrost.Single(l => l.Use == "best quality").Latest);
        Matches("C61", "70 d, 10 % date", dates.BeforeEarlyFrost.Single(l => l.Use == "full yield").Latest);
        Assert.True(dates.StopsAtFrost);
        Assert.True(dates.LastSensible >= new DateOnly(2026, 8, 4));
    }

    [Fact]
    public void Practice_case_C63_the_class_of_a_hard_rain()
    {
        PracticeCase.AssertMatches("C63", "mean, first", RainMath.Rate(1.5, 6));
        PracticeCase.AssertMatches("C63", "mean, second", RainMath.Rate(3.0, 6));
        PracticeCase.AssertMatches("C63", "55 mm/h", Length.FromMillimeters(WeatherConstants.All["wash-off-rate"]).Inches);
        Assert.Equal(RainIntensity.Moderate, IntensityOf(1.5));
        Assert.Equal(RainIntensity.Heavy, IntensityOf(3.0));
    }

    /// <summary>Sowing 14 September, freeze of half the years 18 October.</summary>
    [Fact]
    public void Practice_case_C65_which_kinds_still_fit()
    {
        var frost = FrostDates.FromQuantiles(Freeze, new(2026, 10, 5), new(2026, 10, 18), new(2026, 11, 3));
        var sowOn = new DateOnly(2026, 9, 14);
        var half = Fraction.FromPercent(50);
        var turnip = KindDates.Of(Kind("forage-turnip"), sowOn, null, frost);
        PracticeCase.AssertMatches("C65", "days left", turnip.MiddleFrost!.Value.DayNumber - sowOn.DayNumber);
        Matches("C65", "brassica 60 d", turnip.BeforeMiddleFrost.Single(l => l.Use == "best quality").Latest);
        Matches("C65", "brassica 70 d", turnip.BeforeMiddleFrost.Single(l => l.Use == "full yield").Latest);
        var oats = KindDates.Of(Kind("spring-oats") with { UsableForage = Days(30, 45) }, sowOn, null, frost);
        Matches("C65", "oats 30 d", oats.LastForForage(half));
        Matches("C65", "oats 45 d", oats.SafeForForage(half));
        Assert.True(oats.LastForForage(half) >= sowOn);
        Assert.True(turnip.LastForForage(half) < sowOn || turnip.BeforeMiddleFrost.Single(l => l.Use == "best quality").Latest < sowOn);
        Assert.False(KindDates.Of(Kind("medium-red-clover"), sowOn, null, frost).StopsAtFrost);
    }

    [Theory]
    [InlineData("cereal-rye")]
    [InlineData("winter-wheat")]
    [InlineData("ladino-clover")]
    public void What_lives_through_winter_is_not_stopped_by_the_first_freeze(string kind)
    {
        var dates = KindDates.Of(Kind(kind), new(2026, 9, 14), null, Albany);
        Assert.False(dates.StopsAtFrost);
        Assert.Null(dates.LastSensible);
    }

    /// <summary>Minnesota prints radish until 15 September and red clover until 15 August (KIND-UMN).</summary>
    [Fact]
    public void As_the_day_slips_kinds_drop_out_one_after_the_other()
    {
        var dates = SowingDates.Of([Kind("cereal-rye"), Kind("medium-red-clover"), Kind("forage-radish")], new(2026, 8, 5), PlantingRegion.North, Albany);
        var order = dates.DropOut.Select(k => k.LastSensible).ToList();
        Assert.True(order.Count >= 2);
        Assert.Equal(order.Order(), order);
        Assert.Equal("Cereal rye", dates.DropOut[^1].Kind.ShortName);
        Assert.True(dates.From <= dates.SowOn && dates.SowOn <= dates.To);
        Assert.Contains(dates.DroppingOut(new(2026, 8, 5), new(2026, 12, 1)), k => k.Kind.Id == "medium-red-clover");
        Assert.Empty(dates.DroppingOut(new(2026, 8, 5), new(2026, 8, 6)));
    }

    [Fact]
    public void In_December_nothing_of_a_summer_blend_is_in_season()
    {
        var dates = SowingDates.Of([Kind("buckwheat"), Kind("forage-turnip")], new(2026, 12, 10), PlantingRegion.North, Albany);
        Assert.Equal(2, dates.OutOfSeason.Length);
        Assert.Null(dates.From);
        Assert.All(dates.Kinds, k => Assert.Null(k.LastPrinted));
    }

    /// <summary>An earlier frost never allows a later day.</summary>
    [FsCheck.Xunit.Property]
    public bool An_earlier_frost_never_allows_a_later_day(byte earlier, byte spread)
    {
        var middle = new DateOnly(2026, 10, 20);
        FrostDates Moved(int days) => FrostDates.FromQuantiles(Freeze, middle.AddDays(-20 - days), middle.AddDays(-days), middle.AddDays(5 + (spread % 20) - days));
        foreach (var kind in new[] { Kind("forage-turnip"), Kind("spring-oats"), Kind("buckwheat") })
        {
            var late = KindDates.Of(kind, new(2026, 8, 1), null, Moved(0)).LastSensible;
            var early = KindDates.Of(kind, new(2026, 8, 1), null, Moved(earlier % 60)).LastSensible;
            if (early > late)
            {
                return false;
            }
        }

        return true;
    }

    private static RainIntensity IntensityOf(double inchesInSixHours)
    {
        var start = new DateTimeOffset(2026, 9, 1, 0, 0, 0, TimeSpan.Zero);
        var forecast = new WeatherForecast
        {
            FileName = "six hours",
            Blocks = [new(new(start, start.AddHours(6)), 1, inchesInSixHours * 25.4)],
        };
        return forecast.Rain(start, start.AddHours(6)).Value.LeastIntensity;
    }
}
