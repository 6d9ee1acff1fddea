using PlotAgronomy.Calendar;

namespace PlotAgronomy.Tests.Calendar;

/// <summary>What each anchor of a task makes of its days, counted by hand on a calendar.</summary>
public class TaskDateTests
{
    private static readonly DateOnly SowOn = new(2026, 9, 12);

    private static readonly SeasonPass Rye = new() { Kinds = [KindCatalog.Standard.Find("cereal-rye")] };

    private static SeasonRequest Sowing => new() { SowOn = SowOn, Passes = [Rye], Ground = GroundWork.Tilled };

    private static SeasonRequest Undated => new() { SowOn = null, Passes = [Rye], Ground = GroundWork.Tilled };

    private static (DateOnly From, DateOnly To)? Days(SeasonRequest request, TaskAnchor anchor, int low, int high) =>
        new TaskDates(request, null).Of(anchor, low, high) is { } days ? (days.From, days.To) : null;

    private static (DateOnly, DateOnly)? On(int month, int day, int? toMonth = null, int? toDay = null, int year = 2026) =>
        (new DateOnly(year, month, day), new DateOnly(year, toMonth ?? month, toDay ?? day));

    [Fact]
    public void Days_of_a_sowing_are_counted_from_it()
    {
        Assert.Equal(On(8, 29, 9, 19), Days(Sowing, TaskAnchor.Sowing, -14, 7));
        Assert.Equal(On(8, 29, 9, 19), Days(Sowing, TaskAnchor.Retest, -14, 7));
        Assert.Equal(On(8, 29, 9, 19), Days(Sowing, TaskAnchor.Lime, -14, 7));
        Assert.Equal(On(8, 29, 9, 19), Days(Sowing, TaskAnchor.Sample, -14, 7));
        Assert.Null(Days(Undated, TaskAnchor.Sowing, -14, 7));
        Assert.Null(Days(Undated, TaskAnchor.Sample, -14, 7));
        Assert.Null(Days(Undated, TaskAnchor.Retest, -14, 7));
    }

    [Fact]
    public void Lime_is_counted_from_its_own_day_where_it_has_one()
    {
        var limed = new SeasonRequest { SowOn = SowOn, Passes = [Rye], Ground = GroundWork.Tilled, LimeOn = new(2026, 4, 1) };
        Assert.Equal(On(4, 1), Days(limed, TaskAnchor.Lime, -14, 7));
        Assert.Equal(On(4, 1), Days(limed, TaskAnchor.StandLime, 60, 90));
        // About six months, 183 days (LIME-S17), after 1 April: 1 October.
        Assert.Equal(On(10, 1, 10, 31), Days(limed, TaskAnchor.LateTest, 0, 30));
        Assert.Null(Days(Sowing, TaskAnchor.LateTest, 0, 30));
    }

    [Fact]
    public void A_sample_is_taken_by_the_day_that_was_chosen()
    {
        var chosen = new SeasonRequest
        {
            SowOn = SowOn,
            Passes = [Rye],
            Ground = GroundWork.Tilled,
            Chosen = new() { SampleBy = new(2026, 8, 1), TestOn = new(2026, 8, 3), LateTestOn = new(2026, 11, 1) },
        };
        Assert.Equal((new DateOnly(2026, 3, 16), new DateOnly(2026, 8, 1)), Days(chosen, TaskAnchor.Sample, -180, -90));
        Assert.Equal(On(8, 3), Days(chosen, TaskAnchor.Retest, -14, 7));
        Assert.Equal(On(11, 1, 11, 8), Days(chosen, TaskAnchor.LateTest, 0, 7));
    }

    [Fact]
    public void A_sowing_over_several_days_has_no_day_to_count_from_once_it_is_sown()
    {
        var spread = new SeasonRequest
        {
            SowOn = SowOn,
            SowFrom = SowOn.AddDays(-2),
            SowTo = SowOn.AddDays(3),
            Passes = [Rye],
            Ground = GroundWork.Tilled,
        };
        Assert.Equal(On(9, 10, 9, 15), Days(spread, TaskAnchor.SowingDay, 0, 0));
        Assert.Null(Days(spread, TaskAnchor.Sown, 20, 30));
        Assert.Equal(On(9, 12), Days(Sowing, TaskAnchor.SowingDay, 0, 0));
        Assert.Equal(On(10, 2, 10, 12), Days(Sowing, TaskAnchor.Sown, 20, 30));
    }

    [Fact]
    public void The_interval_of_a_label_goes_before_the_sowing()
    {
        var labelled = new SeasonRequest
        {
            SowOn = SowOn,
            Passes = [Rye],
            Ground = GroundWork.Tilled,
            Weeds = new WeedControl { Way = WeedWay.Herbicide, LabelDays = 30 },
        };
        Assert.Equal(On(8, 6, 8, 13), Days(labelled, TaskAnchor.Label, -7, 0));
        Assert.Null(Days(Sowing, TaskAnchor.Label, -7, 0));
    }

