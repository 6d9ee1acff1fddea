using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>Pennsylvania's turf table: its columns to pH 6.0 and 7.0 follow a rule, which is used for every reading; the column
/// between follows none and is read as a table.</summary>
internal sealed class TurfFormula(CsvRow method) : LimeFormulaBy<TurfLimeKernel>(method)
{
    private readonly LimeTableFormula table = new(method);

    private readonly double step = LimingConstants.All["turf-acre-step"];

    private readonly double least = LimingConstants.All["turf-acre-least"];

    private readonly double printed = LimingConstants.All["turf-printed-step"];

    internal override ImmutableArray<double> Targets => table.Targets;

    internal override string Reads => table.Reads;

    internal override double? ReadingOf(PlotSoil soil) => table.ReadingOf(soil);

    internal override string? CellFinding => table.CellFinding;

    internal override LimeRemarks MayRemark => table.MayRemark;

    internal override TurfLimeKernel KernelTo(double targetPh, SoilTexture? texture) =>
        RuleFor(targetPh) is var (perMeq, less)
            ? new()
            {
                PerMeq = perMeq,
                LessPounds = less,
                StepPoundsPerAcre = step,
                LeastPoundsPerAcre = least,
                PrintedStep = printed,
            }
            : new() { Column = table.ColumnTo(targetPh) };

    internal override IEnumerable<WorkedLine> Work(double reading, PlotSoil soil, double targetPh) =>
        RuleFor(targetPh) is not var (perMeq, less)
            ? table.Work(reading, soil, targetPh)
            :
            [
                LimeTableLines.Row(
                    LimeTableLines.BaseRate,
                    $"{Amounts.Print(perMeq, 0)} x {Amounts.Print(reading, 2)} less {Amounts.Print(less, 0)}, to whole thousands "
                        + "of lb/ac as the table goes: "
                        + $"{Amounts.Print(KernelFor(soil, targetPh).PoundsPerThousand(reading), 0)} lb/1000 ft2",
                    LimingConstants.All.Find("turf-acre-step").Origin
                ),
            ];

    internal override IEnumerable<Finding> Findings(double reading, PlotSoil soil, double targetPh) =>
        RuleFor(targetPh) is null ? table.Findings(reading, soil, targetPh) : [];

    private static (double PerMeq, double Less)? RuleFor(double targetPh) =>
        targetPh == LimingConstants.All["turf-target-high"] ? (LimingConstants.All["turf-high-per-meq"], 0)
        : targetPh == LimingConstants.All["turf-target-low"]
            ? (LimingConstants.All["turf-low-per-meq"], LimingConstants.All["turf-low-less"])
        : null;
}
