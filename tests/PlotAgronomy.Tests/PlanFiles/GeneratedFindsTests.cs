using System.Text.Json.Nodes;
using PlotAgronomy.Blends;
using PlotAgronomy.Sheets;
using PlotAgronomy.Spreading;
using PlotAgronomy.Tests.Blends;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.PlanFiles;

/// <summary>What tens of thousands of generated plans found, each as a plan of its own.</summary>
public class GeneratedFindsTests
{
    [Theory]
    [InlineData("materials.fertilizers.0.analysis", "\"2026-02-30\"")]
    [InlineData("materials.fertilizers.0.analysis", "\"99-0-0\"")]
    public void A_mistake_names_no_parameter_of_the_code(string path, string json)
    {
        var problem = Assert.Single(PlanFile.Read(EditedPlan.With("fall-blend", path, json)).Problems);
        Assert.DoesNotContain("Parameter", problem.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("Actual value", problem.ToString(), StringComparison.Ordinal);
    }

    /// <summary>A million acres from bags of a hundredth of a pound are more bags than a count holds.</summary>
    [Theory]
    [InlineData("seedLots"), InlineData("fertilizers"), InlineData("lime")]
    public void Packages_that_cannot_be_counted_are_a_mistake_at_their_place(string list)
    {
        var reading = PlanFile.Read(EditedPlan.Of("fall-blend", plan =>
        {
            plan["plot"]!.AsObject().Remove("sides");
            EditedPlan.Set(plan, "plot.area", "1,000,000 ac");
            EditedPlan.Set(plan, $"materials.{list}.1.package", "0.01 lb");
        }));
        Assert.Contains(reading.Problems, p => p.ToString().Contains($"{list}[1]", StringComparison.Ordinal) && p.ToString().Contains("cannot be counted out", StringComparison.Ordinal));
    }

    /// <summary>By hand: whatever 1.25 ac need, at a thousand-millionth of its strength it is ten times as many thousand million
    /// packages as a count holds.</summary>
    [Theory]
    [InlineData("materials.seedLots.1.germination", "0.0000001 %", "seedLots[1]")]
    [InlineData("materials.seedLots.1.pureSeed", "0.0000001 %", "seedLots[1]")]
    [InlineData("materials.fertilizers.0.analysis", "0.0000000001-0-0", "fertilizers[0]")]
    [InlineData("spreader.hopper", "0.0000000015 gal", "hopper")]
    [InlineData("spreader.hopper", "0.0000000015 lb", "hopper")]
    public void Goods_next_to_nothing_are_a_mistake_at_their_place(string path, string typed, string place)
    {
        var reading = PlanFile.Read(EditedPlan.With("fall-blend", path, $"\"{typed}\""));
        var problem = Assert.Single(reading.Problems);
        Assert.Contains(place, problem.ToString(), StringComparison.Ordinal);
        Assert.Contains("cannot be counted out", problem.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0.00000015", false)]
    [InlineData("60", true)]
    public void Lime_of_next_to_no_strength_is_a_mistake_at_its_place(string cce, bool isRead)
    {
        var reading = PlanFile.Read(EditedPlan.With("fall-blend", "materials.lime.1.cce", cce));
        Assert.Equal(isRead, reading.Plan is not null);
        Assert.Equal(!isRead, reading.Problems.Any(p => p.ToString().Contains("cannot be counted out", StringComparison.Ordinal)));
    }

    /// <summary>A crumb in a hopper of 25 lb is one filling, not none, and it weighs what the load weighs.</summary>
    [Fact]
    public void A_load_next_to_nothing_is_one_filling()
    {
        var crumb = Mass.FromPounds(1e-9);
        var pass = WalkedPass.For(crumb, ApplicationRate.FromPoundsPerAcre(5), Length.FromFeet(12), filling: Mass.FromPounds(25));
        Assert.Equal(1, pass.Fillings);
        Assert.Equal(crumb.Pounds, pass.PerFilling!.Value.Pounds, 15);
    }

    /// <summary>Six bags of a quarter of an ounce on a tenth of an acre are counted as ever.</summary>
    [Fact]
    public void Small_packets_on_a_small_plot_are_no_mistake() =>
        Assert.Empty(PlanFile.Read(EditedPlan.With("fall-blend", "materials.seedLots.5.package", "\"0.25 oz\"")).Problems);

    /// <summary>A run in which next to nothing came out asks for a pace at which no walk ever ends.</summary>
    [Fact]
    public void A_pace_that_never_ends_is_no_setting()
    {
        var reading = PlanFile.Read(EditedPlan.Of("fall-blend", plan =>
        {
            foreach (var run in plan["spreader"]!["measuredRuns"]!.AsArray())
            {
                run!["weighed"] = JsonValue.Create("0.00000003 lb");
            }
        }));
        Assert.Empty(reading.Problems);
        var answers = reading.Plan!.Solve();
        Assert.All(answers.Spreading.Value.Passes, p => Assert.Null(p.Setup.PaceForGate));
        Assert.NotEmpty(FieldSheet.Of(answers).ToText(100, showWork: true));
    }

    /// <summary>A need that is dust beside its bag still takes one bag: 1e-9 lb of a 50-lb bag.</summary>
    [Fact]
    public void A_kind_is_not_left_out_because_its_bag_is_large()
    {
        var lot = RecipeTests.Lot("oats-spring", 0.5m, 90);
        var bagged = Offer.InBags(lot.Item, Mass.FromPounds(50), 25);
        var blend = Blend.FromSharesOfFullStand((BlendComponent.FromOffer(bagged, SowingMethod.Broadcast), 0.25));
        var order = BagOrder.For(blend, Area.FromAcres(1e-11));
        Assert.Equal(1, Assert.Single(order.Lines).Bags);
        Assert.Equal(25, order.Cost);
    }
}
