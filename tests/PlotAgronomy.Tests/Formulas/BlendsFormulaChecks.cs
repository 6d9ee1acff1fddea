using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Tests.Formulas;

internal static class BlendsFormulaChecks
{
    private static readonly (string, double, double) LiveRate = ("live rate", 1, 150);
    private static readonly (string, double, double) SeedsPerPound = ("seeds per lb", 1000, 900_000);
    private static readonly (string, double, double) Acre = (
        "43,560",
        ExactUnits.SquareFeetPerAcre,
        ExactUnits.SquareFeetPerAcre
    );
    private static readonly (string, double, double) BulkRate = ("bulk rate", 1, 200);

    private static PureLiveSeedRateRange Published(double low, double high) =>
        PureLiveSeedRateRange.Printed(
            PureLiveSeedRate.BroadcastPoundsPerAcre(low),
            PureLiveSeedRate.BroadcastPoundsPerAcre(high),
            null
        );

    internal static FormulaCheck[] Stand =>
        [
            new(
                "blend-share-of-full-stand",
                d => BlendMath.ShareOfFullStand(d["live rate"], d["full rate alone"]),
                LiveRate,
                ("full rate alone", 4, 120)
            ),
            new(
                "blend-live-rate",
                d => BlendMath.LivePoundsPerAcre(d["share of a full stand"], d["full rate alone"]),
                ("share of a full stand", 0.05, 1.5),
                ("full rate alone", 4, 120)
            ),
            new(
                "blend-full-rate",
                d =>
                    PureLiveSeedRateRange
                        .Between(
                            PureLiveSeedRate.BroadcastPoundsPerAcre(d["lowest published"]),
                            PureLiveSeedRate.BroadcastPoundsPerAcre(d["highest published"])
                        )
                        .Middle.PoundsPerAcre,
                ("lowest published", 1, 40),
                ("highest published", 40, 160)
            ),
            new(
                "blend-full-rate-lowest",
                d => Published(d["lowest published"], d["highest published"]).Full.PoundsPerAcre,
                ("lowest published", 1, 40),
                ("highest published", 40, 160)
            ),
            new(
                "blend-full-rate-raised",
                d => SeedMath.RaisedPoundsPerAcre(d["lowest published"], d["highest published"], d["drilled full rate"]),
                ("lowest published", 1, 40),
                ("highest published", 40, 160),
                ("drilled full rate", 1, 200)
            ),
            new(
                "blend-full-rate-made",
                d =>
                    Published(d["broadcast full rate"], 160)
                        .SownBy(SowingMethod.FrostSeeded, 1, d["factor"], d["factor"], Origin.FromUser("a factor"))
                        .Full.PoundsPerAcre,
                ("broadcast full rate", 1, 150),
                ("factor", 1, 2)
            ),
            new(
                "blend-density-limit",
                d => BlendMath.MostSeedsPerSquareFoot(d["target"], d["live seeds"], d["full stands"]),
                ("target", 4, 80),
                ("live seeds", 1, 200),
                ("full stands", 0.1, 3)
            ),
            new(
                "blend-bulk-rate",
                d => SeedMath.BulkPoundsPerAcre(d["live rate"], SeedMath.PureLiveFraction(d["purity"], d["viability"])),
                LiveRate,
                ("purity", 0.5, 1),
                ("viability", 0.3, 1)
            ),
            new(
                "blend-live-seeds",
                d => SeedMath.SeedsPerSquareFoot(d["live rate"], d["seeds per lb"]),
                LiveRate,
                SeedsPerPound,
                Acre
            ),
            new(
                "blend-with-standing",
                d => (Stands(d["sown"]) + Stands(d["standing"])).Chosen,
                ("sown", 0.1, 2),
                ("standing", 0, 1)
            ),
            new(
                "blend-pass-diameters",
                d => SeedMath.SizeRatio(d["largest diameter"], d["smallest diameter"]),
                ("largest diameter", 4, 9),
                ("smallest diameter", 1, 4)
            ),
            new(
                "blend-nitrogen-thin",
                d => BlendMath.NitrogenFixed(d["share"], d["thin stand"], d["figure for a thin stand"], 200),
                ("share", 0, 0.3),
                ("thin stand", 0.2, 0.4),
                ("figure for a thin stand", 20, 60)
            ),
            new(
                "blend-nitrogen",
                d =>
                    BlendMath.NitrogenFixed(
                        d["share"],
                        d["thin stand"],
                        d["figure for a thin stand"],
                        d["figure for a full stand"]
                    ),
                ("share", 0.2, 1.6),
                ("thin stand", 0.2, 0.3),
                ("figure for a thin stand", 20, 60),
                ("figure for a full stand", 60, 200)
            ),
        ];

    internal static FormulaCheck[] Bags =>
        [
            new(
                "blend-seeds-in-batch",
                d => BlendMath.LiveSeedsIn(d["batch"], d["share of the weight"], d["pure live seed"], d["seeds per lb"]),
                ("batch", 0.1, 50),
                ("share of the weight", 0.01, 1),
                ("pure live seed", 0.2, 1),
                SeedsPerPound
            ),
            new(
                "blend-range-of-batch",
                d => BlendMath.RangeOfCount(d["standard deviations"], d["live seeds"]),
                ("standard deviations", 1, 3),
                ("live seeds", 5, 90_000)
            ),
            new(
                "blend-seed-needed",
                d => ApplicationRate.FromPoundsPerAcre(d["bulk rate"]).Over(Area.FromAcres(d["area"])).Pounds,
                BulkRate,
                ("area", 0.05, 20)
            ),
            new(
                "blend-seed-of-lot",
                d => BlendMath.OfLot(d["part of the living seed"], d["what it would take alone"]),
                ("part of the living seed", 0, 1),
                ("what it would take alone", 0.1, 200)
            ),
            new(
                "blend-area-covered",
                d => BlendMath.AcresCovered(d["claimed area"], d["sum of shares of a full stand"]),
                ("claimed area", 0.1, 5),
                ("sum of shares of a full stand", 0.2, 2)
            ),
            new(
                "blend-bags-for-area",
                d => BlendMath.BagsExactly(d["area"], d["area a bag covers"]),
                ("area", 0.05, 20),
                ("area a bag covers", 0.05, 3)
            ),
            new(
                "blend-bag-cost",
                d => (double)BlendMath.CostPerAcre((decimal)d["price"], d["area really covered"]),
                ("price", 5, 200),
                ("area really covered", 0.05, 5)
            ),
            new(
                "blend-plain-cost",
                d => (double)BlendMath.Cost((decimal)d["price"], d["bulk rate"]),
                ("price", 0.2, 9),
                BulkRate
            ),
        ];

    internal static FormulaCheck[] Diversity =>
        [
            new("blend-shannon-term", d => BlendMath.ShannonTerm(d["share"]), ("share", 0.001, 1)),
            new("blend-evenness", d => BlendMath.Evenness(d["Shannon"], d["kinds"]), ("Shannon", 0.1, 3), ("kinds", 2, 30)),
            new("blend-effective-kinds", d => BlendMath.EffectiveKinds(d["Shannon"]), ("Shannon", 0, 3)),
            new("blend-simpson-term", d => BlendMath.SimpsonTerm(d["share"]), ("share", 0, 1)),
            new("blend-simpson", d => BlendMath.Simpson([Math.Sqrt(d["one kind"])]), ("one kind", 0, 1)),
        ];

    private static StandTotal Stands(double share) => StandTotal.Of(share, share, share);
}
