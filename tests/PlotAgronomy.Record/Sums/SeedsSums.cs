using PlotAgronomy.Seeds;
using UnitsNet;
using static PlotAgronomy.Record.Sums.Given;

namespace PlotAgronomy.Record.Sums;

/// <summary>Lots, tags, pure live seed, counts on the ground and the rules of seed law; kinds have their own file.</summary>
internal static class SeedsSums
{
    private static readonly (string Words, ViabilityRule Rule)[] Rules =
    [
        ("germination only", ViabilityRule.GerminationOnly),
        ("germination and hard", ViabilityRule.GerminationAndHard),
        ("germination and dormant", ViabilityRule.GerminationAndDormant),
        ("all that lives", ViabilityRule.TotalViable),
        ("half the hard", ViabilityRule.Credit(0.5, 0.2)),
        ("tetrazolium", ViabilityRule.Tetrazolium(Percent(93))),
    ];

    private static readonly (string Words, SeedAnalysis Analysis)[] Analyses =
    [
        ("bare", SeedAnalysis.FromFractions(Percent(98), Percent(90))),
        ("coated", SeedAnalysis.FromFractions(Percent(65), Percent(80), coating: Percent(34))),
        ("hard", SeedAnalysis.FromFractions(Percent(98), Percent(70), Percent(15), Percent(5), seedsTested: 400)),
        ("weak", SeedAnalysis.FromFractions(Percent(90), Percent(45), seedsTested: 100)),
    ];

    internal static void Record(Recorder recorder)
    {
        Kinds.Record(recorder);
        Amounts(recorder);
        PureLive(recorder);
        Counts(recorder);
        Lots(recorder);
        Tags(recorder);
        Tests(recorder);
        Storage(recorder);
        Sowing(recorder);
    }

    internal static CropKind Kind(string name) => KindCatalog.Standard.Find(name);

    /// <summary>A lot on offer, priced by the pound whether it is in bags or loose.</summary>
    internal static Offer<SeedLot> Lot(
        string label, string kind, double pure, double germination, decimal price,
        double coating = 0, double? package = null, double hard = 0)
    {
        var lot = new SeedLot
        {
            Label = label,
            Kind = Kind(kind),
            Analysis = SeedAnalysis.FromFractions(Percent(pure), Percent(germination), Percent(hard), coating: Percent(coating)),
        };
        return package is { } pounds
            ? Offer.InBags(lot, Pounds(pounds), price * (decimal)pounds)
            : Offer.ByThePound(lot, price);
    }

    private static void Amounts(Recorder recorder)
    {
        var bulk = BulkSeedRate.DrilledPoundsPerAcre(12.5);
        var live = PureLiveSeedRate.BroadcastPoundsPerAcre(12.5);
        foreach (var method in Enum.GetValues<SowingMethod>())
        {
            recorder.Call($"seeds: a bulk rate, {Words(method)}", () => BulkSeedRate.FromRate(PerAcre(12.5), method));
            recorder.Call($"seeds: a live rate, {Words(method)}", () => PureLiveSeedRate.FromRate(PerAcre(12.5), method));
        }

        recorder.Call("seeds: a bulk rate, broadcast, in pounds", () => BulkSeedRate.BroadcastPoundsPerAcre(12.5));
        recorder.Call("seeds: a live rate, drilled, in pounds", () => PureLiveSeedRate.DrilledPoundsPerAcre(12.5));
        recorder.Call("seeds: bulk seed over an area", () => bulk.Over(Acres(0.62)));
        recorder.Call("seeds: living seed over an area", () => live.Over(Acres(0.62)));
        recorder.Call("seeds: a live rate times a number", () => (live * 1.25).PoundsPerAcre);
        recorder.Call("seeds: a live rate by another", () => live / PureLiveSeedRate.BroadcastPoundsPerAcre(3));
        recorder.Call("seeds: rates of two methods by one another", () => live / PureLiveSeedRate.DrilledPoundsPerAcre(3));
        recorder.Call("seeds: bulk weights added", () => (BulkSeedMass.FromPounds(3) + BulkSeedMass.FromMass(Grams(500))).ToMass());
        recorder.Call("seeds: living weights added",
            () => (PureLiveSeedMass.FromPounds(3) + PureLiveSeedMass.FromMass(Grams(500))).ToMass());
        recorder.Call("seeds: a range of rates",
            () => PureLiveSeedRateRange.Between(live, PureLiveSeedRate.BroadcastPoundsPerAcre(20)));
        recorder.Call("seeds: a share of a stand", () => KindShare.FromShare(Kind("crimson"), 0.35));
        recorder.Call("seeds: a share of a stand from a rate",
            () => KindShare.FromRate(Kind("crimson"), PureLiveSeedRate.BroadcastPoundsPerAcre(9)));
        recorder.Call("seeds: equal amounts", () => new[]
        {
            bulk == BulkSeedRate.DrilledPoundsPerAcre(12.5), bulk != BulkSeedRate.BroadcastPoundsPerAcre(12.5),
            live == PureLiveSeedRate.BroadcastPoundsPerAcre(12.5),
            live != PureLiveSeedRate.DrilledPoundsPerAcre(1), BulkSeedMass.FromPounds(1) == BulkSeedMass.FromPounds(1),
            BulkSeedMass.FromPounds(1) != BulkSeedMass.FromPounds(2),
            PureLiveSeedMass.FromPounds(1) == PureLiveSeedMass.FromPounds(1),
            PureLiveSeedMass.FromPounds(1) != PureLiveSeedMass.FromPounds(2),
        });
    }

