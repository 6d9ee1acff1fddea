using System.Collections.Immutable;
using System.Runtime.InteropServices;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>A published equation: constant + a x reading + b x reading squared + c x water pH, one set of coefficients a
/// target.</summary>
internal sealed class LimeLinearFormula : LimeFormulaBy<LinearLimeKernel>
{
    private static readonly Lazy<ILookup<string, Equation>> Equations = Table.Grouped(
        "Liming/Data/linear.csv",
        r => r.Text("method_id"),
        Equation.FromRow
    );

    private readonly ImmutableArray<SoilBuffer> buffers;
    private readonly Equation[] equations;
    private readonly LinearReading reading;
    private readonly double? fadesFrom;
    private readonly double highest;

    internal LimeLinearFormula(CsvRow method)
        : base(method)
    {
        buffers = LimeReadings.Buffers(method);
        equations = Equations.Value[method.Text("id")].ToArray();
        Array.Sort(equations, (one, other) => one.TargetPh.CompareTo(other.TargetPh));
        reading = equations[0].Reading;
        fadesFrom = method.NumberOrNull("fades_from");
        highest = method.Number("reading_high");
        Targets = ImmutableCollectionsMarshal.AsImmutableArray(Array.ConvertAll(equations, e => e.TargetPh));
        NeedsWaterPh = reading == LinearReading.WaterPh || equations.Any(e => e.PerWaterPh != 0);
    }

    internal override ImmutableArray<double> Targets { get; }

    internal override string Reads =>
        reading == LinearReading.WaterPh ? "water pH" : $"{LimeReadings.InWords(buffers)} buffer pH";

    internal override bool ReadsPh => true;

    internal override bool ReadsWaterPh => reading == LinearReading.WaterPh;

    internal override bool NeedsWaterPh { get; }

    internal override double? ReadingOf(PlotSoil soil) =>
        reading == LinearReading.WaterPh ? soil.PhInWater : LimeReadings.BufferPh(soil, buffers);

    internal override LinearLimeKernel KernelTo(double targetPh, SoilTexture? texture)
    {
        var e = To(targetPh);
        return new()
        {
            Constant = e.Constant,
            PerReading = e.PerReading,
            PerReadingSquared = e.PerReadingSquared,
            PerWaterPh = e.PerWaterPh,
            PoundsPerUnit = e.PoundsPerUnit,
            Scale = Scale,
            FadesFrom = fadesFrom ?? double.PositiveInfinity,
            Highest = highest,
        };
    }

    internal override IEnumerable<WorkedLine> Work(double reading, PlotSoil soil, double targetPh)
    {
        var e = To(targetPh);
        var kernel = KernelTo(targetPh, soil.Texture);
        if (kernel.Fades(reading))
        {
            var from = (kernel.FadesFrom, kernel.LastPrinted(WaterPh(soil)));
            yield return LimeTableLines.Between(from, (highest, 0), reading, e.Origin);
            yield break;
        }

        double raw = PoundsPerAcre(reading, soil, targetPh)!.Value / e.PoundsPerUnit;
        string perReading = Amounts.Print(Math.Abs(e.PerReading), 3);
        string perWaterPh = Amounts.Print(Math.Abs(e.PerWaterPh), 3);
        string number = Amounts.Print(reading * Scale, 2);
        yield return LimingFormulas
            .All[e.FormulaId]
            .Line(
                $"{Amounts.Print(raw, 3)} {e.Unit}",
                ("constant", Amounts.Print(e.Constant, 3)),
                ("fall per index point", perReading),
                ("lime test index", number),
                ("fall per buffer pH", perReading),
                ("buffer pH", number),
                ("rise per buffer pH squared", Amounts.Print(e.PerReadingSquared, 3)),
                ("fall per pH", this.reading == LinearReading.WaterPh ? perReading : perWaterPh),
                ("rise per pH", perWaterPh),
                ("pH", Amounts.Print(soil.PhInWater ?? 0, 2))
            )
            .From(e.Origin);
    }

    private Equation To(double targetPh) => equations[Targets.IndexOf(targetPh)];

    private double Scale => reading == LinearReading.LimeTestIndex ? 10 : 1;

    private sealed record Equation(
        double TargetPh,
        LinearReading Reading,
        double Constant,
        double PerReading,
        double PerReadingSquared,
        double PerWaterPh,
        double PoundsPerUnit,
        string Unit,
        string FormulaId,
        Origin Origin
    )
    {
        internal static Equation FromRow(CsvRow row) =>
            new(
                row.Number("target_ph"),
                row.Choice<LinearReading>("reading"),
                row.Number("constant"),
                row.Number("per_reading"),
                row.Number("per_reading_squared"),
                row.Number("per_water_ph"),
                LimeUnits.PerUnit(row),
                row.Text("unit"),
                row.Text("formula_id"),
                row.Origin()
            );
    }
}
