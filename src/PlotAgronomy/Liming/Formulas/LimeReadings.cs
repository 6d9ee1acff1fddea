using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Liming;

/// <summary>The buffers a method is calibrated for.</summary>
internal static class LimeReadings
{
    internal static ImmutableArray<SoilBuffer> Buffers(CsvRow method) => method.Choices<SoilBuffer>("buffers");

    internal static double? BufferPh(LimeSample sample, ImmutableArray<SoilBuffer> buffers) =>
        sample.Report.BufferPhs.FirstOrDefault(b => buffers.Contains(b.Buffer))?.Value;

    internal static string InWords(IEnumerable<SoilBuffer> buffers) => SoilWords.Buffers.Or(buffers);
}
