using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Tests.Formulas;

internal static class NutrientsFormulaChecks
{
    internal static FormulaCheck[] Systems =>
        [
            new(
                "nc-index-curve",
                d => SystemMath.FallingParabola(d["index"], d["a"], d["b"], d["c"], SystemMath.FirstZero(d["a"], d["b"], d["c"]), double.PositiveInfinity),
                ("a", 0.001, 0.05),
                ("b", 1, 13),
                ("c", 80, 900),
                ("index", 0, 100)
            ),
            new(
                "sc-piedmont-nitrogen",
                d => SystemMath.Less(d["printed in every cell"], d["cut on Piedmont soil"]),
                ("printed in every cell", 60, 120),
                ("cut on Piedmont soil", 0, 40)
            ),
            new(
                "sc-subsoil-potash",
                d => SystemMath.SouthCarolinaPotash(d["printed cell"], d["share the subsoil holds"]),
                ("printed cell", 0, 300),
                ("share the subsoil holds", 0, 0.5)
            ),
            new("tri-state-1995-phosphate-build-up", PhosphateBuildUp, PhosphateDomain),
            new("tri-state-2020-phosphate-build-up", PhosphateBuildUp, PhosphateDomain),
            new(
                "tri-state-1995-potash-level",
                d => SystemMath.ByExchangeCapacity(d["base"], d["ppm a meq"], d["CEC"]),
                ("base", 50, 100),
                ("ppm a meq", 1, 4),
                ("CEC", 1, 40)
            ),
            new("tri-state-1995-potash-build-up", PotashBuildUp, PotashDomain),
            new("tri-state-2020-potash-build-up", PotashBuildUp, PotashDomain),
            new(
                "tri-state-1995-share-due",
                d => SystemMath.TaperShare(d["test"], d["start of taper"], d["end of taper"]),
                ("test", 25, 60),
                ("start of taper", 20, 35),
                ("end of taper", 45, 70)
            ),
            new(
                "tri-state-1995-phosphate-replacement",
                d => SystemMath.TriState1995Replacement(d["carried off"], 0, d["share still due"]),
                ("carried off", 0, 100),
                ("share still due", 0, 1)
            ),
            new(
                "tri-state-1995-potash-replacement",
                d => SystemMath.TriState1995Replacement(d["carried off"], d["extra"], d["share still due"]),
                ("carried off", 0, 300),
                ("extra", 0, 20),
                ("share still due", 0, 1)
            ),
            new(
                "tri-state-1995-yearly-cap",
                d => SystemMath.YearlyRate(d["build-up"], d["replacement"], d["yearly cap"]),
                ("build-up", 0, 200),
                ("replacement", 0, 300),
                ("yearly cap", 100, 400)
            ),
            new(
                "build-up-and-replacement",
                d => SystemMath.YearlyRate(d["build-up"], d["replacement"], double.PositiveInfinity),
                ("build-up", 0, 200),
                ("replacement", 0, 300)
            ),
            new(
                "tri-state-2020-phosphate-replacement",
                d => SystemMath.TriState2020Replacement(d["test"], d["limit"], d["carried off"], 0),
                ("test", 1, 80),
                ("limit", 30, 60),
                ("carried off", 0, 100)
            ),
            new(
                "tri-state-2020-alfalfa-replacement",
                d => SystemMath.TriState2020Taper(d["test"], d["critical level"], d["limit"], d["carried off"], d["extra"]),
                ("test", 60, 200),
                ("critical level", 100, 120),
                ("limit", 130, 170),
                ("carried off", 0, 300),
                ("extra", 0, 20)
            ),
            new(
                "tri-state-2020-potash-replacement",
                d => SystemMath.TriState2020Replacement(d["test"], d["limit"], d["carried off"], d["extra"]),
                ("test", 20, 300),
                ("limit", 100, 200),
                ("carried off", 0, 300),
                ("extra", 0, 20)
            ),
            new(
                "missouri-potash-target",
                d => SystemMath.ByExchangeCapacity(d["base"], d["pounds a meq"], d["CEC"]),
                ("base", 100, 300),
                ("pounds a meq", 1, 10),
                ("CEC", 1, 40)
            ),
            new(
                "missouri-build-up",
                d => SystemMath.SquareRootBuildUp(d["test"], d["target"], d["factor"], d["years"]),
                ("test", 1, 400),
                ("target", 40, 400),
                ("factor", 50, 120),
                ("years", 4, 8)
            ),
            new(
                "illinois-phosphate-build-up",
                IllinoisBuildUp,
                ("goal", 40, 50),
                ("test", 5, 60),
                ("pounds a pound of test", 5, 12),
                ("years", 2, 8)
            ),
            new(
                "illinois-potash-build-up",
                IllinoisBuildUp,
                ("goal", 260, 300),
                ("test", 100, 400),
                ("pounds a pound of test", 2, 6),
                ("years", 2, 8)
            ),
            new(
                "illinois-replacement",
                d => SystemMath.IllinoisReplacement(d["test"], d["limit"], d["carried off"], d["times removal"]),
                ("test", 5, 100),
                ("limit", 60, 70),
                ("carried off", 0, 100),
                ("times removal", 1, 1.5)
            ),
            new(
                "oklahoma-between-points",
                d =>
                    new PointNeedKernel([(d["index below"], d["rate below"]), (d["index above"], d["rate above"])]).Rate(
                        d["index"],
                        0
                    ),
                ("index", 0, 40),
                ("index below", 0, 15),
                ("index above", 25, 40),
                ("rate below", 20, 200),
                ("rate above", 0, 100)
            ),
            new(
                "kansas-sufficiency",
                d =>
                    SystemMath.LinearAdvice(
                        d["least rate"],
                        d["constant"],
                        d["per yield"],
                        -d["per test"],
                        -d["per yield and test"],
                        d["yield"],
                        d["test"]
                    ),
                ("least rate", 0, 20),
                ("constant", 40, 80),
                ("per yield", 0.1, 0.7),
                ("per test", 0.4, 3),
                ("per yield and test", 0.001, 0.02),
                ("yield", 20, 200),
                ("test", 1, 40)
            ),
            new("south-dakota-yield-goal", YieldGoal, YieldGoalDomain),
            new("north-dakota-yield-goal", YieldGoal, YieldGoalDomain),
            new(
                "nebraska-older-rate",
                d => SystemMath.LinearAdvice(0, d["constant"], 0, -d["per test"], 0, 0, d["test"]),
                ("constant", 100, 1000),
                ("per test", 4, 8),
                ("test", 1, 150)
            ),
            new(
                "montana-pounds-a-ton",
                d => SystemMath.ByYield(d["pounds a ton"], d["tons an acre"]),
                ("pounds a ton", 1, 10),
                ("tons an acre", 1, 8)
            ),
            new(
                "system-removal",
                d => SystemMath.ByYield(d["removal per unit"], d["yield"]),
                ("removal per unit", 0.1, 50),
                ("yield", 1, 250)
            ),
            new(
                "metric-legal-maximum",
                d => ApplicationRate.FromKilogramsPerHectare(d["kg/ha"]).PoundsPerAcre,
                ("kg/ha", 0, 120)
            ),
            new("system-disagreement", d => SystemMath.Less(d["most"], d["least"]), ("most", 80, 200), ("least", 0, 80)),
            new("nc-manganese-index-a", NorthCarolinaManganese, ManganeseDomain),
            new("nc-manganese-index-b", NorthCarolinaManganese, ManganeseDomain),
            new(
                "nj-manganese-index",
                d => SystemMath.ManganeseIndex(d["constant"], d["per ppm"], d["Mn in ppm"], d["per pH"], d["pH"]),
                ("constant", 90, 120),
                ("per ppm", 1, 5),
                ("Mn in ppm", 0, 60),
                ("per pH", 10, 20),
                ("pH", 4, 9)
            ),
        ];

