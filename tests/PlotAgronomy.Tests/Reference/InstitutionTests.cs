using PlotAgronomy.Soil;

namespace PlotAgronomy.Tests.Reference;

public class InstitutionTests
{
    [Theory]
    [InlineData("north-carolina"), InlineData("North Carolina"), InlineData("north carolina department of agriculture and consumer services"), InlineData(" NCDA&CS ")]
    public void One_institution_has_many_names(string name) => Assert.Same(Institution.NorthCarolina, Institution.Find(name));

    [Fact]
    public void An_unknown_name_lists_what_there_is()
    {
        Assert.False(Institution.TryFind("North Carolna", out _, out string problem));
        Assert.Contains("north-carolina", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_laboratory_without_tables_is_known_by_its_name_only()
    {
        var laboratory = Institution.FindLaboratory("Valley Soil Laboratory");
        Assert.Equal(("Valley Soil Laboratory", false), (laboratory.Name, laboratory.IsListed));
        Assert.Equal(Institution.FindLaboratory("valley soil laboratory"), laboratory);
        Assert.Same(Institution.Find("iowa"), Institution.FindLaboratory("Iowa State University"));
    }

    [Fact]
    public void Rooms_hang_their_tables_onto_it()
    {
        Assert.Equal(["NC"], Institution.NorthCarolina.NutrientSystems.Select(s => s.Id));
        Assert.Equal(["TS-2020", "TS-1995"], Institution.Find("Ohio").UncheckedNutrientSystems.Select(s => s.Id));
        Assert.Same(SoilProgram.FindIn("North Carolina"), Institution.NorthCarolina.SoilProgram);
    }

    [Fact]
    public void Every_place_it_serves_is_known() =>
        Assert.All(Institution.All.SelectMany(i => i.Serves), p => Assert.Same(p, Place.Find(p.IsoCode)));
}
