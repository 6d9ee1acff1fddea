using System.Collections.Immutable;
using System.Numerics;
using System.Runtime.Intrinsics;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>Straight lines between printed points; the last point's rate above it.</summary>
internal readonly struct PointNeedKernel : INeedKernel
{
    private readonly Vector512<double> passedFrom;
    private readonly (double Test, double Rate)[] points;

    /// <summary>Lines between points of rising test, the first at 0.</summary>
    /// <exception cref="ArgumentException">More points than are compared at once.</exception>
    internal PointNeedKernel(ImmutableArray<(double Test, double Rate)> printed)
    {
        passedFrom = Vector512.Create(double.PositiveInfinity);
        for (int i = 1; i < printed.Length; i++)
        {
            passedFrom =
                i <= Vector512<double>.Count
                    ? passedFrom.WithElement(i - 1, printed[i].Test)
                    : throw new ArgumentException($"Must be at most {Vector512<double>.Count + 1} points.", nameof(printed));
        }

        points = [.. printed, (printed[^1].Test + 1, printed[^1].Rate)];
    }

    public bool ReadsCapacity => false;

    public NeedRemarks Raises => NeedRemarks.None;

    public double Rate(double test, double capacity)
    {
        int below = BitOperations.PopCount(
            Vector512.GreaterThanOrEqual(Vector512.Create(test), passedFrom).ExtractMostSignificantBits()
        );
        var (from, to) = (points[below], points[below + 1]);
        return Interpolation.Line(from.Test, from.Rate, to.Test, to.Rate, test);
    }

    public Vector256<double> Rates(Vector256<double> test, Vector256<double> capacity) =>
        OneByOne.Rates(this, test, capacity);

    public double Low(double test, double rate) => rate;

    public double High(double test, double rate) => rate;

    public NeedRemarks Remarks(double test, double capacity, double rate) => NeedRemarks.None;
}
