using PlotAgronomy.Spreading;
using UnitsNet;

namespace PlotAgronomy.Tests.Formulas;

internal static class SpreadingFormulaChecks
{
    private static readonly (string, double, double) Rate = ("rate", 2, 200);
    private static readonly (string, double, double) Flow = ("flow", 0.1, 20);
    private static readonly (string, double, double) Pace = ("speed", 1, 8);
    private static readonly (string, double, double) Swath = ("swath", 4, 60);
    private static readonly (string, double, double) Weight = ("weight", 0.01, 50);
    private static readonly (string, double, double) Acre = (
        "43,560",
        ExactUnits.SquareFeetPerAcre,
        ExactUnits.SquareFeetPerAcre
    );

    private static readonly (string, double, double) FlowConstant = (
        "495",
        ExactUnits.SquareFeetPerAcre / 88,
        ExactUnits.SquareFeetPerAcre / 88
    );

    private static readonly (string, double, double)[] Grain =
    [
        ("seed diameter", 0.1, 0.6),
        ("bulk density", 0.3, 0.9),
        ("factor", 30, 40),
        ("empty rim", 1.2, 1.6),
        ("gravity", 970, 990),
        ("power", 2.3, 2.7),
    ];

    internal static FormulaCheck[] Rates =>
        [
            new(
                "spread-test-run",
                d =>
                    SpreaderCalibration
                        .ExpectedCatch(
                            ApplicationRate.FromPoundsPerAcre(d["rate"]),
                            Length.FromFeet(d["course"]),
                            Length.FromFeet(d["swath"])
                        )
                        .Pounds,
                Rate,
                ("course", 20, 400),
                Swath,
                Acre
            ),
            new(
                "spread-rate-from-flow",
                d => SpreaderMath.PoundsPerAcre(d["flow"], d["speed"], d["swath"]),
                Flow,
                Pace,
                Swath,
                FlowConstant
            ),
            new(
                "spread-flow-for-rate",
                d => SpreaderMath.PoundsPerMinute(d["rate"], d["speed"], d["swath"]),
                Rate,
                Pace,
                Swath,
                FlowConstant
            ),
            new(
                "spread-speed-for-flow",
                d => SpreaderMath.MilesPerHour(d["rate"], d["flow"], d["swath"]),
                Rate,
                Flow,
                Swath,
                FlowConstant
            ),
            new(
                "spread-swath-for-flow",
                d => SpreaderMath.SwathFeet(d["rate"], d["flow"], d["speed"]),
                Rate,
                Flow,
                Pace,
                FlowConstant
            ),
            new(
                "spread-rate-at-spacing",
                d => SpreaderMath.PoundsPerAcreAtSpacing(d["rate"], d["swath of the calibration"], d["spacing of the passes"]),
                Rate,
                ("swath of the calibration", 4, 60),
                ("spacing of the passes", 4, 60)
            ),
            new(
                "spread-rate-at-speed",
                d => SpreaderMath.PoundsPerAcreAtSpeed(d["rate"], d["planned speed"], d["speed kept"]),
                Rate,
                ("planned speed", 1, 8),
                ("speed kept", 1, 8)
            ),
        ];

