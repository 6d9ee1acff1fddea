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
        var kind = Required("kind", Kind("crimson clover"), "Kind on the tag.", o => o.Item.Kind);
        var mark = Optional("lot", Text("A-1"), "Lot mark.", o => o.Item.Label == o.Item.Kind.CommonName ? null : o.Item.Label);
        var pure = Required("pureSeed", Percent("98.5 %"), "Pure seed by weight.", o => o.Item.Analysis.PureSeed);
        var germination = Optional("germination", Percent("85 %"), "Germination.", Germinated, PlanNeed.OneOf);
        const string FoundAlive = "Part found alive by a tetrazolium test, where the tag gives one in place of germination.";
        var tetrazolium = Optional("tetrazolium", Percent("92 %"), FoundAlive, o => o.Item.Analysis.Tetrazolium, PlanNeed.OneOf);
        var hard = Optional("hardSeed", Percent("8 %"), "Hard seed.", o => Unless0(o.Item.Analysis.HardSeed));
        var dormant = Optional("dormantSeed", Percent("5 %"), "Dormant seed.", o => Unless0(o.Item.Analysis.DormantSeed));
        var coating = Optional("coating", Percent("34 %"), "Coating material by weight.", o => Unless0(o.Item.Analysis.Coating));
        const string OnTag = "Whether the tag says the seed is treated.";
        var treated = Optional("treated", Flag, OnTag, o => IfSet(o.Item.IsTreated));
        const string Inoculated = "Whether the tag says the seed was inoculated.";
        var preinoculated = Optional("preinoculated", Flag, Inoculated, o => IfSet(o.Item.IsPreinoculated));
        const string Day = "Day, or first day of the month, of the germination test.";
        var tested = Required("tested", Month, Day, o => o.Item.TestMonth);
        Packed("50 lb");
        Unsaid("a seed count of the lot's own", o => o.Item.OwnSeedCount is not null);
        Unsaid("the number of seeds tested", o => o.Item.Analysis.SeedsTested is not null);

        ReadAs(at =>
        {
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
            var lot = new SeedLot
            {
                Kind = at.Get(kind),
                Label = at.Find(mark) ?? at.Get(kind).CommonName,
                Analysis = analysis,
                TestMonth = at.Get(tested),
                IsTreated = at.Find(treated),
                IsPreinoculated = at.Find(preinoculated),
            };
            var offer = InBags(at, lot);
            at.Try(at.Has(tetrazolium) ? tetrazolium : germination, () => LotValue.For(offer));
            return offer;
        });
    }

    private static Fraction? Germinated(Offer<SeedLot> offer) =>
        offer.Item.Analysis is { Tetrazolium: null, Germination: var germinated } ? germinated : null;

    /// <summary>Every lot of seed on offer; one that is sown is, even where the plan does not list it.</summary>
    internal static ImmutableArray<Offer<SeedLot>> AllOf(PlotPlan plan) =>
        [.. plan.SeedOffers, .. plan.Kinds.Select(k => k.Offer).Where(o => !plan.SeedOffers.Contains(o))];
}
