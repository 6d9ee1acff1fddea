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

    internal static FormulaCheck[] Rates =>
        [
            new(
                "spread-test-run",
                d =>
                    MeasuredRate
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
                        MeasuredRate.CourseAreaOf(Length.FromFeet(d["distance"]), Length.FromFeet(d["swath"])).SquareFeet
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
            new("spread-ground-covered", d => SpreaderMath.AcresCovered(d["plot"], d["part beside it"]), ("plot", 0.05, 5), ("part beside it", 0, 0.5)),
            new("spread-left-half-way", d => SpreaderMath.PoundsLeft(d["load"], d["part sown"]), ("load", 1, 100), ("part sown", 0.1, 0.9)),
            new(
                "spread-time-from-half-way",
                d => SpreaderMath.SecondsForTheRest(d["time for 100 ft"], d["rate needed"], d["rate so far"]),
                ("time for 100 ft", 10, 90),
                ("rate needed", 1, 100),
                ("rate so far", 1, 100)
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
}
