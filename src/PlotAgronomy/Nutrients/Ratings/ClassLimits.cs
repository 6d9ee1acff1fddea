using System.Collections.Immutable;
using System.Numerics;
using System.Runtime.Intrinsics;

namespace PlotAgronomy.Nutrients;

/// <summary>The limits of a scale, all compared at once: the class of a value is the number of limits it has passed.</summary>
internal readonly struct ClassLimits
{
    private readonly Vector512<double> passedFrom;

    /// <summary>Limits of classes that each start where the one below them ends, the poorest first.</summary>
    /// <exception cref="ArgumentException">More classes with an upper limit than are compared at once.</exception>
    internal ClassLimits(ImmutableArray<RatingClass> classes)
    {
        passedFrom = Vector512.Create(double.PositiveInfinity);
        for (int i = 0; i < classes.Length; i++)
        {
            if (classes[i].PrintedHigh is { } high)
            {
                passedFrom =
                    i < Vector512<double>.Count
                        ? passedFrom.WithElement(i, classes[i].HighIncluded ? Math.BitIncrement(high) : high)
                        : throw new ArgumentException($"Must be at most {Vector512<double>.Count} limits.", nameof(classes));
            }
        }
    }

    /// <summary>Place of the class, counted from 0; the number of classes above the last of them.</summary>
    /// <param name="value">Finite, at least 0.</param>
    internal int IndexOf(double value) =>
        BitOperations.PopCount(
            Vector512.GreaterThanOrEqual(Vector512.Create(value), passedFrom).ExtractMostSignificantBits()
        );
}
