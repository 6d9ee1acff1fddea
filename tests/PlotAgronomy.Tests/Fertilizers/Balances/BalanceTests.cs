using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using UnitsNet;
using static PlotAgronomy.Tests.Fertilizers.FertilizerShelfTests;

namespace PlotAgronomy.Tests.Fertilizers;

/// <summary>What is spread beside what was asked; sums by hand.</summary>
public class BalanceTests
{
    private static NutrientBalance Balance(double need, double delivered) => new()
    {
        Nutrient = PlantNutrient.Potash,
        AtLeast = ApplicationRate.FromPoundsPerAcre(need),
        AtMost = null,
        Delivered = ApplicationRate.FromPoundsPerAcre(delivered),
    };

    [Theory]
    [InlineData(40, 50, 125, 0, 10, true)]
    [InlineData(40, 40, 100, 0, 0, true)]
    [InlineData(40, 39, 97.5, 1, 0, false)]
    [InlineData(40, 39.99999, 99.999975, 0.00001, 0, true)] // a hair of arithmetic
    public void What_is_missing_and_what_is_over_are_parts_of_the_need(
        double need,
        double delivered,
        double percent,
        double missing,
        double surplus,
        bool isMet
    )
    {
        var balance = Balance(need, delivered);
        Assert.Equal(percent, balance.PercentOfNeed!.Value, 1e-9);
        Assert.Equal(missing, balance.Missing.PoundsPerAcre, 1e-9);
        Assert.Equal(surplus, balance.Surplus.PoundsPerAcre, 1e-9);
        Assert.Equal(isMet, balance.IsMet);
    }

    [Fact]
    public void Of_no_need_nothing_is_a_part()
    {
        Assert.Null(Balance(0, 10).PercentOfNeed);
        Assert.True(Balance(0, 0).IsMet);
    }

    [Fact]
    public void Every_nutrient_that_was_asked_or_is_on_a_label_has_its_balance()
    {
        // 100 lb of 10-20-0 and 50 of 0-0-60: 10, 20 and 30 lb.
        var balances = NutrientBalances.Of(
            [Target(PlantNutrient.Nitrogen, 15), Target(PlantNutrient.Sulfur, 5)],
            (Bag("10-20-0", 10).Item, ApplicationRate.FromPoundsPerAcre(100)),
            (Bag("0-0-60", 10).Item, ApplicationRate.FromPoundsPerAcre(50))
        );
        Assert.Equal(
            [
                (PlantNutrient.Nitrogen, 15.0, 10.0, true),
                (PlantNutrient.Phosphate, 0.0, 20.0, false),
                (PlantNutrient.Potash, 0.0, 30.0, false),
                (PlantNutrient.Sulfur, 5.0, 0.0, true),
            ],
            balances.Select(b => (b.Nutrient, b.AtLeast.PoundsPerAcre, Pounds(b), b.IsAsked))
        );
        var ofGrade = NutrientBalances.Of(
            [Target(PlantNutrient.Nitrogen, 15)],
            FertilizerAnalysis.FromGrade("10-20-0"),
            ApplicationRate.FromPoundsPerAcre(100)
        );
        Assert.Equal([10.0, 20.0], ofGrade.Select(Pounds));
    }

    [Theory]
    [InlineData(8.7, false)] // 8.7 bags: 10 are 14.9 % more than 8.7
    [InlineData(8.6, false)]
    [InlineData(1.7, true)] // 2 are 17.6 % more than 1.7
    [InlineData(0, false)]
    public void Whole_bags_far_above_the_need_are_to_be_weighed_out(double bags, bool isSaid)
    {
        var amounts = RoundedAmounts.For(
            Bag("10-10-10", 12),
            ApplicationRate.FromPoundsPerAcre(50 * bags),
            Need(5 * bags, 5 * bags, 5 * bags),
            Area.FromAcres(1)
        );
        Assert.Equal(isSaid, amounts.Findings.Any(f => f.Code == "fertilizer-weigh-out"));
        Assert.Equal(bags, amounts.Exact.Packages, 1e-9);
    }

    [Fact]
    public void What_is_to_be_weighed_out_and_what_is_left_are_named()
    {
        // 1.7 bags of 50 lb are 85 lb; of two bags 15 lb are left.
        var rate = ApplicationRate.FromPoundsPerAcre(85);
        var amounts = RoundedAmounts.For(Bag("10-10-10", 12), rate, Need(8, 8, 8), Area.FromAcres(1));
        string said = amounts.Findings.Single(f => f.Code == "fertilizer-weigh-out").Text;
        Assert.Contains("18 %", said, StringComparison.Ordinal);
        Assert.Contains("spread 85 lb and keep 15 lb", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Rounded_amounts_are_laid_out_side_by_side()
    {
        var work = RoundedAmounts.For(
            Bag("10-10-10", 12),
            ApplicationRate.FromPoundsPerAcre(120),
            Need(12, 12, 12),
            Area.FromAcres(1)).ShowWork(
        );
        Assert.Equal(4, work.Length);
        Assert.Contains("120 lb", work[0].Numbers, StringComparison.Ordinal);
        Assert.Contains("2.4; 120 lb;", work[1].Numbers, StringComparison.Ordinal);
        Assert.Contains("2; 100 lb;", work[2].Numbers, StringComparison.Ordinal);
        Assert.Contains("3; 150 lb;", work[3].Numbers, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, 0, 0)]
    [InlineData(100, 250, 100)]
    public void A_tolerance_may_be_nothing_or_all(double accept, double over, double under)
    {
        var tolerance = RoundingTolerance.FromPercent(accept, over, under);
        Assert.Equal((accept, over, under), (tolerance.AcceptPercent, tolerance.NitrogenOverPercent, tolerance.ShortPercent));
        Assert.Throws<ArgumentOutOfRangeException>(() => RoundingTolerance.FromPercent(100.1, 0, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => RoundingTolerance.FromPercent(0, 0, 100.1));
    }

    [Fact]
    public void The_remark_on_a_rounded_amount_names_how_far_it_is_off()
    {
        // 12 bags bring 60 lb of the 50 needed, 7 bags 35.
        var over = RoundedAmount.ForPackages(
            Bag("10-10-10", 12),
            12,
            Need(50, 50, 50),
            Area.FromAcres(1)).Findings.Single(f => f.Code == "fertilizer-nitrogen-over"
        );
        Assert.Contains("20 %", over.Text, StringComparison.Ordinal);
        var under = RoundedAmount.ForPackages(
            Bag("10-10-10", 12),
            7,
            Need(50, 50, 50),
            Area.FromAcres(1)).Findings.Where(f => f.Code == "fertilizer-short").ToList(
        );
        Assert.Equal(3, under.Count);
        Assert.All(under, f => Assert.Contains("30 %", f.Text, StringComparison.Ordinal));
    }

    private static double Pounds(NutrientBalance balance) =>
        Math.Round(balance.Delivered.PoundsPerAcre, 9, MidpointRounding.ToEven);
}