    internal static FormulaCheck[] Needs =>
        [
            new(
                "nitrogen-by-yield",
                d => SystemMath.ByYield(d["pounds a unit"], d["yield"]),
                ("pounds a unit", 0.5, 30),
                ("yield", 1, 200)
            ),
            new(
                "nitrogen-between-yields",
                d => Interpolation.Between([(d["yield below"], d["N below"]), (d["yield above"], d["N above"])], d["yield"]),
                ("N below", 10, 80),
                ("N above", 80, 200),
                ("yield", 15, 100),
                ("yield below", 10, 40),
                ("yield above", 60, 120)
            ),
            new(
                "nitrogen-less-reduction",
                d => NitrogenMath.AfterCredit(d["nitrogen"], d["taken off"]),
                ("nitrogen", 0, 120),
                ("taken off", 0, 60)
            ),
            new(
                "nitrogen-by-share",
                d => NitrogenMath.ByShare(d["N alone"], d["share of a full stand"], d["share of a full stand"]),
                ("N alone", 0, 120),
                ("share of a full stand", 0, 1)
            ),
            new(
                "nitrogen-by-crowded-share",
                d => NitrogenMath.ByShare(d["N alone"], d["share of a full stand"], d["shares together"]),
                ("N alone", 0, 120),
                ("share of a full stand", 0, 1.5),
                ("shares together", 0.5, 3)
            ),
            new(
                "nitrogen-of-mixture",
                d => NitrogenMath.OfMixture(d["N of the mixture"], d["share of a full stand"], d["shares without legumes"], d["all shares"]),
                ("N of the mixture", 0, 40),
                ("share of a full stand", 0, 1),
                ("shares without legumes", 0.2, 1.5),
                ("all shares", 0.2, 2)
            ),
            new(
                "need-by-share",
                d => NitrogenMath.MeanByShare(d["sum of need x share"], d["sum of shares"]),
                ("sum of need x share", 0, 300),
                ("sum of shares", 0.1, 3)
            ),
            new(
                "nitrogen-after-credit",
                d => NitrogenMath.AfterCredit(d["sum of the shares"], d["legume credit"]),
                ("sum of the shares", 0, 120),
                ("legume credit", 0, 190)
            ),
            new(
                "crop-removal",
                d => RemovalMath.PoundsPerAcre(d["yield"], d["pounds a unit"], d["part carried off"], d["share kept"]),
                ("yield", 1, 200),
                ("pounds a unit", 0.1, 60),
                ("part carried off", 0, 1),
                ("share kept", 0, 1)
            ),
            new(
                "kansas-zinc",
                d => SecondaryMath.KansasZinc(d["constant"], -d["pounds a ppm"], d["test"]),
                ("constant", 8, 15),
                ("pounds a ppm", 8, 15),
                ("test", 0, 1.5)
            ),
            new(
                "tri-state-zinc-manganese",
                d => SecondaryMath.TriStateTrace(-d["constant"], -d["pounds a ppm"], d["test"], d["pounds a pH unit"], d["pH"]),
                ("constant", 30, 40),
                ("pounds a ppm", 0.2, 0.6),
                ("test", 0, 30),
                ("pounds a pH unit", 4, 7),
                ("pH", 4.5, 8)
            ),
        ];

