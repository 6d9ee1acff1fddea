using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>Kernels of the overlap of passes.</summary>
internal static class PatternMath
{
    /// <summary>Positions in one period of a pattern given by a formula.</summary>
    private const int FormulaPositions = 8000;

    /// <summary>Positions between two trays when the swath does not fall on the trays.</summary>
    private const int BetweenTrays = 8;

    internal static readonly double SquareRootOfTwo = Math.Sqrt(2);

    /// <summary>A swath for which the passes over one place can be summed.</summary>
    internal static double SwathFeet(SpreadPattern pattern, Length swath)
    {
        double feet = swath.Feet;
        double reach = Math.Max(Math.Abs(pattern.LeftFeet), Math.Abs(pattern.RightFeet));
        double least = Math.Max(SpreadingConstants.All["swath-low"], reach / SpreadingConstants.All["reach-swaths"]);
        return Guard.Between(feet, least, SpreadingConstants.All["swath-high"], "ft", nameof(swath));
    }

    /// <summary>Whether passes a swath apart lay trays exactly on trays.</summary>
    internal static bool FallsOnTrays(SpreadPattern pattern, double swathFeet, DrivingMethod driving) =>
        pattern.IsMeasured
        && IsWhole(swathFeet / pattern.SpacingFeet)
        && (driving == DrivingMethod.OneDirection || IsWhole(2 * pattern.LeftFeet / pattern.SpacingFeet));

    /// <summary>First position, step and number of positions over one period: one swath in one direction, two back and
    /// forth.</summary>
    internal static (double First, double Step, int Count) Positions(
        SpreadPattern pattern,
        double swathFeet,
        DrivingMethod driving
    )
    {
        double period = driving == DrivingMethod.OneDirection ? swathFeet : 2 * swathFeet;
        if (FallsOnTrays(pattern, swathFeet, driving))
        {
            return (
                pattern.LeftFeet,
                pattern.SpacingFeet,
                (int)Math.Round(period / pattern.SpacingFeet, MidpointRounding.AwayFromZero)
            );
        }

        int count = pattern.IsMeasured
            ? checked((int)Math.Ceiling(period / pattern.SpacingFeet * BetweenTrays))
            : FormulaPositions;
        double step = period / count;
        return (step / 2, step, count);
    }

    /// <summary>Sum of all passes at a position.</summary>
    internal static double Overlapped(SpreadPattern pattern, double feet, double swathFeet, DrivingMethod driving)
    {
        var (from, to) = PassesOver(pattern, feet, swathFeet);
        double sum = 0;
        for (int pass = from; pass <= to; pass++)
        {
            sum += pattern.AmountAt(FeetFromPath(feet, pass, swathFeet, SideOf(pass, driving)));
        }

        return sum;
    }

    /// <summary>The first and the last pass that may reach a position.</summary>
    internal static (int From, int To) PassesOver(SpreadPattern pattern, double feet, double swathFeet)
    {
        double reach = Math.Max(Math.Abs(pattern.LeftFeet), Math.Abs(pattern.RightFeet));
        return ((int)Tolerance.Ceiling((feet - reach) / swathFeet), (int)Tolerance.Floor((feet + reach) / swathFeet));
    }

    /// <summary>1 where a pass is driven as the pattern was measured, -1 where it is driven back.</summary>
    internal static int SideOf(int pass, DrivingMethod driving) =>
        driving == DrivingMethod.BackAndForth && pass % 2 != 0 ? -1 : 1;

    /// <summary>How far right of the path of a pass a position lies, to one who drives it.</summary>
    internal static double FeetFromPath(double feet, double pass, double swathFeet, double side) =>
        side * (feet - (pass * swathFeet));

    internal static (double Mean, double PopulationCv, double SampleCv) Evenness(ReadOnlySpan<double> amounts)
    {
        double mean = 0;
        foreach (double amount in amounts)
        {
            mean += amount / amounts.Length;
        }

        double squares = 0;
        foreach (double amount in amounts)
        {
            squares += (amount - mean) * (amount - mean);
        }

        return (
            mean,
            SpreaderMath.Ratio(Math.Sqrt(squares / amounts.Length), mean),
            amounts.Length > 1 ? SpreaderMath.Ratio(Math.Sqrt(squares / (amounts.Length - 1)), mean) : 0
        );
    }

    /// <summary>Outermost offsets at which the amount reaches a level.</summary>
    internal static (double Left, double Right) OutermostAt(SpreadPattern pattern, double level)
    {
        var (first, step, count) = Samples(pattern);
        int left = 0;
        while (left < count - 1 && pattern.AmountAt(first + (left * step)) < level)
        {
            left++;
        }

        int right = count - 1;
        while (right > 0 && pattern.AmountAt(first + (right * step)) < level)
        {
            right--;
        }

        return (
            left == 0 ? first : Crossing(pattern, level, first + ((left - 1) * step), first + (left * step)),
            right == count - 1
                ? first + (right * step)
                : Crossing(pattern, level, first + ((right + 1) * step), first + (right * step))
        );
    }

    internal static (double First, double Step, int Count) Samples(SpreadPattern pattern) =>
        pattern.IsMeasured
            ? (pattern.LeftFeet, pattern.SpacingFeet, pattern.Catches.Length)
            : (pattern.LeftFeet, (pattern.RightFeet - pattern.LeftFeet) / FormulaPositions, FormulaPositions + 1);

    private static double Crossing(SpreadPattern pattern, double level, double below, double above)
    {
        for (int i = 0; i < 60; i++)
        {
            double middle = (below + above) / 2;
            (below, above) = pattern.AmountAt(middle) < level ? (middle, above) : (below, middle);
        }

        return above;
    }

    /// <summary>CV of two half rates at right angles: their unevenness adds as squares.</summary>
    internal static double RightAnglesCv(double fullRateCv) => fullRateCv / SquareRootOfTwo;

    private static bool IsWhole(double number) => Tolerance.AreEqual(number, Math.Round(number, MidpointRounding.AwayFromZero));
}
