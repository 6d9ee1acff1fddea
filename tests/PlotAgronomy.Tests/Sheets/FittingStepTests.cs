using PlotAgronomy.Planning;
using PlotAgronomy.Sheets;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Sheets;

/// <summary>Steps that do not fit the seed, the tool or the day are not printed.</summary>
public class FittingStepTests
{
    // Peas lie deeper than half an inch and are covered; there is no small seed to press in afterwards.
    [Fact]
    public void Nothing_is_pressed_in_where_all_seed_is_covered()
    {
        var peas = PlanFile.Read(EditedPlan.With("fall-blend", "growing", """{ "kinds": [{ "kind": "Austrian winter pea", "shareOfFullStand": 1 }] }"""));
        Assert.Empty(peas.Problems);
        Assert.DoesNotContain("press the small seed", Text(peas.Plan!), StringComparison.Ordinal);
        Assert.Contains("cover the large seed", Text(peas.Plan!), StringComparison.Ordinal);
        Assert.Contains("press the small seed", Text(PlanFile.Read(EditedPlan.With("fall-blend", "method", "\"tilled-and-packed\"")).Plan!), StringComparison.Ordinal);
    }

    [Fact]
    public void A_drill_is_told_neither_of_gate_nor_of_hopper()
    {
        string drilled = Text(PlanFile.Read(EditedPlan.With("fall-blend", "method", "\"drilled\"")).Plan!);
        Assert.DoesNotContain("first setting: gate", drilled, StringComparison.Ordinal);
        Assert.DoesNotContain("would sift apart", drilled, StringComparison.Ordinal);
        Assert.Contains("turn its wheel", drilled.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_every_kind_is_held_back_there_is_no_pass()
    {
        var answers = PlanFile.Read(EditedPlan.With("frost-seeding", "soilReport.waterPh", "4.6")).Plan!.Solve();
        Assert.Equal(AnswerState.NoneNeeded, answers.Spreading.State);
        string sheet = FieldSheet.Of(answers).ToText();
        Assert.Contains("stays in the bag", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("pass-1.load", sheet, StringComparison.Ordinal);
    }

    private static string Text(PlotPlan plan) => FieldSheet.Of(plan.Solve()).ToText();
}
