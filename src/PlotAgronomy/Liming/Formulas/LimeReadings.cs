using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Liming;

/// <summary>The buffers a method is calibrated for.</summary>
internal static class LimeReadings
{
    internal static ImmutableArray<SoilBuffer> Buffers(CsvRow method) => method.Choices<SoilBuffer>("buffers");

    internal static double? BufferPh(PlotSoil soil, ImmutableArray<SoilBuffer> buffers)
    {
        foreach (var reading in soil.Report.BufferPhs)
        {
            if (buffers.Contains(reading.Buffer))
            {
                return reading.Value;
            }
        }

        return null;
    }

    internal static string InWords(IEnumerable<SoilBuffer> buffers) => SoilWords.Buffers.Or(buffers);
}
