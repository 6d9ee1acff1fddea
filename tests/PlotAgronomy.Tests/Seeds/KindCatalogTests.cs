using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Seeds;

public class KindCatalogTests
{
    private static readonly KindCatalog Catalog = KindCatalog.Standard;

    public static TheoryData<string> AllIds => [.. Catalog.Kinds.Select(k => k.Id)];

    [Theory]
    [InlineData("ladino", "ladino-clover")]
    [InlineData("Clover, Ladino", "ladino-clover")]
    [InlineData("LADINO CLOVERS", "ladino-clover")]
    [InlineData("oilseed radish", "forage-radish")]
    [InlineData("Oilseed Radishes", "forage-radish")]
    [InlineData("winter pea", "austrian-winter-pea")]
    [InlineData("Austrian Winter Peas", "austrian-winter-pea")]
    [InlineData("Secale cereale", "cereal-rye")]
    [InlineData("rye", "cereal-rye")]
    [InlineData("wheat", "winter-wheat")]
    [InlineData("crimson", "crimson-clover")]
    [InlineData("sub clover", "subterranean-clover")]
    [InlineData("Ryegrass, annual", "annual-ryegrass")]
    [InlineData("ryegrass", "annual-ryegrass")]
    [InlineData("annual rye grass", "annual-ryegrass")]
    [InlineData("milo", "grain-sorghum")]
    [InlineData("cowpeas", "cowpea-iron-clay")]
    [InlineData("iron and clay cowpeas", "cowpea-iron-clay")]
    [InlineData("Orchard grass", "orchardgrass")]
    [InlineData("sweet clover", "sweetclover")]
    [InlineData("sorghum x sudangrass", "sorghum-sudangrass")]
    [InlineData("xTriticosecale", "triticale")]
    public void A_kind_is_found_by_any_of_its_names(string name, string id) => Assert.Equal(id, Catalog.Find(name).Id);

    [Theory]
    [InlineData("white clover", "ladino-clover", "white-dutch-clover")]
    [InlineData("Trifolium repens", "ladino-clover", "white-dutch-clover")]
    [InlineData("red clover", "medium-red-clover", "mammoth-red-clover")]
    [InlineData("oats", "oats-spring", "oats-winter")]
    [InlineData("turnips", "forage-turnip", "purple-top-turnip")]
    [InlineData("radish", "daikon-radish", "forage-radish")]
    [InlineData("soybeans", "soybean-forage", "soybean-grain")]
    public void A_name_that_fits_several_is_never_guessed(string name, params string[] ids)
    {
        var error = Assert.Throws<AmbiguousKindException>(() => Catalog.Find(name));
        Assert.Superset(ids.ToHashSet(), error.Candidates.Select(k => k.Id).ToHashSet());
        Assert.All(ids, id => Assert.Contains(id, error.Message, StringComparison.Ordinal));
        Assert.False(Catalog.TryFind(name, out _, out string problem));
        Assert.Equal(error.Message, problem);
    }

    [Fact]
    public void An_unknown_name_suggests_near_ones()
    {
        var error = Assert.Throws<KeyNotFoundException>(() => Catalog.Find("chickory"));
        Assert.Contains("chicory", error.Message, StringComparison.Ordinal);
        Assert.False(Catalog.TryFind("", out _, out _));
        Assert.False(Catalog.TryFind(null, out _, out _));
        Assert.False(Catalog.TryFind(" -- ", out _, out _));
        Assert.Throws<ArgumentException>(() => Catalog.Find(" "));
    }

    [Theory, MemberData(nameof(AllIds))]
    public void Every_kind_answers_to_its_id_and_its_common_name(string id)
    {
        Assert.Equal(id, Catalog.Find(id).Id);
        Assert.Equal(id, Catalog.Find(Catalog.Find(id).CommonName).Id);
    }

    [Theory, MemberData(nameof(CultureScope.Treacherous), MemberType = typeof(CultureScope))]
    public void Names_do_not_depend_on_the_culture(string culture)
    {
        using var scope = new CultureScope(culture);
        Assert.Equal("indiangrass", Catalog.Find("INDIANGRASS").Id);
        Assert.Equal("annual-ryegrass", Catalog.Find("ITALIAN RYEGRASS").Id);
        Assert.Equal("4-8 lb PLS/ac, broadcast", Catalog.Find("ladino").FullRange(SowingMethod.Broadcast).ToString());
        Assert.Equal("7.5 lb PLS/ac, drilled", PureLiveSeedRate.DrilledPoundsPerAcre(7.5).ToString());
    }

    [Fact]
    public void A_kind_of_the_users_own_is_marked_and_leaves_the_published_catalog_alone()
    {
        var alfalfa = Catalog.Find("alfalfa");
        var own = Catalog.With(alfalfa with { SeedCount = SeedCount.FromSeedsPerPound(210_000) }, alfalfa with { Id = "my_kind", CommonName = "Meadow kind", ScientificName = "Planta mea", OtherNames = ["meadow"] });

        Assert.True(own.Find("alfalfa").IsUsersOwn);
        Assert.True(own.Find("alfalfa").SeedCount!.Evidence.IsUsersOwn);
        Assert.Equal(210_000, own.Find("lucerne").RequireSeedCount().SeedsPerPound);
        Assert.True(own.Find("meadow").IsUsersOwn);
        Assert.False(own.Find("ladino").IsUsersOwn);
        Assert.False(Catalog.Find("alfalfa").IsUsersOwn);
        Assert.Equal(Catalog.Kinds.Count + 1, own.Kinds.Count);
        Assert.Throws<ArgumentException>(() => Catalog.With(alfalfa, alfalfa));
    }

    [Fact]
    public void A_kind_without_a_trusted_count_asks_for_one()
    {
        var jointvetch = Catalog.Find("jointvetch");
        Assert.Null(jointvetch.SeedCount);
        Assert.Contains("weigh and count", Assert.Throws<InvalidOperationException>(jointvetch.RequireSeedCount).Message, StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(() => Catalog.Find("gamagrass").FullRange(SowingMethod.Broadcast));
    }
}
