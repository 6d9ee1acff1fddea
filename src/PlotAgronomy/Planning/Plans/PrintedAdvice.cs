using PlotAgronomy.Liming;

namespace PlotAgronomy.Planning;

/// <summary>What the laboratory itself recommended.</summary>
internal sealed class PrintedAdvice
{
    internal required string Crop { get; init; }

    internal PrintedLimeRate? Lime { get; init; }

    internal ApplicationRate? Nitrogen { get; init; }

    internal ApplicationRate? Phosphate { get; init; }

    internal ApplicationRate? Potash { get; init; }
}
