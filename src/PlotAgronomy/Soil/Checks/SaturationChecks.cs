using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>Whether bases, capacity and saturations of a report add up.</summary>
internal static class SaturationChecks
{
    /// <summary>Printed percentages are whole numbers: four of them may miss their sum by two.</summary>
    private const double RoundingPercent = 2;

    /// <summary>Bases may pass the printed capacity by a tenth through rounding and another extractant.</summary>
    private const double CapacityBand = 1.1;

    private static readonly (SoilAnalyte Cation, double PpmPerMilliequivalent)[] Bases =
    [
        (SoilAnalyte.Potassium, 390),
        (SoilAnalyte.Magnesium, 120),
        (SoilAnalyte.Calcium, 200),
    ];

    internal static IEnumerable<Finding> Of(SoilReport report)
    {
        var saturations = report.Readings.Where(r => r.Unit == SoilTestUnit.PercentSaturation).ToList();
        double sum = saturations.Sum(r => r.PrintedValue);
        if (sum > 100 + RoundingPercent)
        {
            yield return FindingCatalog.Create("soil-saturation-sum", ("sum", Amounts.Print(sum, 1)));
        }
        else if (
            report.PrintedBaseSaturation is { } printed
            && Bases.All(b => saturations.Any(s => s.Analyte == b.Cation))
            && Math.Abs(sum - printed.Percent) > RoundingPercent
        )
        {
            yield return FindingCatalog.Create(
                "soil-saturation-differs",
                ("sum", Amounts.Print(sum, 1)),
                ("printed", Amounts.Print(printed, 1))
            );
        }

        if (report.PrintedExchangeCapacity is { Basis: CationChargeBasis.Per100Grams } capacity)
        {
            double bases = Bases.Sum(b => ByWeight(report, b.Cation, b.PpmPerMilliequivalent));
            if (bases > CapacityBand * capacity.Milliequivalents)
            {
                yield return FindingCatalog.Create(
                    "soil-cations-exceed-capacity",
                    ("bases", Amounts.Print(bases, 2)),
                    ("capacity", Amounts.Print(capacity.Milliequivalents, 2))
                );
            }
        }
    }

    /// <summary>meq/100 g of a cation printed by weight or per acre; readings by volume
    /// are not compared with a capacity by weight.</summary>
    private static double ByWeight(SoilReport report, SoilAnalyte cation, double ppmPerMilliequivalent)
    {
        var layer = new SampledSoil
        {
            Layer = report.SampledDepth is { } depth ? SampledLayer.Conventional(depth) : SampledLayer.FurrowSlice,
        };
        return
            report
                .FindAll(cation)
                .FirstOrDefault(r =>
                    r.Unit is SoilTestUnit.PartsPerMillion or SoilTestUnit.PoundsPerAcre or SoilTestUnit.KilogramsPerHectare
                )
                is { } reading
            ? reading.ConvertTo(SoilTestUnit.PartsPerMillion, layer).Converted.PrintedValue / ppmPerMilliequivalent
            : 0;
    }
}
