using System.Collections.Immutable;
using PlotAgronomy.Seeds;
using static PlotAgronomy.PlanFiles.Value;

namespace PlotAgronomy.PlanFiles;

/// <summary>A seed lot on offer.</summary>
internal sealed class SeedLotShape : OfferShape<SeedLot>
{
    internal SeedLotShape()
        : base("seedLot", "A lot of seed on offer, as its tag says.")
    {
        const string Named = "Kind on the tag; may be left out where the text of the tag names it.";
        var kind = Optional("kind", Kind("crimson clover"), Named, o => o.Item.Kind);
        var mark = Optional("lot", Text("A-1"), "Lot mark.", o => o.Item.Label == o.Item.Kind.CommonName ? null : o.Item.Label);
        const string AsItStands = "The tag as it stands, in place of its parts; it is written back by its parts.";
        var tag = Optional("tag", new PlanTag(), AsItStands, _ => null, PlanNeed.OneOf);
        const string NoTag = "True for seed without a tag, such as oats from an elevator: a home test is asked for.";
        var untagged = Optional("untagged", Flag, NoTag, o => IfSet(o.Item.IsUntagged), PlanNeed.OneOf);
        var pure = Optional("pureSeed", Percent("98.5 %"), "Pure seed by weight.", o => IfTagged(o, a => a.PureSeed));
        var germination = Optional("germination", Percent("85 %"), "Germination.", Germinated, PlanNeed.OneOf);
        const string FoundAlive = "Part found alive by a tetrazolium test, where the tag gives one in place of germination.";
        var tetrazolium = Optional("tetrazolium", Percent("92 %"), FoundAlive, o => o.Item.Analysis.Tetrazolium, PlanNeed.OneOf);
        var hard = Optional("hardSeed", Percent("8 %"), "Hard seed.", o => Unless0(o.Item.Analysis.HardSeed));
        var dormant = Optional("dormantSeed", Percent("5 %"), "Dormant seed.", o => Unless0(o.Item.Analysis.DormantSeed));
        var coating = Optional("coating", Percent("34 %"), "Coating material by weight.", o => Unless0(o.Item.Analysis.Coating));
        var otherCrop = Optional("otherCrop", Percent("0.8 %"), "Seed of other crops.", o => o.Item.OtherCrop);
        var inert = Optional("inert", Percent("1.4 %"), "Inert matter, coating counted in.", o => o.Item.Inert);
        var weed = Optional("weed", Percent("0.2 %"), "Weed seed.", o => o.Item.Weed);
        var noxious = Optional("noxious", List(NoxiousShape.Shape), "Noxious weed seeds named on the tag.", o => o.Item.Noxious);
        const string OnTag = "Whether the tag says the seed is treated.";
        var treated = Optional("treated", Flag, OnTag, o => IfSet(o.Item.IsTreated));
        const string Inoculated = "Whether the tag says the seed was inoculated.";
        var preinoculated = Optional("preinoculated", Flag, Inoculated, o => IfSet(o.Item.IsPreinoculated));
        const string OfTest = "Month of the germination test; asked for where it is left out.";
        var tested = Optional("tested", Month, OfTest, o => o.Item.TestMonth).Answers(SeedCodes.AskTestMonth);
        const string Counted = "Seeds in a pound, counted in a weighed sample of the lot; it goes before what is published.";
        var count = Optional(
                "seedsPerPound",
                NumberWithin<double>("seed-count"),
                Counted,
                o => o.Item.OwnSeedCount?.SeedsPerPound
            )
            .Answers(SeedCodes.AskCount);
        Packed("50 lb");
        Unsaid("the number of seeds tested", o => o.Item.Analysis.SeedsTested is not null);

        PlanField[] printed = [pure, germination, tetrazolium, hard, dormant, coating, otherCrop, inert, weed, noxious];
        ReadAs(at =>
        {
            foreach (var part in printed.Where(f => at.Has(f) && (at.Has(tag) || at.Has(untagged))))
            {
                string other = at.Has(tag) ? tag.Name : untagged.Name;
                at.Report(part, $"'{other}' says it already: leave this out, or that");
            }

            var lot =
                at.Has(tag) ? FromTag(at, tag, kind, mark)
                : at.Has(untagged) ? Untagged(at)
                : FromParts(at);
            lot = lot with
            {
                TestMonth = at.Maybe(tested) ?? lot.TestMonth,
                IsTreated = lot.IsTreated || at.Find(treated),
                IsPreinoculated = lot.IsPreinoculated || at.Find(preinoculated),
                OwnSeedCount = at.Maybe(count) is { } own ? SeedCount.FromSeedsPerPound(own) : null,
            };
            var offer = InBags(at, lot);
            at.Try(at.Has(tetrazolium) ? tetrazolium : germination, () => LotValue.For(offer));
            return offer;
        });

        CropKind Grown(PlanPart at) =>
            at.Has(kind) ? at.Get(kind) : throw at.Report(pure, $"the field '{kind.Name}' is missing: {kind.Meaning}");

        SeedLot Untagged(PlanPart at)
        {
            if (!at.Get(untagged))
            {
                throw at.Report(untagged, "leave it out, and type what the tag says");
            }

            var grown = Grown(at);
            return SeedLot.Untagged(grown, at.Find(mark) ?? grown.CommonName);
        }

        SeedLot FromParts(PlanPart at)
        {
            if (!at.Has(pure))
            {
                throw at.Report(germination, $"the field '{pure.Name}' is missing: {pure.Meaning}");
            }

            foreach (var counted in new[] { hard, dormant }.Where(f => at.Has(tetrazolium) && at.Has(f)))
            {
                at.Report(counted, "a tetrazolium test counts hard and dormant seed already: leave it out");
            }

            var analysis = at.Try(pure, () =>
                at.Has(tetrazolium)
                    ? SeedAnalysis.FromTetrazolium(at.Get(pure), at.Get(tetrazolium), at.Find(coating))
                    : SeedAnalysis.FromFractions(
                        at.Get(pure),
                        at.Get(germination),
                        at.Find(hard),
                        at.Find(dormant),
                        at.Find(coating)
                    )
            );
            var grown = Grown(at);
            return new SeedLot
            {
                Kind = grown,
                Label = at.Find(mark) ?? grown.CommonName,
                Analysis = analysis,
                OtherCrop = at.Maybe(otherCrop),
                Inert = at.Maybe(inert),
                Weed = at.Maybe(weed),
                Noxious = at.All(noxious),
            };
        }
    }

