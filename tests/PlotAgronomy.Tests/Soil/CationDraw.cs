using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Tests.Soil;

/// <summary>A drawn soil: cations in ppm and an Adams-Evans buffer pH.</summary>
public sealed record CationDraw(double Potassium, double Magnesium, double Calcium, double Sodium, double BufferPh)
{
    internal SoilReport Report(SoilTestUnit unit, double factor, double? bufferPh = null) => new()
    {
        Laboratory = "Virginia",
        Readings = SoilSamples.Cations(unit, Extractant.Mehlich1, factor * Potassium, factor * Magnesium, factor * Calcium, factor * Sodium),
        WaterPh = WaterPh.FromValue(5.6),
        BufferPhs = [PlotAgronomy.BufferPh.FromValue(bufferPh ?? BufferPh, SoilBuffer.AdamsEvans)],
        SampledDepth = Length.FromInches(6.5),
    };
}
