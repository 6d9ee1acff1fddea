namespace PlotAgronomy.Land;

/// <summary>Kernels of the room: doubles in, doubles out, units in the names.</summary>
internal static class LandMath
{
    private static readonly double EquatorialRadiusMeters = LandConstants.All["equatorial-radius-meters"];
    private static readonly double Flattening = 1 / LandConstants.All["inverse-flattening"];
    private static readonly double EccentricitySquared = Flattening * (2 - Flattening);

    private const double RadiansPerDegree = Math.PI / 180;

    internal static double RectangleSquareFeet(double lengthFeet, double widthFeet) => lengthFeet * widthFeet;

    internal static double TriangleSquareFeet(double baseFeet, double heightFeet) => baseFeet * heightFeet / 2;

    internal static double TrapezoidSquareFeet(double aFeet, double bFeet, double distanceFeet) =>
        (aFeet + bFeet) / 2 * distanceFeet;

    /// <summary>A circle has two equal halves.</summary>
    internal static double EllipseSquareFeet(double longHalfFeet, double shortHalfFeet) => Math.PI * longHalfFeet * shortHalfFeet;

    internal static double TriangleSquareFeet(double aFeet, double bFeet, double cFeet)
    {
        // Sorted and bracketed so that thin triangles keep their digits: 16 A2 = (a+(b+c))(c-(a-b))(c+(a-b))(a+(b-c)),
        // a >= b >= c.
        Span<double> sides = [aFeet, bFeet, cFeet];
        sides.Sort();
        double c = sides[0],
            b = sides[1],
            a = sides[2];
        double product = (a + (b + c)) * (c - (a - b)) * (c + (a - b)) * (a + (b - c));
        return Math.Sqrt(product) / 4;
    }

    /// <summary>What a triangle's area changes by for a foot more of its first side: a (b2 + c2 - a2) / (8 area).</summary>
    internal static double TriangleAreaPerFoot(double aFeet, double bFeet, double cFeet, double squareFeet) =>
        aFeet * (bFeet * bFeet + cFeet * cFeet - aFeet * aFeet) / (8 * squareFeet);

    /// <summary>Angle in radians between two sides of a triangle, by the side that faces it.</summary>
    internal static double AngleBetween(double aFeet, double bFeet, double facingFeet) =>
        Math.Acos(Math.Clamp((aFeet * aFeet + bFeet * bFeet - facingFeet * facingFeet) / (2 * aFeet * bFeet), -1, 1));

    internal static double LShapeSquareFeet(
        double lengthFeet,
        double widthFeet,
        double missingLengthFeet,
        double missingWidthFeet
    ) => lengthFeet * widthFeet - missingLengthFeet * missingWidthFeet;

    internal static double PiecesSquareFeet(double addedSquareFeet, double takenOffSquareFeet) =>
        addedSquareFeet - takenOffSquareFeet;

    internal static double StraightEdgedStripSquareFeet(double spacingFeet, ReadOnlySpan<double> widthsFeet)
    {
        double sum = -(widthsFeet[0] + widthsFeet[^1]) / 2;
        foreach (double width in widthsFeet)
        {
            sum += width;
        }

        return spacingFeet * sum;
    }

    internal static double SmoothEdgedStripSquareFeet(double spacingFeet, ReadOnlySpan<double> widthsFeet)
    {
        double sum = widthsFeet[0] + widthsFeet[^1];
        for (int i = 1; i < widthsFeet.Length - 1; i++)
        {
            sum += (i % 2 == 1 ? 4 : 2) * widthsFeet[i];
        }

        return spacingFeet / 3 * sum;
    }

    /// <summary>Signed area; counter-clockwise is positive. Taken about the first corner,
    /// so that far-away zeros cost no digits.</summary>
    internal static double SignedSquareFeet(ReadOnlySpan<PlanePoint> corners)
    {
        double twice = 0;
        for (int i = 1; i + 1 < corners.Length; i++)
        {
            twice += Cross(corners[0], corners[i], corners[i + 1]);
        }

        return twice / 2;
    }

    internal static double PerimeterFeet(ReadOnlySpan<PlanePoint> corners)
    {
        double feet = 0;
        for (int i = 0; i < corners.Length; i++)
        {
            feet += DistanceFeet(corners[i], corners[(i + 1) % corners.Length]);
        }

        return feet;
    }

    internal static double DistanceFeet(PlanePoint a, PlanePoint b)
    {
        double east = b.EastFeet - a.EastFeet,
            north = b.NorthFeet - a.NorthFeet;
        return Math.Sqrt(east * east + north * north);
    }

    /// <summary>The place a part of the way from a to b.</summary>
    internal static PlanePoint Along(PlanePoint a, PlanePoint b, double part) =>
        new(a.EastFeet + part * (b.EastFeet - a.EastFeet), a.NorthFeet + part * (b.NorthFeet - a.NorthFeet));

    /// <summary>Cross product of a to b and a to c: above zero when c lies to the left of the line from a to b.</summary>
    internal static double Cross(PlanePoint a, PlanePoint b, PlanePoint c) =>
        (b.EastFeet - a.EastFeet) * (c.NorthFeet - a.NorthFeet) - (b.NorthFeet - a.NorthFeet) * (c.EastFeet - a.EastFeet);

