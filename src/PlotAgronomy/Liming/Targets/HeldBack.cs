using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>Kinds for which the soil of today is too sour. No lime and no forecast lifts that, only a new test.</summary>
internal static class HeldBack
{
    internal static ImmutableArray<CropKind> Of(IEnumerable<CropKind> kinds, PlotSoil soil) =>
        [.. kinds.Where(k => k.IsTooSourOn(soil))];

    internal static IEnumerable<Finding> Findings(IEnumerable<CropKind> held, PlotSoil soil) =>
        held.Select(k =>
            FindingCatalog.Create(
                LimingCodes.KindHoldBack,
                ("kind", k.ShortName),
                ("minimum", LimeText.Ph(k.LowestPhOn(soil)!.Value)),
                ("ph", LimeText.Ph(soil.PhInWater!.Value))
            )
        );
}
