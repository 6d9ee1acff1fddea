using PlotAgronomy.Liming;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.SampleConsole.Start;

/// <summary><c>start</c>: questions in, a plan file out.</summary>
public sealed class StartCommandTests : IDisposable
{
    private readonly StartedPlan started = new();

    public void Dispose() => started.Dispose();

    private static int Words(string text) => text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Length;

    private static int Count(string text, string part) => text.Split(part).Length - 1;

    /// <summary>Every line that is read counts as a question, the blank ones that end a list too. Three names fit several kinds
    /// and are asked again.</summary>
    [Fact]
    public void A_paced_corner_takes_at_most_forty_questions_three_asked_again_and_nine_hundred_words()
    {
        string[] answers = StartedPlan.PacedCorner;
        var (exit, output, error) = started.Start(answers);
        Assert.Equal((0, ""), (exit, error));
        Assert.Contains("is written", output, StringComparison.Ordinal);
        int again = Count(output, "\nWhich oats?") + Count(output, "\nWhich white clover?") + Count(output, "\nWhich radish?");
        Assert.Equal(3, again);
        Assert.InRange(answers.Length - again, 30, 40);
        Assert.InRange(Words(output), 400, 900);
        Assert.DoesNotContain("uffer?", output, StringComparison.Ordinal);
    }

    /// <summary>Source: closed form. By Heron the paces make 0.418 acre; 2 ton/ac on it are 1,674 lb of lime as it stands; 60, 40
    /// and 80 lb/ac are as printed.</summary>
    [Fact]
    public void The_plan_of_the_paced_corner_holds_what_was_answered_and_is_solved()
    {
        started.Start(StartedPlan.PacedCorner);
        var plan = started.Plan;
        Assert.Equal(0.4185, plan.Plot.Area.Acres, 5e-4);
        Assert.Equal(4000, plan.Printed!.Lime!.OfBasis.PoundsPerAcre, 1e-9);
        Assert.Null(plan.Printed.Lime.Basis);
        Assert.Equal([60, 40, 80], new[] { plan.Printed.Nitrogen, plan.Printed.Phosphate, plan.Printed.Potash }.Select(r => r!.Value.PoundsPerAcre));
        Assert.Equal("small grain with clover", plan.Printed.Crop);
        Assert.Equal((5.3, 4), (plan.Report!.WaterPh!.Value, plan.Report.Readings.Length));
        Assert.Equal(["cereal-rye", "oats-winter", "crimson-clover", "white-dutch-clover", "daikon-radish"], plan.Kinds.Select(k => k.Kind.Id));
        Assert.Equal((6, 2, 4), (plan.SeedOffers.Length, plan.LimeOffers.Length, plan.FertilizerOffers.Length));
        Assert.All(plan.SeedOffers, o => Assert.Equal((2027, 6), (o.Item.TestMonth!.Value.Year, o.Item.TestMonth.Value.Month)));
        Assert.Equal(1.56, Assert.Single(plan.Spreader!.Runs).Weighed.Pounds, 1e-9);

        var answers = plan.Solve();
        Assert.Contains(answers.Questions, q => q.Code == "lime-ask-basis");
        double asItStands = plan.Printed.Lime.OfBasis.Over(plan.Plot.Area).Pounds;
        Assert.Contains(answers.Lime.Cases, c => c.Value.Rate.Value.Basis == LimeBasis.GroundLimestone && Math.Abs(c.Value.Order.Value.Product.Pounds - asItStands) < 0.5);
        Assert.Equal(AnswerState.Given, answers.Fertilizer.State);
        Assert.Equal(["cereal-rye", "oats-winter"], answers.Seed.Value.Kinds.Select(k => k.Planned.Kind.Id));
        Assert.Equal(0, started.Solve().Exit);
    }

    [Fact, Trait("Category", "Slow")]
    public void Interrupted_at_every_question_and_resumed_it_is_the_same_plan()
    {
        string[] answers = StartedPlan.PacedCorner;
        started.Start(answers);
        string whole = started.Text;
        started.Forget();
        for (int at = 0; at < answers.Length - 1; at++)
        {
            var (exit, _, error) = started.Start(answers[at]);
            Assert.Equal((0, ""), (exit, error));
            string draft = started.Text;
            Assert.Empty(PlanFile.Read(draft).Problems);
            var (_, rest, _) = started.Start(answers[(at + 1)..]);
            Assert.Contains("is written", rest, StringComparison.Ordinal);
            Assert.Equal(whole, started.Text);
            started.GoBackTo(draft);
        }
    }

    [Fact]
    public void One_answer_at_a_sitting_is_the_same_plan()
    {
        string[] answers = StartedPlan.PacedCorner;
        started.Start(answers);
        string whole = started.Text;
        started.Forget();
        foreach (string answer in answers)
        {
            started.Start(answer);
        }

        Assert.Equal(whole, started.Text);
    }

