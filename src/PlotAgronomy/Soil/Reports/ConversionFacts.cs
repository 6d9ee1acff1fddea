using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Soil;

/// <summary>What a conversion asks of the soil and of the index tables; what had to be assumed is noted.</summary>
internal sealed class ConversionFacts(SoilReading reading, SampledSoil soil)
{
    private List<Func<Finding>>? remarks;

    /// <summary>What had to be assumed, in the order of the walk.</summary>
    internal IEnumerable<Finding> Remarks() => remarks is null ? [] : remarks.Select(remark => remark());

    internal SampledLayer Layer()
    {
        if (soil.Layer is { } layer)
        {
            return layer;
        }

        Note(static () => FindingCatalog.Create(SoilCodes.DepthAssumed));
        return SampledLayer.FurrowSlice;
    }

    internal double WeightPerVolume()
    {
        if (soil.WeightPerVolume is not { } density)
        {
            throw new ArgumentException(
                "Between a volume (mg/dm3, meq/100 cm3, North Carolina index) and a weight (ppm) "
                    + "the weight per volume of the scooped soil (W/V) is needed.",
                nameof(soil)
            );
        }

        double gramsPerCubicCentimeter = density.GramsPerCubicCentimeter;
        return Guard.Above(gramsPerCubicCentimeter, 0, "g/cm3", nameof(soil));
    }

    /// <summary>The exchange capacity where it is printed by volume; null where it is by weight.</summary>
    internal double? CapacityByVolume =>
        soil.ExchangeCapacity is { Basis: CationChargeBasis.Per100CubicCentimeters } printed ? printed.Milliequivalents : null;

    internal double Capacity()
    {
        if (soil.ExchangeCapacity is not { } capacity)
        {
            throw new ArgumentException("Percent saturation needs the cation exchange capacity.", nameof(soil));
        }

        double byWeight =
            capacity.Basis == CationChargeBasis.Per100Grams
                ? capacity.Milliequivalents
                : capacity.ByWeight(Density.FromGramsPerCubicCentimeter(WeightPerVolume())).Milliequivalents;
        return Guard.Above(byWeight, 0, "meq/100 g", nameof(soil));
    }

    internal IndexScale Scale(SoilTestUnit unit)
    {
        var scale = IndexScale.Find(unit, reading.Analyte)
            ?? throw new ArgumentException(
                $"The {SoilWords.For(unit)} is not defined for {SoilWords.For(reading.Analyte)}.",
                nameof(unit)
            );
        if (!IndexScale.Accepts(reading.Extractant))
        {
            throw new ArgumentException(
                $"The {SoilWords.For(unit)} is defined for Mehlich-3, not for {SoilWords.For(reading.Extractant)}.",
                nameof(unit)
            );
        }

        if (scale.Origin.Status == DataStatus.Memory)
        {
            Note(FromMemory(unit, scale));
        }

        return scale;
    }

    private Func<Finding> FromMemory(SoilTestUnit unit, IndexScale scale) =>
        () => MemoryGate.FindingFor($"the {SoilWords.For(unit)} of {SoilWords.For(reading.Analyte)}", scale.Origin);

    private void Note(Func<Finding> remark) => (remarks ??= []).Add(remark);
}
