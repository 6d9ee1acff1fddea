using PlotAgronomy.Liming;

namespace PlotAgronomy.Tests.Formulas;

internal static class LimingMaterialFormulaChecks
{
    internal static FormulaCheck[] All =>
        [
            new(
                "lime-fineness-band",
                d => LimeStrength.FinenessOfBand(d["factor"], d["share passing"], d["share passing the finer sieve"]),
                ("factor", 0.1, 1),
                ("share passing", 0.5, 1),
                ("share passing the finer sieve", 0, 0.5)
            ),
            new(
                "lime-figure",
                d =>
                    LimeStrength.Figure(
                        d["calcium carbonate equivalent"],
                        d["fineness"],
                        d["dry matter"],
                        d["whole of the index"]
                    ),
                ("calcium carbonate equivalent", 30, 180),
                ("fineness", 0.2, 1),
                ("dry matter", 0.8, 1),
                ("whole of the index", 100, 2000)
            ),
            new(
                "nc-label-figure",
                d => LimeStrength.NorthCarolinaLabelPercent(d["lb equal to a ton of standard lime"]),
                ("lb equal to a ton of standard lime", 1000, 4000),
                ("lb in a ton", 2000, 2000)
            ),
            new(
                "lime-magnesium",
                d => LimeStrength.Magnesium(d["material"], d["share of magnesium"]),
                ("material", 0, 5000),
                ("share of magnesium", 0, 0.13)
            ),
        ];
}
