using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>lb/ac of pure carbonate = LBCeq x (target - pH) x million lb of soil per acre (LIME-S36); straight from pH 4 to
/// 6.5.</summary>
internal sealed class GeorgiaFormula(CsvRow method) : LimeFormula
{
    private readonly double depthInches = method.Number("depth_in");

    internal override string Reads => "lime buffer capacity";

    internal override bool NeedsWaterPh => true;

    internal override double? ReadingOf(LimeSample sample) => sample.LimeBufferCapacity?.MilligramsPerKilogramPerPh;

    internal override double? PoundsPerAcre(double reading, LimeSample sample, double targetPh) =>
        LimeMath.BufferCapacityPoundsPerAcre(reading, targetPh - sample.WaterPh!.Value, SoilMillionPounds);

    internal override IEnumerable<WorkedLine> Work(double reading, LimeSample sample, double targetPh)
    {
        yield return new(
            "Base rate",
            "lime buffer capacity x (target - pH) x million lb of soil",
            $"{Amounts.Print(reading, 1)} x ({LimeText.Ph(targetPh)} - {LimeText.Ph(sample.WaterPh!.Value)}) x "
                + $"{Amounts.Print(SoilMillionPounds, 2)} = "
                + $"{Amounts.Print(PoundsPerAcre(reading, sample, targetPh)!.Value, 1)} lb/ac",
            "LIME-S36"
        );
    }

    internal override Finding? Refusal(LimeSample sample, double targetPh) =>
        Holds(sample, targetPh)
            ? null
            : FindingCatalog.Create(
                "lime-reading-outside",
                ("reading", $"pH {LimeText.Ph(sample.WaterPh!.Value)} to {LimeText.Ph(targetPh)}"),
                ("lowest", LimeText.Ph(LimingConstants.All["ga-lowest-ph"])),
                ("highest", LimeText.Ph(LimingConstants.All["ga-highest-ph"])),
                ("method", "Georgia's straight-line titration")
            );

    private double SoilMillionPounds => LimingConstants.All["soil-per-inch"] * depthInches;

    private static bool Holds(LimeSample sample, double targetPh) =>
        sample.WaterPh >= LimingConstants.All["ga-lowest-ph"] && targetPh <= LimingConstants.All["ga-highest-ph"];
}
