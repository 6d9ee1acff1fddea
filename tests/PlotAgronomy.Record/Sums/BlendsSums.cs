using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using UnitsNet;
using static PlotAgronomy.Record.Sums.Given;

namespace PlotAgronomy.Record.Sums;

/// <summary>Ways to state a blend, batches, crowding, seasons, fit, store bags and recipes.</summary>
internal static class BlendsSums
{
    private static readonly Offer<SeedLot>[] Shelf =
    [
        SeedsSums.Lot("oats", "oats spring", 98, 90, 0.45m, package: 50),
        SeedsSums.Lot("wheat", "winter wheat", 98, 90, 0.38m, package: 50),
        SeedsSums.Lot("rye", "cereal rye", 98, 88, 0.42m),
        SeedsSums.Lot("pea", "austrian winter pea", 98, 85, 1.10m, package: 50),
        SeedsSums.Lot("crimson", "crimson clover", 65, 85, 2.10m, 34, 25),
        SeedsSums.Lot("ladino", "ladino clover", 98, 82, 4.80m, package: 5),
        SeedsSums.Lot("red clover", "medium red clover", 98, 78, 3.20m, hard: 10),
        SeedsSums.Lot("chicory", "chicory", 98, 85, 6.50m),
        SeedsSums.Lot("turnip", "purple top turnip", 98, 90, 2.90m, package: 5),
        SeedsSums.Lot("rape", "rape dwarf essex", 98, 92, 2.40m),
        SeedsSums.Lot("radish", "daikon radish", 98, 92, 2.75m), SeedsSums.Lot("ryegrass", "annual ryegrass", 98, 90, 0.95m),
    ];

    internal static void Record(Recorder recorder)
    {
        Components(recorder);
        Ways(recorder);
        foreach (var (words, blend) in Blends())
        {
            Everything(recorder, words, blend);
            Seasons(recorder, words, blend);
            Fit(recorder, words, blend);
        }

        Densities(recorder);
        Bags(recorder);
        Recipes(recorder);
    }

    private static CropKind Kind(string id) => SeedsSums.Kind(id);

    private static BlendComponent Drilled(string id) => BlendComponent.FromKind(Kind(id), SowingMethod.Drilled);

    private static BlendComponent Broadcast(string id) => BlendComponent.FromKind(Kind(id), SowingMethod.Broadcast);

    private static BlendComponent Tagged(string id, double pure, double viable) =>
        Drilled(id) with { Purity = Percent(pure), Viability = Percent(viable) };

    private static BlendComponent OfLot(string label) =>
        BlendComponent.FromOffer(Shelf.Single(o => o.Item.Label == label), SowingMethod.Broadcast);

    private static (string Words, Blend Blend)[] Blends() =>
    [
        ("fall grains and clover",
            Blend.FromSharesOfFullStand((Broadcast("cereal rye"), 0.4), (Broadcast("austrian winter pea"), 0.3),
                (Broadcast("crimson clover"), 0.3))),
        ("crowded brassicas", Blend.FromLiveRates(
            (Broadcast("purple top turnip"), PureLiveSeedRate.BroadcastPoundsPerAcre(4)),
            (Broadcast("rape dwarf essex"), PureLiveSeedRate.BroadcastPoundsPerAcre(4)),
            (Broadcast("daikon radish"), PureLiveSeedRate.BroadcastPoundsPerAcre(8)))),
        ("perennial clovers",
            Blend.FromSharesOfFullStand((Drilled("ladino clover"), 0.4), (Drilled("alfalfa"), 0.3), (Drilled("chicory"), 0.3))),
        ("summer", Blend.FromSharesOfFullStand(SowingMethod.Broadcast, KindShare.FromShare(Kind("cowpea iron clay"), 0.5),
            KindShare.FromShare(Kind("buckwheat"), 0.3), KindShare.FromShare(Kind("grain sorghum"), 0.2))),
        ("lots with a tag",
            Blend.FromSharesOfFullStand((OfLot("oats"), 0.4), (OfLot("pea"), 0.3), (OfLot("crimson"), 0.25),
                (OfLot("turnip"), 0.15))),
    ];