    /// <summary>What is kept on the way is a plan like any other.</summary>
    [Fact, Trait("Category", "Slow")]
    public void Every_draft_on_the_way_is_a_plan_that_is_answered()
    {
        foreach (string answer in StartedPlan.PacedCorner)
        {
            started.Start(answer);
            var (exit, sheet, _) = started.Solve();
            Assert.Equal(0, exit);
            Assert.True(sheet.Length > 200);
        }
    }

    [Theory]
    [InlineData("\u001b[31m\u0007")]
    [InlineData("\0")]
    [InlineData("HUGE")]
    public void What_no_answer_can_be_is_refused_in_one_line_at_every_question(string bad)
    {
        string[] answers = StartedPlan.PacedCorner;
        string plain = started.Start(answers).Out;
        string whole = started.Text;
        started.Forget();
        string typed = bad == "HUGE" ? new string('9', 100_000) : bad;
        var (exit, output, error) = started.Start(answers.SelectMany(a => new[] { typed, a }));
        Assert.Equal((0, ""), (exit, error));
        Assert.Equal(whole, started.Text);
        Assert.Equal(plain.Split('\n').Length + answers.Length, output.Split('\n').Length);
        Assert.DoesNotContain('\u001b', output);
    }

    /// <summary>A name and a laboratory may be any words; all else is asked again.</summary>
    [Theory]
    [InlineData("qq zz")]
    [InlineData("-12")]
    [InlineData("1e400 tons")]
    [InlineData("{\"a\": 1}")]
    public void Nonsense_is_refused_in_one_line_where_not_every_word_will_do(string nonsense)
    {
        string[] answers = StartedPlan.PacedCorner;
        string plain = started.Start(answers).Out;
        string whole = started.Text;
        started.Forget();
        string[] anyWords = [answers[0], "county laboratory"];
        var (exit, output, error) = started.Start(answers.SelectMany(a => anyWords.Contains(a) ? [a] : new[] { nonsense, a }));
        Assert.Equal((0, ""), (exit, error));
        Assert.Equal(whole, started.Text);
        Assert.Equal(plain.Split('\n').Length + answers.Length - anyWords.Length, output.Split('\n').Length);
        Assert.All(output.Split('\n'), line => Assert.True(line.Length < 400, line));
    }

    [Theory]
    [InlineData("")]
    [InlineData("I don't know")]
    [InlineData("I don\u2019t know.")]
    [InlineData("?")]
    public void Nothing_known_is_still_a_plan(string unknown)
    {
        var (exit, output, _) = started.Start(Enumerable.Repeat(unknown, 40));
        Assert.Equal(0, exit);
        Assert.Contains("is written", output, StringComparison.Ordinal);
        Assert.Contains("for 1 acre", started.Plan.Plot.Name, StringComparison.Ordinal);
        Assert.Contains("not measured", started.Solve().Out, StringComparison.Ordinal);
        Assert.DoesNotContain("hopper", output, StringComparison.Ordinal);
        Assert.DoesNotContain("sampled", output, StringComparison.Ordinal);
        Assert.DoesNotContain("till", output, StringComparison.Ordinal);
    }

    private string Answered(params (string Question, string Answer)[] known) => Conversation.With(started, known);

    [Theory]
    [InlineData("pH 5.6, buffer pH 6.4 SMP, P 20 ppm", false, "SMP")]
    [InlineData("pH 5.6, SMP 6.4", false, "SMP")]
    [InlineData("pH 5.6, buffer pH 6.4", true, null)]
    [InlineData("pH 5.6", false, null)]
    public void A_buffer_is_asked_for_only_where_one_was_read_and_not_named(string figures, bool isAsked, string? buffer)
    {
        string output = Answered(("laboratory's report", "state laboratory"), ("figures on one line", figures));
        Assert.Equal(isAsked, output.Contains("Which buffer?", StringComparison.Ordinal));
        Assert.Equal(buffer is null ? [] : [SoilBuffer.Smp], started.Plan.Report!.BufferPhs.Select(b => b.Buffer));
    }

    [Fact]
    public void Printed_units_are_asked_for_once_where_they_lack()
    {
        string output = Answered(("laboratory's report", "state laboratory"), ("figures on one line", "pH 5.6, P 20, K 110"), ("P, K: in which unit", "lb/ac Mehlich-1"));
        Assert.Contains("P 20 lb/ac, K 110 lb/ac", output, StringComparison.Ordinal);
        Assert.Equal(2, started.Plan.Report!.Readings.Length);
    }

