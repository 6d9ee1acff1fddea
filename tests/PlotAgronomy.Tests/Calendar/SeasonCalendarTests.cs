using PlotAgronomy.Calendar;

namespace PlotAgronomy.Tests.Calendar;

/// <summary>A season counted back and on from the day of sowing.</summary>
public class SeasonCalendarTests
{
    private static readonly DateOnly SowOn = new(2026, 9, 12);

    private static CropKind Kind(string name) => KindCatalog.Standard.Find(name);

    private static readonly SeasonPass[] GrainAndClover =
    [
        new() { Kinds = [Kind("spring-oats"), Kind("cereal-rye")], IsCovered = true },
        new() { Kinds = [Kind("medium-red-clover")] },
    ];

    private static SeasonRequest Request(
        DateOnly? limeOn = null,
        WeedControl? weeds = null,
        GroundWork ground = GroundWork.Tilled,
        DateOnly? sampledOn = null,
        bool isStanding = false,
        DateOnly? frost = null) =>
        new()
        {
            SowOn = SowOn,
            Passes = [.. GrainAndClover],
            Ground = ground,
            SampledOn = sampledOn,
            NeedsLime = true,
            LimeIsWorkedIn = ground == GroundWork.Tilled,
            LimeOn = limeOn,
            NeedsRetest = true,
            NeedsFertilizer = true,
            Weeds = weeds ?? new WeedControl { Way = WeedWay.RepeatedTillage },
            IsStanding = isStanding,
            KillingFrost = frost,
        };

    private static SeasonTask Find(SeasonCalendar season, string id) => season.Tasks.Single(t => t.Id == id);

    /// <summary>Three to six months (LIME-S17), two weeks between two tillages (practice): reckoned by hand on a calendar.</summary>
    [Fact]
    public void Every_task_is_counted_back_and_on_from_the_day_of_sowing()
    {
        var season = SeasonCalendar.Of(Request()).Value;
        var lime = Find(season, "lime-worked-in");
        Assert.Equal((new DateOnly(2026, 3, 13), new DateOnly(2026, 6, 13)), (lime.Earliest, lime.Latest));
        Assert.Equal(["sample"], lime.WaitsFor);
        Assert.Equal("LIME-S17", lime.Origin.ToString());
        var retest = Find(season, "retest");
        Assert.Equal((new DateOnly(2026, 7, 29), new DateOnly(2026, 8, 15)), (retest.Earliest, retest.Latest));
        var inspect = Find(season, "inspect");
        Assert.Equal((new DateOnly(2026, 10, 3), new DateOnly(2026, 10, 10)), (inspect.Earliest, inspect.Latest));
        Assert.Equal(["sow-1", "sow-2"], season.Tasks.Where(t => t.Pass is not null).Select(t => t.Id));
        Assert.True(Find(season, "weeds-next-tillage").Earliest >= Find(season, "weeds-first-tillage").Earliest!.Value.AddDays(14));
        Assert.Empty(season.Findings);
    }

    /// <summary>Large seed, cover, small seed, press: as it is done on the day.</summary>
    [Fact]
    public void On_the_day_small_seed_follows_the_covering_of_the_large()
    {
        var ids = SeasonCalendar.Of(Request()).Value.Tasks.Select(t => t.Id).ToList();
        Assert.Equal(["inoculate", "sow-1", "cover", "sow-2", "press"], ids.Where(i => i is "inoculate" or "cover" or "press" || i.StartsWith("sow", StringComparison.Ordinal)));
    }

    /// <summary>Oats die in winter: there is nothing to mow at boot stage in spring.</summary>
    [Fact]
    public void A_grain_that_dies_in_winter_is_not_mown_in_spring()
    {
        SeasonRequest With(string grain) => new() { SowOn = SowOn, Ground = GroundWork.Tilled, Passes = [new() { Kinds = [Kind(grain)], IsCovered = true }, new() { Kinds = [Kind("medium-red-clover")] }] };
        Assert.DoesNotContain(SeasonCalendar.Of(With("spring-oats")).Value.Tasks, t => t.Id == "clip-nurse");
        Assert.Contains(SeasonCalendar.Of(With("cereal-rye")).Value.Tasks, t => t.Id == "clip-nurse");
    }

