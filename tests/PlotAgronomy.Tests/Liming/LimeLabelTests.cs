using PlotAgronomy.Liming;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Liming;

/// <summary>What a label can say of its kind of material, and lime that nobody needs.</summary>
public class LimeLabelTests
{
    private static LimingMaterial Labelled(string index, double value, LimingForm form = LimingForm.GroundLimestone) =>
        LimingMaterial.FromLabel("field lime", form, LimeFigure.FromValue(LimeIndex.Find(index), value));

    private static LimeOrder Order(LimingMaterial material, double tons = 2, PlotSoil? soil = null, double targetPh = 6.5) =>
        LimeOrder.For(new LimeOrderRequest
        {
            Rate = LimeSamples.Rate(tons, LimeBasis.Find("pure-carbonate"), targetPh: targetPh),
            Material = material,
            Area = Area.FromAcres(0.5),
            Soil = soil,
        });

    /// <summary>Definition: a label in percent and one in lb/ton are never the same number (ENP 2000 lb/ton is 100 %).</summary>
    [Fact]
    public void A_percent_is_not_taken_for_pounds_to_the_ton_nor_the_reverse()
    {
        foreach (var index in LimeIndex.All.Concat(LimeIndex.Unchecked))
        {
            bool inPounds = index.Unit == "lb/ton";
            Assert.Equal(inPounds, Record.Exception(() => LimeFigure.FromPercent(index, 90)) is ArgumentException { ParamName: "index" });
            Assert.Equal(!inPounds, Record.Exception(() => LimeFigure.FromPoundsPerTon(index, 200)) is ArgumentException { ParamName: "index" });
        }

        Assert.Contains("lb/ton", Assert.Throws<ArgumentException>(() => LimeFigure.FromPercent(LimeIndex.MissouriEnm, 90)).Message, StringComparison.Ordinal);
    }

    /// <summary>Practice: a percent in lb/ton, lb/ton of another state, and a share in percent.</summary>
    [Theory]
    [InlineData("ohio-enp", 90), InlineData("iowa-ecce", 82), InlineData("missouri-enm", 90), InlineData("missouri-enm", 1800), InlineData("minnesota-enp", 1)]
    [InlineData("cce", 0.9), InlineData("cce", 180), InlineData("kentucky-rnv", 0.8), InlineData("north-carolina-standard", 1), InlineData("oregon-score", 200)]
    public void A_label_figure_that_limestone_cannot_have_is_asked_about(string index, double value)
    {
        var finding = Assert.Single(Labelled(index, value).Check());
        Assert.Equal("lime-figure-implausible", finding.Code);
        Assert.Equal("field lime", finding.Subject);
    }

    /// <summary>Published: calcium carbonate equivalents (LIME-S14, S20, S21, S23) and figures that sound labels print.</summary>
    [Theory]
    [InlineData("ohio-enp", 1800, LimingForm.GroundLimestone), InlineData("iowa-ecce", 1100, LimingForm.GroundLimestone), InlineData("missouri-enm", 400, LimingForm.GroundLimestone)]
    [InlineData("cce", 108, LimingForm.Pelletized), InlineData("cce", 178, LimingForm.Quicklime), InlineData("cce", 135, LimingForm.Hydrated), InlineData("cce", 25, LimingForm.WoodAsh)]
    [InlineData("north-carolina-standard", 102, LimingForm.GroundLimestone), InlineData("oregon-score", 95, LimingForm.Pelletized), InlineData("ohio-enp", 400, LimingForm.GroundLimestone)]
    public void A_sound_label_is_not_asked_about(string index, double value, LimingForm form) => Assert.Empty(Labelled(index, value, form).Check());

    [Fact]
    public void An_analysis_typed_in_shares_is_asked_about()
    {
        Assert.Equal("lime-figure-implausible", Assert.Single(LimingMaterial.FromAnalysis("field lime", LimingForm.GroundLimestone, 0.9).Check()).Code);
        Assert.Equal(
            "lime-sieves-implausible",
            Assert.Single(LimingMaterial.FromAnalysis("field lime", LimingForm.GroundLimestone, 90, SieveAnalysis.FromPercent((8, 0.95), (60, 0.48))).Check()).Code
        );
        Assert.Empty(LimingMaterial.FromAnalysis("field lime", LimingForm.GroundLimestone, 90, SieveAnalysis.FromPercent((8, 95), (60, 48))).Check());
    }

    [Fact]
    public void An_order_and_a_plan_ask_about_the_label()
    {
        Assert.True(Order(Labelled("cce", 0.9)).Has("lime-figure-implausible"));
        Assert.False(Order(Labelled("cce", 90)).Has("lime-figure-implausible"));
        var plan = Demo with { LimeOffers = [.. Demo.LimeOffers, Demo.LimeOffers[0] with { Item = Labelled("iowa-ecce", 82) }] };
        Assert.Contains("lime-figure-implausible", plan.Solve().Lime.Findings.Select(f => f.Code));
    }

    private static PlotPlan Demo => PlanFile.Read(File.ReadAllText(Repository.PathOf("samples/data/fall-blend.json"))).Plan!;

    /// <summary>Published (LIME-S10): at or above the target no lime, whatever the buffer says.</summary>
    [Theory]
    [InlineData(6.6, true), InlineData(6.5, true), InlineData(6.4, false)]
    public void Above_the_target_no_lime_is_ordered(double ph, bool stopped)
    {
        var order = Order(Labelled("cce", 90), soil: LimeSamples.Report(ph));
        Assert.Equal(stopped, order.Dressings.IsEmpty);
        Assert.Equal(stopped, order.Has("lime-above-target"));
        if (stopped)
        {
            Assert.Equal(FindingSeverity.Warning, order.Findings[0].Severity);
            Assert.Contains(order.ShowWork(), l => l.ToString().Contains("0 ton/ac", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_printed_rate_above_its_target_stops_the_plans_order_with_a_warning()
    {
        var printed = PrintedLimeRate.Read(
            ApplicationRate.FromPoundsPerAcre(3200), 6.5, Length.FromInches(6), LimeBasis.Find("pure-carbonate"), Institution.NorthCarolina);
        var plan = Demo with { Printed = new PrintedAdvice { Crop = "food plot", Lime = printed } };
        var lime = (plan with { Report = plan.Report! with { WaterPh = WaterPh.FromValue(6.6) } }).Solve().Lime;
        Assert.Equal(AnswerState.NoneNeeded, lime.State);
        Assert.Equal(AnswerState.NoneNeeded, lime.Value.Order.State);
        Assert.Contains(lime.Findings, f => f.Code == "lime-above-target" && f.Severity == FindingSeverity.Warning);
        var due = (plan with { Report = plan.Report! with { WaterPh = WaterPh.FromValue(5.6) } }).Solve().Lime;
        Assert.Equal(AnswerState.Given, due.State);
        Assert.DoesNotContain("lime-above-target", due.Findings.Select(f => f.Code));
    }
}
