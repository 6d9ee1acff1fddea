using PlotAgronomy.Liming;

namespace PlotAgronomy.Tests.Formulas;

internal static class LimingOrderFormulaChecks
{
    internal static FormulaCheck[] All =>
        [
            new(
                "lime-applied-in-material",
                d => LimeSums.InOtherLime(d["in the lime of the rate"], d["material for that lime"]),
                ("in the lime of the rate", 0, 4000),
                ("material for that lime", 0.4, 2)
            ),
            new("lime-for-area", d => LimeSums.ForArea(d["rate"], d["area"], 0), ("rate", 0, 8000), ("area", 0.1, 10)),
            new(
                "lime-for-area-less-applied",
                d => LimeSums.ForArea(d["rate"], d["area"], d["already applied"]),
                ("rate", 0, 8000),
                ("area", 0.1, 10),
                ("already applied", 0, 20_000)
            ),
            new(
                "lime-cost-of-effect",
                d => (double)LimeSums.CostOfEffect((decimal)(d["price per ton"] / 2000), d["figure"] / d["whole of the index"]),
                ("price per ton", 10, 400),
                ("figure", 500, 2000),
                ("whole of the index", 1500, 2500)
            ),
        ];
}
