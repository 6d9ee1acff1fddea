using PlotAgronomy.Spreading;

namespace PlotAgronomy.Tests.Formulas;

internal static class SpreadingGateFormulaChecks
{
    private static readonly (string, double, double)[] Grain =
    [
        ("seed diameter", 0.1, 0.6),
        ("bulk density", 0.3, 0.9),
        ("factor", 30, 40),
        ("empty rim", 1.2, 1.6),
        ("gravity", 970, 990),
        ("power", 2.3, 2.7),
    ];

    internal static FormulaCheck[] GatesAndHoppers =>
        [
            new(
                "spread-flow-above-table",
                d => PowerLaw.Value(d["highest setting"], d["highest flow"], d["power"], d["setting"]),
                ("highest setting", 3, 8),
                ("highest flow", 0.5, 9),
                ("power", 1, 4),
                ("setting", 8, 10)
            ),
            new(
                "spread-setting-above-table",
                d => PowerLaw.Argument(d["highest setting"], d["highest flow"], d["power"], d["flow"]),
                ("highest setting", 3, 8),
                ("highest flow", 0.5, 9),
                ("power", 1, 4),
                ("flow", 9, 12)
            ),
            new(
                "spread-grain-flow",
                d =>
                    SpreaderMath.GramsPerMinute(
                        d["hole"],
                        d["seed diameter"],
                        d["bulk density"],
                        d["factor"],
                        d["empty rim"],
                        d["gravity"],
                        d["power"]
                    ),
                [("hole", 0.4, 5), .. Grain]
            ),
            new(
                "spread-grain-hole",
                d =>
                    SpreaderMath.HoleCentimeters(
                        d["flow"],
                        d["seed diameter"],
                        d["bulk density"],
                        d["factor"],
                        d["empty rim"],
                        d["gravity"],
                        d["power"]
                    ),
                [("flow", 50, 9000), .. Grain]
            ),
            new(
                "spread-dial-claimed-to-wanted",
                d => PrintedDial.Compare(PerAcre(d["wanted rate"]), PerAcre(d["claimed rate"])).ClaimedToWanted,
                ("claimed rate", 2, 200),
                ("wanted rate", 2, 200)
            ),
            new(
                "spread-rate-with-carrier",
                d => Carried(d).BlendRate.PoundsPerAcre,
                ("seed rate", 2, 30),
                ("carrier rate", 1, 90)
            ),
            new("spread-carrier-parts", d => Carried(d).PartsByWeight, ("seed rate", 2, 30), ("carrier rate", 1, 90)),
            new(
                "spread-pass-diameters",
                d => SpreaderMath.Ratio(d["largest diameter"], d["smallest diameter"]),
                ("largest diameter", 4, 9),
                ("smallest diameter", 1, 4)
            ),
            new(
                "spread-pass-flight",
                d => SpreaderMath.Ratio(d["largest density x diameter"], d["smallest"]),
                ("largest density x diameter", 3000, 6000),
                ("smallest", 900, 3000)
            ),
        ];

    private static CarrierMix Carried(Draw draw) =>
        CarrierMix.ForParts(PerAcre(draw["seed rate"]), draw["carrier rate"] / draw["seed rate"], Carrier.DrySand);

    private static ApplicationRate PerAcre(double pounds) => ApplicationRate.FromPoundsPerAcre(pounds);
}
