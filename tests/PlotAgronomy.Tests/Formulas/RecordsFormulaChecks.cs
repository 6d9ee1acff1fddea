using PlotAgronomy.Records;

namespace PlotAgronomy.Tests.Formulas;

internal static class RecordsFormulaChecks
{
    internal static FormulaCheck[] Spread =>
        [
            new("record-load-weight", d => RecordMath.LoadWeight(d["bags"], d["bag"]), ("bags", 0.5, 60), ("bag", 20, 60)),
            new("record-put-down", d => RecordMath.PutDown(d["weight"], d["area"]), ("weight", 10, 4000), ("area", 0.1, 5)),
            new("record-nutrient-brought", d => RecordMath.Brought(d["weight"], d["percent"], d["area"]), ("weight", 10, 400), ("percent", 1, 60), ("area", 0.1, 5)),
        ];

    internal static FormulaCheck[] Trends =>
        [
            new("record-trend-slope", d => RankCorrelation.Slope(d["earlier"], d["later"], 0, d["years"]), ("earlier", 4, 90), ("later", 4, 90), ("years", 0.5, 20)),
            new("record-trend-variance", d => RankCorrelation.Variance(d["readings"], d["ties"]), ("readings", 11, 40), ("ties", 0, 100)),
            new("record-least-real-change", d => RecordMath.LeastRealChange(d["z"], d["noise"]), ("z", 1, 3), ("noise", 0.05, 12)),
            new(
                "record-ph-promised",
                d => RecordMath.PromisedPh(d["pH"], d["target"], d["share at work"], d["noise"]),
                ("pH", 4.5, 7.5),
                ("target", 5.5, 7),
                ("share at work", 0, 1.3),
                ("noise", -0.3, 0.3)
            ),
        ];

    internal static FormulaCheck[] Stands =>
        [
            new("record-plants", d => RecordMath.PerSquareFoot(d["plants"], d["hoops"], d["hoop"]), ("plants", 0, 300), ("hoops", 1, 20), ("hoop", 0.25, 10)),
            new(
                "record-live-seeds",
                d => RecordMath.LivePerSquareFoot(d["living"], d["seeds a lb"], d["area"]),
                ("living", 1, 100),
                ("seeds a lb", 1000, 900_000),
                ("area", 0.1, 5),
                ("43,560", 43_560, 43_560)
            ),
            new("record-emerged", d => RecordMath.Emerged(d["plants"], d["seeds"]), ("plants", 0, 50), ("seeds", 1, 80)),
        ];

    internal static FormulaCheck[] Use =>
        [
            new(
                "record-cage-yield",
                d => RecordMath.YieldPoundsPerAcre(d["dry"], d["clipped"]),
                ("dry", 1, 500),
                ("clipped", 1, 100),
                ("43,560", 43_560, 43_560),
                ("grams in a lb", 453.59237, 453.59237)
            ),
            new("record-cage-use", d => RecordMath.UsePercent(d["inside"], d["outside"]), ("inside", 1, 300), ("outside", 0, 350)),
            new("record-browse", Browsed, [.. Enumerable.Range(0, 6).SelectMany(i => new[] { ($"plants {i}", 1.0, 1.0), ($"use {i}", 0.0, 100.0) }), ("plants", 6, 6)]),
            new("record-pictures", d => RecordMath.PerDay(d["pictures"], d["days"]), ("pictures", 0, 900), ("days", 1, 60)),
        ];

    internal static FormulaCheck[] Ranking =>
        [
            new("record-shrink-weight", d => RecordMath.ShrinkWeight(d["between"], d["within"], d["count"]), ("between", 0.001, 0.1), ("within", 0.01, 0.1), ("count", 1, 20)),
            new("record-shrunk", d => RecordMath.Shrunk(d["mean of all"], d["weight"], d["own mean"]), ("mean of all", 0, 1), ("weight", 0, 1), ("own mean", 0, 1)),
            new("record-more-to-tell", d => RecordMath.ObservationsToTell(d["z"], d["own mean"], d["mean of all"], d["within"]), ("z", 1.96, 1.96), ("own mean", 0.5, 1), ("mean of all", 0, 0.45), ("within", 0.01, 0.1)),
            new("record-rate-factor", d => RecordMath.RateFactor(d["usual"], d["own"], d["most"]), ("usual", 0.5, 0.7), ("own", 0.1, 1), ("most", 1.5, 1.5)),
        ];

    private static double Browsed(Draw d) =>
        RecordMath.BrowsedPercent([.. Enumerable.Range(0, 6).Select(i => d[$"plants {i}"])], [.. Enumerable.Range(0, 6).Select(i => d[$"use {i}"])]);
}
