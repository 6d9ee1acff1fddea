using PlotAgronomy.Calendar;
using PlotAgronomy.Planning;
using PlotAgronomy.Tests.Plans;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Calendar;

/// <summary>The season is the one list of work of a plan, whatever is not known of it.</summary>
/// <remarks>Expected: common practice; weights are those of the purchase.</remarks>
public class SeasonWithoutDaysTests
{
    private static PlotPlan Plan(string name) => PlanFile.Read(File.ReadAllText(Repository.PathOf($"samples/data/{name}.json"))).Plan!;

    private static PlotPlan Upkeep => SolvedPlan.Of("p07-clover-upkeep-mi").Plan;

    private static SeasonTask Find(PlotPlan plan, string id) => plan.Solve().SeasonWork.Single(w => w.Task.Id == id).Task;

    [Fact]
    public void Without_a_planting_day_the_tasks_say_what_they_hang_on()
    {
        var plan = Plan("fall-blend") with { PlantingDate = null, LimeDate = null };
        Assert.Equal("3 to 6 months before sowing", Find(plan, "lime-worked-in").When);
        Assert.Equal("in the last week before sowing", Find(plan, "firm").When);
        Assert.Equal("on the day of sowing", Find(plan, "sow-1").When);
        Assert.Equal("3 to 4 weeks after sowing", Find(plan, "inspect").When);
        Assert.Contains(plan.Solve().Calendar.Questions, q => q.Code == "plan-ask-day");
    }

    [Fact]
    public void Without_a_day_the_work_stands_in_its_order()
    {
        var ids = (Plan("fall-blend") with { PlantingDate = null, LimeDate = null }).Solve().SeasonWork.Select(w => w.Task.Id).ToList();
        string[] order = ["lime-worked-in", "last-tillage", "firm", "rain-ahead", "sow-1", "cover", "sow-2", "press", "write-down", "rain-check", "inspect"];
        Assert.Equal(order, ids.Where(order.Contains));
    }

    [Fact]
    public void Weights_are_those_of_the_shop_with_or_without_days()
    {
        foreach (var plan in new[] { Plan("fall-blend"), Plan("fall-blend") with { PlantingDate = null }, Plan("county-report"), Plan("printed-rate"), Upkeep })
        {
            var answers = plan.Solve();
            var bought = answers.Fertilizer.Told.Purchase.Value.Lines;
            var spread = answers.SeasonWork.SelectMany(w => w.Materials).Where(m => bought.Any(b => b.Product.Name == m.Name)).ToList();
            Assert.Equal(bought.Sum(b => b.Spread.Pounds), spread.Sum(m => m.Mass.Pounds), 1e-6);
        }
    }

    [Fact]
    public void Only_lime_and_only_fertilizer_are_work()
    {
        var printed = Plan("printed-rate").Solve().SeasonWork;
        Assert.Equal(["lime-asked", "fertilizer-alone", "write-down-lime"], printed.Select(w => w.Task.Id));
        Assert.Equal(2, printed[1].Materials.Length);
        var fallow = Plan("fall-blend") with { Kinds = [], FertilizerOffers = [], Plot = Plan("fall-blend").Plot with { Cover = GroundCover.BareGround, CoverKind = null }, StatedTargetPh = 6.5 };
        Assert.Contains(fallow.Solve().SeasonWork, w => w.Task.Spreads == SeasonSpread.FirstLime && w.Materials.Length == 1);
    }

    [Fact]
    public void Drilled_seed_is_drilled_as_deep_as_it_is_printed()
    {
        var drilled = (Plan("fall-blend") with { Method = PlantingMethod.Drilled }).Solve().SeasonWork;
        var drill = drilled.First(w => w.Task.Pass is not null);
        Assert.StartsWith("Drill ", drill.Task.Title, StringComparison.Ordinal);
        Assert.NotNull(drill.Depth);
        Assert.Contains(drilled, w => w.Task.Id == "carries-drill");
        Assert.DoesNotContain(drilled, w => w.Task.Title.StartsWith("Sow ", StringComparison.Ordinal) || w.Task.Id is "press" or "firm");
    }

    [Fact]
    public void While_the_way_of_planting_is_open_no_seedbed_is_told()
    {
        var ids = (Plan("fall-blend") with { Method = null }).Solve().SeasonWork.Select(w => w.Task.Id).ToList();
        Assert.Contains("settle-method", ids);
        Assert.Contains("fertilizer-open", ids);
        Assert.DoesNotContain(ids, i => i is "firm" or "press" or "last-tillage" or "roll-down");
    }

    [Fact]
    public void A_kind_that_is_held_back_is_in_no_pass_and_the_test_names_it()
    {
        var answers = Plan("fall-blend").Solve();
        var held = Assert.Single(answers.Verdict.Value.Held);
        var sowing = answers.SeasonWork.Where(w => w.Task.Pass is not null).ToList();
        Assert.DoesNotContain(sowing, w => w.Task.Title.Contains(held.Planned.Kind.ShortName, StringComparison.Ordinal));
        Assert.Contains($"It decides on {held.Planned.Kind.ShortName} (pH 5.8 or more: then buy it, and sow 0.4 lb of it with the seed of its size).", Find(answers.Plan, "retest").Title, StringComparison.Ordinal);
    }

