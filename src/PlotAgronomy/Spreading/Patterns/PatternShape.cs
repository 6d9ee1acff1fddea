using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>What can be read off the outline of a single pass: its height, throw, lean and widths.</summary>
internal static class PatternShape
{
    internal static double Highest(SpreadPattern pattern) => Profile(pattern).Max(a => a.Amount);

    internal static double Throw(SpreadPattern pattern)
    {
        var thrown = Profile(pattern).Where(a => a.Amount > 0).ToList();
        double step = PatternMath.Samples(pattern).Step;
        return Math.Min(thrown[^1].Feet + step, pattern.RightFeet) - Math.Max(thrown[0].Feet - step, pattern.LeftFeet);
    }

    /// <summary>The catches, each by its place, and all of them: the one over the other is the centre of mass.</summary>
    internal static (double Moment, double Caught) Weights(SpreadPattern pattern)
    {
        var all = Profile(pattern).ToList();
        return (all.Sum(a => a.Feet * a.Amount), all.Sum(a => a.Amount));
    }

    /// <summary>Mean between the highest tray left of the path and the highest right of it, the outer one of equals.</summary>
    internal static double Middle(SpreadPattern pattern)
    {
        var all = Profile(pattern).ToList();
        var left = all.Where(a => a.Feet <= 0).Aggregate(all[0], (best, a) => a.Amount > best.Amount ? a : best);
        var right = all.Where(a => a.Feet >= 0).Reverse().Aggregate(all[^1], (best, a) => a.Amount > best.Amount ? a : best);
        return all.Where(a => a.Feet >= left.Feet && a.Feet <= right.Feet).Average(a => a.Amount);
    }

    /// <summary>Width of a pattern that reaches so far to the right and to the left of the path.</summary>
    internal static double Width(double reachRight, double reachLeft) => reachRight + reachLeft;

    internal static double HalfThrow(double wholeThrow) => wholeThrow / 2;

    private static IEnumerable<(double Feet, double Amount)> Profile(SpreadPattern pattern)
    {
        var (first, step, count) = PatternMath.Samples(pattern);
        return Enumerable.Range(0, count).Select(i => (first + (i * step), pattern.AmountAt(first + (i * step))));
    }
}
