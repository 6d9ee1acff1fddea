using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>The pH of a buffer before soil is added: no reading can lie above it.</summary>
internal sealed class BufferStart
{
    private static readonly Lazy<IReadOnlyDictionary<SoilBuffer, BufferStart>> ByBuffer = new Table<BufferStart>(
        "Soil/Data/buffers.csv",
        FromRow
    ).By(s => s.Buffer);

    internal required SoilBuffer Buffer { get; init; }

    internal required double Ph { get; init; }

    internal required Origin Origin { get; init; }

    /// <summary>The start, or null for a buffer whose start was not seen in a publication.</summary>
    internal static double? Of(SoilBuffer buffer) => ByBuffer.Value.GetValueOrDefault(buffer)?.Ph;

    /// <summary>Whether the acidity terms of a buffer end half a unit below its start.</summary>
    internal static bool IsAboveTheTerms(SoilBuffer buffer) =>
        buffer is SoilBuffer.Smp or SoilBuffer.Sikora or SoilBuffer.Sikora2;

    private static BufferStart FromRow(CsvRow row) =>
        new()
        {
            Buffer = row.Choice<SoilBuffer>("id"),
            Ph = row.Number("start_ph"),
            Origin = row.Origin(),
        };
}