    private static (string, double, double)[] PhosphateDomain =>
        [("critical level", 10, 40), ("test", 1, 60), ("pounds a ppm", 2, 8)];

    private static (string, double, double)[] PotashDomain =>
        [("critical level", 80, 180), ("test", 20, 250), ("base", 0.5, 2), ("pounds a meq", 0.01, 0.1), ("CEC", 1, 40)];

    private static (string, double, double)[] YieldGoalDomain =>
        [("per yield", 0.6, 20), ("per yield and test", 0.01, 1.2), ("yield", 2, 200), ("test", 1, 40)];

    private static (string, double, double)[] ManganeseDomain =>
        [("constant", 90, 120), ("per index", 0.3, 1), ("Mn index", 0, 200), ("per pH", 10, 20), ("pH", 4, 9)];

    private static double PhosphateBuildUp(Draw d) => SystemMath.LinearBuildUp(d["test"], d["critical level"], d["pounds a ppm"]);

    private static double PotashBuildUp(Draw d) =>
        SystemMath.TriStatePotashBuildUp(d["test"], d["critical level"], d["base"], d["pounds a meq"], d["CEC"]);

    private static double IllinoisBuildUp(Draw d) =>
        SystemMath.IllinoisBuildUp(d["test"], d["goal"], d["pounds a pound of test"], d["years"]);

    private static double YieldGoal(Draw d) =>
        SystemMath.LinearAdvice(0, 0, d["per yield"], 0, -d["per yield and test"], d["yield"], d["test"]);

    private static double NorthCarolinaManganese(Draw d) =>
        SystemMath.ManganeseIndex(d["constant"], d["per index"], d["Mn index"], d["per pH"], d["pH"]);
}
