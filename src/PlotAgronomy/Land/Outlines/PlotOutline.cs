using System.Collections.Immutable;
using UnitsNet;

namespace PlotAgronomy.Land;

/// <summary>The closed outline of a plot on its local plane, counter-clockwise, its sides straight and not crossing.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed partial class PlotOutline
{
    private readonly double squareFeet;
    private readonly double perimeterFeet;
    private readonly double meanLatitudeDegrees;
    private readonly ImmutableArray<Finding> noticed;
    private readonly bool isPart;

    private PlotOutline(
        ImmutableArray<PlanePoint> corners,
        string name,
        GeoPoint? origin,
        double meanLatitudeDegrees,
        ImmutableArray<Finding> noticed,
        bool isPart = false
    )
    {
        squareFeet = LandMath.SignedSquareFeet(corners.AsSpan());
        perimeterFeet = LandMath.PerimeterFeet(corners.AsSpan());
        this.meanLatitudeDegrees = meanLatitudeDegrees;
        Corners = corners;
        Name = name;
        Origin = origin;
        this.noticed = noticed;
        this.isPart = isPart;
    }

    /// <summary>Gets the name of the plot; may be empty.</summary>
    public string Name { get; }

    /// <summary>Gets the corners, counter-clockwise, the first not repeated.</summary>
    public ImmutableArray<PlanePoint> Corners { get; }

    /// <summary>Gets the place of the plane's zero point, or null for an outline that is not placed on the earth.</summary>
    public GeoPoint? Origin { get; }

    /// <summary>Gets the enclosed area on the level: the map area.</summary>
    public Area Area => Area.FromSquareFeet(squareFeet);

    /// <summary>Gets the length of all sides.</summary>
    public Length Perimeter => Length.FromFeet(perimeterFeet);

    /// <summary>Gets a value indicating whether no corner points inwards.</summary>
    public bool IsConvex
    {
        get
        {
            for (int i = 0; i < Corners.Length; i++)
            {
                if (LandMath.Cross(Corners[i], Corners[(i + 1) % Corners.Length], Corners[(i + 2) % Corners.Length]) < 0)
                {
                    return false;
                }
            }

            return true;
        }
    }

    /// <summary>Gets what was noticed while reading the outline.</summary>
    public ImmutableArray<Finding> Findings => Finding.InOrder(Remarks());

    /// <summary>The fixes as they were given, with those that cleaning took out.</summary>
    internal ImmutableArray<GeoPoint> Fixes { get; private init; } = [];

    /// <summary>Shape whose slant the sides measured leave open, such as a trapezoid; null where they do not.</summary>
    internal string? AssumedShape { get; private init; }

    internal double SquareFeet => squareFeet;

    internal double PerimeterFeet => perimeterFeet;

    /// <summary>An outline from the corners of a map or drawing, in either direction.</summary>
    /// <param name="corners">At least three places; repeating the first at the end is allowed.</param>
    /// <param name="name">Name of the plot; may be empty.</param>
    /// <returns>The outline.</returns>
    /// <exception cref="ArgumentException">Fewer than three different corners, no area, or sides that cross.</exception>
    public static PlotOutline FromCorners(IReadOnlyList<PlanePoint> corners, string name = "")
    {
        ArgumentNullException.ThrowIfNull(corners);
        ArgumentNullException.ThrowIfNull(name);
        return OutlineCleaning.TryCorners(corners, out var clean, out string problem)
            ? new PlotOutline(clean, name, null, 0, [])
            : throw new ArgumentException(problem, nameof(corners));
    }

    /// <summary>An outline from corners or a walked track in latitude and longitude, in either direction.</summary>
    /// <param name="fixes">At least three places; repeating the first at the end is allowed.</param>
    /// <param name="name">Name of the plot; may be empty.</param>
    /// <returns>The outline on a plane at the mean latitude, zero at the first fix.</returns>
    /// <exception cref="ArgumentException">Fewer than three different places, no area, or
    /// sides that cross in more than small loops.</exception>
    /// <remarks>WGS84; east = (longitude difference) N cos(mean latitude), north = (latitude difference) M, with N = a / w,
    /// M = a (1 - e2) / w3, w = root(1 - e2 sin2(mean latitude)). Source SPREAD-S36; within 20 parts per million of the
    /// geodesic area up to 160 acres. Loops of a track at most a fiftieth of the outline are cut away with a finding.</remarks>
    public static PlotOutline FromFixes(IReadOnlyList<GeoPoint> fixes, string name = "")
    {
        Guard.NotEmpty(fixes);
        ArgumentNullException.ThrowIfNull(name);
        return TryFromFixes(fixes, name, [], out string problem) ?? throw new ArgumentException(problem, nameof(fixes));
    }

    /// <summary>A rectangle with one corner at zero, its length to the east and its width to the north.</summary>
    /// <param name="length">Finite, above 0.</param>
    /// <param name="width">Finite, above 0.</param>
    /// <param name="name">Name of the plot; may be empty.</param>
    /// <returns>The outline.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static PlotOutline Rectangle(Length length, Length width, string name = "")
    {
        double lengthFeet = length.Feet;
        double widthFeet = width.Feet;
        Guard.Above(lengthFeet, 0, "ft", nameof(length));
        Guard.Above(widthFeet, 0, "ft", nameof(width));
        return FromCorners([new(0, 0), new(lengthFeet, 0), new(lengthFeet, widthFeet), new(0, widthFeet)], name);
    }

    /// <summary>The one shape with both ends alike out of those that the measured sides allow.</summary>
    internal static PlotOutline LikeEnded(string shape, ImmutableArray<PlanePoint> corners) =>
        new(corners, "", null, 0, []) { AssumedShape = shape };

    /// <summary>Latitude and longitude of a place on the plot's plane.</summary>
    /// <param name="place">Place on the plane.</param>
    /// <returns>The place on the earth, or null when the outline has no <see cref="Origin"/>.</returns>
    public GeoPoint? Locate(PlanePoint place) =>
        Origin is not { } origin
            ? null
            : GeoPoint.FromDegrees(
                LandMath.LatitudeDegrees(place.NorthFeet, origin.LatitudeDegrees, meanLatitudeDegrees),
                LandMath.LongitudeDegrees(place.EastFeet, origin.LongitudeDegrees, meanLatitudeDegrees)
            );

    /// <summary>Whether a place lies inside the outline.</summary>
    /// <param name="place">Place on the plane.</param>
    /// <returns>True inside; on the line itself either answer may come.</returns>
    public bool Contains(PlanePoint place) => LandMath.Contains(Corners.AsSpan(), place);

    /// <summary>The outline of fixes with what was noticed while reading them; null when there is a problem.</summary>
    internal static PlotOutline? TryFromFixes(
        IReadOnlyList<GeoPoint> fixes,
        string name,
        IEnumerable<Finding> noticed,
        out string problem
    )
    {
        var origin = fixes[0];
        double mean = fixes.Average(f => f.LatitudeDegrees);
        var places = fixes
            .Select(f => new PlanePoint(
                LandMath.EastFeet(f.LongitudeDegrees, origin.LongitudeDegrees, mean),
                LandMath.NorthFeet(f.LatitudeDegrees, origin.LatitudeDegrees, mean)
            ))
            .ToList();
        return OutlineCleaning.TryTrack(places, out var corners, out var findings, out problem)
            ? new PlotOutline(corners, name, origin, mean, [.. noticed, .. findings]) { Fixes = [.. fixes] }
            : null;
    }

    /// <summary>A ring on the same plane.</summary>
    internal PlotOutline Part(ImmutableArray<PlanePoint> ring) => new(ring, Name, Origin, meanLatitudeDegrees, [], isPart: true);

    /// <summary>What the corners and the place show; a part of an outline is not remarked on again.</summary>
    private IEnumerable<Finding> Remarks()
    {
        if (isPart)
        {
            return [];
        }

        bool onEarth = Origin is not null;
        return
        [
            .. noticed,
            .. OutlineRemarks.OfSize(Corners, onEarth),
            .. onEarth ? OutlineRemarks.OfPlace(meanLatitudeDegrees) : [],
            .. OutlineRemarks.OfShape(AssumedShape),
        ];
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Amounts.Print(Area, decimals: 3)} in {Amounts.Print(Corners.Length, 0)} corners";
}
