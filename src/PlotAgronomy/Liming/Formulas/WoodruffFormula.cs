using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>Missouri's neutralizable acidity by Woodruff buffer, all of it neutralized. No calibration: it follows from the
/// definitions.</summary>
/// <remarks>1 meq is 50 mg of carbonate; 50 mg in 100 g over 2 million lb of soil is 1,000 lb an acre; pure carbonate has 800 lb
/// of
/// ENM to the ton (LIME-S17): 400 lb of ENM for each meq/100 g.</remarks>
internal sealed class WoodruffFormula(CsvRow method) : LimeFormula
{
    private readonly double depthInches = method.Number("depth_in");

    internal override ImmutableArray<double> Targets => [LimingConstants.All["woodruff-end-ph"]];

    internal override string Reads => "neutralizable acidity in meq/100 g";

    internal override double? ReadingOf(LimeSample sample) => sample.AcidityPer100Grams;

    internal override double? PoundsPerAcre(double reading, LimeSample sample, double targetPh) =>
        EnmPerMilliequivalent * reading;

    internal override IEnumerable<WorkedLine> Work(double reading, LimeSample sample, double targetPh)
    {
        yield return new(
            "Base rate",
            "ENM for each meq x neutralizable acidity",
            $"{Amounts.Print(EnmPerMilliequivalent, 0)} x {Amounts.Print(reading, 2)} = "
                + $"{Amounts.Print(PoundsPerAcre(reading, sample, targetPh)!.Value, 0)} lb ENM/ac",
            "LIME-S17"
        );
    }

    private double EnmPerMilliequivalent =>
        LimingConstants.All["carbonate-per-meq"]
        * 10
        * LimingConstants.All["soil-per-inch"]
        * depthInches
        * LimeIndex.MissouriEnm.Whole
        / ExactUnits.PoundsPerShortTon;
}