    private static void PureLive(Recorder recorder)
    {
        foreach (var (rule, viability) in Rules)
        {
            recorder.Call($"seeds: the rule {rule}", () => viability);
            foreach (var (lot, analysis) in Analyses)
            {
                string what = $"{lot} seed by {rule}";
                recorder.Call($"seeds: what lives of {what}", () => viability.Viable(analysis));
                recorder.Call($"seeds: pure live part of {what}", () => PureLiveSeed.PartOf(analysis, viability));
                recorder.Call($"seeds: bulk rate of {what}",
                    () => PureLiveSeed.BulkRate(PureLiveSeedRate.DrilledPoundsPerAcre(15), analysis, viability));
                recorder.Call($"seeds: bulk that holds 10 lb of {what}",
                    () => PureLiveSeed.BulkHolding(PureLiveSeedMass.FromPounds(10), analysis, viability));
                recorder.Call($"seeds: what 10 lb hold of {what}",
                    () => PureLiveSeed.Held(BulkSeedMass.FromPounds(10), analysis, viability));
                recorder.Call($"seeds: what 10 lb/ac deliver of {what}",
                    () => PureLiveSeed.Delivered(BulkSeedRate.BroadcastPoundsPerAcre(10), analysis, viability));
                recorder.Call($"seeds: extra to buy of {what}", () => PureLiveSeed.ExtraToBuy(analysis, viability));
                recorder.Call($"seeds: price of a living pound of {what}",
                    () => PureLiveSeed.PricePerLivingPound(2.35m, analysis, viability));
                recorder.Call($"seeds: price to break even with {what}",
                    () => PureLiveSeed.BreakEvenPrice(2.35m, Analyses[0].Analysis, analysis, viability));
            }
        }

        foreach (var use in Enum.GetValues<SeedUse>())
        {
            recorder.Call($"seeds: the rule for {Words(use)}", () => ViabilityRule.For(use));
        }

        recorder.Call("seeds: bulk rate of a kind below its floor",
            () =>
                PureLiveSeed.BulkRate(PureLiveSeedRate.DrilledPoundsPerAcre(8), Analyses[3].Analysis,
                    ViabilityRule.GerminationOnly, Kind("medium red clover")));
        recorder.Call("seeds: dead seed",
            () =>
                PureLiveSeed.BulkRate(PureLiveSeedRate.DrilledPoundsPerAcre(8), SeedAnalysis.FromFractions(Percent(98), Fraction.Zero),
                    ViabilityRule.GerminationOnly));
        recorder.Call("seeds: purity before coating",
            () => SeedAnalysis.FromPurityBeforeCoating(Percent(99), Percent(34), Percent(80), Percent(5), Percent(2), 200));
        recorder.Call("seeds: a coating from its build-up", () => SeedAnalysis.CoatingFromBuildUp(0.52));
        recorder.Call("seeds: an analysis beyond the whole", () => SeedAnalysis.FromFractions(Percent(99), Percent(92), Percent(10)));
    }

