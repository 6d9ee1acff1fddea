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
}
