using PlotAgronomy.Seeds;
using static PlotAgronomy.PlanFiles.Value;

namespace PlotAgronomy.PlanFiles;

/// <summary>A seed lot on offer.</summary>
internal sealed class SeedLotShape : PlanShape<SeedOffer>
{
    internal SeedLotShape()
        : base("seedLot", "A lot of seed on offer, as its tag says.")
    {
        var kind = Required("kind", Kind("crimson clover"), "Kind on the tag.", o => o.Lot.Kind);
        var mark = Optional("lot", Text("A-1"), "Lot mark.", o => o.Lot.Label == o.Lot.Kind.CommonName ? null : o.Lot.Label);
        var pure = Required("pureSeed", Percent("98.5 %"), "Pure seed by weight.", o => o.Lot.Analysis.PureSeed);
        var germination = Required("germination", Percent("85 %"), "Germination.", o => o.Lot.Analysis.Germination);
        var hard = Optional("hardSeed", Percent("8 %"), "Hard seed.", o => Unless0(o.Lot.Analysis.HardSeed));
        var dormant = Optional("dormantSeed", Percent("5 %"), "Dormant seed.", o => Unless0(o.Lot.Analysis.DormantSeed));
        var coating = Optional("coating", Percent("34 %"), "Coating material by weight.", o => Unless0(o.Lot.Analysis.Coating));
        const string OnTag = "Whether the tag says the seed is treated.";
        var treated = Optional("treated", Flag, OnTag, o => IfSet(o.Lot.IsTreated));
        const string Inoculated = "Whether the tag says the seed was inoculated.";
        var preinoculated = Optional("preinoculated", Flag, Inoculated, o => IfSet(o.Lot.IsPreinoculated));
        const string Day = "Day, or first day of the month, of the germination test.";
        var tested = Required("tested", Month, Day, o => o.Lot.TestMonth);
        var package = Required("package", Mass("50 lb"), "Package size.", o => o.Package);
        var price = Required("price", Price, "Price of one package in the plan's currency.", o => o.Price);
        Unsaid("a seed count of the lot's own", o => o.Lot.OwnSeedCount is not null);
        Unsaid("the number of seeds tested", o => o.Lot.Analysis.SeedsTested is not null);
        Unsaid(
            "a price of the lot that is not its package's",
            o => o.Lot.PricePerPound != SeedLot.PriceOfAPound(o.Price, o.Package)
        );

        ReadAs(at =>
        {
            var analysis = at.Try(
                pure,
                () =>
                    SeedAnalysis.FromFractions(
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
                Package = at.Get(package),
                PricePerPound = SeedLot.PriceOfAPound(at.Get(price), at.Get(package)),
            };
            at.Try(germination, () => LotValue.For(lot));
            return new()
            {
                Lot = lot,
                Package = at.Get(package),
                Price = at.Get(price),
            };
        });
    }
}
