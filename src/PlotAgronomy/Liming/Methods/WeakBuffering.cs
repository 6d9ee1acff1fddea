using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>What every answer for a weakly buffered soil has to say.</summary>
internal static class WeakBuffering
{
    internal static Finding CautionFor(PlotSoil soil) =>
        soil.Capacity is { } capacity
            ? FindingCatalog.Create(LimingCodes.WeaklyBuffered, ("cec", Amounts.Print(capacity, 1)))
            : FindingCatalog.Create(LimingCodes.SandWeaklyBuffered);
}
