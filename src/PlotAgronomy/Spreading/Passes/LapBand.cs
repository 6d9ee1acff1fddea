using System.Collections.Immutable;
using PlotAgronomy.Land;

namespace PlotAgronomy.Spreading;

/// <summary>The ground within half a swath of a headland lap, cut by lines along the passes from the lowest up.</summary>
internal sealed class LapBand
{
    private readonly record struct Side(double Along, double Across, double ToAlong, double ToAcross)
    {
        internal double Low => Math.Min(Across, ToAcross);

        internal double High => Math.Max(Across, ToAcross);
    }

    private readonly Side[] sides;
    private readonly double reach;
    private readonly List<Side> active = [];
    private int waiting;

    internal LapBand(ImmutableArray<PlotOutline> lap, double reachFeet, StripSpans turned)
    {
        reach = reachFeet;
        sides =
        [
            .. lap.SelectMany(l => l.Corners.Zip([.. l.Corners.Skip(1), l.Corners[0]]))
                .Select(s => (From: turned.Turned(s.First), To: turned.Turned(s.Second)))
                .Select(s => new Side(s.From.Along, s.From.Across, s.To.Along, s.To.Across))
                .OrderBy(s => s.Low),
        ];
    }

    /// <summary>The stretches of a line within reach of the lap; each call must lie above the one before.</summary>
    internal IEnumerable<(double Low, double High)> On(double lineFeet)
    {
        while (waiting < sides.Length && sides[waiting].Low - reach < lineFeet)
        {
            active.Add(sides[waiting++]);
        }

        active.RemoveAll(s => s.High + reach <= lineFeet);
        return active.Select(s => Cut(s, lineFeet));
    }

    /// <summary>The stretch of a line within reach of a side: it runs from edge to edge of a strip with round ends.</summary>
    private (double Low, double High) Cut(Side side, double line)
    {
        double low = double.PositiveInfinity,
            high = double.NegativeInfinity;
        Round(side.Along, side.Across);
        Round(side.ToAlong, side.ToAcross);
        double along = side.ToAlong - side.Along,
            across = side.ToAcross - side.Across;
        double length = Math.Sqrt(along * along + across * across);
        if (across != 0)
        {
            Straight(1);
            Straight(-1);
        }

        return (low, high);

        void Round(double centerAlong, double centerAcross)
        {
            double off = line - centerAcross,
                square = reach * reach - off * off;
            if (square > 0)
            {
                Take(centerAlong - Math.Sqrt(square));
                Take(centerAlong + Math.Sqrt(square));
            }
        }

        void Straight(int hand)
        {
            double startAlong = side.Along - hand * across / length * reach,
                startAcross = side.Across + hand * along / length * reach;
            double part = (line - startAcross) / across;
            if (part is >= 0 and <= 1)
            {
                Take(startAlong + part * along);
            }
        }

        void Take(double place)
        {
            low = Math.Min(low, place);
            high = Math.Max(high, place);
        }
    }
}
