using PlotAgronomy.Liming;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Tests.Liming;

/// <summary>Small invented samples for behaviour tests; never the source of an expected number.</summary>
internal static class LimeSamples
{
    internal static SoilReport Report(double? waterPh, SoilBuffer? buffer = null, double? bufferPh = null, double? cec = null, SoilClass? soilClass = null) => new()
    {
        Laboratory = "test laboratory",
        WaterPh = waterPh is { } ph ? WaterPh.FromValue(ph) : null,
        BufferPhs = bufferPh is { } reading ? [BufferPh.FromValue(reading, buffer!.Value)] : [],
        PrintedExchangeCapacity = cec is { } capacity ? CationCharge.FromMilliequivalentsPer100Grams(capacity) : null,
        SoilClass = soilClass,
    };

    internal static LimeRate Rate(double tonsPerAcre, LimeBasis? basis = null, double depthInches = 6, double targetPh = 6.5, string institution = "test laboratory") =>
        LimeRate.FromBasis(ApplicationRate.FromShortTonsPerAcre(tonsPerAcre), targetPh, Length.FromInches(depthInches), basis ?? LimeBasis.Find("oregon-score-100"), Institution.FindLaboratory(institution));

    internal static LimeRounding RoundingOf(string institution) =>
        Institution.Find(institution).LimeRounding ?? throw new InvalidOperationException(institution);

    internal static bool Has(this IWorkedResult result, string code) => result.Findings.Any(f => f.Code == code);

    /// <summary>No soil has less than nothing of what is measured, nor a buffer capacity of nothing; a buffer pH has its own limits.</summary>
    internal static double LeastReading(LimeMethod method) =>
        method.Reads == "lime buffer capacity" ? 0.01 : method.Buffers.IsEmpty ? 0 : double.NegativeInfinity;

    /// <summary>A soil that a method answers for, with a reading in the method's own terms.</summary>
    internal static PlotSoil Soil(LimeMethod method, double ph, double reading)
    {
        var report = new SoilReport
        {
            Laboratory = "test laboratory",
            WaterPh = WaterPh.FromValue(ph),
            SoilClass = method.Soils[0],
            Texture = SoilTexture.Loam,
            BufferPhs = method.Buffers.IsEmpty ? [] : [BufferPh.FromValue(Math.Round(reading, 6), method.Buffers[0])],
            ExchangeableAcidity = method.Buffers.IsEmpty && method.Reads.Contains("acidity", StringComparison.Ordinal) ? CationCharge.FromMilliequivalentsPer100Grams(reading) : null,
            LimeBufferCapacity = method.Reads == "lime buffer capacity" ? LimeBufferCapacity.AtEquilibrium(reading) : null,
            Readings = method.Reads.Contains("aluminum", StringComparison.Ordinal)
                ? [SoilReading.FromPrinted(SoilAnalyte.Aluminum, reading, SoilTestUnit.PartsPerMillion, Extractant.ModifiedMorgan)]
                : [],
        };
        return report;
    }
}