    private static void Components(Recorder recorder)
    {
        var lot = Shelf[4];
        recorder.Call("blend component of a kind", () => Drilled("crimson clover"));
        recorder.Call("blend component of a kind at a rate of one's own",
            () => BlendComponent.FromKind(Kind("crimson clover"), PureLiveSeedRate.DrilledPoundsPerAcre(17)));
        recorder.Call("blend component of a lot", () => BlendComponent.FromOffer(lot, SowingMethod.Broadcast));
        recorder.Call("blend component of a lot, all that lives",
            () => BlendComponent.FromOffer(lot, SowingMethod.Drilled, ViabilityRule.TotalViable));
        recorder.Call("blend component of a lot at a rate of one's own",
            () => BlendComponent.FromOffer(lot, PureLiveSeedRate.DrilledPoundsPerAcre(17), ViabilityRule.GerminationAndHard));
        recorder.Call("blend component with everything stated", () => Drilled("ladino clover") with
        {
            SeedsPerPound = 776_000,
            Purity = Percent(66),
            Viability = Percent(90),
            MustLiveOn = true,
            IsTreated = true,
            IsInoculated = true,
            FullRange = PureLiveSeedRateRange.Between(PureLiveSeedRate.DrilledPoundsPerAcre(2),
                PureLiveSeedRate.DrilledPoundsPerAcre(6)),
        });
        recorder.Call("blend components alike",
            () => new[] { Drilled("chicory") == Drilled("chicory"), Drilled("chicory") != Broadcast("chicory") });
        recorder.Call("blend component of a kind without a rate",
            () => BlendComponent.FromKind(Kind("gamagrass"), SowingMethod.Broadcast));
    }

    private static void Ways(Recorder recorder)
    {
        recorder.Call("blend from live rates", () => Blend.FromLiveRates(
            (Tagged("cereal rye", 98, 90), PureLiveSeedRate.DrilledPoundsPerAcre(30)),
                (Tagged("crimson clover", 65, 85), PureLiveSeedRate.DrilledPoundsPerAcre(6))));
        recorder.Call("blend from bulk rates", () => Blend.FromBulkRates(
            (Tagged("cereal rye", 98, 90), BulkSeedRate.DrilledPoundsPerAcre(30)),
                (Tagged("crimson clover", 65, 85), BulkSeedRate.DrilledPoundsPerAcre(6))));
        recorder.Call("blend from a batch", () => Blend.FromBatch(
            Acres(0.62), (Tagged("cereal rye", 98, 90), BulkSeedMass.FromPounds(20)),
                (Tagged("crimson clover", 65, 85), BulkSeedMass.FromPounds(5))));
        recorder.Call("blend from a scale at home", () => Blend.FromHomeScale(
            Acres(0.5), Mass.FromOunces(24), (Tagged("oats spring", 98, 90), Pounds(21.5)),
                (Tagged("ladino clover", 66, 90), Mass.FromOunces(44))));
        recorder.Call("blend from a scale at home, an empty pail",
            () => Blend.FromHomeScale(Acres(0.5), Mass.FromOunces(24), (Drilled("oats spring"), Mass.FromOunces(24))));
        recorder.Call("blend from shares of seeds", () => Blend.FromSeedShares(
            30, (Tagged("oats spring", 98, 90), Percent(40)), (Tagged("crimson clover", 65, 85), Percent(35)),
                (Tagged("purple top turnip", 99, 90), Percent(25))));
        recorder.Call("blend from shares of weight",
            () =>
                Blend.FromWeightShares(PerAcre(60), (Tagged("oats spring", 98, 90), Percent(70)),
                    (Tagged("austrian winter pea", 99, 88), Percent(30))));
        recorder.Call("blend from shares of weight that miss the whole",
            () => Blend.FromWeightShares(PerAcre(60), (Drilled("oats spring"), Percent(70))));
        recorder.Call("blend from shares of a stand",
            () =>
                Blend.FromSharesOfFullStand((Tagged("oats spring", 98, 90), 0.6), (Tagged("austrian winter pea", 99, 88), 0.5)));
        recorder.Call("blend from shares of a stand of bare kinds",
            () =>
                Blend.FromSharesOfFullStand(SowingMethod.Drilled, KindShare.FromShare(Kind("oats spring"), 0.6),
                    KindShare.FromShare(Kind("chicory"), 0.2)));
        recorder.Call("blend from what stands on a tag", () => Blend.FromTag(
            PerAcre(50), (Tagged("oats spring", 100, 90), Percent(46.2)), (Tagged("winter wheat", 100, 90), Percent(29.4)),
                (Tagged("crimson clover", 100, 75), Percent(4.9))));
        recorder.Call("blend from a tag read", () => Blend.FromTag(Tag(), PerAcre(50), SowingMethod.Broadcast));
        recorder.Call("blend from a tag read, hard seed counted",
            () => Blend.FromTag(Tag(), PerAcre(50), SowingMethod.Drilled, ViabilityRule.GerminationAndHard));
        recorder.Call("blend drilled and broadcast at once",
            () => Blend.FromSharesOfFullStand((Drilled("oats spring"), 0.6), (Broadcast("chicory"), 0.5)));
        recorder.Call("blend of nothing", () => Blend.FromSharesOfFullStand());
    }