    [Fact]
    public void The_retest_comes_before_the_seed_and_after_the_lime()
    {
        var season = SeasonCalendar.Of(Request(limeOn: new(2026, 4, 4))).Value;
        Assert.True(Find(season, "retest").Latest < SowOn);
        Assert.True(Find(season, "retest").Earliest >= new DateOnly(2026, 4, 4).AddDays(60));
        Assert.Contains("retest", Find(season, "sow-1").WaitsFor);
    }

    /// <summary>Practice case C03: two weeks are far below the 3 to 6 months in which lime starts.</summary>
    [Fact]
    public void Practice_case_C03_lime_two_weeks_before_the_seed_is_too_late()
    {
        var season = SeasonCalendar.Of(Request(limeOn: SowOn.AddDays(-14))).Value;
        var late = Assert.Single(season.Findings, f => f.Code == "calendar-lime-late");
        Assert.Equal(FindingSeverity.Warning, late.Severity);
        Assert.Contains("14 days", late.Text, StringComparison.Ordinal);
        Assert.Contains("2026-11-28", late.Text, StringComparison.Ordinal);
        Assert.True(Find(season, "retest").DaysShort > 0);
        Assert.Equal(0, Find(season, "sow-1").DaysShort);
        Assert.DoesNotContain("retest", Find(season, "sow-1").WaitsFor);
    }

    [Fact]
    public void A_sample_taken_after_its_time_pushes_what_follows_from_it_and_says_how_many_days_are_missing()
    {
        var season = SeasonCalendar.Of(Request(sampledOn: new(2026, 8, 1))).Value;
        var lime = Find(season, "lime-worked-in");
        Assert.Equal(new DateOnly(2026, 8, 1), lime.Earliest);
        Assert.Equal(49, lime.DaysShort);
        Assert.Contains(season.Findings, f => f.Code == "calendar-lead-short" && f.Text.Contains("49 days short", StringComparison.Ordinal));
        Assert.DoesNotContain(season.Tasks, t => t.Id == "sample");
    }

    /// <summary>Buckwheat is killed 35 to 40 days after a summer sowing, 50 after one of late May (KIND-CORN-BW): so of 25 June
    /// between 30 July and 4 August, and of 25 May on 14 July.</summary>
    [Theory]
    [InlineData("2026-06-25", "2026-07-30", "2026-08-04")]
    [InlineData("2026-05-25", "2026-07-14", "2026-07-14")]
    public void Buckwheat_is_killed_before_its_seed_fills(string sown, string from, string to)
    {
        var weeds = new WeedControl { Way = WeedWay.SmotherCrop, SmotherKind = Kind("buckwheat"), SmotherSownOn = DateOnly.Parse(sown, null) };
        var season = SeasonCalendar.Of(Request(weeds: weeds)).Value;
        var kill = Find(season, "smother-kill");
        Assert.Equal((DateOnly.Parse(from, null), DateOnly.Parse(to, null)), (kill.Earliest, kill.Latest));
        Assert.Equal("KIND-CORN-BW", kill.Origin.ToString());
    }

