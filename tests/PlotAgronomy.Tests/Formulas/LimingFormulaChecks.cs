using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Tests.Formulas;

internal static class LimingFormulaChecks
{
    internal static FormulaCheck[] Rates =>
        [
            new(
                "nc-lime-acidity",
                d => LimeMath.NorthCarolinaAcidity(d["buffer pH"], d["end pH"], d["acidity per pH"]),
                ("buffer pH", 4, 6.6),
                ("end pH", 6, 7),
                ("acidity per pH", 2, 6)
            ),
            new(
                "nc-lime-rate",
                d => LimeMath.NorthCarolinaTonsPerAcre(d["Ac"], d["pH"], d["target"], d["end pH"]),
                ("Ac", 0.1, 6),
                ("pH", 4, 6),
                ("target", 5, 6.5),
                ("end pH", 6.5, 6.9)
            ),
            new(
                "tri-state-lime-rate",
                d => LimeMath.Linear(d["constant"], -d["fall per index point"], 0, 0, d["lime test index"], 0),
                ("constant", 40, 80),
                ("fall per index point", 0.5, 1.2),
                ("lime test index", 48, 68)
            ),
            new(
                "tri-state-organic-lime-rate",
                d => LimeMath.Linear(d["constant"], -d["fall per pH"], 0, 0, d["pH"], 0),
                ("constant", 20, 40),
                ("fall per pH", 4, 8),
                ("pH", 4, 5.3)
            ),
            new(
                "iowa-lime-rate",
                d => LimeMath.Linear(d["constant"], -d["fall per buffer pH"], 0, 0, d["buffer pH"], 0),
                ("constant", 30_000, 60_000),
                ("fall per buffer pH", 4000, 9000),
                ("buffer pH", 5.8, 7)
            ),
            new(
                "wisconsin-lime-rate",
                d => LimeMath.Linear(d["constant"], -d["fall per buffer pH"], 0, -d["fall per pH"], d["buffer pH"], d["pH"]),
                ("constant", 30, 160),
                ("fall per buffer pH", 3, 21),
                ("buffer pH", 4.8, 7),
                ("fall per pH", 2, 4),
                ("pH", 4, 7)
            ),
            new(
                "wisconsin-lime-rate-6-8",
                d => LimeMath.Linear(d["constant"], -d["fall per buffer pH"], 0, d["rise per pH"], d["buffer pH"], d["pH"]),
                ("constant", 150, 200),
                ("fall per buffer pH", 20, 30),
                ("buffer pH", 4.8, 7),
                ("rise per pH", 0.1, 0.2),
                ("pH", 4, 7)
            ),
            new(
                "kansas-lime-rate",
                d =>
                    LimeMath.Linear(
                        d["constant"],
                        -d["fall per buffer pH"],
                        d["rise per buffer pH squared"],
                        0,
                        d["buffer pH"],
                        0
                    ),
                ("constant", 100_000, 200_000),
                ("fall per buffer pH", 30_000, 40_000),
                ("rise per buffer pH squared", 2000, 3000),
                ("buffer pH", 4.8, 7)
            ),
            new(
                "nebraska-lime-rate",
                d => LimeMath.Linear(d["constant"], -d["fall per buffer pH"], 0, 0, d["buffer pH"], 0),
                ("constant", 70_000, 84_000),
                ("fall per buffer pH", 10_000, 12_000),
                ("buffer pH", 4.8, 7)
            ),
            new(
                "lime-between-rows",
                d =>
                    Interpolation.Line(
                        d["row below"],
                        d["rate of the row below"],
                        d["row above"],
                        d["rate of the row above"],
                        d["reading"]
                    ),
                ("row below", 5, 5.5),
                ("row above", 5.6, 6),
                ("rate of the row below", 3, 6),
                ("rate of the row above", 1, 3),
                ("reading", 5, 6)
            ),
            new(
                "pennsylvania-lime-rate-high",
                d => LimeMath.PennsylvaniaHighPoundsPerAcre(d["acidity"], d["lb per meq"]),
                ("acidity", 0, 30),
                ("lb per meq", 800, 1200)
            ),
            new(
                "pennsylvania-lime-rate-field",
                d => LimeMath.PennsylvaniaFieldPoundsPerAcre(d["acidity"], d["lb per meq"], 4, 2000),
                ("acidity", 2, 30),
                ("lb per meq", 800, 1200)
            ),
            new(
                "pennsylvania-lime-rate-least",
                d => LimeMath.PennsylvaniaFieldPoundsPerAcre(d["acidity"], d["lb per meq"], d["limit"], d["least rate"]),
                ("acidity", 0, 6),
                ("lb per meq", 800, 1200),
                ("limit", 3, 5),
                ("least rate", 1000, 3000)
            ),
        ];