    private static SeedTag Tag() => SeedTag.Read(TagTexts.All[1].Text).Tag!;

    private static void Everything(Recorder recorder, string words, Blend blend)
    {
        recorder.Call($"blend of {words}", () => blend);
        recorder.Call($"blend of {words}, half as much", () => Short(blend.Times(0.5)));
        recorder.Call($"blend of {words} at a full stand", () => Short(blend.AtStandTotal(1)));
        recorder.Call($"blend of {words}: one part", () => blend.PartOf(blend.Parts[0].Kind));
        recorder.Call($"blend of {words}: a part it does not hold", () => blend.PartOf(Kind("corn")));
        recorder.Call($"blend of {words} weighed for an area", () => blend.WeighFor(Acres(0.62)));
        recorder.Call($"blend of {words} weighed as a batch", () => blend.WeighBatch(BulkSeedMass.FromPounds(50)));
        recorder.Call($"blend of {words} weighed and rounded up",
            () => blend.WeighFor(Acres(0.62)).RoundUpTo(Mass.FromOunces(1)));
        recorder.Call($"blend of {words}: a coarse scale",
            () => BatchSpread.CheckWeighing(blend.WeighFor(Acres(0.2)), Mass.FromOunces(8)));
        foreach (double pounds in new[] { 0.25, 2, 20 })
        {
            recorder.Call($"blend of {words}: chance in a batch of {pounds} lb",
                () => BatchSpread.For(blend, BulkSeedMass.FromPounds(pounds)));
        }

        foreach (var measure in Enum.GetValues<BlendMeasure>())
        {
            recorder.Call($"blend of {words}: diversity by {Words(measure)}", () => Diversity.For(blend, measure));
        }

        recorder.Call($"blend of {words}: crowding", () => CrowdingReport.For(blend));
        recorder.Call($"blend of {words}: crowding beside a standing clover",
            () => CrowdingReport.For(blend, KindShare.FromShare(Kind("ladino clover"), 0.5)));
        recorder.Call($"blend of {words} in bags", () => BagOrder.For(blend, Acres(0.62)));
        recorder.Call($"blend of {words} in bags, line by line",
            () =>
                BagOrder.For(blend,
                    Acres(0.62)).Lines.Select(l => (l.Component.Kind.Id, l.Needed.Pounds, l.Bags, l.Bought.Pounds, l.Cost)));
    }

    private static Dictionary<string, object?> Short(Blend blend) => Named(
        ("live", blend.LiveRate),
        ("bulk", blend.BulkRate),
        ("seeds", blend.LiveSeedsPerSquareFoot),
        ("stand", blend.StandTotal.Chosen),
        ("parts", blend.Parts.Select(p => (p.Kind.Id, p.LiveRate.PoundsPerAcre, p.BulkRate.PoundsPerAcre,
            p.ShareOfFullStand.Chosen))),
        ("Findings", blend.Findings));

    private static void Seasons(Recorder recorder, string words, Blend blend)
    {
        var coverage = SeasonCoverage.For(blend);
        recorder.Call($"blend of {words}: seasons", () => coverage);
        recorder.Call($"blend of {words}: seasons covered", () => Enum.GetValues<SeasonOfUse>().Where(coverage.Covers).ToArray());
        recorder.Call($"blend of {words}: seasons beside a standing clover",
            () => SeasonCoverage.For(blend, KindShare.FromShare(Kind("ladino clover"), 0.5)));
        recorder.Call($"blend of {words}: seasons of the shares", () => SeasonCoverage.For(blend.KindShares, 0.4));
        recorder.Call($"blend of {words}: best additions", () =>
            coverage.BestAdditions(KindCatalog.Standard.Kinds.Where(k => k.Seasons is not null),
                0.25).Select(a => (a.Added.Kind.Id, a.Before.Covered, a.After.Covered, a.Filled)));
    }

