using PlotAgronomy.Land;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Tests.Plots;

public class PlotPlaceTests
{
    private static readonly Plot Hollow = new() { Name = "Hollow field", Measured = PlotArea.Stated(Area.FromAcres(1)) };

    [Theory]
    [InlineData("Wisconsin", "north")]
    [InlineData("Missouri", "central")]
    [InlineData("North Carolina", "south")]
    public void A_place_in_one_region_tells_the_planting_region(string place, string region) =>
        Assert.Equal(region, (Hollow with { Place = Place.Find(place) }).PlantingRegion!.Id);

    [Theory]
    [InlineData("Pennsylvania")]
    [InlineData("Texas")]
    [InlineData("Oregon")]
    public void A_place_in_several_regions_or_in_none_tells_nothing(string place) =>
        Assert.Null((Hollow with { Place = Place.Find(place) }).PlantingRegion);

    [Fact]
    public void A_region_may_be_stated_by_itself_or_against_the_place()
    {
        Assert.Null(Hollow.PlantingRegion);
        Assert.Same(PlantingRegion.Central, (Hollow with { PlantingRegion = PlantingRegion.Central }).PlantingRegion);
        var mountain = Hollow with { Place = Place.Find("North Carolina"), PlantingRegion = PlantingRegion.Central };
        Assert.Same(PlantingRegion.Central, mountain.PlantingRegion);
    }

    [Fact]
    public void A_place_tells_whose_tables_serve_it()
    {
        Assert.Equal([Institution.NorthCarolina], Institution.Serving(Place.Find("North Carolina")));
        Assert.Contains(Institution.TriState, Institution.Serving(Place.Find("Ohio")));
        Assert.Empty(Institution.Serving(Place.Find("Hawaii")));
    }

    [Fact]
    public void A_plot_refuses_what_cannot_be_and_is_only_equal_to_itself()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Hollow with { SoilClass = (SoilClass)99 });
        Assert.Throws<ArgumentOutOfRangeException>(() => Hollow with { PhosphorusSupply = (SoilSupply)99 });
        Assert.Throws<ArgumentOutOfRangeException>(() => Hollow with { ExchangeCapacityGroup = (SoilSupply)99 });
        Assert.NotEqual(Hollow, Hollow with { });
    }
}
