using PlotAgronomy.Land;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>The plot of a plan.</summary>
internal sealed class PlotSite
{
    internal required string Name { get; init; }

    internal required PlotArea Measured { get; init; }

    internal SoilTexture? Texture { get; init; }

    internal DrainageClass? Drainage { get; init; }

    internal required GroundCover Cover { get; init; }

    internal CropKind? CoverKind { get; init; }

    internal double CoverShare { get; init; }

    internal CropKind? GrewBefore { get; init; }

    internal required bool CarriedOff { get; init; }

    internal Area Area => Measured.Area;
}
