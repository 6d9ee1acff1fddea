using PlotAgronomy.Planning;
using PlotAgronomy.Tests.Sheets;

namespace PlotAgronomy.Tests.Planning;

public class PlannedWalksTests
{
    /// <summary>Every pound that is bought to be spread now is in a walk, each once.</summary>
    [Theory, InlineData("fall-blend"), InlineData("frost-seeding"), InlineData("clover-lots")]
    public void Every_weight_to_spread_is_walked(string demo)
    {
        var answers = FieldSheetWritingTests.Plan(demo).Solve();
        double lime = answers.Lime.Told.Order.TryGet(out var order) ? order.Dressings.Where(d => d.MonthsAfterFirst == 0).Sum(d => d.Mass.Pounds) : 0,
            fertilizer = answers.Fertilizer.TryGet(out var bought) && bought.Purchase.TryGet(out var set) ? set.Lines.Sum(l => l.Spread.Pounds) : 0,
            seed = answers.Spreading.TryGet(out var spreading) ? spreading.Passes.Sum(p => p.Load.Pounds) : 0;
        Assert.Equal(lime + fertilizer + seed, answers.Field.Walks.Sum(w => w.Pass.Load.Pounds), 1e-9);
        Assert.All(answers.Field.Walks, w => Assert.NotEmpty(w.Pass.ShowWork()));
    }

    [Fact]
    public void A_walk_covers_the_plot_at_its_rate()
    {
        var answers = FieldSheetWritingTests.Plan("fall-blend").Solve();
        Assert.All(answers.Field.Walks, w => Assert.Equal(w.Pass.Load.Pounds, w.Pass.Rate.Over(answers.Plan.Plot.Area).Pounds, 1e-6));
    }
}