    private static void Fit(Recorder recorder, string words, Blend blend)
    {
        var batch = blend.WeighFor(Acres(0.62));
        recorder.Call($"blend of {words}: fit, nothing known", () => Short(BlendFit.For(batch)));
        foreach (var region in PlantingRegion.All)
        {
            recorder.Call($"blend of {words}: dates in common, {region.Id}", () => Short(CommonDates.For(blend, region)));
            foreach (var (day, ph, drainage) in new[]
            {
                (new DateOnly(2026, 4, 15), 5.4, DrainageClass.Poor), (new DateOnly(2026, 8, 20), 6.4, DrainageClass.Well),
                (new DateOnly(2026, 10, 10), 7.9, DrainageClass.Excessive),
            })
            {
                recorder.Call($"blend of {words}: fit, {region.Id}, {Amounts.Print(ph, 1)}, {Words(drainage)}",
                    () => Short(BlendFit.For(batch, new BlendFitRequest
                    {
                        Region = region,
                        SowingDay = day,
                        Soil = Ground(ph) with { Drainage = drainage },
                    })));
            }
        }

        recorder.Call($"blend of {words}: fit, a hard place", () => Short(BlendFit.For(batch, new BlendFitRequest
        {
            NitrogenPlanned = PerAcre(60),
            IsSeedLeftOnSurface = true,
            IsLateSeeding = true,
            Soil = PlotSoil.For(new SoilReport { Laboratory = "none" }) with { IsDryOrThin = true },
            Standing = [KindShare.FromShare(Kind("ladino clover"), 0.5)],
        })));
    }

    private static PlotSoil Ground(double ph) =>
        PlotSoil.For(new SoilReport { Laboratory = "a laboratory", WaterPh = WaterPh.FromValue(ph) });

    private static Dictionary<string, object?> Short(BlendFit fit) => Named(
        ("lowest pH", fit.LowestPh),
        ("highest pH", fit.HighestPh),
        ("wettest", fit.WettestDrainage),
        ("driest", fit.DriestDrainage),
        ("passes", fit.Passes.Select(p => (string.Join(' ', p.Kinds.Select(x => x.Kind!.Id)), p.Shallowest, p.Deepest))),
        ("inoculants", fit.Inoculants.Select(i => (i.Group.Id, i.AtLabelRate, i.AtThoroughRate))),
        ("nitrogen fixed", fit.NitrogenFixed),
        ("dates", fit.Dates is { } dates ? Short(dates) : null),
        ("Findings", fit.Findings));

    private static Dictionary<string, object?> Short(CommonDates dates) =>
        Named(("ranges", dates.Ranges), ("unknown", dates.Unknown.Select(k => k.Id)));

    private static void Densities(Recorder recorder)
    {
        foreach (var target in DensityTarget.All)
        {
            recorder.Add($"density target {target.Id}", "", target);
            recorder.Call($"density target {target.Id}: kinds",
                () => KindCatalog.Standard.Kinds.Where(target.Covers).Select(k => k.Id).ToArray());
        }

        foreach (var kind in KindCatalog.Standard.Kinds)
        {
            recorder.Call($"kind {kind.Id}: density targets", () => DensityTarget.For(kind).Select(t => t.Id).ToArray());
        }

        recorder.Call("stand totals added", () => Blends()[0].Blend.StandTotal + Blends()[1].Blend.StandTotal);
        recorder.Call("stand totals alike",
            () => new[] { default(StandTotal) == default, Blends()[0].Blend.StandTotal != default(StandTotal) });
    }

