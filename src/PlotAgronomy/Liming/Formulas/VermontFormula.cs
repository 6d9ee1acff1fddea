using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>Vermont's table of steps by soil pH and reactive aluminum (modified Morgan).</summary>
internal sealed class VermontFormula(CsvRow method) : LimeFormula(method)
{
    private static readonly Table<Step> Steps = new("Liming/Data/vermont.csv", Step.FromRow);

    internal override ImmutableArray<double> Targets { get; } = [LimingConstants.All["vt-target"]];

    internal override string Reads => "reactive aluminum in ppm (modified Morgan)";

    internal override bool NeedsWaterPh => true;

    internal override double? ReadingOf(PlotSoil soil) => soil.AluminumPpm;

    internal override double? PoundsPerAcre(double reading, PlotSoil soil, double targetPh) =>
        StepOf(reading, soil).TonsPerAcre * ExactUnits.PoundsPerShortTon;

    internal override IEnumerable<WorkedLine> Work(double reading, PlotSoil soil, double targetPh)
    {
        yield return LimeTableLines.Row(
            LimeTableLines.BaseRate,
            $"pH {LimeText.Ph(soil.PhInWater!.Value)}, aluminum {Amounts.Print(reading, 0)} ppm: "
                + $"{LimeText.Tons(PoundsPerAcre(reading, soil, targetPh)!.Value)} ton/ac",
            StepOf(reading, soil).Origin
        );
    }

    private static Step StepOf(double aluminumPpm, PlotSoil soil)
    {
        double ph = soil.PhInWater!.Value;
        foreach (var step in Steps.Rows)
        {
            if (step.Holds(ph, aluminumPpm))
            {
                return step;
            }
        }

        throw new InvalidOperationException("The table has a gap: every pH and aluminum must have its step.");
    }

    private sealed record Step(
        double PhFrom,
        double PhBelow,
        double AluminumAbove,
        double AluminumTo,
        double TonsPerAcre,
        Origin Origin
    )
    {
        /// <summary>The printed pH classes (5.6-6.1, 6.2-6.7, over 6.7) are taken by the pH rounded to one decimal.</summary>
        internal bool Holds(double ph, double aluminum)
        {
            double printed = Math.Round(ph, 1, MidpointRounding.AwayFromZero);
            return printed >= PhFrom
                && printed < PhBelow
                && aluminum <= AluminumTo
                && (aluminum > AluminumAbove || AluminumAbove == 0);
        }

        internal static Step FromRow(CsvRow row) =>
            new(
                row.NumberOrNull("ph_low") ?? 0,
                row.NumberOrNull("ph_high") ?? double.PositiveInfinity,
                row.Number("aluminum_low_ppm"),
                row.NumberOrNull("aluminum_high_ppm") ?? double.PositiveInfinity,
                row.Number("rate_ton_per_ac"),
                row.Origin()
            );
    }
}
