using PlotAgronomy.Liming;

namespace PlotAgronomy.Planning;

/// <summary>A kind that waits for a new test, with the lowest pH it must show.</summary>
internal sealed record HeldKind(SownKind Sown, double LowestPh)
{
    internal static HeldKind Of(SownKind sown, PlotSoil soil) => new(sown, sown.Planned.Kind.LowestPhOn(soil)!.Value);
}