    internal static FormulaCheck[] Chemistry =>
        [
            new(
                "adams-evans-acidity",
                d => LimeMath.AdamsEvansAcidity(d["buffer pH"], d["start pH"], d["acidity per pH"]),
                ("buffer pH", 6, 8),
                ("start pH", 7.9, 8.1),
                ("acidity per pH", 6, 10)
            ),
            new(
                "adams-evans-acid-share",
                d => LimeMath.AdamsEvansAcidShare(d["pH"], d["constant"], d["linear"], d["square"]),
                ("pH", 4.6, 7.5),
                ("constant", 7.6, 7.8),
                ("linear", 5.5, 5.7),
                ("square", 2.1, 2.3)
            ),
            new(
                "adams-evans-cec",
                d => LimeMath.AdamsEvansCapacity(d["H"], d["acid share now"]),
                ("H", 0.5, 8),
                ("acid share now", 0.1, 1)
            ),
            new(
                "adams-evans-lime-rate",
                d =>
                    LimeMath.AdamsEvansTonsPerAcre(
                        d["CEC"],
                        d["acid share now"],
                        d["acid share at the target"],
                        d["ag lime per meq"]
                    ),
                ("CEC", 1, 13),
                ("acid share now", 0.3, 1),
                ("acid share at the target", 0, 0.4),
                ("ag lime per meq", 0.5, 1)
            ),
            new(
                "missouri-enm-per-meq",
                d =>
                    LimeMath.MissouriEnmPerMeq(
                        d["carbonate per meq"],
                        d["million lb of soil an inch"],
                        d["depth"],
                        d["ENM of a ton of carbonate"]
                    ),
                ("carbonate per meq", 49, 51),
                ("million lb of soil an inch", 0.2, 0.4),
                ("depth", 4, 9),
                ("ENM of a ton of carbonate", 700, 900),
                ("lb in a ton", 2000, 2000)
            ),
            new(
                "missouri-lime-rate",
                d => LimeMath.MissouriPoundsPerAcre(d["neutralizable acidity"], d["ENM for each meq"]),
                ("neutralizable acidity", 0, 30),
                ("ENM for each meq", 300, 500)
            ),
            new(
                "georgia-equilibrium-capacity",
                d => LimeBufferCapacity.EquilibriumOf(d["reading after 30 minutes"], d["constant"], d["slope"]),
                ("reading after 30 minutes", 50, 600),
                ("constant", 1, 2),
                ("slope", 0.001, 0.004)
            ),
            new(
                "georgia-soil",
                d => LimeMath.SoilMillionPounds(d["million lb of soil an inch"], d["depth"]),
                ("million lb of soil an inch", 0.2, 0.4),
                ("depth", 2, 10)
            ),
            new(
                "georgia-lime-rate",
                d => LimeMath.GeorgiaPoundsPerAcre(d["lime buffer capacity"], d["pH"], d["target"], d["million lb of soil"]),
                ("lime buffer capacity", 50, 900),
                ("pH", 4, 6),
                ("target", 5.5, 6.5),
                ("million lb of soil", 1, 3)
            ),
        ];
}