    /// <summary>The lot of the one kind on a tag; of several, the one that the plan names.</summary>
    private static SeedLot FromTag(PlanPart at, PlanField<SeedTag> tag, PlanField<CropKind> kind, PlanField<string> mark)
    {
        var read = at.Get(tag);
        var kinds = read.ByKind;
        if (at.Has(kind) ? kinds.All(c => c.Kind.Id != at.Get(kind).Id) : kinds.Length != 1)
        {
            string names = string.Join(", ", kinds.Select(c => c.Kind.CommonName));
            throw at.Report(
                at.Has(kind) ? kind : tag,
                at.Has(kind)
                    ? $"the tag names {names}"
                    : $"the tag names several kinds ({names}): a ready blend stands among the store's blends; of a lot, name its "
                        + $"'{kind.Name}'"
            );
        }

        var grown = at.Has(kind) ? at.Get(kind) : kinds[0].Kind;
        return at.Try(tag, () => SeedLot.FromTag(read, grown, at.Find(mark) ?? read.LotNumber ?? grown.CommonName));
    }

    private static Fraction? IfTagged(Offer<SeedLot> offer, Func<SeedAnalysis, Fraction> part) =>
        offer.Item.IsUntagged ? null : part(offer.Item.Analysis);

    private static Fraction? Germinated(Offer<SeedLot> offer) =>
        offer.Item is { IsUntagged: false, Analysis: { Tetrazolium: null, Germination: var germinated } } ? germinated : null;

    /// <summary>Every lot of seed on offer; one that is sown is, even where the plan does not list it.</summary>
    internal static ImmutableArray<Offer<SeedLot>> AllOf(PlotPlan plan) =>
        [.. plan.SeedOffers, .. plan.Kinds.Select(k => k.Offer).Where(o => !plan.SeedOffers.Contains(o))];
}
