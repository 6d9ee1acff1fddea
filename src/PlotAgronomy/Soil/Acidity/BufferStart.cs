using System.Collections.Frozen;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>The pH of each buffer before soil is added: no reading can lie above it.</summary>
internal static class BufferStart
{
    private static readonly Lazy<FrozenDictionary<SoilBuffer, double>> StartPh = new(() =>
        CsvTable
            .Embedded("Soil/Data/buffers.csv", "id", "start_ph", "source_id", "locator", "status")
            .Rows.ToFrozenDictionary(r => r.Choice<SoilBuffer>("id"), r => r.Number("start_ph"))
    );

    /// <summary>The start, or null for a buffer whose start was not seen in a publication.</summary>
    internal static double? Of(SoilBuffer buffer) => StartPh.Value.TryGetValue(buffer, out double start) ? start : null;
}
