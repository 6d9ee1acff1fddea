using PlotAgronomy.Liming;
using PlotAgronomy.Planning;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using PlotAgronomy.Sheets;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Planning.Stakes;

/// <summary>What rests on an answer that is missing, and on a number that was measured.</summary>
public class PlanStakesTests
{
    private static PlotPlan Demo { get; } = PlanFile.Read(File.ReadAllText(Repository.PathOf("samples/data/fall-blend.json"))).Plan!;

    /// <summary>A laboratory that prints two tons and not of what.</summary>
    private static PlotPlan TwoTons { get; } = Demo with
    {
        Printed = new PrintedAdvice
        {
            Crop = "wildlife plot",
            Lime = PrintedLimeRate.Read(ApplicationRate.FromShortTonsPerAcre(2), 6.5, Length.FromInches(6), null, Institution.NorthCarolina),
        },
    };

    private static QuestionStake Of(PlotPlan plan, string code) => plan.Solve().Stakes.Questions.Single(q => q.Question.Code == code);

    [Fact]
    public void Two_tons_of_what_is_told_in_bags_and_money_for_each_plausible_lime()
    {
        var stake = Of(TwoTons, LimingCodes.AskBasis);
        Assert.True(stake.Cases.Length >= 2, stake.ToString());
        Assert.True(stake.MoneyAtStake > 0, stake.ToString());
        Assert.True(stake.LimePackages!.Value.Low < stake.LimePackages.Value.High);
        Assert.Contains("of lime", stake.AtStake, StringComparison.Ordinal);
        Assert.Contains("USD", stake.AtStake, StringComparison.Ordinal);
        Assert.True(stake.IsInTheWay);
    }

    /// <summary>By hand: each bag at 4.25; of the limes that the two tons may be of, some have no strength to order by.</summary>
    [Fact]
    public void An_answer_that_cannot_be_ordered_is_no_cheap_one()
    {
        var offer = Offer.InBags(TwoTons.LimeOffers[0].Item, Mass.FromPounds(50), pricePerBag: 4.25m);
        var stake = Of(TwoTons with { LimeOffers = [offer] }, LimingCodes.AskBasis);
        Assert.Contains("cannot be ordered", stake.AtStake, StringComparison.Ordinal);
        Assert.Equal((stake.LimePackages!.Value.Low * 4.25m, stake.LimePackages.Value.High * 4.25m), stake.Cost);
    }

    /// <summary>Second way: the plan with the label typed in.</summary>
    [Fact]
    public void A_case_is_the_plan_with_that_answer()
    {
        foreach (var option in Of(TwoTons, LimingCodes.AskBasis).Cases)
        {
            Assert.True(option.TryGetAssumed<LimeBasis>(out var basis));
            var typed = TwoTons with
            {
                Printed = TwoTons.Printed! with { Lime = PrintedLimeRate.Read(ApplicationRate.FromShortTonsPerAcre(2), 6.5, Length.FromInches(6), basis, Institution.NorthCarolina) },
            };
            Assert.Equal(typed.Solve().Lime.Told.Order.OrNull()?.Bags, option.Value.Lime.Told.Order.OrNull()?.Bags);
        }
    }

    /// <summary>A printed rate without target and depth is ordered as it stands, so that its lime alone is asked.</summary>
    [Fact]
    public void Nothing_else_is_assumed_where_nothing_else_stands_in_the_way()
    {
        var plan = TwoTons with
        {
            Printed = TwoTons.Printed! with { Lime = PrintedLimeRate.Read(ApplicationRate.FromShortTonsPerAcre(2), null, null, null, Institution.NorthCarolina) },
        };
        var stake = Of(plan, LimingCodes.AskBasis);
        Assert.Empty(stake.Assumed);
        Assert.True(stake.Cases.Length > 1);
    }

    /// <summary>Two tons of a lime that is not named, to be bought as one whose label is not known: the label is assumed, one of its
    /// plausible figures, and told with its answer on the sheet.</summary>
    [Fact]
    public void What_else_stands_in_the_way_is_assumed_and_told()
    {
        var silent = LimingMaterial.FromAnalysis("loose lime", LimingForm.GroundLimestone, null, null, default, null);
        var plan = TwoTons with { LimeOffers = [Offer.InBags(silent, Mass.FromPounds(50), 5)] };
        var answers = plan.Solve();
        var stake = answers.Stakes.Questions.Single(q => q.Question.Code == LimingCodes.AskBasis);
        Assert.NotEmpty(stake.Assumed);
        Assert.All(stake.Assumed, a => Assert.Equal(LimingCodes.AskLabel, a.Question.Code));
        Assert.True(stake.MoneyAtStake > 0, stake.ToString());
        Assert.All(stake.Cases, c => Assert.Equal(AnswerState.Given, c.Value.Lime.Told.Order.State));
        string sheet = FieldSheet.Of(answers).ToMarkdown();
        Assert.All(stake.Assumed, a => Assert.Contains(a.Answer, sheet, StringComparison.Ordinal));
    }

    [Fact]
    public void The_questions_stand_in_the_order_of_what_is_at_stake()
    {
        var money = TwoTons.Solve().Stakes.Questions.Where(q => !q.Cases.IsEmpty && q.MoneyAtStake > 0).Select(q => q.MoneyAtStake).ToList();
        Assert.NotEmpty(money);
        Assert.Equal(money.OrderDescending(), money);
        Assert.Equal(LimingCodes.AskBasis, TwoTons.Solve().Stakes.Questions[0].Question.Code);
    }

