using PlotAgronomy.Planning;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.PlanFiles;

public class StoreBlendReaderTests
{
    private static string Demo(string name) => File.ReadAllText(Repository.PathOf($"samples/data/{name}.json"));

    [Fact]
    public void A_store_blend_is_read_as_its_tag_says()
    {
        var offer = Assert.Single(PlanFile.Read(Demo("store-blend")).Plan!.StoreBlends);
        var bag = offer.Item;
        double pounds = offer.Package.Weight.Pounds, acres = bag.ClaimedArea.Acres;
        Assert.Equal((20.0, 42m, 0.5), (Math.Round(pounds, 9), offer.Price, Math.Round(acres, 9)));
        Assert.Equal([45.2, 32.4, 10.1, 3.2, 1.4], bag.Tag.Components.Select(c => Math.Round(c.Analysis.PureSeed.Percent, 9)));
        Assert.Equal(100, bag.Tag.SumPercent, 1e-9);
        Assert.Equal("2026-02", bag.Tag.OldestTest.ToString());
        Assert.Equal(8, bag.Tag.Components[2].Analysis.HardSeed.Percent, 1e-9);
    }

    [Theory]
    [InlineData("\"claimedArea\": \"0.5 ac\"", "\"claimedArea\": \"0 ac\"", "$.materials.storeBlends[0].claimedArea", "above zero")]
    [InlineData("\"claimedArea\": \"0.5 ac\", ", "", "$.materials.storeBlends[0]", "'claimedArea' is missing")]
    [InlineData("\"package\": \"20 lb\"", "\"package\": \"20\"", "$.materials.storeBlends[0].package", "no unit")]
    [InlineData("\"kind\": \"chicory\"", "\"kind\": \"moon grass\"", "$.materials.storeBlends[0].components[4].kind", "moon grass")]
    [InlineData("\"pureSeed\": \"45.2 %\"", "\"pureSeed\": \"95.2 %\"", "$.materials.storeBlends[0].components", "at most 100 %")]
    [InlineData("\"germination\": \"75 %\", \"hardSeed\": \"8 %\"", "\"germination\": \"95 %\", \"hardSeed\": \"8 %\"", "$.materials.storeBlends[0].components[2].pureSeed", "Germination + hard")]
    [InlineData("\"pureSeed\": \"1.4 %\", \"germination\": \"80 %\"", "\"pureSeed\": \"1.4 %\", \"germination\": \"0 %\"", "$.materials.storeBlends[0].components", "above 0")]
    [InlineData("\"weed\": \"0.2 %\"", "\"weeds\": \"0.2 %\"", "$.materials.storeBlends[0].weeds", "unknown field")]
    public void A_mistake_in_a_store_blend_is_reported_where_it_stands(string from, string to, string path, string says)
    {
        string broken = Demo("store-blend").Replace(from, to, StringComparison.Ordinal);
        var problem = Assert.Single(PlanFile.Read(broken).Problems);
        Assert.Equal(path, problem.Path);
        Assert.Contains(says, problem.Text, StringComparison.Ordinal);
        Assert.True(problem is { Line: > 50, Column: > 1 }, problem.ToString());
    }

    [Fact]
    public void Two_varieties_of_a_kind_in_a_store_blend_are_one_kind()
    {
        string twice = Demo("store-blend").Replace("\"kind\": \"chicory\"", "\"kind\": \"winter wheat\"", StringComparison.Ordinal);
        var reading = PlanFile.Read(twice);
        Assert.Empty(reading.Problems);
        var blend = Assert.Single(reading.Plan!.CompareStoreBlends().Blends);
        Assert.Equal(4, blend.Comparison.AsClaimed.Parts.Length);
    }

    [Fact]
    public void A_lot_in_which_nothing_is_alive_is_a_mistake_not_a_crash()
    {
        string dead = Demo("clover-lots").Replace("\"germination\": \"61 %\"", "\"germination\": \"0 %\"", StringComparison.Ordinal);
        var problem = Assert.Single(PlanFile.Read(dead).Problems);
        Assert.Equal("$.materials.seedLots[1].germination", problem.Path);
    }

    [Theory]
    [InlineData("23.9 in", 0)]
    [InlineData("24 in", 1)]
    [InlineData("24.1 in", 1)]
    public void Ground_is_not_worked_deeper_than_lime_can_be_counted(string depth, int problems)
    {
        string deep = Demo("clover-lots").Replace("\"tillageDepth\": \"6 in\"", $"\"tillageDepth\": \"{depth}\"", StringComparison.Ordinal);
        Assert.Equal(problems, PlanFile.Read(deep).Problems.Count(p => p.Path == "$.tillageDepth"));
    }

    [Fact]
    public void A_kind_that_nobody_publishes_a_rate_for_sown_so_is_a_mistake()
    {
        string unknown = Demo("clover-lots").Replace("crimson clover", "eastern gamagrass", StringComparison.Ordinal);
        Assert.Contains(PlanFile.Read(unknown).Problems, p => p.Path == "$.growing.kinds[0].kind");
    }
}
