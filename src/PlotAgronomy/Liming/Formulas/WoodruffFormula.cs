using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>Missouri's neutralizable acidity by Woodruff buffer, all of it neutralized. No calibration: it follows from the
/// definitions of both.</summary>
internal sealed class WoodruffFormula(CsvRow method) : LimeFormulaBy<WoodruffLimeKernel>(method)
{
    private readonly double depthInches = method.Number("depth_in");

    internal override ImmutableArray<double> Targets { get; } = [LimingConstants.All["woodruff-end-ph"]];

    internal override string Reads => "neutralizable acidity in meq/100 g";

    internal override double? ReadingOf(PlotSoil soil) => soil.AcidityPer100Grams;

    internal override WoodruffLimeKernel KernelTo(double targetPh, SoilTexture? texture) => new(EnmPerMeq);

    internal override IEnumerable<WorkedLine> Work(double reading, PlotSoil soil, double targetPh)
    {
        string enmPerMeq = Amounts.Print(EnmPerMeq, 0);
        yield return LimingFormulas
            .All["missouri-enm-per-meq"]
            .Line(
                $"{enmPerMeq} lb ENM/ac",
                ("carbonate per meq", Amounts.Print(CarbonatePerMeq, 2)),
                ("million lb of soil an inch", Amounts.Print(SoilPerInch, 2)),
                ("depth", Amounts.Print(depthInches, 2)),
                ("ENM of a ton of carbonate", Amounts.Print(EnmOfCarbonate, 0)),
                ("lb in a ton", Amounts.Print(ExactUnits.PoundsPerShortTon, 0))
            );
        yield return LimingFormulas
            .All["missouri-lime-rate"]
            .Line(
                $"{Amounts.Print(PoundsPerAcre(reading, soil, targetPh)!.Value, 0)} lb ENM/ac",
                ("ENM for each meq", enmPerMeq),
                ("neutralizable acidity", Amounts.Print(reading, 2))
            );
    }

    private static double CarbonatePerMeq => LimingConstants.All["carbonate-per-meq"];

    private static double SoilPerInch => LimingConstants.All["soil-per-inch"];

    private static double EnmOfCarbonate => LimeIndex.MissouriEnm.Whole;

    private double EnmPerMeq => LimeMath.MissouriEnmPerMeq(CarbonatePerMeq, SoilPerInch, depthInches, EnmOfCarbonate);
}
