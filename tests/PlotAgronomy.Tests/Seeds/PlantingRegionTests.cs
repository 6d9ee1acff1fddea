using PlotAgronomy.Seeds;

namespace PlotAgronomy.Tests.Seeds;

public class PlantingRegionTests
{
    [Fact]
    public void The_everyday_regions_are_all_there_are() =>
        Assert.Equal([PlantingRegion.North, PlantingRegion.Find("central"), PlantingRegion.Find("south")], PlantingRegion.All);

    [Fact]
    public void A_region_is_found_by_id_or_name_and_is_one_object()
    {
        Assert.Same(PlantingRegion.Find("south"), PlantingRegion.Find(" south "));
        Assert.Same(PlantingRegion.Find("south"), PlantingRegion.Find("South"));
        Assert.Contains("Gulf", PlantingRegion.Find("south").Covers, StringComparison.Ordinal);
        Assert.False(PlantingRegion.TryFind("west", out _, out string problem));
        Assert.Contains("north, central, south", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_window_names_the_kind_it_was_printed_for()
    {
        var rye = KindCatalog.Standard.Find("cereal rye");
        Assert.All(PlantingWindow.Published(rye, PlantingRegion.Find("south")), w => Assert.Same(rye, w.Kind));
        Assert.NotEmpty(PlantingWindow.Published(rye, PlantingRegion.Find("south")));
    }

    [Fact]
    public void Dates_from_memory_name_their_kind_in_words()
    {
        var alsike = KindCatalog.Standard.Find("alsike clover");
        var window = Assert.Single(PlantingWindow.FromMemory(alsike, PlantingRegion.Find("south")));
        Assert.Contains("the planting dates of Alsike clover (", Assert.Single(window.Findings).Text, StringComparison.Ordinal);
    }
}
