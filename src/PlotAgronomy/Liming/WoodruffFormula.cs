using System.Collections.Immutable;

namespace PlotAgronomy.Liming;

/// <summary>Missouri's neutralizable acidity by Woodruff buffer: 400 lb of ENM for each meq/100 g neutralizes all of it (LIME-S17).</summary>
internal sealed class WoodruffFormula : LimeFormula
{
    internal override ImmutableArray<double> Targets => [LimeConstants.Of("woodruff-end-ph")];

    internal override string Reads => "neutralizable acidity in meq/100 g";

    internal override double? ReadingOf(LimeSample sample) => sample.AcidityPer100Grams;

    internal override double? PoundsPerAcre(double reading, LimeSample sample, double targetPh) => LimeConstants.Of("woodruff-enm-per-meq") * reading;

    internal override IEnumerable<WorkedLine> Work(double reading, LimeSample sample, double targetPh)
    {
        yield return new("Base rate", "400 x neutralizable acidity", $"400 x {Amounts.Print(reading, 2)} = {Amounts.Print(PoundsPerAcre(reading, sample, targetPh)!.Value, 0)} lb ENM/ac", "LIME-S17");
    }
}
