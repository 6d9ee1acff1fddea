using PlotAgronomy.Seeds;

namespace PlotAgronomy.Tests.Formulas;

internal static class SeedsFormulaChecks
{
    private static readonly (string Place, double Low, double High) Germination = ("germination", 0.3, 0.98);
    private static readonly (string Place, double Low, double High) Hard = ("hard", 0, 0.3);
    private static readonly (string Place, double Low, double High) Dormant = ("dormant", 0, 0.3);

    internal static FormulaCheck[] All =>
        [
            new("viable-with-hard", d => SeedMath.ViableFraction(d["germination"], d["hard"], 0, 1, 0), Germination, Hard),
            new(
                "viable-with-dormant",
                d => SeedMath.ViableFraction(d["germination"], 0, d["dormant"], 0, 1),
                Germination,
                Dormant
            ),
            new(
                "viable-in-all",
                d => SeedMath.ViableFraction(d["germination"], d["hard"], d["dormant"], 1, 1),
                Germination,
                Hard,
                Dormant
            ),
            new(
                "viable-by-credit",
                d => SeedMath.ViableFraction(d["germination"], d["hard"], d["dormant"], d["hard credit"], d["dormant credit"]),
                Germination,
                Hard,
                Dormant,
                ("hard credit", 0, 1),
                ("dormant credit", 0, 1)
            ),
            new(
                "pure-live-seed",
                d => SeedMath.PureLiveFraction(d["pure seed"], d["viable seed"]),
                ("pure seed", 0.5, 1),
                ("viable seed", 0.3, 1)
            ),
            new(
                "bulk-rate",
                d => SeedMath.BulkPoundsPerAcre(d["PLS rate"], d["pure live seed"]),
                ("PLS rate", 1, 200),
                ("pure live seed", 0.2, 1)
            ),
            new(
                "price-of-living-pound",
                d => (double)SeedMath.PricePerLivingPound((decimal)d["price per lb"], d["pure live seed"]),
                ("price per lb", 0.2, 12),
                ("pure live seed", 0.2, 1)
            ),
            new(
                "lot-cost",
                d => (double)SeedMath.CostPerAcre(d["bulk rate"], (decimal)d["price per lb"]),
                ("bulk rate", 1, 200),
                ("price per lb", 0.2, 12)
            ),
            new(
                "inoculant-label-rate",
                d => SeedMath.OuncesOnSeed(d["oz a lb"], d["seed"]),
                ("oz a lb", 0.05, 0.5),
                ("seed", 1, 200)
            ),
            new(
                "inoculant-extra-rate",
                d => SeedMath.OuncesOnSeed(d["oz a lb"], d["seed"]),
                ("oz a lb", 0.05, 0.5),
                ("seed", 1, 200)
            ),
            new(
                "sticker-syrup",
                d => SeedMath.OuncesOnSeed(d["oz of syrup a lb"], d["seed"]),
                ("oz of syrup a lb", 0.05, 0.5),
                ("seed", 1, 200)
            ),
            new(
                "sticker-water",
                d => SeedMath.OuncesOnSeed(d["oz of water a lb"], d["seed"]),
                ("oz of water a lb", 0.05, 0.5),
                ("seed", 1, 200)
            ),
            new(
                "home-test-factor",
                d => SeedMath.RateFactorOfHomeTest(d["tag"], d["home"], d["most"]),
                ("tag", 0.6, 0.98),
                ("home", 0.3, 0.9),
                ("most", 1.2, 2)
            ),
            new("tolerance-mean", d => SeedMath.MeanOfTests(d["label"], d["retest"]), ("label", 50, 100), ("retest", 40, 100)),
            new(
                "tolerance-difference",
                d => SeedMath.DifferenceOfTests(d["label"], d["retest"]),
                ("label", 50, 100),
                ("retest", 40, 100)
            ),
            new(
                "rate-over-top",
                d =>
                    PureLiveSeedRate.BroadcastPoundsPerAcre(d["rate"])
                    / PureLiveSeedRate.BroadcastPoundsPerAcre(d["highest published"]),
                ("rate", 1, 200),
                ("highest published", 1, 150)
            ),
        ];
}