    [Theory]
    [InlineData("1 to 1.5 tons/ac", 2000, 3000)]
    [InlineData("2-3 T/A", 4000, 6000)]
    [InlineData("1,500 lb/acre to pH 6.5, 8 in deep", 1500, null)]
    [InlineData("2 tons", 4000, null)]
    [InlineData("0", 0, null)]
    public void Printed_lime_is_taken_as_it_stands(string printed, double low, int? high)
    {
        string output = Answered(("laboratory's report", "state laboratory"), ("lime it asks for", printed));
        var lime = started.Plan.Printed!.Lime!;
        Assert.Equal(low, lime.OfBasis.PoundsPerAcre, 1e-9);
        Assert.Equal(high, lime.UpTo?.PoundsPerAcre);
        Assert.Equal(printed.Contains("6.5", StringComparison.Ordinal) ? 6.5 : null, lime.TargetPh);
        Assert.Equal(printed == "0", !output.Contains("By when can lime go on", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("0.42 ac", 0.42)]
    [InlineData("208.71, 208.71", 1)]
    [InlineData("66 x 660 ft", 1)]
    [InlineData("300, 400, 500 ft", 60_000 / 43_560d)]
    [InlineData("circle radius 117.75 ft", 1)]
    public void A_plot_is_measured_as_it_was_taped(string typed, double acres)
    {
        Answered(("sides in order", typed));
        Assert.Equal(acres, started.Plan.Plot.Area.Acres, 2e-4 * acres);
        Assert.DoesNotContain("measured", started.Plan.Plot.Name, StringComparison.Ordinal);
    }

    [Fact]
    public void Sides_without_their_diagonals_stay_unmeasured_and_say_so()
    {
        string output = Answered(("sides in order", "100, 120, 100, 130"));
        Assert.Contains("straight across to corner 3?", output, StringComparison.Ordinal);
        Assert.Contains("every amount is for 1 acre", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Kinds_without_a_bag_are_weighed_out_by_the_pound_and_told()
    {
        string output = Answered(
            ("sides in order", "0.5 ac"),
            ("What will you sow", "winter wheat 60 lb, crimson clover 10 lb"),
            ("How?", "tilled"),
            ("Seed, a bag a line", "winter wheat, 50 lb, have 2, pure 98, germ 90, tested 6/27"));
        Assert.Contains("no bag yet, priced at 0: Crimson clover", output, StringComparison.Ordinal);
        var wheat = started.Plan.SeedOffers.Single(o => o.Item.Kind.Id == "winter-wheat");
        Assert.Equal((0m, 2), (wheat.Price, wheat.Available));
        Assert.Equal(0, started.Solve().Exit);
    }

    [Fact]
    public void What_stands_in_a_file_made_by_hand_is_not_asked()
    {
        File.WriteAllText(started.File, File.ReadAllText(ConsoleTests.Data("county-report.json")));
        string before = started.Text;
        var (exit, output, error) = started.Start(Enumerable.Repeat("", 20));
        Assert.Equal((0, ""), (exit, error));
        Assert.DoesNotContain("What do you call", output, StringComparison.Ordinal);
        Assert.DoesNotContain("figures", output, StringComparison.Ordinal);
        Assert.Contains("How is it drained?", output, StringComparison.Ordinal);
        Assert.Null(Difference.Between(PlanFile.Read(before).Plan!, started.Plan));
    }

    [Fact]
    public void What_is_no_plan_is_not_written_over()
    {
        File.WriteAllText(started.File, "shopping: milk\n");
        var (exit, output, error) = started.Start("x");
        Assert.Equal((2, ""), (exit, output));
        Assert.Single(error.TrimEnd('\n').Split('\n'));
        Assert.Equal("shopping: milk\n", started.Text);
    }

    [Fact]
    public void Back_asks_the_one_before_again()
    {
        string[] answers = StartedPlan.PacedCorner;
        started.Start(answers);
        string whole = started.Text;
        started.Forget();
        string[] corrected = [.. answers.Take(answers.Length - 1).SelectMany(a => new[] { a, "back", a }), answers[^1]];
        var (exit, output, error) = started.Start(corrected);
        Assert.Equal((0, ""), (exit, error));
        Assert.Contains("the last line is taken back", output, StringComparison.Ordinal);
        Assert.Equal(whole, started.Text);
    }

    [Fact]
    public void A_side_that_cannot_be_is_mended_by_going_back()
    {
        string[] answers = StartedPlan.PacedCorner;
        string output = started.Start("back", answers[0], answers[1], answers[2], "57, 34, 430, 45, 30", answers[4], "back", answers[3], answers[4]).Out;
        Assert.Contains("there is nothing before it", output, StringComparison.Ordinal);
        Assert.Equal(2, Count(output, "Its sides in order"));
        Assert.Contains("0.42 ac from 5 sides", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Stop_keeps_what_there_is()
    {
        Assert.Contains("keeps what you answered", started.Start("Long Meadow", "stop", "never read").Out, StringComparison.Ordinal);
        Assert.StartsWith("Long Meadow", started.Plan.Plot.Name, StringComparison.Ordinal);
        Assert.Contains("goes on at: place", started.Text, StringComparison.Ordinal);
    }
}
