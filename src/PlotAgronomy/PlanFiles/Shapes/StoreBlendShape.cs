using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;
using static PlotAgronomy.PlanFiles.Value;

namespace PlotAgronomy.PlanFiles;

/// <summary>A store's ready blend.</summary>
internal sealed class StoreBlendShape : OfferShape<StoreBlend>
{
    internal StoreBlendShape(PlanField<PlantingMethod> planting)
        : base("storeBlend", "A ready blend as a store sells it, as its tag says.")
    {
        var name = Required("name", Text("fall plot blend"), "What to call it.", b => b.Item.Label);
        Packed("25 lb", "Net weight of the bag.", "Price of one bag in the plan's currency.");
        var claimed = Required("claimedArea", Area("0.5 ac"), "Area the bag says it plants.", b => b.Item.ClaimedArea);
        var components = Required("components", List(TagKind(), fewest: 1), "Kinds named on the tag.", b =>
            b.Item.Tag.Components
        );
        var otherCrop = Optional("otherCrop", Percent("0.8 %"), "Seed of other crops.", b => Unless0(b.Item.Tag.OtherCrop));
        var inert = Optional("inert", Percent("34.2 %"), "Inert matter, coating counted in.", b => Unless0(b.Item.Tag.Inert));
        var weed = Optional("weed", Percent("0.2 %"), "Weed seed.", b => Unless0(b.Item.Tag.Weed));
        const string OfAll = "Coating of the whole bag, inside the inert matter.";
        var coating = Optional("coating", Percent("33 %"), OfAll, b => Unless0(b.Item.Tag.Coating));
        var treated = Optional("treated", Flag, "Whether the tag says the seed is treated.", b => IfSet(b.Item.Tag.IsTreated));
        const string Day = "Day, or first day of the month, of the germination test of the bag.";
        var tested = Required("tested", Month, Day, b => b.Item.Tag.TestMonth);
        Unsaid("noxious weeds on a tag", b => !b.Item.Tag.Noxious.IsEmpty);
        Unsaid("the lot number of a blend", b => b.Item.Tag.LotNumber is not null);
        Unsaid("a blend that was inoculated", b => b.Item.Tag.IsPreinoculated);
        Unsaid("a net weight on the tag that is not the bag's", b => b.Item.Tag.NetWeight?.Pounds != b.Package.Pounds);

        ReadAs(at =>
        {
            var blend = new StoreBlend
            {
                Label = at.Get(name),
                ClaimedArea = at.Get(claimed),
                Tag = new SeedTag
                {
                    Components = at.Get(components),
                    OtherCrop = at.Find(otherCrop),
                    Inert = at.Find(inert),
                    Weed = at.Find(weed),
                    Coating = at.Find(coating),
                    NetWeight = WeightOf(at),
                    TestMonth = at.Get(tested),
                    IsTreated = at.Find(treated),
                },
            };
            var bag = InBags(at, blend);
            var method = at.Plan.Maybe(planting) is { } planted ? PlotPlan.SowingMethodOf(planted) : SowingMethod.Broadcast;
            if (at.IsWhole(components))
            {
                at.Try(components, () => BagOrPlainSeed.Compare(bag, method, []));
            }

            return bag;
        });
    }

    private static PlanShape<TagComponent> TagKind()
    {
        var shape = new PlanShape<TagComponent>("tagKind", "One kind named on the tag of a ready blend.");
        var kind = shape.Required("kind", Kind("crimson clover"), "Kind on the tag.", c => c.Kind);
        const string OfBag = "Pure seed of the kind by weight, in percent of the whole bag.";
        var pure = shape.Required("pureSeed", Percent("14.7 %"), OfBag, c => c.Analysis.PureSeed);
        var germination = shape.Required("germination", Percent("85 %"), "Germination.", c => c.Analysis.Germination);
        var hard = shape.Optional("hardSeed", Percent("8 %"), "Hard seed.", c => Unless0(c.Analysis.HardSeed));
        var dormant = shape.Optional("dormantSeed", Percent("5 %"), "Dormant seed.", c => Unless0(c.Analysis.DormantSeed));
        var tested = shape.Optional(
            "tested",
            Month,
            "Day, or first day of the month, of its germination test, where the tag gives one for this kind.",
            c => c.TestMonth
        );
        shape.Unsaid("a coating of one kind of a blend", c => c.Analysis.Coating > Fraction.Zero);
        shape.Unsaid("the number of seeds tested", c => c.Analysis.SeedsTested is not null);
        shape.Unsaid("the variety of a kind", c => c.Variety is not null);
        shape.Unsaid("the origin of a kind", c => c.Origin is not null);

        shape.ReadAs(at =>
        {
            var analysis = at.Try(pure, () =>
                SeedAnalysis.FromFractions(at.Get(pure), at.Get(germination), at.Find(hard), at.Find(dormant))
            );
            return new()
            {
                Kind = at.Get(kind),
                Analysis = analysis,
                TestMonth = at.Maybe(tested),
            };
        });
        return shape;
    }
}