    private static void Counts(Recorder recorder)
    {
        var count = SeedCount.FromSeedsPerPound(150_000);
        recorder.Call("seeds: a count from seeds per pound", () => count);
        recorder.Call("seeds: a count from the weight of a thousand", () => SeedCount.FromThousandSeedWeight(Grams(3.1)));
        recorder.Call("seeds: a count from a weighed sample", () => SeedCount.FromWeighedSample(250, Grams(0.82)));
        foreach (double seeds in new[] { 200, 3_000, 20_000, 90_000, 400_000, 2_000_000.0 })
        {
            recorder.Call($"seeds: the size of seed of {seeds} a pound", () => SeedCount.FromSeedsPerPound(seeds));
        }

        foreach (double rate in new[] { 2.0, 8, 25 })
        {
            recorder.Call($"seeds: seeds on a square foot at {rate} lb/ac",
                () => SeedDensity.FromRate(PureLiveSeedRate.DrilledPoundsPerAcre(rate), count).SeedsPerSquareFoot);
            recorder.Call($"seeds: the rate for {rate} seeds on a square foot",
                () => SeedDensity.FromSeedsPerSquareFoot(rate).RateOf(count, SowingMethod.Broadcast));
            recorder.Call($"seeds: square feet without a seed at {rate} a square foot", () => SeedDensity.FromSeedsPerSquareFoot(rate).EmptySquareFeet);
            recorder.Call($"seeds: plants of {rate} seeds a square foot",
                () => SeedDensity.FromSeedsPerSquareFoot(rate).PlantsLeft(Percent(60), Percent(80)).SeedsPerSquareFoot);
        }

        recorder.Call("seeds: drilled rate for a stand",
            () => SeedDensity.FromSeedsPerAcre(1_200_000).DrilledRateAfterLoss(Percent(30), SeedCount.FromSeedsPerPound(15_000)));
        recorder.Call("seeds: seeds per acre of a row foot", () => SeedDensity.FromRows(RowDensity.FromSeedsPerFoot(18), Inches(7.5)).SeedsPerAcre);
        recorder.Call("seeds: seeds per row foot of an acre", () => SeedDensity.FromSeedsPerAcre(1_250_000).InRows(Inches(7.5)).SeedsPerFoot);
    }

