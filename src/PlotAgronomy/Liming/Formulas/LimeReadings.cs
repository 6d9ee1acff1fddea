using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Liming;

/// <summary>The buffers a method is calibrated for.</summary>
internal static class LimeReadings
{
    internal static ImmutableArray<SoilBuffer> Buffers(CsvRow method) => method.Choices<SoilBuffer>("buffers");

    /// <summary>The reading in the buffer that the method names first; null where that buffer reads twice and differs.</summary>
    internal static double? BufferPh(PlotSoil soil, ImmutableArray<SoilBuffer> buffers)
    {
        foreach (var buffer in buffers)
        {
            if (soil.Report.FindBuffer(buffer) is { } reading)
            {
                return reading.Value;
            }

            if (IsReadTwice(soil.Report, buffer))
            {
                return null;
            }
        }

        return null;
    }

    /// <summary>Whether a buffer that has no one reading is on the report all the same.</summary>
    private static bool IsReadTwice(SoilReport report, SoilBuffer buffer)
    {
        foreach (var reading in report.BufferPhs)
        {
            if (reading.Buffer == buffer)
            {
                return true;
            }
        }

        return false;
    }

    internal static string InWords(IEnumerable<SoilBuffer> buffers) => SoilWords.Buffers.Or(buffers);
}
