using PlotAgronomy.Calendar;
using PlotAgronomy.Planning;
using PlotAgronomy.Reference;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Plans;

/// <summary>Steps that can be carried out as they are written.</summary>
/// <remarks>Expected: common practice, and the printed intervals of the tables.</remarks>
public class SeasonStepTests
{
    private static string Step(PlotAnswers answers, string id) => answers.SeasonWork.Single(w => w.Task.Id == id).Task.Title;

    private static PlotAnswers Sample(string name) =>
        PlanFile.Read(File.ReadAllText(Repository.PathOf($"samples/data/{name}.json"))).Plan!.Solve();

    /// <summary>Two dressings of one day: the first is plowed down, the rest worked in by the tillage after it (LIME-S15).</summary>
    [Fact]
    public void Dressings_of_one_day_are_worked_in_apart()
    {
        var clay = SolvedPlan.Of("p03-clay-smp59-oh").Answers;
        Assert.Contains("plow it down", Step(clay, "lime-worked-in-1"), StringComparison.Ordinal);
        Assert.Contains("not with the dressing before", Step(clay, "lime-worked-in-2"), StringComparison.Ordinal);
        Assert.EndsWith("and work it in.", Step(SolvedPlan.Of("p01-sand-nc").Answers, "lime-worked-in"), StringComparison.Ordinal);
    }

    [Fact]
    public void Limed_ground_of_which_nothing_is_sown_is_not_left_bare()
    {
        Assert.Contains("such as cereal rye", Step(SolvedPlan.Of("p03-clay-smp59-oh").Answers, "cover-limed"), StringComparison.Ordinal);
        Assert.DoesNotContain(Sample("fall-blend").SeasonWork, w => w.Task.Id == "cover-limed");
    }

    /// <summary>Rye and oats lie half an inch to an inch and a half deep, weighed out or not.</summary>
    [Fact]
    public void Large_seed_that_is_not_weighed_out_yet_is_covered_all_the_same()
    {
        var open = Sample("paced-corner");
        Assert.Null(open.Seed.OrNull());
        var sow = open.SeasonWork.Single(w => w.Task.Pass is not null);
        Assert.Equal((0.5, 1.5), (sow.Depth!.Value.Shallowest.Inches, sow.Depth.Value.Deepest.Inches));
        Assert.Contains("weigh it out once", sow.Task.Title, StringComparison.Ordinal);
        Assert.Contains(open.SeasonWork, w => w.Task.Id == "cover");
        Assert.DoesNotContain(open.SeasonWork, w => w.Task.Id == "press");
    }

    [Fact]
    public void Seed_that_is_pressed_in_is_given_no_depth_to_lie_at()
    {
        var work = Sample("fall-blend").SeasonWork;
        Assert.NotNull(work.Single(w => w.Task.Pass == 1).Depth);
        Assert.Null(work.Single(w => w.Task.Pass == 2).Depth);
        Assert.Contains("1/4 inch at most", work.Single(w => w.Task.Id == "press").Task.Title, StringComparison.Ordinal);
    }

    /// <summary>Lime of 20 May shows on 19 July (60 days, LIME-S22), not a month before the seed of 10 August.</summary>
    [Fact]
    public void Verdict_and_step_name_one_day_of_the_test()
    {
        var tiny = SolvedPlan.Of("p05-tiny-vt");
        Assert.Equal(new DateOnly(2026, 7, 19), tiny.Verdict.TestOn);
        Assert.Equal(tiny.Verdict.TestOn, tiny.Answers.SeasonWork.Single(w => w.Task.Id == "retest").Task.Latest);
        Assert.Contains("then buy it, and sow 0.", Step(tiny.Answers, "retest"), StringComparison.Ordinal);
    }

