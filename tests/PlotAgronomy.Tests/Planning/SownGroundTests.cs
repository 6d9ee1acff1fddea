using PlotAgronomy.Planning;
using PlotAgronomy.Sheets;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Planning;

/// <summary>Seed is weighed for the ground that the passes cover; on an odd shape that is more than the plot, and the working says
/// so.</summary>
/// <remarks>Expected: the plot by Heron's formula, 0.4185 acre; seed = rate x (plot + what is sown beside it), by hand.</remarks>
public class SownGroundTests
{
    /// <summary>The demo with five paced sides, without the oats that have no tag.</summary>
    private static PlotAnswers Paced
    {
        get
        {
            string plan = EditedPlan.Of("paced-corner", json =>
            {
                json["growing"]!["kinds"]!.AsArray().RemoveAt(1);
                json["materials"]!["seedLots"]!.AsArray().RemoveAt(1);
            });
            return PlanFile.Read(plan).Plan!.Solve();
        }
    }

    [Fact]
    public void The_working_of_a_weight_tells_the_ground_it_is_for()
    {
        var line = FieldSheet.Of(Paced).Find("seed.cereal-rye.weight")!.ShowWork().Single(l => l.Label == "Ground the passes cover, beside the plot too");
        Assert.Contains("0.4185 ac", line.Numbers, StringComparison.Ordinal);
        var kind = Paced.Seed.Value.Kinds[0];
        Assert.True(kind.Ground.Acres > 0.42);
        Assert.Equal(kind.Weight.Pounds, kind.Bulk.Bulk.PoundsPerAcre * kind.Ground.Acres, 1e-9);
        Assert.EndsWith($"= {Amounts.Print(kind.Ground.Acres, 4)} ac", line.Numbers, StringComparison.Ordinal);
    }

    [Fact]
    public void The_back_of_the_sheet_says_both_grounds()
    {
        string sheet = string.Join(' ', FieldSheet.Of(Paced).ToText(200).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("ac: the 0.418 ac of the plot, and what the passes cover beside it, broadcast", sheet, StringComparison.Ordinal);
    }

    /// <summary>The passes of a rectangle end with it.</summary>
    [Fact]
    public void A_rectangle_needs_no_word_of_it()
    {
        var sheet = FieldSheet.Of(Sheets.TwoPagesTests.Answers("samples/data/fall-blend.json"));
        Assert.DoesNotContain(sheet.Find("seed.oats-spring.weight")!.ShowWork(), l => l.Label == "Ground the passes cover, beside the plot too");
        Assert.Contains("For 0.585 ac, broadcast", sheet.ToText(200), StringComparison.Ordinal);
    }
}