    private static void Lots(Recorder recorder)
    {
        var lots = new[]
        {
            Lot("bare", "crimson", 98, 90, 2.40m, package: 50), Lot("old", "crimson", 97, 60, 1.80m),
            Lot("coated", "crimson", 65, 90, 1.90m, 34, 25),
            Lot("hard", "crimson", 98, 70, 2.00m, hard: 25),
        };
        foreach (var offer in lots)
        {
            recorder.Call($"seeds: worth of the {offer.Item.Label} lot", () => LotValue.For(offer));
        }

        foreach (var lot in lots.Select(o => o.Item).Append(Lot("unpriced", "crimson", 98, 85, 0).Item))
        {
            recorder.Call($"seeds: bulk rate of the {lot.Label} lot",
                () => lot.BulkRate(PureLiveSeedRate.BroadcastPoundsPerAcre(20)));
            recorder.Call($"seeds: pure live part of the {lot.Label} lot", () => lot.PureLiveSeedPart());
            recorder.Call($"seeds: pure live part of the {lot.Label} lot, all that lives",
                () => lot.PureLiveSeedPart(ViabilityRule.TotalViable));
            recorder.Call($"seeds: cautions of the {lot.Label} lot", () => lot.Cautions(SowingMethod.Broadcast));
        }

        var ranked = SeedLotComparison.Rank(lots, PureLiveSeedRate.BroadcastPoundsPerAcre(20));
        recorder.Call("seeds: lots ranked", () => ranked);
        recorder.Call("seeds: lots ranked by another rule",
            () => SeedLotComparison.Rank(lots, PureLiveSeedRate.DrilledPoundsPerAcre(12), ViabilityRule.TotalViable));
        recorder.Call("seeds: cost of ranked lots for an area",
            () => ranked.Ranked.Select(r => r.CostFor(Acres(0.62))).ToArray());
        recorder.Call("seeds: packages of ranked lots for an area",
            () => ranked.Ranked.Select(r => r.PackagesFor(Acres(3.1))).ToArray());
        recorder.Call("seeds: price of a pound", () => Offer.InBags(lots[0].Item, Pounds(50), 89.95m).PricePerPound);
        var treated = new SeedLot
        {
            Label = "treated",
            Kind = Kind("winter pea"),
            Analysis = Analyses[0].Analysis,
            IsTreated = true,
            IsPreinoculated = true,
            OwnSeedCount = SeedCount.FromSeedsPerPound(2_900)
        };
        recorder.Call("seeds: a treated lot", () => treated);
        foreach (var method in Enum.GetValues<SowingMethod>())
        {
            recorder.Call($"seeds: cautions of a treated lot, {Words(method)}", () => treated.Cautions(method));
        }

        foreach (string kind in new[] { "winter pea", "crimson", "ladino", "alfalfa", "cowpea", "rye" })
        {
            recorder.Call($"seeds: inoculant for {kind}", () => InoculantNeed.For(Kind(kind), BulkSeedMass.FromPounds(25)));
        }

        recorder.Call("seeds: inoculant for a treated lot", () => InoculantNeed.For(treated, BulkSeedMass.FromPounds(25)));
        foreach (var group in InoculantGroup.All)
        {
            recorder.Add($"seeds: the inoculant group {group.Id}", "", InoculantGroup.Find(group.Id));
        }
    }

    private static void Tags(Recorder recorder)
    {
        foreach (var (words, text) in TagTexts.All)
        {
            recorder.Call($"seeds: the tag of {words}", () => SeedTag.Read(text));
            recorder.Call($"seeds: the components on the tag of {words}", () =>
                SeedTag.Read(text).Tag?.Components.Select(c => (c.Kind.Id, c.Analysis.PureSeed, c.Analysis.Germination,
                    c.Analysis.HardSeed, c.Analysis.DormantSeed, c.Analysis.Coating)));
            recorder.Call($"seeds: what is odd on the tag of {words}", () => SeedTag.Read(text).Tag?.Check());
        }

        var tag = SeedTag.Read(TagTexts.All[0].Text).Tag!;
        recorder.Call("seeds: a lot from its tag", () => SeedLot.FromTag(tag, tag.Components[0], "a bag"));
        recorder.Call("seeds: a tag made by hand", () => new SeedTag
        {
            Components = [new TagComponent { Kind = Kind("crimson"), Analysis = Analyses[1].Analysis,
                TestMonth = TestMonth.FromYearAndMonth(2025, 3) }],
            Inert = Percent(34.5),
            Weed = Percent(0.2),
            Noxious = [new NoxiousWeed { Name = "dock", SeedsPerPound = 36 }],
        });
        foreach (int labelled in new[] { 0, 1, 5, 14, 30, 31 })
        {
            recorder.Call($"seeds: most noxious seeds within tolerance of {labelled}",
                () => NoxiousWeed.MostWithinTolerance(labelled));
        }

        recorder.Call("seeds: noxious seeds in a sample", () => NoxiousWeed.SeedsInSample(36, Grams(50)));
    }

