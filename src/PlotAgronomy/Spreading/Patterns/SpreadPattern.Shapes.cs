using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <content>Patterns given by a formula, with 1 as their highest amount: for judging a swath before any tray is laid
/// out.</content>
public sealed partial class SpreadPattern
{
    /// <summary>Beyond six standard deviations a bell is empty to nine digits.</summary>
    private const double BellReach = 6;

    /// <summary>A triangle.</summary>
    /// <param name="leftReach">Reach to the left; above 0, at most 10,000 ft.</param>
    /// <param name="rightReach">Reach to the right; above 0. A reach unlike the left one makes a skewed pattern.</param>
    /// <returns>The pattern.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static SpreadPattern Triangle(Length leftReach, Length rightReach)
    {
        double left = Positive(leftReach, nameof(leftReach));
        double right = Positive(rightReach, nameof(rightReach));
        return new SpreadPattern(x => 1 - (x < 0 ? -x / left : x / right), -left, right);
    }

    /// <summary>A flat top with straight flanks; a rectangle when top and base are equal.</summary>
    /// <param name="topWidth">Width of the flat top; at least 0.</param>
    /// <param name="baseWidth">Whole width; above 0 and at least the top.</param>
    /// <returns>The pattern.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static SpreadPattern Trapezoid(Length topWidth, Length baseWidth)
    {
        double whole = Positive(baseWidth, nameof(baseWidth));
        double top = topWidth.Feet;
        Guard.Between(top, 0, whole, "ft", nameof(topWidth));
        double flank = (whole - top) / 2;
        return new SpreadPattern(
            x => Math.Abs(x) <= top / 2 ? 1 : Math.Max(0, ((whole / 2) - Math.Abs(x)) / flank),
            -whole / 2,
            whole / 2
        );
    }

    /// <summary>A bell with a standard deviation.</summary>
    /// <param name="standardDeviation">Standard deviation of the offset; above 0, at most 10,000 ft.</param>
    /// <returns>The pattern, cut off at six standard deviations.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static SpreadPattern Bell(Length standardDeviation)
    {
        double sigma = Positive(standardDeviation, nameof(standardDeviation));
        return new SpreadPattern(x => Math.Exp(-x * x / (2 * sigma * sigma)), -BellReach * sigma, BellReach * sigma);
    }

    /// <summary>A parabola, often called oval.</summary>
    /// <param name="reach">Reach to each side; above 0, at most 10,000 ft.</param>
    /// <returns>The pattern.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static SpreadPattern Parabola(Length reach) => Of(reach, x => 1 - (x * x));

    /// <summary>Half an ellipse.</summary>
    /// <param name="reach">Reach to each side; above 0, at most 10,000 ft.</param>
    /// <returns>The pattern.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static SpreadPattern SemiEllipse(Length reach) => Of(reach, x => Math.Sqrt(Math.Max(0, 1 - (x * x))));

    /// <summary>One lobe of a cosine.</summary>
    /// <param name="reach">Reach to each side; above 0, at most 10,000 ft.</param>
    /// <returns>The pattern.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static SpreadPattern CosineLobe(Length reach) => Of(reach, x => Math.Cos(Math.PI / 2 * x));

    /// <summary>A raised cosine: a bell that ends.</summary>
    /// <param name="reach">Reach to each side; above 0, at most 10,000 ft.</param>
    /// <returns>The pattern.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static SpreadPattern RaisedCosine(Length reach) => Of(reach, x => (1 + Math.Cos(Math.PI * x)) / 2);

    private static SpreadPattern Of(Length reach, Func<double, double> unitShape)
    {
        double feet = Positive(reach, nameof(reach));
        return new SpreadPattern(x => unitShape(x / feet), -feet, feet);
    }

    private static double Positive(Length length, string name)
    {
        double feet = length.Feet;
        return Guard.AboveUpTo(feet, 0, SpreadingConstants.All["swath-high"], "ft", name);
    }
}
