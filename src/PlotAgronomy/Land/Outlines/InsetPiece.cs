namespace PlotAgronomy.Land;

/// <summary>A piece of the line at a strip's distance from a ring: straight, or an arc
/// walked clockwise round an inward corner.</summary>
/// <param name="Start">Where it starts.</param>
/// <param name="End">Where it ends.</param>
/// <param name="Center">The inward corner of an arc; null when straight.</param>
/// <param name="Side">Number of the side it comes from, or that ends in its corner.</param>
internal readonly record struct InsetPiece(PlanePoint Start, PlanePoint End, PlanePoint? Center, int Side)
{
    /// <summary>An arc is drawn in chords of at most this turn.</summary>
    private const double ChordRadians = Math.PI / 90;

    /// <summary>An arc is worked in pieces of at most this turn.</summary>
    private const double PieceRadians = Math.PI / 30;

    /// <summary>Radians turned clockwise from start to end of an arc.</summary>
    private double Turn => Center is { } center ? Clockwise(Angle(center, Start), Angle(center, End)) : 0;

    /// <summary>Most that an arc departs from its chord.</summary>
    internal double RiseFeet(double radiusFeet) => radiusFeet * (1 - Math.Cos(Math.Min(Turn, Math.PI) / 2));

    internal PlanePoint Middle(double radiusFeet) => At(0.5, radiusFeet);

    /// <summary>The start and, on an arc, the places between its chords.</summary>
    internal IEnumerable<PlanePoint> Places(double radiusFeet)
    {
        yield return Start;
        int chords = (int)Math.Ceiling(Turn / ChordRadians);
        for (int k = 1; k < chords; k++)
        {
            yield return At((double)k / chords, radiusFeet);
        }
    }

    /// <summary>A long arc in short ones.</summary>
    internal IEnumerable<InsetPiece> Shortened(double radiusFeet)
    {
        int count = Math.Max(1, (int)Math.Ceiling(Turn / PieceRadians));
        var from = Start;
        for (int k = 1; k <= count; k++)
        {
            var to = k == count ? End : At((double)k / count, radiusFeet);
            yield return this with
            {
                Start = from,
                End = to,
            };
            from = to;
        }
    }

    internal (double West, double East, double South, double North) Box(double radiusFeet) =>
        Center is { } c
            ? (c.EastFeet - radiusFeet, c.EastFeet + radiusFeet, c.NorthFeet - radiusFeet, c.NorthFeet + radiusFeet)
            : (
                Math.Min(Start.EastFeet, End.EastFeet),
                Math.Max(Start.EastFeet, End.EastFeet),
                Math.Min(Start.NorthFeet, End.NorthFeet),
                Math.Max(Start.NorthFeet, End.NorthFeet)
            );

    /// <summary>Where two pieces cross: part of the way along each, and the place.</summary>
    internal static IEnumerable<(double First, double Second, PlanePoint Place)> Cross(
        InsetPiece first,
        InsetPiece second,
        double radiusFeet
    )
    {
        var places = (first.Center, second.Center) switch
        {
            (null, null) => LineWithLine(first, second),
            ({ } center, null) => LineWithCircle(second, center, radiusFeet),
            (null, { } center) => LineWithCircle(first, center, radiusFeet),
            ({ } one, { } other) => CircleWithCircle(one, other, radiusFeet),
        };
        foreach (var place in places)
        {
            double onFirst = first.PartOf(place),
                onSecond = second.PartOf(place);
            if (onFirst > 0 && onFirst < 1 && onSecond > 0 && onSecond < 1)
            {
                yield return (onFirst, onSecond, place);
            }
        }
    }

    private static IEnumerable<PlanePoint> LineWithLine(InsetPiece first, InsetPiece second)
    {
        double start = LandMath.Cross(second.Start, second.End, first.Start),
            end = LandMath.Cross(second.Start, second.End, first.End);
        return start > 0 == end > 0 ? [] : [LandMath.Along(first.Start, first.End, start / (start - end))];
    }

    private static IEnumerable<PlanePoint> LineWithCircle(InsetPiece line, PlanePoint center, double radiusFeet)
    {
        double east = line.End.EastFeet - line.Start.EastFeet,
            north = line.End.NorthFeet - line.Start.NorthFeet;
        double fromEast = line.Start.EastFeet - center.EastFeet,
            fromNorth = line.Start.NorthFeet - center.NorthFeet;
        double square = east * east + north * north,
            half = fromEast * east + fromNorth * north;
        double root = half * half - square * (fromEast * fromEast + fromNorth * fromNorth - radiusFeet * radiusFeet);
        return root <= 0
            ? []
            :
            [
                LandMath.Along(line.Start, line.End, (-half - Math.Sqrt(root)) / square),
                LandMath.Along(line.Start, line.End, (-half + Math.Sqrt(root)) / square),
            ];
    }

    private static IEnumerable<PlanePoint> CircleWithCircle(PlanePoint one, PlanePoint other, double radiusFeet)
    {
        double apart = LandMath.DistanceFeet(one, other);
        if (apart == 0 || apart >= 2 * radiusFeet)
        {
            return [];
        }

        var middle = LandMath.Along(one, other, 0.5);
        double across = Math.Sqrt(radiusFeet * radiusFeet - apart * apart / 4) / apart;
        double east = -(other.NorthFeet - one.NorthFeet) * across,
            north = (other.EastFeet - one.EastFeet) * across;
        return [new(middle.EastFeet + east, middle.NorthFeet + north), new(middle.EastFeet - east, middle.NorthFeet - north)];
    }

    /// <summary>How far along the piece a place on its line or circle lies; from 0 to 1 when on the piece.</summary>
    private double PartOf(PlanePoint place)
    {
        if (Center is { } center)
        {
            return Clockwise(Angle(center, Start), Angle(center, place)) / Turn;
        }

        double east = End.EastFeet - Start.EastFeet,
            north = End.NorthFeet - Start.NorthFeet;
        return ((place.EastFeet - Start.EastFeet) * east + (place.NorthFeet - Start.NorthFeet) * north)
            / (east * east + north * north);
    }

    private PlanePoint At(double part, double radiusFeet)
    {
        if (Center is not { } center)
        {
            return LandMath.Along(Start, End, part);
        }

        double angle = Angle(center, Start) - part * Turn;
        return new PlanePoint(center.EastFeet + radiusFeet * Math.Cos(angle), center.NorthFeet + radiusFeet * Math.Sin(angle));
    }

    private static double Angle(PlanePoint center, PlanePoint place) =>
        Math.Atan2(place.NorthFeet - center.NorthFeet, place.EastFeet - center.EastFeet);

    private static double Clockwise(double from, double to) => from - to - 2 * Math.PI * Math.Floor((from - to) / (2 * Math.PI));
}
