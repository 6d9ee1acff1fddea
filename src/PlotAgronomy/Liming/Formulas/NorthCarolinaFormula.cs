using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>ton/ac = Ac x (target - pH) / (end - pH), Ac from the Mehlich buffer pH or as printed.</summary>
internal sealed class NorthCarolinaFormula(CsvRow method) : LimeFormulaBy<NorthCarolinaLimeKernel>(method)
{
    private static readonly ImmutableArray<SoilBuffer> Buffers = [SoilBuffer.Mehlich];

    private readonly double endPh = LimingConstants.All["nc-end-ph"];

    private readonly double acidityPerPh = LimingConstants.All["nc-acidity-per-ph"];

    internal override string Reads => "Mehlich buffer pH or the acidity Ac";

    internal override bool ReadsPh => true;

    internal override bool NeedsWaterPh => true;

    internal override double? ReadingOf(PlotSoil soil) =>
        LimeReadings.BufferPh(soil, Buffers)
        ?? (soil.AcidityPer100CubicCentimeters is { } acidity ? endPh - (acidity / acidityPerPh) : null);

    internal override (double LowestPh, double LowestReadingWithoutPh) Domain(double targetPh) =>
        (targetPh < endPh ? double.NegativeInfinity : double.PositiveInfinity, double.NegativeInfinity);

    internal override Finding Refusal(string waterPh, double targetPh) =>
        FindingCatalog.Create(
            LimingCodes.TargetTooHigh,
            ("method", MethodName),
            ("limit", $"below pH {LimeText.Ph(endPh)}"),
            ("target", LimeText.Ph(targetPh))
        );

    internal override NorthCarolinaLimeKernel KernelTo(double targetPh, SoilTexture? texture) =>
        new()
        {
            TargetPh = targetPh,
            EndPh = endPh,
            AcidityPerPh = acidityPerPh,
        };

    internal override IEnumerable<WorkedLine> Work(double reading, PlotSoil soil, double targetPh)
    {
        string acidity = Amounts.Print(KernelFor(soil, targetPh).Acidity(reading), 3);
        string end = LimeText.Ph(endPh);
        yield return LimingFormulas
            .All["nc-lime-acidity"]
            .Line(
                $"{acidity} meq/100 cm3",
                ("acidity per pH", Amounts.Print(acidityPerPh, 3)),
                ("end pH", end),
                ("buffer pH", Amounts.Print(reading, 3))
            );
        yield return LimingFormulas
            .All["nc-lime-rate"]
            .Line(
                $"{LimeText.Tons(PoundsPerAcre(reading, soil, targetPh)!.Value)} ton/ac",
                ("Ac", acidity),
                ("target", LimeText.Ph(targetPh)),
                ("pH", LimeText.Ph(soil.PhInWater!.Value)),
                ("end pH", end)
            );
    }
}
