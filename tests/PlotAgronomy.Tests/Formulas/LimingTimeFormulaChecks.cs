using PlotAgronomy.Liming;

namespace PlotAgronomy.Tests.Formulas;

internal static class LimingTimeFormulaChecks
{
    internal static FormulaCheck[] All =>
        [
            new("lime-trigger", d => LimeTimes.Trigger(d["target"], d["margin"]), ("target", 5, 7), ("margin", 0, 0.5)),
            new(
                "lime-on-the-plot",
                d => LimeTimes.PoundsPerAcreOnPlot(d["applied"], d["planned"], d["area"]),
                ("applied", 0, 5000),
                ("planned", 0, 5000),
                ("area", 0.1, 10)
            ),
            new("lime-still-owed", d => LimeTimes.StillOwed(d["need"], d["applied"]), ("need", 0, 5000), ("applied", 0, 5000)),
            new(
                "lime-above-need",
                d => LimeTimes.AboveNeedPercent(d["need"], d["applied"], d["planned"]),
                ("need", 100, 5000),
                ("applied", 0, 5000),
                ("planned", 0, 5000)
            ),
            new(
                "lime-band-worked",
                d => LimeTimes.BandWorked(d["share in the band"], d["share that works"], d["months"], d["months to that share"]),
                ("share in the band", 0, 1),
                ("share that works", 0.2, 1),
                ("months", 0, 24),
                ("months to that share", 2, 12)
            ),
            new(
                "lime-worked-unknown-fineness",
                d => LimeTimes.WorkedOfUnknownFineness(d["months"], d["months to full effect"]),
                ("months", 0, 24),
                ("months to full effect", 6, 12)
            ),
            new(
                "lime-expected-ph",
                d => LimeTimes.ExpectedPh(d["pH"], d["target"], d["share delivered"], d["share worked"], d["error of a reading"]),
                ("pH", 4.5, 7),
                ("target", 5.5, 7),
                ("share delivered", 0, 1),
                ("share worked", 0, 1),
                ("error of a reading", -0.1, 0.1)
            ),
            new(
                "nitrogen-acidity",
                d => LimeTimes.CarbonateForAcid(d["nitrogen"], d["carbonate for a pound of nitrogen"]),
                ("nitrogen", 0, 200),
                ("carbonate for a pound of nitrogen", -2, 7.2)
            ),
            new(
                "nitrogen-acidity-all",
                d =>
                    LimeTimes.CarbonatePerNitrogen(
                        d["hydrogen ions per nitrogen"],
                        d["mass of carbonate"],
                        d["mass of nitrogen"]
                    ),
                ("hydrogen ions per nitrogen", 1, 2),
                ("mass of carbonate", 99, 101),
                ("mass of nitrogen", 13, 15)
            ),
            new(
                "sulfur-by-ph",
                d => LimeTimes.SulfurByPh(d["rate for a pH unit"], d["pH"], d["target"]),
                ("rate for a pH unit", 5, 25),
                ("pH", 6.5, 8),
                ("target", 4.5, 6.5)
            ),
        ];
}
