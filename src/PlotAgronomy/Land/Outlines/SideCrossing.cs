namespace PlotAgronomy.Land;

/// <summary>Where two sides meet.</summary>
internal static class SideCrossing
{
    /// <summary>A place that side a-b and side c-d share; null when there is none.</summary>
    /// <param name="a">Start of the first side.</param>
    /// <param name="b">End of the first side.</param>
    /// <param name="c">Start of the second side.</param>
    /// <param name="d">End of the second side.</param>
    /// <param name="neighbours">The sides share a corner by design: only doubling back counts.</param>
    internal static PlanePoint? Find(PlanePoint a, PlanePoint b, PlanePoint c, PlanePoint d, bool neighbours)
    {
        double cSide = LandMath.Cross(a, b, c),
            dSide = LandMath.Cross(a, b, d);
        double aSide = LandMath.Cross(c, d, a),
            bSide = LandMath.Cross(c, d, b);
        if (neighbours)
        {
            // They share corner b = c, or d = a, and meet again only when one lies back along the other: the nearer far end
            // is the place.
            bool onward = b == c;
            var (corner, back, ahead) = onward ? (b, a, d) : (a, c, b);
            return LandMath.Cross(corner, back, ahead) == 0 && Dot(corner, back, ahead) > 0
                ? LandMath.DistanceFeet(corner, back) < LandMath.DistanceFeet(corner, ahead)
                    ? back
                    : ahead
                : null;
        }

        if (cSide == 0 && dSide == 0)
        {
            // On one line: they meet when an end of one lies within the other.
            return Within(a, b, c) ? c
                : Within(a, b, d) ? d
                : Within(c, d, a) ? a
                : null;
        }

        bool split = (cSide > 0) != (dSide > 0) || cSide == 0 || dSide == 0;
        bool splits = (aSide > 0) != (bSide > 0) || aSide == 0 || bSide == 0;
        if (!split || !splits)
        {
            return null;
        }

        return LandMath.Along(c, d, cSide / (cSide - dSide));
    }

    private static double Dot(PlanePoint corner, PlanePoint p, PlanePoint q) =>
        (p.EastFeet - corner.EastFeet) * (q.EastFeet - corner.EastFeet)
        + (p.NorthFeet - corner.NorthFeet) * (q.NorthFeet - corner.NorthFeet);

    private static bool Within(PlanePoint a, PlanePoint b, PlanePoint p) => Dot(p, a, b) <= 0;
}