    private static void Tests(Recorder recorder)
    {
        foreach (var (germinated, seeds) in new[] { (0, 50), (40, 50), (52, 100), (78, 100), (100, 100), (320, 400), (11, 10) })
        {
            recorder.Call($"seeds: a test of {germinated} of {seeds}", () => GerminationTest.FromCount(germinated, seeds));
            recorder.Call($"seeds: a home test of {germinated} of {seeds} against the tag",
                () => HomeTestVerdict.Compare(Analyses[0].Analysis, GerminationTest.FromCount(germinated, seeds)));
        }

        foreach (var (label, retest) in new[] { (85.0, 77.0), (85, 78), (95, 91), (60, 50), (99, 80) })
        {
            recorder.Call($"seeds: a retest of {retest} against {label}",
                () => GerminationTolerance.Compare(Percent(label), Percent(retest)));
            recorder.Call($"seeds: a retest of {retest} against {label} in a mixture",
                () => GerminationTolerance.Compare(Percent(label), Percent(retest), true));
        }

        var test = TestMonth.FromYearAndMonth(2025, 8);
        foreach (var rule in TestDateRule.All)
        {
            recorder.Add($"seeds: the test date rule {rule.Id}", "", TestDateRule.Find(rule.Id));
            foreach (bool hermetic in new[] { false, true })
            {
                string packed = hermetic ? ", hermetic" : "";
                recorder.Call($"seeds: last day by {rule.Id}{packed}", () => rule.LastDay(test, hermetic));
                recorder.Call($"seeds: a test checked by {rule.Id}{packed}",
                    () => rule.Check(test, new DateOnly(2026, 9, 15), hermetic));
            }

            recorder.Call($"seeds: the rule of {rule.Jurisdiction} beside {rule.Id} for timothy",
                () => TestDateRule.For(rule.State, Kind("timothy")).Id);
        }

        recorder.Call("seeds: a test month", () => test);
        recorder.Call("seeds: a month nine months later", () => test.LastDayOfMonthLater(9));
        recorder.Call("seeds: months in order", () => new[]
        {
            test < TestMonth.FromYearAndMonth(2025, 9), test > TestMonth.FromYearAndMonth(2025, 9), test <= TestMonth.FromYearAndMonth(2025, 8),
            test >= TestMonth.FromYearAndMonth(2025, 8), test == TestMonth.FromYearAndMonth(2025, 8), test != TestMonth.FromYearAndMonth(2025, 8),
        });
        recorder.Call("seeds: months compared", () => test.CompareTo(TestMonth.FromYearAndMonth(2024, 8)));
    }

    private static void Storage(Recorder recorder)
    {
        recorder.Call("seeds: the sum of a store", () => SeedStorage.HundredSum(Fahrenheit(55), Percent(42)));
        recorder.Call("seeds: stores by the rule of a hundred",
            () =>
                new[] { SeedStorage.KeepsTheRuleOfHundred(Fahrenheit(50), Percent(49.9)),
                    SeedStorage.KeepsTheRuleOfHundred(Fahrenheit(50), Percent(50)) });
        recorder.Call("seeds: longer life, drier and cooler",
            () => SeedStorage.LifeFactor(Percent(12), Percent(10), Fahrenheit(80), Fahrenheit(60)));
        recorder.Call("seeds: life outside the rule",
            () => SeedStorage.LifeFactor(Percent(4), Percent(10), Fahrenheit(80), Fahrenheit(60)));
        foreach (var record in StorageRecord.All)
        {
            recorder.Add($"seeds: stored {record.Crop}, lot {record.Lot}", "", record);
        }
    }

    private static void Sowing(Recorder recorder)
    {
        int number = 0;
        foreach (var factor in BroadcastFactor.All)
        {
            recorder.Add($"seeds: published broadcast factor {++number}", "", factor);
        }

        foreach (var cover in Enum.GetValues<SeedbedCover>())
        {
            recorder.Call($"seeds: broadcast factor, {Words(cover)}", () => BroadcastFactor.FactorFor(cover));
            recorder.Call($"seeds: broadcast from drilled, {Words(cover)}",
                () => BroadcastFactor.BroadcastFrom(PureLiveSeedRate.DrilledPoundsPerAcre(10), cover));
        }

        recorder.Call("seeds: frost-seeded from broadcast",
            () => BroadcastFactor.FrostSeededFrom(PureLiveSeedRate.BroadcastPoundsPerAcre(10)));
        recorder.Call("seeds: frost-seeded from drilled",
            () => BroadcastFactor.FrostSeededFrom(PureLiveSeedRate.DrilledPoundsPerAcre(10)));
        recorder.Call("seeds: evidence of the user's own", () => Origin.FromUser("a count of my own"));
    }
}
