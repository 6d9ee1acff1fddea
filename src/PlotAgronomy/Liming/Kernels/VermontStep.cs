using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>One cell of Vermont's table.</summary>
internal sealed record VermontStep(
    double PhFrom,
    double PhBelow,
    double AluminumAbove,
    double AluminumTo,
    double PoundsPerAcre,
    Origin Origin
)
{
    internal bool Holds(double printedPh, double aluminumPpm) =>
        printedPh >= PhFrom
        && printedPh < PhBelow
        && aluminumPpm <= AluminumTo
        && (aluminumPpm > AluminumAbove || AluminumAbove == 0);

    internal static VermontStep FromRow(CsvRow row) =>
        new(
            row.NumberOrNull("ph_low") ?? 0,
            row.NumberOrNull("ph_high") ?? double.PositiveInfinity,
            row.Number("aluminum_low_ppm"),
            row.NumberOrNull("aluminum_high_ppm") ?? double.PositiveInfinity,
            row.Number("rate_ton_per_ac") * ExactUnits.PoundsPerShortTon,
            row.Origin()
        );
}
