using PlotAgronomy.Liming;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Tests.House;

/// <summary>A kind is one file, but some rooms hold rows for each kind. These tests tell what a new kind still lacks.</summary>
public class KindCoverageTests
{
    /// <summary>Kinds for which no institution prints a target pH: the lower end of their own band is taken, with a finding.</summary>
    private static readonly string[] WithoutLimeTarget =
    [
        "alyceclover",
        "american-jointvetch",
        "annual-ryegrass",
        "big-bluestem",
        "brown-mustard",
        "browntop-millet",
        "eastern-gamagrass",
        "egyptian-wheat",
        "foxtail-millet",
        "indiangrass",
        "japanese-millet",
        "korean-lespedeza",
        "lablab",
        "plantain",
        "proso-millet",
        "sesame",
        "small-burnet",
        "striate-lespedeza",
        "sugar-beet",
        "sunn-hemp",
        "switchgrass",
        "white-mustard",
    ];

    /// <summary>Kinds without a row of their own in the table of proxies: they are taken as their functional group.</summary>
    private static readonly string[] TakenAsTheirGroup = [];

    private static IReadOnlyList<CropKind> Kinds => KindCatalog.Standard.Kinds;

    [Fact]
    public void Every_kind_has_a_lime_target_or_is_listed() =>
        Assert.Equal(WithoutLimeTarget.Order(), Kinds.Where(k => !HasLimeTarget(k)).Select(k => k.Id).Order());

    [Fact]
    public void Every_kind_has_a_nutrient_proxy_of_its_own_or_is_listed() =>
        Assert.Equal(
            TakenAsTheirGroup,
            Kinds.Where(k => ReferenceEquals(KindProxy.For(k), KindProxy.For(k with { Id = "of-no-file" }))).Select(k => k.Id)
        );

    private static bool HasLimeTarget(CropKind kind) =>
        (
            from institution in LimeTarget.Institutions
            from soil in Enum.GetValues<SoilClass>()
            from acidSubsoil in new[] { false, true }
            select LimeTarget.For(kind, institution, soil, acidSubsoil)
        ).Any(t => t.Findings.All(f => f.Code != "lime-target-not-known"));
}
