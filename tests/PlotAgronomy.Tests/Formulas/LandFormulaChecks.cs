using PlotAgronomy.Land;

namespace PlotAgronomy.Tests.Formulas;

internal static class LandFormulaChecks
{
    private static readonly (string Place, double Low, double High) Pi = ("pi", Math.PI, Math.PI);

    internal static FormulaCheck[] All =>
        [
            new(
                "area-of-rectangle",
                d => LandMath.RectangleSquareFeet(d["length"], d["width"]),
                ("length", 10, 900),
                ("width", 10, 900)
            ),
            new(
                "area-of-triangle",
                d => LandMath.TriangleSquareFeet(d["base"], d["height"]),
                ("base", 10, 900),
                ("height", 10, 900)
            ),
            new(
                "area-of-three-sides",
                d => LandMath.TriangleSquareFeet(d["first"], d["second"], d["third"]),
                ("first", 110, 200),
                ("second", 110, 200),
                ("third", 110, 200)
            ),
            new(
                "area-of-l-shape",
                d => LandMath.LShapeSquareFeet(d["length"], d["width"], d["missing length"], d["missing width"]),
                ("length", 200, 900),
                ("width", 200, 900),
                ("missing length", 10, 190),
                ("missing width", 10, 190)
            ),
            new(
                "area-of-pieces",
                d => LandMath.PiecesSquareFeet(d["added"], d["taken off"]),
                ("added", 10_000, 40_000),
                ("taken off", 0, 9_000)
            ),
            new(
                "area-of-trapezoid",
                d => LandMath.TrapezoidSquareFeet(d["a"], d["b"], d["distance"]),
                ("a", 10, 900),
                ("b", 10, 900),
                ("distance", 10, 900)
            ),
            new("area-of-circle", d => LandMath.EllipseSquareFeet(d["radius"], d["radius"]), Pi, ("radius", 10, 400)),
            new(
                "area-of-ellipse",
                d => LandMath.EllipseSquareFeet(d["long half"], d["short half"]),
                Pi,
                ("long half", 10, 400),
                ("short half", 10, 400)
            ),
            new(
                "area-of-straight-edges",
                d => LandMath.StraightEdgedStripSquareFeet(d["spacing"], [d["end widths"], d["other widths"], 0]),
                ("spacing", 5, 100),
                ("end widths", 0, 300),
                ("other widths", 0, 2_000)
            ),
            new(
                "area-of-smooth-edges",
                d =>
                    LandMath.SmoothEdgedStripSquareFeet(
                        d["spacing"],
                        [0, d["every second width"], d["widths between"], 0, d["end widths"]]
                    ),
                ("spacing", 5, 100),
                ("end widths", 0, 300),
                ("every second width", 0, 2_000),
                ("widths between", 0, 2_000)
            ),
            new(
                "triangle-of-outline",
                d =>
                    LandMath.SignedSquareFeet([
                        new(0, 0),
                        new(d["east of the second"], d["north of the second"]),
                        new(d["east of the third"], d["north of the third"]),
                    ]),
                ("east of the second", -500, 500),
                ("north of the second", -500, 500),
                ("east of the third", -500, 500),
                ("north of the third", -500, 500)
            ),
            new(
                "area-on-slope",
                d => LandMath.GroundArea(d["map area"], Slope.FromPercent(d["slope in percent"]).RisePerRun),
                ("map area", 0.1, 20),
                ("slope in percent", 0, 60)
            ),
            new("area-low", d => LandMath.LowArea(d["area"], d["error"]), ("area", 0.1, 20), ("error", 0, 1.5)),
            new("area-high", d => LandMath.HighArea(d["area"], d["error"]), ("area", 0.1, 20), ("error", 0, 1.5)),
            new(
                "unsown-strip",
                d => LandMath.StripSquareFeet(d["plot"], d["inside"]),
                ("plot", 20_000, 90_000),
                ("inside", 0, 20_000)
            ),
            new(
                "step-length",
                d => LandMath.StepFeet(d["course"], d["mean count"]),
                ("course", 100, 500),
                ("mean count", 40, 250)
            ),
            new(
                "step-error",
                d => LandMath.StepError(d["scatter of a walk"], d["walks"]),
                ("scatter of a walk", 0.001, 0.05),
                ("walks", 1, 10)
            ),
            new("paced-length", d => LandMath.PacedFeet(d["steps"], d["step"]), ("steps", 10, 900), ("step", 1.5, 4)),
        ];
}
