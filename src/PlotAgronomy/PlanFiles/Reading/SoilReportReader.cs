using System.Collections.Immutable;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.PlanFiles;

/// <summary>Reads the soil report of a plan file.</summary>
internal static class SoilReportReader
{
    internal static SoilReport? Read(PlanObject report)
    {
        var readings = report.Objects("readings").Select(ReadValue).OfType<SoilReading>().ToImmutableArray();
        var depth = report.PositiveAmount<Length>("depth", Amounts.TryReadLength, l => l.Feet);
        var acidity = Charge(report.Object("exchangeableAcidity"));
        var capacity = Charge(report.Object("cec"));
        var organic = report.Amount<Fraction>("organicMatter", Amounts.TryReadPercent);
        var humic = report.Amount<Fraction>("humicMatter", Amounts.TryReadPercent);
        var weight = report.PositiveAmount<Density>("weightPerVolume", Amounts.TryReadDensity, d => d.GramsPerCubicCentimeter);
        var buffer = report.Object("buffer");
        var bufferPh =
            buffer?.Number("ph") is double ph && buffer.Choice("name", PlanVocabulary.Buffers) is SoilBuffer name
                ? buffer.Try("ph", () => BufferPh.FromValue(ph, name))
                : null;
        return
            report.Text("laboratory") is { } laboratory
            && report.Number("waterPh") is double water
            && report.Try("waterPh", () => WaterPh.FromValue(water)) is { } waterPh
            ? report.Try("readings", () => new SoilReport
                {
                    Laboratory = laboratory,
                    SampledOn = report.Date("sampled"),
                    SampledDepth = depth,
                    SoilClass = report.Choice("soilClass", PlanVocabulary.SoilClasses),
                    WaterPh = waterPh,
                    BufferPhs = bufferPh is null ? [] : [bufferPh],
                    ExchangeableAcidity = acidity,
                    PrintedExchangeCapacity = capacity,
                    OrganicMatter = organic,
                    HumicMatter = humic,
                    WeightPerVolume = weight,
                    Readings = readings,
                })
            : null;
    }

    private static SoilReading? ReadValue(PlanObject row) =>
        row.Chosen("analyte", PlanVocabulary.Analytes) is { } analyte
        && row.Number("value") is double value
        && row.Choice("unit", PlanVocabulary.Units) is SoilTestUnit unit
        && row.Choice("extractant", PlanVocabulary.Extractants) is Extractant extractant
            ? row.Try("value", () => SoilReading.FromPrinted(analyte.Analyte, value, unit, extractant, analyte.Form))
            : null;

    private static CationCharge? Charge(PlanObject? charge) =>
        charge?.Number("value") is double value && charge.Choice("unit", PlanVocabulary.ChargeBases) is CationChargeBasis basis
            ? basis == CationChargeBasis.Per100Grams
                ? CationCharge.FromMilliequivalentsPer100Grams(value)
                : CationCharge.FromMilliequivalentsPer100CubicCentimeters(value)
            : null;
}
