using PlotAgronomy.Liming;

namespace PlotAgronomy.Tests.Formulas;

internal static class LimingRateFormulaChecks
{
    internal static FormulaCheck[] All =>
        [
            new(
                "nc-lime-credit",
                d => LimeMath.ResidualTonsPerAcre(d["earlier lime"], d["months"], d["loss a month"]),
                ("earlier lime", 0, 4),
                ("months", 0, 16),
                ("loss a month", 0.05, 0.2)
            ),
            new(
                "lime-less-credit",
                d => LimeSums.LessCredit(d["base rate"], d["earlier lime still to work"]),
                ("base rate", 0, 4),
                ("earlier lime still to work", 0, 3)
            ),
            new(
                "lime-on-common-basis",
                d =>
                    LimeSums.InOtherLime(
                        LimeSums.AtDepth(d["its rate"], d["common depth"], d["its depth"]),
                        d["common lime for its lime"]
                    ),
                ("its rate", 0, 5),
                ("common depth", 2, 8),
                ("its depth", 5, 9),
                ("common lime for its lime", 0.4, 2)
            ),
            new("lime-spread", d => LimeSums.Apart(d["most"], d["least"]), ("most", 3, 8), ("least", 0, 3)),
            new(
                "weak-lime-rule",
                d => LimeSums.WeakRule(d["target"], d["pH"], d["pH for a ton"]),
                ("target", 5.5, 7),
                ("pH", 4.5, 6.5),
                ("pH for a ton", 0.3, 0.4)
            ),
            new(
                "weak-lime-most",
                d => LimeSums.WeakMost(d["most at once"], d["higher figure of the rule"], d["by CEC"]),
                ("most at once", 1, 3),
                ("higher figure of the rule", 0, 4),
                ("by CEC", 0, 4)
            ),
            new(
                "weak-lime-least",
                d => LimeSums.Smallest(d["upper end"], d["lower figure of the rule"], d["other figure"]),
                ("upper end", 0, 2),
                ("lower figure of the rule", 0, 3),
                ("other figure", 0, 3)
            ),
            new(
                "weak-lime-first",
                d => LimeSums.FirstDressing(d["first dressing"], d["upper end"]),
                ("first dressing", 0.5, 1.5),
                ("upper end", 0, 2)
            ),
            new(
                "fine-lime",
                d => LimeSums.FineLime(d["rate"], d["fine lime"], d["ordinary lime"]),
                ("rate", 10, 200),
                ("fine lime", 55, 70),
                ("ordinary lime", 80, 100)
            ),
            new(
                "lime-strength-factor",
                d => LimeSums.StrengthFactor(d["strength of its lime"], d["strength of the other"]),
                ("strength of its lime", 50, 100),
                ("strength of the other", 30, 110)
            ),
            new(
                "lime-factor-through",
                d =>
                    LimeSums.FactorThrough(
                        d["old lime"],
                        d["material in the old index"],
                        d["material in the new index"],
                        d["new lime"]
                    ),
                ("old lime", 50, 100),
                ("material in the old index", 40, 100),
                ("material in the new index", 500, 2000),
                ("new lime", 600, 2000)
            ),
            new("lime-in-other-lime", d => LimeSums.InOtherLime(d["rate"], d["factor"]), ("rate", 0, 5), ("factor", 0.3, 3)),
            new(
                "lime-at-depth",
                d => LimeSums.AtDepth(d["rate"], d["depth worked"], d["depth of the rate"]),
                ("rate", 0, 5),
                ("depth worked", 2, 8),
                ("depth of the rate", 5, 9)
            ),
        ];
}
