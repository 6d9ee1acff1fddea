using PlotAgronomy.Planning;
using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Planning;

/// <summary>What is named in place of a kind that drops out is no graver hazard than what the owner chose.</summary>
public class SubstituteTests
{
    private static PlotPlan Demo { get; } = PlanFile.Read(File.ReadAllText(Repository.PathOf("samples/data/fall-blend.json"))).Plan!;

    /// <summary>Expected: practice. Blue lupin stands the soil of the demo in place of clover, and is rated a moderate poison.</summary>
    [Fact]
    public void A_poison_is_not_named_in_place_of_a_clover()
    {
        var substitutes = Demo.Solve().Verdict.Value.Substitutes;
        Assert.NotEmpty(substitutes);
        Assert.DoesNotContain(substitutes, s => s.Kind.Id == "blue-lupin");
        Assert.All(substitutes, s => Assert.DoesNotContain(s.Kind.Hazards, GraveHazards.Holds));
    }

    /// <summary>Whoever grows buckwheat, rated a severe poison, has chosen such a kind; lupin is not worse.</summary>
    [Fact]
    public void Who_chose_such_a_kind_may_be_told_another()
    {
        var buckwheat = KindCatalog.Standard.Find("buckwheat");
        Assert.Contains(buckwheat.Hazards, GraveHazards.Holds);
        var lot = Demo.Kinds[0] with
        {
            Share = KindShare.FromShare(buckwheat, 0.1),
            Choice = null,
            Offer = Demo.Kinds[0].Offer with { Item = Demo.Kinds[0].Offer.Item with { Kind = buckwheat } },
        };
        var plan = Demo with { Kinds = [.. Demo.Kinds, lot] };
        Assert.Contains(plan.Solve().Verdict.Value.Substitutes, s => s.Kind.Id == "blue-lupin");
    }

    /// <summary>Every level of poison and of prussic acid in the kind files is grave or known to be slight.</summary>
    [Fact]
    public void Every_level_of_poison_is_judged()
    {
        string[] slight =
        [
            "livestock diet",
            "mouldy hay",
            "light-skinned stock",
            "horses",
            "listed as possible",
            "very low",
        ];
        var levels = KindCatalog
            .Standard.Kinds.SelectMany(k => k.Hazards)
            .Where(h => h.Type is HazardType.Toxicity or HazardType.PrussicAcid)
            .ToList();
        Assert.NotEmpty(levels);
        Assert.All(levels, h => Assert.True(GraveHazards.Holds(h) != slight.Contains(h.Level), h.ToString()));
    }
}
