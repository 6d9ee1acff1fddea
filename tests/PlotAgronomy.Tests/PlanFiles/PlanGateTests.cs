using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.PlanFiles;

/// <summary>Whatever stands in a plan file, reading it lists mistakes with their places and throws nothing. The values are slips
/// of the pen and the edges of the types that hold them.</summary>
public class PlanGateTests
{
    [Theory]
    [InlineData("fall-blend", "materials.seedLots.0.price", "-1", "$.materials.seedLots[0].price")]
    [InlineData("fall-blend", "materials.lime.0.price", "-1", "$.materials.lime[0].price")]
    [InlineData("fall-blend", "materials.fertilizers.0.price", "-1", "$.materials.fertilizers[0].price")]
    [InlineData("store-blend", "materials.storeBlends.0.price", "-1", "$.materials.storeBlends[0].price")]
    [InlineData("fall-blend", "soilReport.cec.value", "-3", "$.soilReport.cec.value")]
    [InlineData("fall-blend", "soilReport.exchangeableAcidity.value", "-3", "$.soilReport.exchangeableAcidity.value")]
    [InlineData("fall-blend", "growing.kinds.0.yield", "{\"value\":-2,\"unit\":\"ton/ac\"}", "$.growing.kinds[0].yield.value")]
    [InlineData("fall-blend", "materials.seedLots.0.tested", "\"0226-05-01\"", "$.materials.seedLots[0].tested")]
    [InlineData("fall-blend", "materials.seedLots.0.tested", "\"1826-05-01\"", "$.materials.seedLots[0].tested")]
    [InlineData("store-blend", "materials.storeBlends.0.tested", "\"0226-05-01\"", "$.materials.storeBlends[0].tested")]
    [InlineData("fall-blend", "plantingDate", "\"9999-12-31\"", "$.plantingDate")]
    [InlineData("fall-blend", "limeDate", "\"0226-04-04\"", "$.limeDate")]
    [InlineData("fall-blend", "spreader.measuredRuns.0.time", "\"99999999999999999 s\"", "$.spreader.measuredRuns[0].time")]
    [InlineData("fall-blend", "spreader.measuredRuns.0.time", "\"10675200 d\"", "$.spreader.measuredRuns[0].time")]
    [InlineData("fall-blend", "materials.seedLots.0.package", "\"0.00000000000000000000000000000001 lb\"", "$.materials.seedLots[0].package")]
    [InlineData("fall-blend", "materials.seedLots.0.package", "\"10000000000000000000000000000 lb\"", "$.materials.seedLots[0].package")]
    [InlineData("fall-blend", "soilReport.depth", "\"60 in\"", "$.soilReport.depth")]
    [InlineData("frost-seeding", "soilReport.depth", "\"2 km\"", "$.soilReport.depth")]
    [InlineData("fall-blend", "growing.kinds.0.shareOfFullStand", "0", "$.growing.kinds[0].shareOfFullStand")]
    [InlineData("fall-blend", "growing.kinds.2.yield", "{\"value\":2,\"unit\":\"bu/ac\"}", "$.growing.kinds[2].yield")]
    [InlineData("fall-blend", "plot.name", "\"a\\u001b[2Jb\"", "$.plot.name")]
    public void A_value_that_cannot_be_is_a_mistake_with_its_place(string demo, string path, string json, string at)
    {
        var reading = PlanFile.Read(EditedPlan.With(demo, path, json));
        Assert.Null(reading.Plan);
        var problem = reading.Problems.Single(p => p.Path == at);
        Assert.True(problem.Line > 1, problem.ToString());
        Assert.DoesNotContain("Parameter", problem.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1" + "00000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000")]
    [InlineData("0.000000000000000000000000000000000000000000000000000000000000000000000000000000000000000001")]
    public void Amounts_beyond_reckoning_are_refused_in_every_unit(string digits)
    {
        Assert.False(Amounts.TryReadMass(digits + " t", out _, out string mass));
        Assert.Contains("to reckon with", mass, StringComparison.Ordinal);
        Assert.False(Amounts.TryReadLength(digits + " ft", out _, out _));
        Assert.False(Amounts.TryReadArea(digits + " ha", out _, out _));
        Assert.False(Amounts.TryReadVolume(digits + " m3", out _, out _));
        Assert.False(Amounts.TryReadDensity(digits + " g/cm3", out _, out _));
        Assert.False(Amounts.TryReadRate(digits + " t/ha", out _, out _));
        Assert.False(Amounts.TryReadDuration(digits + " d", out _, out _));
    }

    [Fact]
    public void An_amount_of_as_many_digits_as_a_double_holds_is_refused_and_not_infinite() =>
        Assert.False(Amounts.TryReadMass("1" + new string('0', 305) + " t", out _, out _));

    [Theory]
    [InlineData("{\"\\ud800\":1}", 1)]
    [InlineData("{\n  \"currency\": \"\\ud83c\" }", 2)]
    [InlineData("{\n\n  \"plot\": { \"name\": \"a \\udf3e field\" } }", 3)]
    public void Half_a_character_is_one_mistake_with_its_line(string text, int line)
    {
        var problem = Assert.Single(PlanFile.Read(text).Problems);
        Assert.Equal(line, problem.Line);
        Assert.Contains("half a character", problem.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_zero_written_with_a_sign_is_a_plain_zero()
    {
        var plan = PlanFile.Read(EditedPlan.With("frost-seeding", "soilReport.readings.0.value", "-0")).Plan!;
        Assert.False(double.IsNegative(plan.Report!.Readings[0].PrintedValue));
        Assert.True(Amounts.TryReadMass("-0 lb", out var nothing, out _));
        double pounds = nothing.Pounds;
        Assert.False(double.IsNegative(pounds));
    }

    [Fact]
    public void A_mistyped_corner_is_named()
    {
        string text = EditedPlan.Of("fall-blend", plan =>
        {
            plan["plot"]!.AsObject().Remove("sides");
            EditedPlan.Set(plan, "plot.outline", System.Text.Json.Nodes.JsonNode.Parse(
                "[[36.0000,-79.0000],[36.0005,-79.0000],[37.0005,-79.0006],[36.0000,-79.0006]]"));
        });
        var problem = Assert.Single(PlanFile.Read(text).Problems);
        Assert.Equal("$.plot.outline[2]", problem.Path);
    }
}
