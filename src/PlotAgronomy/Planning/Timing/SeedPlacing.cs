using PlotAgronomy.Calendar;
using PlotAgronomy.Weather;

namespace PlotAgronomy.Planning;

/// <summary>Where the seed of a kind will lie, by the way it is planted and the depth it is printed for.</summary>
internal static class SeedPlacing
{
    internal static SeedPlacement Of(CropKind kind, PlantingMethod? method) =>
        method switch
        {
            PlantingMethod.Drilled => SeedPlacement.Covered,
            null or PlantingMethod.TilledAndPacked => IsShallow(kind) ? SeedPlacement.PressedIn : SeedPlacement.Covered,
            PlantingMethod.BroadcastThenRolled => SeedPlacement.PressedIn,
            _ => SeedPlacement.OnSurface,
        };

    /// <summary>A kind without a printed depth is taken for one that is pressed in: it dries sooner.</summary>
    private static bool IsShallow(CropKind kind) =>
        kind.Depth?.Deepest is not { Inches: var deepest } || deepest <= CalendarConstants.All["pressed-to"];
}
