using System.Collections.Immutable;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Tests.Soil;

/// <summary>Reports of the published and constructed examples, and small builders for the other tests.</summary>
internal static class SoilSamples
{
    internal static readonly DateOnly Day = new(2026, 3, 1);

    /// <summary>P1: the sample of Clemson's page. C18, C19: one constructed soil by several buffers.</summary>
    internal static SoilReport Named(string name) => name switch
    {
        "P1" => Report(Cations(SoilTestUnit.PoundsPerAcre, Extractant.Mehlich1, 221, 28, 400, 12), BufferPh.FromValue(7.70, SoilBuffer.AdamsEvans)),
        "C18" => Report(Constructed, BufferPh.FromValue(6.5, SoilBuffer.Smp)),
        "C19" => Report(Constructed, BufferPh.FromValue(7.75, SoilBuffer.AdamsEvans)),
        "C19M" => Report(Constructed, BufferPh.FromValue(6.10, SoilBuffer.Mehlich), weightPerVolume: 1),
        "C19W" => Report(Constructed, BufferPh.FromValue(6.5, SoilBuffer.NewWoodruff)),
        _ => throw new ArgumentException($"no sample {name}", nameof(name)),
    };

    internal static ImmutableArray<SoilReading> Constructed => Cations(SoilTestUnit.PartsPerMillion, Extractant.AmmoniumAcetate, 110, 95, 880, 12);

    internal static SoilReport Report(ImmutableArray<SoilReading> readings, BufferPh? buffer, double waterPh = 5.6, double? weightPerVolume = null) => new()
    {
        Laboratory = "a laboratory",
        Readings = readings,
        WaterPh = WaterPh.FromValue(waterPh),
        BufferPhs = buffer is null ? [] : [buffer],
        SampledDepth = Length.FromInches(20.0 / 3),
        SampledOn = Day,
        WeightPerVolume = weightPerVolume is { } density ? Density.FromGramsPerCubicCentimeter(density) : null,
    };

    internal static ImmutableArray<SoilReading> Cations(SoilTestUnit unit, Extractant extractant, double potassium, double magnesium, double calcium, double sodium) =>
    [
        SoilReading.FromPrinted(SoilAnalyte.Potassium, potassium, unit, extractant),
        SoilReading.FromPrinted(SoilAnalyte.Magnesium, magnesium, unit, extractant),
        SoilReading.FromPrinted(SoilAnalyte.Calcium, calcium, unit, extractant),
        SoilReading.FromPrinted(SoilAnalyte.Sodium, sodium, unit, extractant),
    ];

    internal static SoilReading Phosphorus(double value, SoilTestUnit unit = SoilTestUnit.PartsPerMillion, Extractant extractant = Extractant.Mehlich3) =>
        SoilReading.FromPrinted(SoilAnalyte.Phosphorus, value, unit, extractant);
}
