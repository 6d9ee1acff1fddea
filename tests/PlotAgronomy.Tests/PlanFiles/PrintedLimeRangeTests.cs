using PlotAgronomy.Liming;
using PlotAgronomy.Sheets;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.PlanFiles;

/// <summary>Lime that a report prints as a range: the lower end is counted, both are worked out, which is meant is asked.</summary>
public class PrintedLimeRangeTests
{
    private static PlotPlan Plan(string rate, string? basis = null)
    {
        string json = EditedPlan.Of("printed-rate", plan =>
        {
            var lime = plan["soilReport"]!["recommendation"]!["lime"]!;
            lime["rate"] = rate;
            if (basis is not null)
            {
                lime["basis"] = basis;
            }
        });
        Assert.True(PlanSchemaTests.IsValid(json));
        var reading = PlanFile.Read(json);
        Assert.True(reading.Problems.IsEmpty, string.Join('\n', reading.Problems));
        Assert.Null(Difference.Between(reading.Plan, PlanFile.Read(PlanFile.Write(reading.Plan!)).Plan));
        return reading.Plan!;
    }

    /// <summary>Source: practice (as reports print it) and exact: 2,000 lb in a ton.</summary>
    [Theory]
    [InlineData("1 to 1.5 tons/ac", 2000, 3000)]
    [InlineData("2-3 T/A", 4000, 6000)]
    [InlineData("1,500 to 2,000 lb per acre", 1500, 2000)]
    [InlineData("2 tons per acre", 4000, null)]
    public void A_range_of_lime_keeps_both_ends(string typed, double low, int? high)
    {
        var lime = Plan(typed).Printed!.Lime!;
        Assert.Equal(low, lime.OfBasis.PoundsPerAcre, 1e-9);
        Assert.Equal(high, lime.UpTo?.PoundsPerAcre);
    }

    [Fact]
    public void A_range_is_written_in_tons() =>
        Assert.Contains("\"1 to 1.5 ton/ac\"", PlanFile.Write(Plan("1 to 1.5 tons/ac")), StringComparison.Ordinal);

    /// <summary>Source: hand algebra. 2 and 3 ton/ac on half an acre are in the ratio of 2 to 3.</summary>
    [Fact]
    public void The_lower_end_is_ordered_and_both_are_worked_out_and_asked_about()
    {
        var answers = Plan("2 to 3 ton/ac", "cce-100-fine").Solve();
        var alone = Plan("2 ton/ac", "cce-100-fine").Solve().Lime.Value.Order.Value;
        var lime = answers.Lime.Value;
        Assert.Equal(alone.Product.Pounds, lime.Order.Value.Product.Pounds, 1e-9);
        double[] ends = [.. lime.Order.Cases.Where(c => c.Question.Code == "lime-ask-range").Select(c => c.Value.Product.Pounds)];
        Assert.Equal(2, ends.Length);
        Assert.Equal(1.5, ends[1] / ends[0], 1e-9);
        Assert.Contains(answers.Questions, q => q.Code == "lime-ask-range");
        Assert.Contains(answers.Findings, f => f.Code == "plan-range-low-end" && f.Text.Contains("2 ton/ac to 3 ton/ac", StringComparison.Ordinal));
        Assert.Contains("2 to 3 ton/ac", FieldSheet.Of(answers).ToText(), StringComparison.Ordinal);
    }

    /// <summary>Source: hand algebra. Of an unknown lime every plausible one stands at both ends, and the upper end asks for half
    /// as much again.</summary>
    [Fact]
    public void Of_an_unknown_lime_the_orders_span_the_whole_range()
    {
        var lime = Plan("2 to 3 ton/ac").Solve().Lime;
        Assert.Equal(AnswerState.Open, lime.State);
        var (low, high) = lime.Told.OrderRange!.Value;
        var (lowAlone, highAlone) = Plan("2 ton/ac").Solve().Lime.Told.OrderRange!.Value;
        Assert.Equal(lowAlone.Value.Product.Pounds, low.Value.Product.Pounds, 1e-9);
        Assert.Equal(1.5 * highAlone.Value.Product.Pounds, high.Value.Product.Pounds, 1e-6);
        Assert.EndsWith(", 3 ton/ac", high.Assumption, StringComparison.Ordinal);
        Assert.Equal(["lime-ask-range", "lime-ask-basis"], lime.Questions.Select(q => q.Code).Where(c => c.StartsWith("lime-ask-", StringComparison.Ordinal)).Take(2));
    }

    [Fact]
    public void The_other_answers_keep_the_range()
    {
        var printed = Plan("2 to 3 ton/ac").Printed!.Lime!;
        Assert.Equal(printed.UpTo, printed.With(basis: LimeBasis.GroundLimestone).UpTo);
        Assert.Null(printed.At(printed.UpTo!.Value).UpTo);
    }

    [Fact]
    public void An_upper_end_lies_above_the_lower() =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            PrintedLimeRate.Read(ApplicationRate.FromShortTonsPerAcre(2), null, null, null, null, ApplicationRate.FromShortTonsPerAcre(2)));
}
