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

    private static SeasonCalendar RyeAndRedClover(DateOnly? sowOn) =>
        SeasonCalendar.Of(
            new()
            {
                SowOn = sowOn,
                Ground = GroundWork.Tilled,
                Passes = [new() { Kinds = [KindCatalog.Standard.Find("cereal rye")], IsCovered = true }, new() { Kinds = [KindCatalog.Standard.Find("medium red clover")] }],
            }
        ).Value;

    /// <summary>Nobody knows yet whether it is sown in spring or in fall, so the clip of both stands there.</summary>
    [Theory]
    [InlineData("clip-first", "if sown in spring, 6 to 9 weeks after sowing")]
    [InlineData("clip-nurse", "if sown in fall, mid April to mid May of the next year")]
    [InlineData("mow-first-summer", "if sown in fall, late May to late June of the next year")]
    public void Without_a_planting_day_the_clip_of_either_season_stands_there_and_says_for_which(string id, string when)
    {
        var clip = Assert.Single(RyeAndRedClover(null).Tasks, t => t.Id == id);
        Assert.Equal((when, null, true), (clip.When, clip.Earliest, clip.IsAfterSowing));
    }

    [Theory]
    [InlineData("2027-04-20", "clip-first", "clip-nurse")]
    [InlineData("2027-09-12", "clip-nurse", "clip-first")]
    public void With_a_planting_day_only_the_clip_of_its_season_is_told(string day, string told, string other)
    {
        var tasks = RyeAndRedClover(DateOnly.Parse(day, null)).Tasks;
        Assert.DoesNotContain("if sown", Assert.Single(tasks, t => t.Id == told).When, StringComparison.Ordinal);
        Assert.DoesNotContain(tasks, t => t.Id == other);
    }

    /// <summary>Frozen ground is that of late winter, day or no day.</summary>
    [Fact]
    public void Seed_on_frozen_ground_is_a_spring_sowing_without_a_day_too()
    {
        var ids = (SolvedPlan.Of("p11-frost-clover-mo").Plan with { PlantingDate = null }).Solve().SeasonWork.Select(w => w.Task.Id).ToList();
        Assert.Contains("clip-frost-seeded", ids);
        Assert.DoesNotContain(ids, i => i is "clip-nurse" or "mow-first-summer");
    }

    private static IEnumerable<string> PlanFiles => new[] { "tests/PlotAgronomy.Tests/Plans", "samples/data" }.SelectMany(folder => Directory.EnumerateFiles(Repository.PathOf(folder), "*.json"));

    public static TheoryData<string> Plans =>
        [.. from file in PlanFiles where PlanFile.Read(File.ReadAllText(file)).Plan?.PlantingDate is not null orderby file select Path.GetFileName(file)];

    /// <summary>Taking the planting day away takes no work away: only lime that is too late, and the test after it, hang on the day itself.</summary>
    [Theory, MemberData(nameof(Plans))]
    public void No_task_is_lost_with_the_planting_day(string name)
    {
        var plan = PlanFile.Read(File.ReadAllText(PlanFiles.Single(f => Path.GetFileName(f) == name))).Plan!;
        var dated = plan.Solve().SeasonWork.Select(w => w.Task.Id).ToList();
        var undated = (plan with { PlantingDate = null }).Solve().SeasonWork;
        Assert.Empty(dated.Except(undated.Select(w => w.Task.Id)).Except(HangOnTheDay));
        Assert.All(undated.Where(w => w.Task.When.Length == 0), w => Assert.Contains(TaskRow.All, r => r.Id == w.Task.Id && r.Anchor == TaskAnchor.Open));
    }

    private static readonly string[] HangOnTheDay = ["lime-after-seed", "late-test", "retest"];

    /// <summary>About six months for full effect (LIME-S17), counted from the lime where its day is known.</summary>
    [Theory]
    [InlineData("2026-10-10", "2027-04-11 to 2027-05-11")]
    [InlineData(null, "6 to 7 months after liming")]
    public void The_test_after_the_full_effect_is_counted_from_the_lime(string? limed, string when)
    {
        var plan = Plan("frost-seeding") with { PlantingDate = null, LimeDate = limed is null ? null : DateOnly.Parse(limed, null) };
        Assert.Equal(when, Find(plan, "late-test").When);
    }

    /// <summary>Where nothing is sown there is no day of sowing to count from.</summary>
    [Fact]
    public void Where_nothing_is_sown_the_days_hang_on_the_planting_day()
    {
        var work = (SolvedPlan.Of("p03-clay-smp59-oh").Plan with { PlantingDate = null }).Solve().SeasonWork;
        Assert.Equal("in the first 2 weeks after the planting day", work.Single(w => w.Task.Id == "cover-limed").Task.When);
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
