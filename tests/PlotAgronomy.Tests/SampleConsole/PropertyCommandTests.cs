using PlotAgronomy.Planning;

namespace PlotAgronomy.Tests.SampleConsole;

/// <summary><c>property</c> and <c>compare plans</c>.</summary>
public class PropertyCommandTests
{
    internal static PlotPlan Plan(string name, string side)
    {
        string json = File.ReadAllText(ConsoleTests.Data("fall-blend.json"))
            .Replace("Fern Bottom", name, StringComparison.Ordinal)
            .Replace("\"length\": \"182 ft\"", $"\"length\": \"{side}\"", StringComparison.Ordinal);
        return PlanFile.Read(json).Plan!;
    }

    /// <summary>Whole bags for the sum of the needs, never more than the bags of each; the same weights (second sum: packages by
    /// rounding up the sum of what each plot weighs out).</summary>
    [Fact]
    public void Plots_that_share_bags_buy_no_more_and_each_gets_what_it_needs()
    {
        var (a, b, c) = (Plan("North", "182 ft"), Plan("Middle", "60 ft"), Plan("South", "95 ft"));
        var together = PropertyPlan.Of(a, b, c);
        decimal apart = together.Purchases.Sum(p => (p.Apart ?? 0) * p.Price);
        Assert.True(together.Cost < apart);
        Assert.Equal(apart - together.Cost, together.Saved);
        foreach (var bought in together.Purchases)
        {
            double pounds = bought.Needs.Sum(n => n.Mass.Pounds);
            int bags = (int)Math.Ceiling(Math.Round(pounds / bought.Package.Weight.Pounds, 9));
            Assert.Equal(bags, bought.Together);
            Assert.True(bought.Together <= bought.Apart);
        }

        double oats = together.Purchases.Single(p => p.Name == "Spring oats, lot OA-6").Needed.Pounds;
        Assert.Equal(together.Plots.Sum(p => p.Seed.Value.Kinds.Single(k => k.Planned.Kind.Id == "oats-spring").Weight.Pounds), oats, 1e-9);
    }

    [Fact]
    public void The_work_of_all_plots_is_in_the_order_of_its_days_lime_before_seed()
    {
        var work = PropertyPlan.Of(Plan("North", "182 ft"), Plan("South", "60 ft")).Work;
        Assert.Equal(work.Select(w => w.Day), work.Select(w => w.Day).Order());
        Assert.Equal(["North", "South"], work.Take(2).Select(w => w.Plot.Name));
        Assert.All(work.Take(2), w => Assert.NotNull(w.Walk.Lime));
        Assert.NotNull(work[^1].Walk.Seed);
    }

    [Fact]
    public void Work_without_a_day_stands_after_all_that_has_one()
    {
        var undated = Plan("North", "182 ft") with { PlantingDate = null, LimeDate = null };
        var work = PropertyPlan.Of(undated, Plan("South", "60 ft")).Work;
        Assert.Null(work[^1].Day);
        Assert.NotNull(work[0].Day);
        Assert.All(work.SkipWhile(w => w.Day is not null), w => Assert.Null(w.Day));
    }

    [Fact]
    public void One_plot_alone_buys_what_its_own_plan_buys()
    {
        var alone = PropertyPlan.Of(Plan("North", "182 ft"));
        Assert.Equal(alone.Plots[0].TotalCost, alone.Cost);
        Assert.Equal(0, alone.Saved);
    }

    [Fact]
    public void Two_plans_of_one_plot_and_two_currencies_are_refused()
    {
        var north = Plan("North", "182 ft");
        Assert.Throws<ArgumentException>(() => PropertyPlan.Of(north, Plan("North", "60 ft")));
        Assert.Throws<ArgumentException>(() => PropertyPlan.Of(north, Plan("South", "60 ft") with { Currency = Currency.FromCode("EUR") }));
        Assert.Throws<ArgumentException>(() => PlansSideBySide.Of(north, Plan("South", "60 ft") with { Currency = Currency.FromCode("EUR") }));
    }

    [Fact]
    public void The_console_tells_the_shared_bags_and_what_sharing_saves()
    {
        string folder = Directory.CreateTempSubdirectory("property").FullName;
        try
        {
            string[] files = [.. new[] { ("North", "182 ft"), ("South", "60 ft") }.Select(p =>
            {
                string file = Path.Combine(folder, $"{p.Item1}.json");
                File.WriteAllText(file, PlanFile.Write(Plan(p.Item1, p.Item2)));
                return file;
            })];
            var (exit, sheet, error) = ConsoleTests.Run(["property", .. files, "--width", "140"]);
            Assert.Equal((0, ""), (exit, error));
            Assert.Contains("Shopping for all plots", sheet, StringComparison.Ordinal);
            Assert.Contains("sharing saves", sheet, StringComparison.Ordinal);
            (exit, sheet, error) = ConsoleTests.Run("compare", "plans", files[0], files[1], "--width", "140");
            Assert.Equal((0, ""), (exit, error));
            Assert.Contains("The second plan costs", sheet, StringComparison.Ordinal);
            Assert.Contains("feeds in", sheet, StringComparison.Ordinal);
            Assert.Contains("held back", sheet, StringComparison.Ordinal);
            Assert.Contains("sown now", sheet, StringComparison.Ordinal);
            (exit, sheet, error) = ConsoleTests.Run(["property", .. files, "--budget", "300"]);
            Assert.Equal((0, ""), (exit, error));
            Assert.Contains("Left out for the budget", sheet, StringComparison.Ordinal);
            Assert.Contains("what it costs", sheet, StringComparison.Ordinal);
            (exit, _, error) = ConsoleTests.Run("property", files[0], files[0]);
            Assert.Equal(2, exit);
            Assert.Contains("Two plans are of the plot 'North'.", error, StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
