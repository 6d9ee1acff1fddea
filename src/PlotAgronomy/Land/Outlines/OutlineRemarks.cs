using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Land;

/// <summary>What is odd about the size or the place of an outline.</summary>
internal static class OutlineRemarks
{
    /// <summary>A longitude of North America read as a latitude lies near the pole,
    /// where a degree of longitude is short.</summary>
    internal static IEnumerable<Finding> OfPlace(double latitudeDegrees)
    {
        if (Math.Abs(latitudeDegrees) > LandConstants.All["far-latitude-degrees"])
        {
            yield return FindingCatalog.Create(LandCodes.LatitudeUnlikely, ("latitude", Amounts.Print(latitudeDegrees, 2)));
        }
    }

    /// <summary>The shape whose slant the sides measured leave open, if any.</summary>
    internal static IEnumerable<Finding> OfShape(string? assumed) =>
        assumed is null ? [] : [FindingCatalog.Create(LandCodes.OutlineAssumed, ("shape", assumed))];

    internal static IEnumerable<Finding> OfSize(ImmutableArray<PlanePoint> corners, bool onEarth)
    {
        var area = Area.FromSquareFeet(LandMath.SignedSquareFeet(corners.AsSpan()));
        double squareFeet = area.SquareFeet,
            acres = area.Acres;
        if (squareFeet < LandConstants.All["tiny-outline-square-feet"])
        {
            yield return FindingCatalog.Create(LandCodes.TinyOutline, ("area", Amounts.Print(area, "ft2", 1)));
        }

        if (onEarth && acres < LandConstants.All["small-track-acres"])
        {
            yield return FindingCatalog.Create(
                LandCodes.SmallTrack,
                ("area", Amounts.Print(area, decimals: 3)),
                ("limit", Amounts.Print(Area.FromAcres(LandConstants.All["small-track-acres"])))
            );
        }

        if (onEarth && acres > LandConstants.All["plane-high-acres"])
        {
            yield return FindingCatalog.Create(
                LandCodes.LargeOutline,
                ("area", Amounts.Print(area, decimals: 0)),
                ("limit", Amounts.Print(Area.FromAcres(LandConstants.All["plane-high-acres"])))
            );
        }
    }
}
