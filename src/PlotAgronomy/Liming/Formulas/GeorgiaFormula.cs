using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>lb/ac of pure carbonate = LBCeq x (target - pH) x million lb of soil per acre; straight from pH 4 to 6.5.</summary>
internal sealed class GeorgiaFormula(CsvRow method) : LimeFormula(method)
{
    private readonly double depthInches = method.Number("depth_in");

    private readonly double soilPerInch = LimingConstants.All["soil-per-inch"];

    private readonly double lowestPh = LimingConstants.All["ga-lowest-ph"];

    private readonly double highestPh = LimingConstants.All["ga-highest-ph"];

    internal override string Reads => "lime buffer capacity";

    internal override bool NeedsWaterPh => true;

    internal override double? ReadingOf(LimeSample sample) => sample.LimeBufferCapacity?.MilligramsPerKilogramPerPh;

    internal override double? PoundsPerAcre(double reading, LimeSample sample, double targetPh) =>
        LimeMath.GeorgiaPoundsPerAcre(reading, sample.WaterPh!.Value, targetPh, SoilMillionPounds);

    internal override IEnumerable<WorkedLine> Work(double reading, LimeSample sample, double targetPh)
    {
        if (sample.LimeBufferCapacity?.ThirtyMinutes is { } thirty)
        {
            yield return LimingFormulas
                .All["georgia-equilibrium-capacity"]
                .Line(
                    $"{Amounts.Print(reading, 1)} mg/kg per pH",
                    ("reading after 30 minutes", Amounts.Print(thirty, 1)),
                    ("constant", Amounts.Print(LimingConstants.All["ga-equilibrium-constant"], 4)),
                    ("slope", Amounts.Print(LimingConstants.All["ga-equilibrium-slope"], 4))
                );
        }

        string soil = Amounts.Print(SoilMillionPounds, 2);
        yield return LimingFormulas
            .All["georgia-soil"]
            .Line(
                $"{soil} million lb/ac",
                ("million lb of soil an inch", Amounts.Print(soilPerInch, 2)),
                ("depth", Amounts.Print(depthInches, 2))
            );
        yield return LimingFormulas
            .All["georgia-lime-rate"]
            .Line(
                $"{Amounts.Print(PoundsPerAcre(reading, sample, targetPh)!.Value, 1)} lb/ac",
                ("lime buffer capacity", Amounts.Print(reading, 1)),
                ("target", LimeText.Ph(targetPh)),
                ("pH", LimeText.Ph(sample.WaterPh!.Value)),
                ("million lb of soil", soil)
            );
    }

    internal override bool Holds(LimeSample sample, double targetPh) => sample.WaterPh >= lowestPh && targetPh <= highestPh;

    internal override Finding? Refusal(LimeSample sample, double targetPh) =>
        Holds(sample, targetPh)
            ? null
            : FindingCatalog.Create(
                LimingCodes.ReadingOutside,
                ("reading", $"pH {LimeText.Ph(sample.WaterPh!.Value)} to {LimeText.Ph(targetPh)}"),
                ("lowest", LimeText.Ph(lowestPh)),
                ("highest", LimeText.Ph(highestPh)),
                ("method", MethodName)
            );

    private double SoilMillionPounds => LimeMath.SoilMillionPounds(soilPerInch, depthInches);
}
