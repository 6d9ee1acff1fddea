using FsCheck;
using FsCheck.Fluent;
using PlotAgronomy.Land;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Land;

/// <summary>Outlines for the properties.</summary>
public static class LandArbitraries
{
    public static Arbitrary<PlotOutline> Outlines() => Arb.From(
        from corners in Gen.Choose(3, 14)
        from radii in Gen.Choose(30, 300).ArrayOf(corners)
        from start in Gen.Choose(0, 359)
        select Star(radii, start));

    public static Arbitrary<ConvexOutline> ConvexOutlines() => Arb.From(
        from corners in Gen.Choose(3, 9)
        from longHalf in Gen.Choose(40, 300)
        from shortHalf in Gen.Choose(40, 300)
        from start in Gen.Choose(0, 359)
        select new ConvexOutline(OnEllipse(corners, longHalf, shortHalf, start)));

    /// <summary>A ring that is seen whole from its middle: it never crosses itself, but has inward corners.</summary>
    public static PlotOutline Star(int[] radii, int startDegrees) =>
        PlotOutline.FromCorners([.. radii.Select((r, i) => Polar(r, startDegrees + 360.0 * i / radii.Length))]);

    public static PlotOutline OnEllipse(int corners, double longHalf, double shortHalf, double startDegrees) =>
        PlotOutline.FromCorners([.. Enumerable.Range(0, corners).Select(i =>
        {
            double angle = (startDegrees + 360.0 * i / corners) * Math.PI / 180;
            return PlanePoint.FromFeet(longHalf * Math.Cos(angle), shortHalf * Math.Sin(angle));
        })]);

    private static PlanePoint Polar(double feet, double degrees) =>
        PlanePoint.FromFeet(feet * Math.Cos(degrees * Math.PI / 180), feet * Math.Sin(degrees * Math.PI / 180));
}

/// <summary>An outline without inward corners.</summary>
/// <param name="Outline">The outline.</param>
public sealed record ConvexOutline(PlotOutline Outline);