    internal static FormulaCheck[] Calibration =>
        [
            new(
                "spread-rate-over-course",
                d =>
                    SpreaderMath.PoundsPerAcreOverArea(
                        d["weight"],
                        SpreaderCalibration.CourseAreaOf(Length.FromFeet(d["distance"]), Length.FromFeet(d["swath"])).SquareFeet
                    ),
                Weight,
                Swath,
                ("distance", 50, 2000),
                Acre
            ),
            new(
                "spread-flow-of-catch",
                d => SpreaderMath.PoundsPerMinuteCaught(d["weight"], d["seconds"]),
                Weight,
                ("seconds", 5, 300)
            ),
            new(
                "spread-rate-on-trays",
                d => SpreaderMath.PoundsPerAcreOverArea(d["weight"], d["tray area"]),
                Weight,
                ("tray area", 1, 50),
                Acre
            ),
            new(
                "spread-ground-of-wheel",
                d => SpreaderMath.SquareFeetOfWheel(d["rows"], d["spacing"], d["circumference"], d["turns"]),
                ("rows", 1, 40),
                ("spacing", 0.3, 4),
                ("circumference", 2, 15),
                ("turns", 1, 100)
            ),
            new(
                "spread-rate-of-wheel",
                d => SpreaderMath.PoundsPerAcreByWheel(d["weight"], d["ground"], d["skid"]),
                Weight,
                ("ground", 50, 5000),
                ("skid", 0, 0.3),
                Acre
            ),
            new(
                "spread-rate-on-plot",
                d => SpreaderMath.PoundsPerAcreOverArea(d["weight"], d["plot"]),
                Weight,
                ("plot", 1000, 100_000),
                Acre
            ),
            new(
                "spread-mean-of-runs",
                d => SpreaderMath.Mean(d["sum of runs"], d["number of runs"]),
                ("sum of runs", 2, 900),
                ("number of runs", 1, 9)
            ),
            new(
                "spread-spread-of-runs",
                d => SpreaderMath.RelativeSpread(d["highest"], d["lowest"], d["mean"]),
                ("highest", 60, 90),
                ("lowest", 30, 50),
                ("mean", 50, 60)
            ),
            new("spread-off-target", d => SpreaderMath.RelativeOff(d["mean"], d["target"]), ("mean", 2, 200), ("target", 2, 200)),
            new(
                "spread-weight-to-aim-for",
                d => SpreaderMath.PoundsToAimFor(d["mean weight"], d["rate wanted"], d["mean rate"]),
                ("mean weight", 0.1, 50),
                ("rate wanted", 2, 200),
                ("mean rate", 2, 200)
            ),
            new(
                "spread-error-squared",
                d => SpreaderMath.SumOfSquares(d["measuring error"], d["standard error of the runs"]),
                ("measuring error", 0, 30),
                ("standard error of the runs", 0, 30)
            ),
            new("spread-expected-error", d => SpreaderMath.Root(d["sum of squares"]), ("sum of squares", 0, 900)),
            new(
                "spread-outlet-off-mean",
                d => SpreaderMath.RelativeOff(d["catch"], d["mean"]),
                ("catch", 0.1, 2),
                ("mean", 0.1, 2)
            ),
        ];

