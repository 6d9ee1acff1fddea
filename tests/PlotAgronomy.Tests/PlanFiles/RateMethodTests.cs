using PlotAgronomy.PlanFiles;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.PlanFiles;

/// <summary>A rate that does not say its sowing method is written for the plan's own; what a part needs is told where something
/// else stands.</summary>
public class RateMethodTests
{
    private static PlanReadResult With(string? method, string? rateFor) =>
        PlanFile.Read(EditedPlan.Of("paced-corner", plan =>
        {
            plan["method"] = method ?? "not stated";
            foreach (var kind in plan["growing"]!["kinds"]!.AsArray())
            {
                if (rateFor is not null)
                {
                    kind!["rateFor"] = rateFor;
                }
            }
        }));

    [Theory]
    [InlineData("tilled-and-packed", "broadcast")]
    [InlineData("broadcast-then-rolled", "broadcast-under-cover")]
    [InlineData("frost-seeded", "frost-seeded")]
    public void Left_out_it_is_that_of_the_plan(string method, string rateFor)
    {
        var (leftOut, said) = (With(method, null), With(method, rateFor));
        Assert.Equal(said.Problems.Select(p => p.Text), leftOut.Problems.Select(p => p.Text));
        Assert.Null(Difference.Between(said.Plan, leftOut.Plan));
    }

    [Fact]
    public void Without_either_it_is_asked_for() =>
        Assert.Contains(With(null, null).Problems, p => p.Text == "a rate needs 'rateFor'");

    [Theory]
    [InlineData("soilReport.cec", "7.1", "an object with 'value' and 'unit'")]
    [InlineData("soilReport.recommendation.lime", "\"2 tons\"", "an object with 'rate'")]
    [InlineData("materials.lime.0.price", "\"$5.75\"", "without quotes, sign or unit")]
    [InlineData("materials.lime.0.cce", "\"88 %\"", "without quotes, sign or unit")]
    public void What_a_field_takes_is_told(string field, string typed, string says) =>
        Assert.Contains(says, Assert.Single(PlanFile.Read(EditedPlan.With("paced-corner", field, typed)).Problems).Text, StringComparison.Ordinal);
}
