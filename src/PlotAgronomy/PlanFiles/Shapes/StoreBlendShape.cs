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
        const string AsItStands = "The tag as it stands, in place of its parts; it is written back by its parts.";
        var tag = Optional("tag", new PlanTag(), AsItStands, _ => null, PlanNeed.OneOf);
        var kinds = List(TagKind(), fewest: 1);
        var components = Optional("components", kinds, "Kinds named on the tag.", b => b.Item.Tag.Components, PlanNeed.OneOf);
        var otherCrop = Optional("otherCrop", Percent("0.8 %"), "Seed of other crops.", b => Unless0(b.Item.Tag.OtherCrop));
        var inert = Optional("inert", Percent("34.2 %"), "Inert matter, coating counted in.", b => Unless0(b.Item.Tag.Inert));
        var weed = Optional("weed", Percent("0.2 %"), "Weed seed.", b => Unless0(b.Item.Tag.Weed));
        const string OfAll = "Coating of the whole bag, inside the inert matter.";
        var coating = Optional("coating", Percent("33 %"), OfAll, b => Unless0(b.Item.Tag.Coating));
        var treated = Optional("treated", Flag, "Whether the tag says the seed is treated.", b => IfSet(b.Item.Tag.IsTreated));
        const string Day = "Month of the germination test of the bag.";
        var noxious = Optional("noxious", List(NoxiousShape.Shape), "Noxious weed seeds on the tag.", b => b.Item.Tag.Noxious);
        var lot = Optional("lot", Text("QX-7"), "Lot number on the tag.", b => b.Item.Tag.LotNumber);
        const string Inoculated = "Whether the tag says the seed was inoculated.";
        var inoculated = Optional("preinoculated", Flag, Inoculated, b => IfSet(b.Item.Tag.IsPreinoculated));
        var tested = Optional("tested", Month, Day, b => b.Item.Tag.TestMonth);
        Unsaid("a net weight on the tag that is not the bag's", b => b.Item.Tag.NetWeight?.Pounds != b.Package.Pounds);

        PlanField[] printed = [otherCrop, inert, weed, coating, noxious, lot];
        ReadAs(at =>
        {
            foreach (var part in printed.Where(f => at.Has(f) && at.Has(tag)))
            {
                at.Report(part, $"'{tag.Name}' says it already: leave this out, or that");
            }

            var read = at.Has(tag) ? at.Get(tag) : null;
            var blend = new StoreBlend
            {
                Label = at.Get(name),
                ClaimedArea = at.Get(claimed),
                Tag = new SeedTag
                {
                    Components = read?.Components ?? at.Get(components),
                    OtherCrop = read?.OtherCrop ?? at.Find(otherCrop),
                    Inert = read?.Inert ?? at.Find(inert),
                    Weed = read?.Weed ?? at.Find(weed),
                    Coating = read?.Coating ?? at.Find(coating),
                    Noxious = read?.Noxious ?? at.All(noxious),
                    LotNumber = read?.LotNumber ?? at.Find(lot),
                    NetWeight = WeightOf(at),
                    TestMonth = at.Maybe(tested) ?? read?.TestMonth,
                    IsTreated = at.Find(treated) || read?.IsTreated == true,
                    IsPreinoculated = at.Find(inoculated) || read?.IsPreinoculated == true,
                },
            };
            var bag = InBags(at, blend);
            var method = at.Plan.Maybe(planting) is { } planted ? PlotPlan.SowingMethodOf(planted) : SowingMethod.Broadcast;
            if (at.Has(tag) || at.IsWhole(components))
            {
                at.Try(at.Has(tag) ? tag : components, () => BagOrPlainSeed.Compare(bag, method, []));
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
        var tested = shape.Optional("tested", Month, "Month of its germination test, where the tag gives one for this kind.", c =>
            c.TestMonth
        );
        var variety = shape.Optional("variety", Text(), "Variety as printed.", c => c.Variety);
        var origin = shape.Optional("origin", Text(), "Origin as printed.", c => c.Origin);
        shape.Unsaid("a coating of one kind of a blend", c => c.Analysis.Coating > Fraction.Zero);
        shape.Unsaid("the number of seeds tested", c => c.Analysis.SeedsTested is not null);

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
                Variety = at.Find(variety),
                Origin = at.Find(origin),
            };
        });
        return shape;
    }
}