    [Fact]
    public void Every_question_is_there_once_and_no_more_is_solved_than_the_limit()
    {
        var answers = TwoTons.Solve();
        var stakes = answers.Stakes.Questions;
        Assert.Equal(answers.Questions.ToHashSet(), stakes.Select(s => s.Question).ToHashSet());
        Assert.Equal(answers.Questions.Length, stakes.Length);
        Assert.InRange(stakes.Sum(s => s.Cases.Length + s.Assumed.Length), 1, 60);
        Assert.InRange(stakes.Count(s => !s.Cases.IsEmpty), 1, 12);
    }

    /// <summary>By hand: at the highest printed rates more seed is weighed out than at the lowest, in the same shares.</summary>
    [Fact]
    public void A_full_rate_that_few_print_is_solved_at_the_lowest_and_the_highest_printed()
    {
        var stake = Of(Demo, SeedCodes.AskFullRate);
        Assert.Equal(2, stake.Cases.Length);
        double[] pounds = [.. stake.Cases.Select(c => c.Value.Seed.Value.Kinds.Sum(k => k.Weight.Pounds))];
        Assert.Equal(Demo.Solve().Seed.Value.Kinds.Sum(k => k.Weight.Pounds), pounds[0], 1e-9);
        Assert.True(pounds[1] > pounds[0]);
        Assert.Contains("lb of seed", stake.AtStake, StringComparison.Ordinal);
        Assert.All(stake.Cases, c => Assert.DoesNotContain(c.Value.Questions, q => q.Code == SeedCodes.AskFullRate));
    }

    [Fact]
    public void A_question_that_changes_nothing_is_not_on_the_sheet_and_is_in_the_answers()
    {
        var answers = Demo.Solve();
        var silent = answers.Stakes.Questions.Where(q => q.ChangesNothing).ToList();
        string sheet = FieldSheet.Of(answers).ToMarkdown();
        Assert.NotEmpty(silent);
        Assert.All(silent, q => Assert.DoesNotContain(q.Question.Code, sheet, StringComparison.Ordinal));
        Assert.All(silent, q => Assert.Contains(q.Question, answers.Questions));
    }

    /// <summary>Closed form: set for 12 ft, seed for W falls as W x 12/14 where the throw is 14 ft and as W x 12/10 where it is 10.</summary>
    [Fact]
    public void A_swath_that_is_off_puts_on_less_or_more_seed()
    {
        var plan = Demo with { Spreader = Demo.Spreader! with { Swath = Length.FromFeet(12) } };
        var answers = plan.Solve();
        double weight = answers.Seed.Value.Kinds.Sum(k => k.Weight.Pounds);
        var swath = answers.Stakes.Measured.Single(m => m.Name == "swath");
        Assert.Equal(weight * 12 / 14, swath.Seed.Low.Pounds, 0.01 * weight);
        Assert.Equal(weight * 12 / 10, swath.Seed.High.Pounds, 0.01 * weight);
        Assert.StartsWith("swath 12 ft give or take 2; ", swath.ToString(), StringComparison.Ordinal);
        Assert.True(swath.MoneyAtStake > 0);
    }

    /// <summary>Closed form: the seed goes with the area.</summary>
    [Fact]
    public void An_area_that_is_off_moves_the_seed_with_it()
    {
        var plan = Demo with { Plot = Demo.Plot with { Measured = PlotArea.Stated(Area.FromAcres(1)) } };
        var answers = plan.Solve();
        double weight = answers.Seed.Value.Kinds.Sum(k => k.Weight.Pounds);
        var area = answers.Stakes.Measured.Single(m => m.Name == "area");
        Assert.Equal(weight * 0.9, area.Seed.Low.Pounds, 1e-6 * weight);
        Assert.Equal(weight * 1.1, area.Seed.High.Pounds, 1e-6 * weight);
    }

    [Fact]
    public void Every_measured_number_is_weighed_with_its_source_and_the_first_is_worth_measuring_again()
    {
        var stakes = Demo.Solve().Stakes;
        Assert.Superset(new HashSet<string> { "soil pH", "area", "swath" }, stakes.Measured.Select(m => m.Name).ToHashSet());
        Assert.Contains(stakes.Measured, m => m.Name.StartsWith("germination of ", StringComparison.Ordinal));
        Assert.All(stakes.Measured, m => Assert.NotEmpty(m.Error));
        Assert.Equal(stakes.Measured.Max(m => m.MoneyAtStake), stakes.WorthMeasuringAgain!.MoneyAtStake);
    }

    /// <summary>The lower the buffer reads, the more lime its table asks for.</summary>
    [Fact]
    public void A_buffer_pH_that_is_off_moves_the_lime()
    {
        var plan = PlanFile.Read(File.ReadAllText(Repository.PathOf("tests/PlotAgronomy.Tests/Plans/p03-clay-smp59-oh.json"))).Plan!;
        var buffer = plan.Solve().Stakes.Measured.Single(m => m.Name == "buffer pH");
        Assert.True(buffer.MoneyAtStake > 0);
        Assert.Contains("lime", buffer.AtStake, StringComparison.Ordinal);
        Assert.Equal("0.1", buffer.Error);
    }

    [Fact]
    public void The_weakest_number_is_the_last_line_of_the_questions()
    {
        var answers = Demo.Solve();
        var ask = FieldSheet.Of(answers).Sections.Single(s => s.Id == "ask");
        var last = Assert.IsType<SheetRemarks>(ask.Blocks[^1]).Remarks[^1];
        Assert.Equal($"Worth measuring again: {answers.Stakes.WorthMeasuringAgain}.", last.Text);
    }
}
