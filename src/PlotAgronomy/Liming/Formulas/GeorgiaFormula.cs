using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Liming;

/// <summary>lb/ac of pure carbonate = LBCeq x (target - pH) x million lb of soil per acre; straight from pH 4 to 6.5.</summary>
internal sealed class GeorgiaFormula(CsvRow method) : LimeFormulaBy<GeorgiaLimeKernel>(method)
{
    private readonly double depthInches = method.Number("depth_in");

    private readonly double soilPerInch = LimingConstants.All["soil-per-inch"];

    private readonly double lowestPh = LimingConstants.All["ga-lowest-ph"];

    private readonly double highestPh = LimingConstants.All["ga-highest-ph"];

    internal override string Reads => "lime buffer capacity";

    internal override bool NeedsWaterPh => true;

    internal override double? ReadingOf(PlotSoil soil) => soil.Report.LimeBufferCapacity?.MilligramsPerKilogramPerPh;

    internal override (double Least, double Most) PossibleReadings =>
        (double.Epsilon, SoilConstants.All["largest-capacity"]);

    internal override GeorgiaLimeKernel KernelTo(double targetPh, SoilTexture? texture) =>
        new()
        {
            TargetPh = targetPh,
            SoilMillionPounds = SoilMillionPounds,
        };

    internal override IEnumerable<WorkedLine> Work(double reading, PlotSoil soil, double targetPh)
    {
        if (soil.Report.LimeBufferCapacity?.ThirtyMinutes is { } thirty)
        {
            yield return LimingFormulas
                .All["georgia-equilibrium-capacity"]
                .Line(
                    $"{Amounts.Print(reading, 1)} mg/kg per pH",
                    ("reading after 30 minutes", Amounts.Print(thirty, 1)),
                    ("constant", Amounts.Print(SoilConstants.All["ga-equilibrium-constant"], 4)),
                    ("slope", Amounts.Print(SoilConstants.All["ga-equilibrium-slope"], 4))
                );
        }

        string ground = Amounts.Print(SoilMillionPounds, 2);
        yield return LimingFormulas
            .All["georgia-soil"]
            .Line(
                $"{ground} million lb/ac",
                ("million lb of soil an inch", Amounts.Print(soilPerInch, 2)),
                ("depth", Amounts.Print(depthInches, 2))
            );
        yield return LimingFormulas
            .All["georgia-lime-rate"]
            .Line(
                $"{Amounts.Print(PoundsPerAcre(reading, soil, targetPh)!.Value, 1)} lb/ac",
                ("lime buffer capacity", Amounts.Print(reading, 1)),
                ("target", LimeText.Ph(targetPh)),
                ("pH", LimeText.Ph(soil.PhInWater!.Value)),
                ("million lb of soil", ground)
            );
    }

    internal override (double LowestPh, double LowestReadingWithoutPh) Domain(double targetPh) =>
        (targetPh <= highestPh ? lowestPh : double.PositiveInfinity, double.NegativeInfinity);

    internal override Finding Refusal(string waterPh, double targetPh) =>
        FindingCatalog.Create(
            LimingCodes.ReadingOutside,
            ("reading", $"pH {waterPh} to {LimeText.Ph(targetPh)}"),
            ("lowest", LimeText.Ph(lowestPh)),
            ("highest", LimeText.Ph(highestPh)),
            ("method", MethodName)
        );

    private double SoilMillionPounds => LimeMath.SoilMillionPounds(soilPerInch, depthInches);
}