    /// <summary>Feet from a point to the nearest point of a segment.</summary>
    internal static double DistanceFeet(PlanePoint point, PlanePoint start, PlanePoint end)
    {
        double east = end.EastFeet - start.EastFeet,
            north = end.NorthFeet - start.NorthFeet;
        double square = east * east + north * north;
        double along =
            square > 0
                ? Math.Clamp(
                    ((point.EastFeet - start.EastFeet) * east + (point.NorthFeet - start.NorthFeet) * north) / square,
                    0,
                    1
                )
                : 0;
        return DistanceFeet(point, new PlanePoint(start.EastFeet + along * east, start.NorthFeet + along * north));
    }

    /// <summary>Whether a place lies inside a ring: a line to the east crosses an odd number of sides.</summary>
    internal static bool Contains(ReadOnlySpan<PlanePoint> ring, PlanePoint place)
    {
        bool inside = false;
        for (int i = 0, j = ring.Length - 1; i < ring.Length; j = i++)
        {
            var (a, b) = (ring[i], ring[j]);
            if (
                a.NorthFeet > place.NorthFeet != b.NorthFeet > place.NorthFeet
                && place.EastFeet
                    < (b.EastFeet - a.EastFeet) * (place.NorthFeet - a.NorthFeet) / (b.NorthFeet - a.NorthFeet) + a.EastFeet
            )
            {
                inside = !inside;
            }
        }

        return inside;
    }

    /// <summary>First-order standard deviation of a polygon's area when every corner errs independently by sigma on each axis:
    /// sigma / 2 x sqrt(sum of |next corner - previous corner| squared).</summary>
    internal static double AreaDeviationSquareFeet(ReadOnlySpan<PlanePoint> corners, double sigmaFeet)
    {
        double sum = 0;
        for (int i = 0; i < corners.Length; i++)
        {
            double chord = DistanceFeet(corners[(i + corners.Length - 1) % corners.Length], corners[(i + 1) % corners.Length]);
            sum += chord * chord;
        }

        return sigmaFeet / 2 * Math.Sqrt(sum);
    }

    /// <summary>Area less one standard deviation, never below 0.</summary>
    internal static double LowArea(double area, double relativeError) => area * Math.Max(0, 1 - relativeError);

    internal static double HighArea(double area, double relativeError) => area * (1 + relativeError);

    /// <summary>Ground length over map length: 1 / cos(slope).</summary>
    internal static double GroundPerMap(double risePerRun) => Math.Sqrt(1 + risePerRun * risePerRun);

    internal static double GroundArea(double mapArea, double risePerRun) => mapArea * GroundPerMap(risePerRun);

    internal static double StripSquareFeet(double plotSquareFeet, double insideSquareFeet) => plotSquareFeet - insideSquareFeet;

    internal static double StepFeet(double courseFeet, double meanSteps) => courseFeet / meanSteps;

    internal static double StepError(double walkScatter, double walks) => walkScatter / Math.Sqrt(walks);

    internal static double PacedFeet(double steps, double stepFeet) => steps * stepFeet;

    /// <summary>Radius of curvature along the meridian, M.</summary>
    internal static double MeridianRadiusMeters(double latitudeDegrees)
    {
        double w = CurvatureTerm(latitudeDegrees);
        return EquatorialRadiusMeters * (1 - EccentricitySquared) / (w * w * w);
    }

    /// <summary>Radius of the circle of latitude, N cos(latitude).</summary>
    internal static double ParallelRadiusMeters(double latitudeDegrees) =>
        EquatorialRadiusMeters / CurvatureTerm(latitudeDegrees) * Math.Cos(latitudeDegrees * RadiansPerDegree);

    internal static double EastFeet(double longitudeDegrees, double originLongitudeDegrees, double meanLatitudeDegrees) =>
        ShortestTurnDegrees(longitudeDegrees - originLongitudeDegrees)
        * RadiansPerDegree
        * ParallelRadiusMeters(meanLatitudeDegrees)
        / ExactUnits.MetersPerFoot;

    internal static double NorthFeet(double latitudeDegrees, double originLatitudeDegrees, double meanLatitudeDegrees) =>
        (latitudeDegrees - originLatitudeDegrees)
        * RadiansPerDegree
        * MeridianRadiusMeters(meanLatitudeDegrees)
        / ExactUnits.MetersPerFoot;

    internal static double LatitudeDegrees(double northFeet, double originLatitudeDegrees, double meanLatitudeDegrees) =>
        originLatitudeDegrees
        + northFeet * ExactUnits.MetersPerFoot / MeridianRadiusMeters(meanLatitudeDegrees) / RadiansPerDegree;

    internal static double LongitudeDegrees(double eastFeet, double originLongitudeDegrees, double meanLatitudeDegrees) =>
        ShortestTurnDegrees(
            originLongitudeDegrees
                + eastFeet * ExactUnits.MetersPerFoot / ParallelRadiusMeters(meanLatitudeDegrees) / RadiansPerDegree
        );

    private static double CurvatureTerm(double latitudeDegrees)
    {
        double sine = Math.Sin(latitudeDegrees * RadiansPerDegree);
        return Math.Sqrt(1 - EccentricitySquared * sine * sine);
    }

    /// <summary>The same angle from -180 to 180, so that a plot may lie across the 180th meridian.</summary>
    private static double ShortestTurnDegrees(double degrees) => degrees - 360 * Math.Floor((degrees + 180) / 360);
}
