using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Liming;

/// <summary>A published equation: constant + a x reading + b x reading squared + c x water pH, one set of coefficients a
/// target.</summary>
internal sealed class LimeLinearFormula : LimeFormula
{
    private static readonly Lazy<ILookup<string, CsvRow>> Equations = new(() =>
        CsvTable
            .Embedded(
                "Liming/Data/linear.csv",
                "method_id",
                "target_ph",
                "reading",
                "constant",
                "per_reading",
                "per_reading_squared",
                "per_water_ph",
                "unit",
                "source_id",
                "locator",
                "status"
            )
            .Rows.ToLookup(r => r.Text("method_id"), StringComparer.Ordinal)
    );

    private readonly ImmutableArray<SoilBuffer> buffers;
    private readonly ImmutableSortedDictionary<double, Equation> equations;
    private readonly string reading;

    internal LimeLinearFormula(CsvRow method)
    {
        buffers = LimeReadings.Buffers(method);
        var rows = Equations.Value[method.Text("id")].ToList();
        reading = rows[0].Text("reading");
        equations = rows.ToImmutableSortedDictionary(
            r => r.Number("target_ph"),
            r => new Equation(
                r.Number("constant"),
                r.Number("per_reading"),
                r.Number("per_reading_squared"),
                r.Number("per_water_ph"),
                LimeUnits.PerUnit(r),
                r.Text("unit"),
                r.SourceId()
            )
        );
    }

    internal override ImmutableArray<double> Targets => [.. equations.Keys];

    internal override string Reads => reading == "water-ph" ? "water pH" : $"{LimeReadings.InWords(buffers)} buffer pH";

    internal override bool ReadsPh => true;

    internal override bool NeedsWaterPh => reading == "water-ph" || equations.Values.Any(e => e.PerWaterPh != 0);

    internal override double? ReadingOf(LimeSample sample) =>
        reading == "water-ph" ? sample.WaterPh : LimeReadings.BufferPh(sample, buffers);

    internal override double? PoundsPerAcre(double reading, LimeSample sample, double targetPh)
    {
        var e = equations[targetPh];
        return LimeMath.Linear(e.Constant, e.PerReading, e.PerReadingSquared, e.PerWaterPh, Scaled(reading), sample.WaterPh ?? 0)
            * e.PoundsPerUnit;
    }

    internal override IEnumerable<WorkedLine> Work(double reading, LimeSample sample, double targetPh)
    {
        var e = equations[targetPh];
        string x =
            this.reading == "lime-test-index" ? "LTI"
            : this.reading == "water-ph" ? "pH"
            : "B";
        string number = Amounts.Print(Scaled(reading), 2);
        double raw = PoundsPerAcre(reading, sample, targetPh)!.Value / e.PoundsPerUnit;
        yield return new(
            "Base rate",
            $"{Amounts.Print(e.Constant, 3)}{Term(e.PerReading, x)}{Term(e.PerReadingSquared, x + "2")}{Term(e.PerWaterPh, "W")}",
            $"{Amounts.Print(e.Constant, 3)}{Term(e.PerReading, number)}{Term(e.PerReadingSquared, number + "2")}{Term(e.PerWaterPh, Amounts.Print(sample.WaterPh ?? 0, 2))} = {Amounts.Print(raw, 3)} {e.Unit}",
            e.SourceId
        );
    }

    private static string Term(double factor, string symbol) =>
        factor == 0 ? "" : $" {(factor < 0 ? "-" : "+")} {Amounts.Print(Math.Abs(factor), 3)} x {symbol}";

    private double Scaled(double value) => reading == "lime-test-index" ? value * 10 : value;

    private sealed record Equation(
        double Constant,
        double PerReading,
        double PerReadingSquared,
        double PerWaterPh,
        double PoundsPerUnit,
        string Unit,
        string SourceId
    );
}