    /// <summary>Lime of 34 days: out of reach by the day of sowing, so the test comes with the full effect and nothing is sown.</summary>
    [Fact]
    public void Where_all_is_out_of_reach_the_season_ends_with_the_test_that_decides()
    {
        var work = SolvedPlan.Of("p01-sand-nc").Answers.SeasonWork;
        Assert.DoesNotContain(work, w => w.Task.Pass is not null || w.Task.Id is "retest" or "firm" or "inoculate");
        Assert.Equal(new DateOnly(2027, 3, 1), work.Single(w => w.Task.Id == "late-test").Task.Earliest);
        Assert.Contains("Crimson clover (pH 5.5 or more)", work.Single(w => w.Task.Id == "late-test").Task.Title, StringComparison.Ordinal);
    }

    [Fact]
    public void Lime_after_the_seed_serves_the_next_planting()
    {
        var plan = Plan("fall-blend");
        var late = (plan with { LimeDate = plan.PlantingDate!.Value.AddDays(20) }).Solve().SeasonWork;
        Assert.Contains(late, w => w.Task.Id == "lime-after-seed" && w.Materials.Length == 1);
        Assert.DoesNotContain(late, w => w.Task.Id == "lime-worked-in");
    }

    [Fact]
    public void Lime_is_spread_with_goggles_and_a_mask_and_as_deep_as_the_ground_is_worked()
    {
        var lime = Plan("fall-blend").Solve().SeasonWork.Single(w => w.Task.Id == "lime-worked-in");
        Assert.Equal("goggles and a dust mask", lime.Task.Wear);
        Assert.Equal(6, lime.Depth!.Value.Deepest.Inches, 1e-9);
    }

    [Fact]
    public void A_standing_grain_is_mown_before_it_sets_seed()
    {
        var plan = Plan("fall-blend");
        var grain = (plan with { Plot = plan.Plot with { Cover = GroundCover.SmallGrain, CoverKind = KindCatalog.Standard.Find("cereal rye") } }).Solve().SeasonWork;
        Assert.Contains(grain, w => w.Task.Title.StartsWith("Mow cereal rye before it sets seed", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_a_stand_that_was_sampled_the_next_sample_is_years_off_and_no_day_is_past()
    {
        var work = Upkeep.Solve().SeasonWork;
        Assert.DoesNotContain(work, w => w.Task.Id is "standing-sample" or "sample");
        Assert.Equal((new DateOnly(2028, 3, 25), new DateOnly(2028, 4, 25)), (work.Single(w => w.Task.Id == "next-sample").Task.Earliest, work.Single(w => w.Task.Id == "next-sample").Task.Latest));
        Assert.All(work, w => Assert.True(w.Task.Earliest is null || w.Task.Earliest >= Upkeep.PlantingDate, w.ToString()));
    }

    [Fact]
    public void The_first_mowing_of_a_stand_comes_before_its_potash()
    {
        var ids = Upkeep.Solve().SeasonWork.Select(w => w.Task.Id).ToList();
        Assert.True(ids.IndexOf("standing-mow") < ids.IndexOf("standing-potash-first"));
        Assert.True(ids.IndexOf("standing-potash-first") < ids.IndexOf("standing-potash-last"));
        Assert.Equal(ids.Distinct().Count(), ids.Count);
    }

    [Fact]
    public void A_stand_asked_about_without_a_day_has_its_work_by_the_parts_of_the_year()
    {
        var plan = Upkeep with { PlantingDate = null };
        Assert.Equal("late May to late June", Find(plan, "standing-mow").When);
        Assert.Equal("early August to late August", Find(plan, "standing-mow-again").When);
        Assert.NotEmpty(plan.Solve().SeasonWork);
    }

    [Fact]
    public void Asked_in_September_nothing_of_a_stand_falls_short()
    {
        var season = (Upkeep with { PlantingDate = new(2026, 9, 1) }).Solve().Calendar.Value;
        Assert.All(season.Tasks, t => Assert.Equal(0, t.DaysShort));
    }

    [Theory]
    [InlineData("indiangrass", "Mow to 8 inches"), InlineData("chicory", "Mow off the flower stalks to 6 inches"), InlineData("ladino clover", "Mow to 6 inches")]
    public void Each_stand_is_mown_by_what_it_is(string kind, string step)
    {
        var stand = Upkeep with { Plot = Upkeep.Plot with { CoverKind = KindCatalog.Standard.Find(kind) } };
        Assert.Single(stand.Solve().SeasonWork, w => w.Task.Title.StartsWith(step, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(-49, -35, "5 to 7 weeks before sowing")]
    [InlineData(-183, -91, "3 to 6 months before sowing")]
    [InlineData(730, 1095, "2 to 3 years after sowing")]
    [InlineData(14, 14, "2 weeks after sowing")]
    [InlineData(-7, 0, "in the last week before sowing")]
    [InlineData(0, 0, "on the day of sowing")]
    public void Days_are_said_as_a_person_says_them(int low, int high, string said) => Assert.Equal(said, DaysInWords.From(low, high, "sowing"));
}
