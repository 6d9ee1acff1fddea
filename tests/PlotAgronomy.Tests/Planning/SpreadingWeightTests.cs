using PlotAgronomy.Planning;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Planning;

/// <summary>Load, test run and walk rest on one width, the evened spacing: what 200 ft use, over the whole walk, is the load.</summary>
public class SpreadingWeightTests
{
    public static TheoryData<string, string> Plots => new()
    {
        { "fall-blend", """{ "shape": "rectangle", "length": "182 ft", "width": "140 ft" }""" },
        { "fall-blend", """{ "shape": "rectangle", "length": "208 ft", "width": "104 ft" }""" },
        { "fall-blend", """{ "shape": "triangle", "a": "190 ft", "b": "170 ft", "c": "185 ft" }""" },
        { "fall-blend", """{ "shape": "trapezoid", "a": "240 ft", "b": "150 ft", "length": "120 ft" }""" },
        { "clover-lots", """{ "shape": "rectangle", "length": "165 ft", "width": "120 ft" }""" },
        { "frost-seeding", """{ "shape": "triangle", "a": "190 ft", "b": "170 ft", "c": "185 ft" }""" },
    };

    [Theory, MemberData(nameof(Plots))]
    public void The_test_run_over_the_whole_walk_is_the_load(string demo, string sides)
    {
        var answers = Solved(demo, sides);
        Assert.All(answers.Spreading.Value.Passes, pass =>
        {
            var laid = pass.Laid.Value;
            double walked = laid.Path.Feet - laid.WalkBetween.Feet;
            Assert.Equal(pass.Load.Pounds, pass.TestRunCatch.Pounds * walked / 200, 1e-6 * pass.Load.Pounds);
            Assert.Equal(pass.Load.Pounds, laid.Seed.Pounds, 1e-6 * pass.Load.Pounds);
            Assert.Equal(pass.Load.Pounds, pass.Kinds.Sum(k => k.Weight.Pounds), 1e-9);
            if (pass.Setting.TryGet(out var setting))
            {
                // By hand: flow = rate x pace x width / 495, at the width that is walked.
                Assert.Equal(pass.Rate.PoundsPerAcre * setting.Speed.MilesPerHour * laid.Spacing.Feet / 495, setting.Flow.PoundsPerMinute, 1e-6);
            }
        });
    }

    // By hand: 208 ft by 104 ft under 20 ft: six lanes of 17.33 ft.
    [Fact]
    public void The_spacing_of_a_lane_that_does_not_divide_the_plot_is_used()
    {
        var answers = Solved("fall-blend", """{ "shape": "rectangle", "length": "208 ft", "width": "104 ft" }""", "20 ft");
        var pass = answers.Spreading.Value.Passes[0];
        Assert.Equal(104 / 6.0, pass.Laid.Value.Spacing.Feet, 1e-9);
        Assert.Equal(pass.Rate.PoundsPerAcre * 200 * 104 / 6 / 43_560, pass.TestRunCatch.Pounds, 1e-9);
    }

    // By hand: 60 ft by 58 ft are 3,480 ft2; the shortest way are four lanes of 58 ft, 15 ft apart; 200 ft of one are 3,000 ft2, 86 %.
    [Fact]
    public void On_a_small_plot_the_test_run_offers_a_tarp_a_shorter_course_and_seed_to_spare()
    {
        var small = Solved("fall-blend", """{ "shape": "rectangle", "length": "60 ft", "width": "58 ft" }""", "15 ft");
        var told = small.Spreading.Findings.Where(f => f.Code == "spread-test-run-much").ToList();
        Assert.Equal(small.Spreading.Value.Passes.Length, told.Count);
        Assert.All(told, f =>
        {
            Assert.Contains("takes 86 % of the seed", f.Text, StringComparison.Ordinal);
            Assert.Contains("tarp", f.Text, StringComparison.Ordinal);
            Assert.Contains("or walk 50 ft", f.Text, StringComparison.Ordinal);
            Assert.Contains("half as much seed again", f.Text, StringComparison.Ordinal);
        });
        Assert.Contains(small.Findings, f => f.Code == "spread-test-run-much");
        var large = Solved("fall-blend", """{ "shape": "rectangle", "length": "182 ft", "width": "140 ft" }""");
        Assert.DoesNotContain(large.Spreading.Findings, f => f.Code == "spread-test-run-much");
    }

    private static PlotAnswers Solved(string demo, string sides, string? swath = null)
    {
        var reading = PlanFile.Read(EditedPlan.Of(demo, plan =>
        {
            plan["plot"]!["sides"] = System.Text.Json.Nodes.JsonNode.Parse(sides);
            if (swath is not null)
            {
                plan["spreader"]!["swath"] = swath;
            }
        }));
        Assert.Empty(reading.Problems);
        return reading.Plan!.Solve();
    }
}