    internal static FormulaCheck[] Walking =>
        [
            new(
                "spread-load",
                d => SpreaderMath.PoundsOverArea(d["rate"], Area.FromAcres(d["area"]).SquareFeet),
                Rate,
                ("area", 0.05, 20)
            ),
            new("spread-walk-distance", d => SpreaderMath.FeetToWalk(d["area"], d["swath"]), ("area", 2000, 900_000), Swath),
            new(
                "spread-rate-so-far",
                d => SpreaderMath.PoundsPerAcreSown(d["weight used"], d["ground sown"]),
                ("weight used", 1, 100),
                ("ground sown", 0.05, 5)
            ),
            new(
                "spread-rate-needed",
                d => SpreaderMath.PoundsPerAcreSown(d["weight left"], d["ground left"]),
                ("weight left", 1, 100),
                ("ground left", 0.05, 5)
            ),
            new(
                "spread-hopper-alone",
                d => SpreaderMath.MinutesToFlow(d["weight"], d["flow alone"]),
                Weight,
                ("flow alone", 0.1, 20)
            ),
            new(
                "spread-hopper-walk",
                d => SpreaderMath.SecondsForFeet(SpreaderMath.FeetToWalk(d["area"], d["swath"]), d["speed"]) / 60,
                ("area", 2000, 900_000),
                Swath,
                Pace,
                ("88", 88, 88)
            ),
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

    internal static FormulaCheck[] Patterns =>
        [
            new(
                "spread-half-maximum-width",
                d => PatternShape.Width(d["reach to the right at half the highest catch"], d["reach to the left"]),
                ("reach to the right at half the highest catch", 2, 30),
                ("reach to the left", 2, 30)
            ),
            new(
                "spread-half-middle-width",
                d => PatternShape.Width(d["reach to the right at half the middle"], d["reach to the left"]),
                ("reach to the right at half the middle", 2, 30),
                ("reach to the left", 2, 30)
            ),
            new("spread-half-throw", d => PatternShape.HalfThrow(d["whole throw"]), ("whole throw", 5, 80)),
            new(
                "spread-edge-rate",
                d => SpreaderMath.Ratio(d["thrown there by all passes"], d["full rate"]),
                ("thrown there by all passes", 0, 30),
                ("full rate", 5, 30)
            ),
            new(
                "spread-rim-rate",
                d => SpreaderMath.Ratio(d["mean to half a swath inside"], d["full rate"]),
                ("mean to half a swath inside", 0, 30),
                ("full rate", 5, 30)
            ),
            new(
                "spread-lost-part",
                d => SpreaderMath.Ratio(d["thrown beyond the edge"], d["one pass"]),
                ("thrown beyond the edge", 0, 90),
                ("one pass", 90, 900)
            ),
            new(
                "spread-lean",
                d => Leaning(d["sum of place x catch"], d["sum of catches"]),
                ("sum of place x catch", -4, 4),
                ("sum of catches", 5, 30)
            ),
            new(
                "spread-place-from-path",
                d => PatternMath.FeetFromPath(d["place"], d["pass"], d["swath"], d["side"]),
                ("side", -1, 1),
                ("place", 0, 60),
                ("pass", -4, 4),
                Swath
            ),
            new(
                "spread-right-angles",
                d => PatternMath.RightAnglesCv(d["CV of the full rate"]),
                ("CV of the full rate", 1, 60),
                ("square root of 2", PatternMath.SquareRootOfTwo, PatternMath.SquareRootOfTwo)
            ),
            new(
                "spread-half-swath",
                d => SpreaderMath.Ratio(d["standard deviation at half the swath"], d["mean"]),
                ("standard deviation at half the swath", 0, 9),
                ("mean", 5, 50)
            ),
            new(
                "spread-overlapped-mean",
                d => SpreaderMath.Mean(d["sum of overlapped amounts"], d["positions"]),
                ("sum of overlapped amounts", 20, 900),
                ("positions", 4, 60)
            ),
            new(
                "spread-overlapped-cv",
                d => SpreaderMath.Ratio(d["standard deviation"], d["mean"]),
                ("standard deviation", 0, 9),
                ("mean", 5, 50)
            ),
        ];

    internal static FormulaCheck[] Passes =>
        [
            new("spread-swaths-across", d => SpreaderMath.SwathsAcross(d["width"], d["swath"]), ("width", 20, 400), Swath),
            new("spread-spacing", d => SpreaderMath.SpacingFeet(d["width"], d["strips"]), ("width", 50, 900), ("strips", 2, 60)),
            new(
                "spread-spacing-on-edge",
                d => SpreaderMath.SpacingOnEdgeFeet(d["width"], d["strips"]),
                ("width", 50, 900),
                ("strips", 2, 60)
            ),
            new(
                "spread-rate-if-gate-stays",
                d => SpreaderMath.PoundsPerAcreAtSpacing(d["rate"], d["swath"], d["spacing"]),
                Rate,
                Swath,
                ("spacing", 4, 60)
            ),
            new(
                "spread-path",
                d => SpreaderMath.PathFeet(d["lap"], d["all passes"]),
                ("lap", 0, 3000),
                ("all passes", 100, 9000)
            ),
            new(
                "spread-time",
                d =>
                    FieldPasses
                        .TimeOf(
                            Length.FromFeet(d["path"]),
                            Speed.FromFeetPerSecond(d["speed"]),
                            TimeSpan.FromSeconds(d["turns"]),
                            TimeSpan.FromSeconds(d["refills"])
                        )
                        .TotalSeconds,
                ("path", 5000, 9000),
                ("speed", 1, 2),
                ("turns", 0, 900),
                ("refills", 0, 3600)
            ),
            new(
                "spread-seed-to-take",
                d => SpreaderMath.PoundsOverArea(d["rate"], Area.FromAcres(d["ground covered"]).SquareFeet),
                Rate,
                ("ground covered", 0.05, 20)
            ),
        ];

    /// <summary>The lean of three trays a foot apart, the middle one empty, that have this moment and this sum.</summary>
    private static double Leaning(double moment, double caught) =>
        SwathAdvice
            .For(
                SpreadPattern.FromTrays([(caught - moment) / 2, 0, (caught + moment) / 2], Length.FromFeet(1)),
                DrivingMethod.OneDirection
            )
            .Lean.Feet;

    private static CarrierMix Carried(Draw draw) =>
        CarrierMix.ForParts(PerAcre(draw["seed rate"]), draw["carrier rate"] / draw["seed rate"], Carrier.DrySand);

    private static ApplicationRate PerAcre(double pounds) => ApplicationRate.FromPoundsPerAcre(pounds);
}
