using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Liming;

/// <summary>Published steps from a rate to tons and bags of a real material.</summary>
public class LimeOrderExamples
{
    public static TheoryData<string> Orders => WorkedExamples.Ids("Liming/worked-orders.csv");

    public static TheoryData<string> Powers => WorkedExamples.Ids("Liming/worked-power.csv");

    [Theory, MemberData(nameof(Orders))]
    public void The_order_matches_the_published_figure(string id)
    {
        var row = WorkedExamples.Find("Liming/worked-orders.csv", id);
        Assert.True(Amounts.TryReadRate($"{row.Text("rate")} {row.Text("rate_unit")}", out var printed, out string problem), problem);
        var order = LimeOrder.For(new LimeOrderRequest
        {
            Rate = LimeRate.FromBasis(printed, 6.5, Length.FromInches(row.NumberOrNull("depth_from") ?? 6), LimeBasis.Find(row.Text("basis")), Institution.FindLaboratory("test laboratory")),
            Material = LimingMaterial.FromLabel("lime", LimingForm.GroundLimestone, LimeFigure.FromValue(LimeIndex.Find(row.Text("index")), row.Number("figure"))),
            Area = Area.FromAcres(row.NumberOrNull("acres") ?? 1),
            WorkedDepth = row.NumberOrNull("depth_to") is { } inches ? Length.FromInches(inches) : null,
            Package = row.NumberOrNull("bag_lb") is { } pounds ? Package.FromWeight(Mass.FromPounds(pounds)) : Package.BulkByTheTon,
        });
        WorkedExamples.AssertMatches(row, row.Text("quantity") switch
        {
            "ton rate" => order.ProductRate.ShortTonsPerAcre,
            "pound rate" => order.ProductRate.PoundsPerAcre,
            "thousand rate" => order.ProductRate.PoundsPerThousandSquareFeet,
            "hundred rate" => order.ProductRate.PoundsPerThousandSquareFeet / 10,
            "bags" => order.Bags!.Value,
            var other => throw new InvalidOperationException(other),
        });
    }

    [Theory, MemberData(nameof(Powers))]
    public void The_power_matches_the_published_figure(string id)
    {
        var row = WorkedExamples.Find("Liming/worked-power.csv", id);
        var index = LimeIndex.Find(row.Text("index"));
        var material = LimingMaterial.FromLabel("lime", LimingForm.Other, LimeFigure.FromValue(index, row.Number("figure")));
        WorkedExamples.AssertMatches(row, NeutralizingPower.In(Mass.FromPounds(row.Number("pounds")), material, index).Pounds);
    }

    [Fact]
    public void Power_of_two_indices_is_not_added()
    {
        var ton = Mass.FromPounds(2000);
        var enp = NeutralizingPower.In(ton, LimingMaterial.PureCarbonate, LimeIndex.OhioEnp);
        Assert.Equal(4000, enp.Plus(enp).Pounds, 1e-9);
        Assert.Throws<InvalidOperationException>(() => enp.Plus(NeutralizingPower.In(ton, LimingMaterial.PureCarbonate, LimeIndex.MissouriEnm)));
        Assert.Throws<ArgumentOutOfRangeException>(() => NeutralizingPower.In(Mass.FromPounds(-1), LimingMaterial.PureCarbonate, LimeIndex.OhioEnp));
    }
}