    [Theory]
    [InlineData(60, 90, 2027, 3, 1, 3, 31)] // past already: that of the next year
    [InlineData(240, 260, 2026, 9, 12, 9, 17)] // what is left of it
    [InlineData(240, 255, 2026, 9, 12, 9, 12)] // its last day
    [InlineData(240, 254, 2027, 8, 28, 9, 11)]
    [InlineData(300, 310, 2026, 10, 27, 11, 6)] // still to come
    public void A_stretch_of_the_year_is_the_one_that_comes(
        int low,
        int high,
        int year,
        int month,
        int day,
        int toMonth,
        int toDay
    )
    {
        Assert.Equal(On(month, day, toMonth, toDay, year), Days(Sowing, TaskAnchor.ThisYear, low, high));
        Assert.Equal(On(month, day, toMonth, toDay, year), Days(Sowing, TaskAnchor.AfterSowing, low, high));
        Assert.Equal(On(month, day, toMonth, toDay, year), Days(Sowing, TaskAnchor.StandLime, low, high));
        Assert.Null(Days(Undated, TaskAnchor.ThisYear, low, high));
    }

    [Fact]
    public void The_next_year_the_frost_and_the_next_sample_have_days_of_their_own()
    {
        var known = new SeasonRequest
        {
            SowOn = SowOn,
            Passes = [Rye],
            Ground = GroundWork.Tilled,
            KillingFrost = new(2026, 10, 20),
            NextSampleOn = new(2029, 3, 1),
        };
        Assert.Equal(On(3, 1, 3, 31, 2027), Days(known, TaskAnchor.NextYear, 60, 90));
        Assert.Null(Days(Undated, TaskAnchor.NextYear, 60, 90));
        Assert.Equal(On(10, 6, 10, 20), Days(known, TaskAnchor.Frost, -14, 0));
        Assert.Null(Days(Sowing, TaskAnchor.Frost, -14, 0));
        Assert.Equal(On(3, 1, 3, 8, 2029), Days(known, TaskAnchor.NextSample, 0, 7));
        Assert.Null(Days(Sowing, TaskAnchor.NextSample, 0, 7));
        Assert.Null(Days(known, TaskAnchor.Open, 0, 7));
        Assert.Null(Days(known, TaskAnchor.Smother, 0, 7));
        Assert.Null(Days(known, TaskAnchor.Kill, 0, 7));
    }

    [Fact]
    public void Without_days_the_anchor_is_said_in_words()
    {
        string Said(TaskAnchor anchor, int low, int high, SeasonRequest? request = null) =>
            new TaskDates(request ?? Undated, null).Words(anchor, low, high);
        Assert.Equal("in the last 2 weeks before sowing", Said(TaskAnchor.Sowing, -14, 0));
        var standing = new SeasonRequest { SowOn = null, IsStanding = true, Passes = [Rye], Ground = null };
        Assert.Equal("in the last 2 weeks before the planting day", Said(TaskAnchor.Sowing, -14, 0, standing));
        Assert.Equal(
            "in the last 2 weeks before the planting day",
            Said(TaskAnchor.Lime, -14, 0, new SeasonRequest { SowOn = null, Passes = [], Ground = null })
        );
        Assert.Equal("on the day of sowing", Said(TaskAnchor.SowingDay, -3, 3));
        Assert.Equal("so many days before sowing as the label asks for", Said(TaskAnchor.Label, -7, 0));
        var labelled = new SeasonRequest
        {
            SowOn = null,
            Passes = [Rye],
            Ground = null,
            Weeds = new WeedControl { Way = WeedWay.Herbicide, LabelDays = 14 },
        };
        Assert.Equal("2 to 3 weeks before sowing", Said(TaskAnchor.Label, -7, 0, labelled));
        Assert.Equal("counted back from the day it is killed", Said(TaskAnchor.Smother, 0, 0));
        Assert.Equal("in the last 2 weeks before sowing", Said(TaskAnchor.Kill, 0, 0));
        Assert.Equal("early March to late March", Said(TaskAnchor.ThisYear, 60, 90));
        Assert.Equal("early March to late March of the next year", Said(TaskAnchor.NextYear, 60, 90));
        Assert.Equal("in the last 2 weeks before the first killing frost", Said(TaskAnchor.Frost, -14, 0));
        Assert.Equal("6 to 7 months after liming", Said(TaskAnchor.LateTest, 0, 30));
        Assert.Equal("", Said(TaskAnchor.Open, 0, 30));
    }
}
