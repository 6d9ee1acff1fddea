using PlotAgronomy.Seeds;

namespace PlotAgronomy.Tests.Formulas;

internal static class SeedsFormulaChecks
{
    internal static FormulaCheck[] All =>
    [
        new("pure-live-seed", d => SeedMath.PureLiveFraction(d["pure seed"], d["viable seed"]), ("pure seed", 0.5, 1), ("viable seed", 0.3, 1)),
        new("bulk-rate", d => SeedMath.BulkPoundsPerAcre(d["PLS rate"], d["pure live seed"]), ("PLS rate", 1, 200), ("pure live seed", 0.2, 1)),
    ];
}