    [Fact]
    public void A_smother_crop_that_is_counted_back_is_killed_two_weeks_before_the_seed()
    {
        var weeds = new WeedControl { Way = WeedWay.SmotherCrop, SmotherKind = Kind("buckwheat") };
        var season = SeasonCalendar.Of(Request(weeds: weeds)).Value;
        Assert.Equal(new DateOnly(2026, 8, 29), Find(season, "smother-kill").Latest);
        Assert.Equal(new DateOnly(2026, 7, 25), Find(season, "smother-sow").Latest);
        Assert.Contains("35 to 40 days", Find(season, "smother-sow").Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_smother_crop_that_is_rolled_over_the_seed_stands_until_sowing()
    {
        var weeds = new WeedControl { Way = WeedWay.SmotherCrop, SmotherKind = Kind("buckwheat") };
        var season = SeasonCalendar.Of(Request(weeds: weeds, ground: GroundWork.RolledDown)).Value;
        Assert.DoesNotContain(season.Tasks, t => t.Id == "smother-kill");
        Assert.Equal(SowOn, Find(season, "smother-over-seed").Latest);
        Assert.Equal(SowOn.AddDays(-35), Find(season, "smother-sow").Latest);
    }

    [Fact]
    public void A_smother_crop_sown_too_late_or_left_too_long_is_said()
    {
        WeedControl Sown(DateOnly on) => new() { Way = WeedWay.SmotherCrop, SmotherKind = Kind("buckwheat"), SmotherSownOn = on };
        Assert.Contains(SeasonCalendar.Of(Request(weeds: Sown(new(2026, 8, 10)))).Findings, f => f.Code == "calendar-smother-short");
        Assert.Contains(SeasonCalendar.Of(Request(weeds: Sown(new(2026, 6, 1)))).Findings, f => f.Code == "calendar-smother-long");
    }

    [Fact]
    public void Of_a_herbicide_only_the_interval_of_its_label_is_reckoned_with()
    {
        var asked = SeasonCalendar.Of(Request(weeds: new() { Way = WeedWay.Herbicide }));
        Assert.Contains(asked.Questions, q => q.Code == "calendar-ask-label");
        Assert.Null(Find(asked.Value, "weeds-label").Latest);
        var season = SeasonCalendar.Of(Request(weeds: new() { Way = WeedWay.Herbicide, LabelDays = 30 })).Value;
        Assert.Equal(SowOn.AddDays(-30), Find(season, "weeds-label").Latest);
        Assert.Contains("30 days", Find(season, "weeds-label").Title, StringComparison.Ordinal);
    }

    [Fact]
    public void The_owners_own_way_stands_in_the_owners_words() =>
        Assert.Contains(
            SeasonCalendar.Of(Request(weeds: new() { Way = WeedWay.OwnWay, Words = "Solarize under clear sheet for six weeks" })).Value.Tasks,
            t => t.Title == "Solarize under clear sheet for six weeks.");

    [Fact]
    public void Where_nothing_is_said_of_weeds_it_is_asked_and_time_is_kept_for_them()
    {
        var request = Request();
        var asked = SeasonCalendar.Of(new() { SowOn = SowOn, Passes = request.Passes, Ground = GroundWork.Tilled });
        Assert.Contains(asked.Questions, q => q.Code == "calendar-ask-weeds");
        Assert.Contains(asked.Value.Tasks, t => t.Id == "weeds-any-way");
        Assert.DoesNotContain(asked.Value.Tasks, t => t.Id.StartsWith("lime", StringComparison.Ordinal) || t.Id.StartsWith("fertilizer", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(GroundWork.Tilled, "firm,press,cover", "roll-down,mow-down,frozen-ground")]
    [InlineData(GroundWork.RolledDown, "roll-down,fertilizer-first", "firm,mow-down,last-tillage")]
    [InlineData(GroundWork.MownDown, "mow-down,fertilizer-first", "firm,roll-down,last-tillage")]
    [InlineData(GroundWork.FrostSeeded, "frozen-ground,fertilizer-green-up,sow-frozen-1,inspect-frost-seeded", "firm,last-tillage,rain-check,inspect,clip-first,sow-1")]
    [InlineData(GroundWork.Drilled, "fertilizer-first,inspect", "press,roll-down,last-tillage")]
    public void Seedbed_and_packing_go_by_the_method(GroundWork ground, string with, string without)
    {
        var ids = SeasonCalendar.Of(Request(ground: ground)).Value.Tasks.Select(t => t.Id).ToHashSet();
        Assert.Superset(with.Split(',').ToHashSet(), ids);
        Assert.Empty(without.Split(',').Where(ids.Contains));
    }

    /// <summary>A mowing as late as four weeks before a killing frost, whatever the year brings.</summary>
    [Fact]
    public void A_standing_plot_has_test_potash_mowing_thickening_and_a_day_to_stop()
    {
        var season = SeasonCalendar.Of(Request(isStanding: true, frost: new(2026, 10, 10))).Value;
        var ids = season.Tasks.Select(t => t.Id).ToHashSet();
        Assert.Superset(
            new HashSet<string> { "standing-sample", "standing-potash-first", "standing-potash-last", "standing-mow", "standing-thicken", "standing-stop", "standing-count" },
            ids);
        Assert.Equal(new DateOnly(2026, 9, 12), Find(season, "standing-stop").Latest);
        Assert.DoesNotContain(ids, id => id.StartsWith("sow", StringComparison.Ordinal));
        Assert.All(season.Tasks, t => Assert.True(t.Latest >= SowOn || t.Latest is null, t.ToString()));
    }

    [Fact]
    public void Without_a_frost_date_the_stand_is_asked_for_one_and_its_task_has_no_day()
    {
        var asked = SeasonCalendar.Of(Request(isStanding: true));
        Assert.Contains(asked.Questions, q => q.Code == "calendar-ask-frost");
        Assert.Null(Find(asked.Value, "standing-stop").Earliest);
        Assert.Equal("4 to 6 weeks before the first killing frost", Find(asked.Value, "standing-stop").When);
        var ids = asked.Value.Tasks.Select(t => t.Id).ToList();
        Assert.True(ids.IndexOf("standing-stop") < ids.IndexOf("standing-lime"));
    }

    /// <summary>The stand is looked at from day 100 to day 130 of a year; day 130 of 2026 is 10 May.</summary>
    [Theory]
    [InlineData("2026-03-01", "2026-04-10", "2026-05-10")]
    [InlineData("2026-05-09", "2026-05-09", "2026-05-10")]
    [InlineData("2026-05-10", "2026-05-10", "2026-05-10")]
    [InlineData("2026-05-11", "2027-04-10", "2027-05-10")]
    public void What_is_left_of_a_window_of_this_year_is_kept_to_its_last_day(string asked, string earliest, string latest)
    {
        var season = SeasonCalendar.Of(new() { SowOn = IsoDay(asked), Passes = [.. GrainAndClover], IsStanding = true, Ground = GroundWork.Tilled, KillingFrost = new(2026, 10, 20) }).Value;
        var count = Find(season, "standing-count");
        Assert.Equal((IsoDay(earliest), IsoDay(latest)), (count.Earliest!.Value, count.Latest!.Value));
    }

    private static DateOnly IsoDay(string day) => DateOnly.ParseExact(day, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);

    [Fact]
    public void Tasks_stand_in_the_order_of_their_latest_days_and_never_before_what_they_wait_for()
    {
        var season = SeasonCalendar.Of(Request(limeOn: new(2026, 8, 20), sampledOn: new(2026, 8, 10))).Value;
        var dated = season.Tasks.Where(t => t.Latest is not null).ToList();
        Assert.Equal(dated.Select(t => t.Latest).Order(), dated.Select(t => t.Latest));
        Assert.All(dated, t => Assert.True(t.Earliest <= t.Latest));
        Assert.All(dated, t => Assert.All(t.WaitsFor, w => Assert.True(Find(season, w).Earliest <= t.Earliest, $"{t.Id} waits for {w}")));
    }

    [Fact]
    public void A_later_day_of_sowing_moves_no_task_to_an_earlier_day()
    {
        var earlier = SeasonCalendar.Of(Request()).Value;
        var later = SeasonCalendar.Of(new()
        {
            SowOn = SowOn.AddDays(9),
            Passes = [.. GrainAndClover],
            Ground = GroundWork.Tilled,
            NeedsLime = true,
            LimeIsWorkedIn = true,
            NeedsRetest = true,
            NeedsFertilizer = true,
            Weeds = new() { Way = WeedWay.RepeatedTillage },
        }).Value;
        Assert.All(earlier.Tasks, t => Assert.True(Find(later, t.Id).Latest >= t.Latest, t.Id));
    }
}
