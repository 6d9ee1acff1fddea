using PlotAgronomy.Spreading;
using UnitsNet;

namespace PlotAgronomy.Tests.Formulas;

internal static class SpreadingPatternFormulaChecks
{
    private static readonly (string, double, double) Rate = ("rate", 2, 200);
    private static readonly (string, double, double) Swath = ("swath", 4, 60);

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
                d => SpreaderMath.PathFeet(d["lap"], d["all passes"], d["walk between"]),
                ("lap", 0, 3000),
                ("all passes", 100, 9000),
                ("walk between", 0, 900)
            ),
            new(
                "spread-other-way",
                d => SpreaderMath.PoundsThrown(d["rate"], d["length of the passes"], d["spacing"], d["lap and corners"]),
                Rate,
                ("length of the passes", 100, 9000),
                ("spacing", 4, 60),
                ("lap and corners", 0, 20000),
                ("43,560", ExactUnits.SquareFeetPerAcre, ExactUnits.SquareFeetPerAcre)
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
}