    /// <summary>Lime of 10 October does not show before the ground freezes: the test waits for its full effect.</summary>
    [Fact]
    public void No_test_is_taken_of_frozen_ground()
    {
        var frost = Sample("frost-seeding");
        Assert.DoesNotContain(frost.SeasonWork, w => w.Task.Id == "retest");
        Assert.Contains("White Dutch clover", Step(frost, "late-test"), StringComparison.Ordinal);
        Assert.Contains("short what stands there", Step(frost, "open-sward"), StringComparison.Ordinal);
        Assert.Equal([RecordTopic.Stand], frost.Field.Blanks.Select(b => b.Topic).Where(t => t is RecordTopic.Rain or RecordTopic.Stand));
    }

    [Fact]
    public void Lime_that_the_laboratory_must_name_is_asked_for_now_and_no_test_runs_ahead_of_it()
    {
        var asked = Sample("county-report");
        Assert.StartsWith("Ask the laboratory now", Step(asked, "lime-asked"), StringComparison.Ordinal);
        Assert.Contains("unless lime went on by 2027-03-08", Step(asked, "retest"), StringComparison.Ordinal);
        Assert.Contains("where the ground freezes, at green-up instead", string.Concat(asked.SeasonWork.Select(w => w.Task.Title)), StringComparison.Ordinal);
    }

    /// <summary>Two weeks to wait for rain, where no dates are known (practice); what is counted from the seed says so.</summary>
    [Fact]
    public void A_sowing_has_days_to_wait_for_rain_in()
    {
        var work = Sample("county-report").SeasonWork;
        var rain = work.Single(w => w.Task.Id == "rain-ahead").Task;
        Assert.Equal((new DateOnly(2027, 9, 8), new DateOnly(2027, 9, 22)), (rain.Earliest, rain.Latest));
        Assert.EndsWith("not later than 2027-09-22.", rain.Title, StringComparison.Ordinal);
        Assert.Equal("2 weeks after sowing", work.Single(w => w.Task.Id == "rain-check").Task.When);
        Assert.Equal("3 to 4 weeks after sowing", work.Single(w => w.Task.Id == "inspect").Task.When);
    }

    [Fact]
    public void The_report_has_a_step_and_the_sample_the_day_of_its_card()
    {
        var work = Sample("strip-reading").SeasonWork;
        Assert.Equal(new DateOnly(2027, 3, 1), work.Single(w => w.Task.Id == "sample").Task.Latest);
        Assert.Contains(work, w => w.Task.Id == "report-comes");
    }

    [Fact]
    public void Nitrogen_for_a_stand_that_legumes_lead_is_one_figure_and_says_for_whom()
    {
        var work = SolvedPlan.Of("p13-chicory-clover-mn").Answers.SeasonWork;
        string dose = work.Single(w => w.Task.Id.StartsWith("nitrogen", StringComparison.Ordinal)).Task.Title;
        Assert.Contains(": 25 lb/ac (for Chicory", dose, StringComparison.Ordinal);
        Assert.DoesNotContain(work, w => w.Task.Title.Contains("nurse grain", StringComparison.Ordinal));
    }

    [Fact]
    public void Boron_in_halves_is_one_dose_and_told_once()
    {
        var stand = SolvedPlan.Of("p07-clover-upkeep-mi").Answers;
        Assert.EndsWith("half of the one dose, not a second one.", Step(stand, "standing-potash-last"), StringComparison.Ordinal);
        Assert.Single(stand.Field.Watched.Concat(stand.Field.Steps.SelectMany(s => s.Minded)), f => f.Code.Contains("boron", StringComparison.Ordinal));
        Assert.DoesNotContain(stand.Field.Steps, s => s.Work.Task.Spreads == SeasonSpread.Fertilizer && s.IsAfterSowing);
    }

    [Fact]
    public void The_smother_crop_that_stands_is_named_as_the_one_that_is_killed() =>
        Assert.Contains("the buckwheat that stands there", Step(Sample("fall-blend"), "smother-kill"), StringComparison.Ordinal);
}