    private static void Bags(Recorder recorder)
    {
        var bag = Offer.InBags(new StoreBlend { Label = "fall bag", Tag = Tag(), ClaimedArea = Acres(1) }, Pounds(50), 60m);
        foreach (var (lots, offered) in new (string, Offer<SeedLot>[])[] { ("no plain lots", []), ("some plain lots", Shelf[..2]),
            ("all plain lots", Shelf) })
        {
            foreach (var method in new[] { SowingMethod.Drilled, SowingMethod.Broadcast })
            {
                recorder.Call($"store bag beside {lots}, {Words(method)}", () => BagOrPlainSeed.Compare(bag, method, offered));
                recorder.Call($"store bag beside {lots}, {Words(method)}, hard seed counted",
                    () => Short(BagOrPlainSeed.Compare(bag, method, offered, ViabilityRule.GerminationAndHard)));
                recorder.Call($"store bag beside {lots}, {Words(method)}, weighed plain",
                    () => BagOrPlainSeed.Compare(bag, method, offered).Plain?.WeighFor(Acres(0.62)).Total);
            }
        }
    }

    private static Dictionary<string, object?> Short(BagOrPlainSeed both) => Named(
        ("covers", both.ReallyCovers),
        ("bag", both.BagCostPerAcre),
        ("plain", both.PlainCostPerAcre),
        ("not on offer", both.ShareNotOnOffer),
        ("Findings", both.Findings));

    private static void Recipes(Recorder recorder)
    {
        foreach (var method in new[] { SowingMethod.Broadcast, SowingMethod.Drilled })
        {
            recorder.Call($"recipe for no season, {Words(method)}",
                () => Short(RecipeProposal.Find(new RecipeRequest { Area = Acres(0.5), Method = method }, Shelf)));
            foreach (var season in Enum.GetValues<SeasonOfUse>())
            {
                recorder.Call($"recipe for {Words(season)}, {Words(method)}",
                    () =>
                        Short(RecipeProposal.Find(new RecipeRequest { Area = Acres(0.5), Method = method, Seasons = [season] },
                            Shelf)));
            }

            recorder.Call($"recipe for every season, {Words(method)}",
                () =>
                    Short(RecipeProposal.Find(new RecipeRequest
                    {
                        Area = Acres(0.5),
                        Method = method,
                        Seasons = [.. Enum.GetValues<SeasonOfUse>()]
                    }, Shelf)));
        }

        recorder.Call("recipe with every wish", () => Short(RecipeProposal.Find(new RecipeRequest
        {
            Area = Acres(0.75),
            Method = SowingMethod.Broadcast,
            Seasons = [SeasonOfUse.MidFall, SeasonOfUse.LateWinter],
            Budget = 60m,
            MinimumKinds = 4,
            MinimumFamilies = 3,
            TotalFrom = 0.9,
            TotalTo = 1.1,
            SmallestShare = 0.1,
            LargestShare = 0.5,
            Step = 0.1,
            SeasonShare = 0.3,
            Soil = Ground(6.1) with { Drainage = DrainageClass.Well },
            Standing = [KindShare.FromShare(Kind("ladino clover"), 0.2)],
            Rule = ViabilityRule.GerminationAndHard,
        }, Shelf)));
        recorder.Call("recipe beyond the budget",
            () =>
                Short(RecipeProposal.Find(new RecipeRequest
                {
                    Area = Acres(5),
                    Method = SowingMethod.Broadcast,
                    Budget = 1m,
                    MinimumKinds = 3
                }, Shelf)));
        recorder.Call("recipe on sour ground",
            () =>
                Short(RecipeProposal.Find(new RecipeRequest
                {
                    Area = Acres(1),
                    Method = SowingMethod.Broadcast,
                    Soil = Ground(4.4)
                }, Shelf)));
        recorder.Call("recipe of no lots",
            () => Short(RecipeProposal.Find(new RecipeRequest { Area = Acres(1), Method = SowingMethod.Broadcast }, [])));
    }

    private static Dictionary<string, object?> Short(RecipeProposal proposal) => Named(
        ("cost", proposal.Recipe?.Cost),
        ("in packages", proposal.Recipe?.CostInPackages),
        ("shares", proposal.Recipe?.Blend.Parts.Select(p => (p.Kind.Id, p.ShareOfFullStand.Chosen, p.BulkRate.PoundsPerAcre))),
        ("weights", proposal.Recipe?.Batch.Lines.Select(l => l.Weight.Pounds)),
        ("seasons", proposal.Recipe?.Coverage.Covered),
        ("by seasons", proposal.CheapestBySeasons.Select(s => (s.Seasons, s.Recipe?.Cost))),
        ("left out", proposal.Excluded.Select(x => x.Lot.Label)),
        ("Findings", proposal.Findings));
}
