using System.Collections.Immutable;
using PlotAgronomy.Land;

namespace PlotAgronomy.Spreading;

/// <summary>What lap and passes do to the ground, in square feet: measured once from where they lie, for load, findings and
/// picture alike.</summary>
/// <param name="Thrown">Ground the seed of lap and passes would cover once: length x width of each.</param>
/// <param name="Missed">Ground of the plot that neither lap nor passes reach.</param>
/// <param name="Outside">Ground beside the plot that is sown.</param>
/// <param name="SownTwice">Ground of the plot that is sown once more: what is thrown, less what is covered and what falls
/// outside.</param>
/// <remarks>A lap reaches half a swath to either side of its line, a pass half a spacing. Lines across the plot are cut
/// exactly, in
/// many lines for each strip, and summed.</remarks>
internal readonly record struct SeededGround(double Thrown, double Missed, double Outside, double SownTwice)
{
    private const int LinesInAll = 3000;
    private const int LeastLines = 4;

    /// <summary>Ground under passes that cover the whole plot, each place at most once.</summary>
    internal static SeededGround WithoutLap(double plotSquareFeet, double thrownSquareFeet) =>
        new(thrownSquareFeet, 0, Math.Max(0, thrownSquareFeet - plotSquareFeet), 0);

    /// <summary>Ground under a lap and the passes inside it.</summary>
    internal static SeededGround WithLap(
        PlotOutline outline,
        ImmutableArray<PlotOutline> lap,
        double swathFeet,
        PassLayout? layout
    )
    {
        var spans = new StripSpans([outline.Corners]);
        spans.Turn(layout?.Direction.AlongDegrees ?? 0);
        spans.StartBelow();
        double spacing = layout?.Direction.SpacingFeet ?? swathFeet;
        var strips = (layout?.Stretches ?? []).ToLookup(s => s.Strip, s => (s.Low, s.High));
        double lowest = layout?.Stretches.Min(s => s.Middle) - spacing / 2 ?? spans.HighFeet,
            highest = layout?.Stretches.Max(s => s.Middle) + spacing / 2 ?? spans.HighFeet;
        int count = layout is null ? 0 : (int)Math.Round((highest - lowest) / spacing, MidpointRounding.AwayFromZero);
        var band = new LapBand(lap, swathFeet / 2, spans);
        int zones = count + 2,
            lines = Math.Max(LeastLines, LinesInAll / zones);
        double missed = 0,
            outside = 0;
        for (int zone = 0; zone < zones; zone++)
        {
            double from = zone == 0 ? Math.Min(spans.LowFeet, lowest) : lowest + (zone - 1) * spacing,
                to = zone == zones - 1 ? Math.Max(spans.HighFeet, highest) : lowest + zone * spacing;
            double step = (to - from) / lines;
            (double Low, double High)[] sown = [.. strips[zone - 1].Order()];
            for (int i = 0; step > 0 && i < lines; i++)
            {
                double line = from + (i + 0.5) * step;
                var inside = Pairs(spans.On(line));
                outside += step * LineCuts.Without(sown, inside);
                missed += step * LineCuts.Without(inside, LineCuts.Joined([.. sown, .. band.On(line)]));
            }
        }

        double lapFeet = lap.Sum(l => l.PerimeterFeet),
            thrown = SpreaderMath.ThrownSquareFeet(lapFeet, swathFeet) + (layout?.Direction.ThrownSquareFeet ?? 0);
        return new(thrown, missed, outside, Math.Max(0, thrown - outside - (outline.Area.SquareFeet - missed)));
    }

    private static (double Low, double High)[] Pairs(List<double> crossings)
    {
        var pairs = new (double Low, double High)[crossings.Count / 2];
        for (int i = 0; i < pairs.Length; i++)
        {
            pairs[i] = (crossings[2 * i], crossings[2 * i + 1]);
        }

        return pairs;
    }
}
