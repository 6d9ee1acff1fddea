using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>Whether bases, capacity and saturations of a report add up.</summary>
internal static class SaturationChecks
{
    /// <summary>Potassium, magnesium and calcium with the rounded ppm per meq in common use.</summary>
    private static ImmutableArray<(SoilAnalyte Cation, double PerMilliequivalent)> Bases =>
        AcidityTerm.MidwestLaboratory.Divisors;

    private static double RoundingPercent => SoilConstants.All["saturation-rounding"];

    internal static IEnumerable<Finding> Of(SoilReport report)
    {
        var saturations = report.Readings.Where(r => r.Unit == SoilTestUnit.PercentSaturation).ToList();
        double sum = saturations.Sum(r => r.PrintedValue);
        if (sum > 100 + RoundingPercent)
        {
            yield return FindingCatalog.Create(SoilCodes.SaturationSum, ("sum", Amounts.Print(sum, 1)));
        }
        else if (
            report.PrintedBaseSaturation is { } printed
            && Bases.All(b => saturations.Any(s => s.Analyte == b.Cation))
            && Math.Abs(sum - printed.Percent) > RoundingPercent
        )
        {
            yield return FindingCatalog.Create(
                SoilCodes.SaturationDiffers,
                ("sum", Amounts.Print(sum, 1)),
                ("printed", Amounts.Print(printed, 1))
            );
        }

        if (
            report.PrintedExchangeCapacity is { } high
            && high.Milliequivalents > SoilConstants.All["exchange-capacity-high"]
            && report.SoilClass is (null or SoilClass.Mineral)
        )
        {
            yield return FindingCatalog.Create(SoilCodes.CapacityUnlikely, ("capacity", high.ToString()));
        }

        if (report.PrintedExchangeCapacity is { Basis: CationChargeBasis.Per100Grams } capacity)
        {
            double bases = Bases.Sum(b => ByWeight(report, b.Cation, b.PerMilliequivalent));
            if (bases > SoilConstants.All["bases-over-capacity"] * capacity.Milliequivalents)
            {
                yield return FindingCatalog.Create(
                    SoilCodes.CationsExceedCapacity,
                    ("bases", Amounts.Print(bases, 2)),
                    ("capacity", Amounts.Print(capacity.Milliequivalents, 2))
                );
            }
        }
    }

    /// <summary>meq/100 g of a cation printed by weight or per acre; readings by volume
    /// are not compared with a capacity by weight. Of a cation printed twice, which is asked about, the higher.</summary>
    private static double ByWeight(SoilReport report, SoilAnalyte cation, double ppmPerMilliequivalent)
    {
        var layer = new SampledSoil
        {
            Layer = report.SampledDepth is { } depth ? SampledLayer.Conventional(depth) : SampledLayer.FurrowSlice,
        };
        return report
            .FindAll(cation)
            .Where(r => r.Unit is SoilTestUnit.PartsPerMillion or SoilTestUnit.PoundsPerAcre or SoilTestUnit.KilogramsPerHectare)
            .Select(r => r.ConvertTo(SoilTestUnit.PartsPerMillion, layer).Converted.PrintedValue / ppmPerMilliequivalent)
            .DefaultIfEmpty(0)
            .Max();
    }
}
