using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace PlotAgronomy.Nutrients;

/// <summary>A value on one side of a limit, 0 on the other: compared without a jump, for in a column of soils nobody can guess
/// the side of the next.</summary>
internal static class Step
{
    /// <summary>The value below the limit; 0 from the limit on.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static double Below(double test, double limit, double value) =>
        Below(Of(test), Of(limit), Of(value)).ToScalar();

    /// <summary>The value below the limit in each of four rows.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Vector256<double> Below(Vector256<double> test, Vector256<double> limit, Vector256<double> value) =>
        Vector256.LessThan(test, limit) & value;

    /// <summary>The value as far as the limit; 0 above it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static double UpTo(double test, double limit, double value) => UpTo(Of(test), Of(limit), Of(value)).ToScalar();

    /// <summary>The value as far as the limit in each of four rows.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Vector256<double> UpTo(Vector256<double> test, Vector256<double> limit, Vector256<double> value) =>
        Vector256.LessThanOrEqual(test, limit) & value;

    private static Vector256<double> Of(double value) => Vector256.CreateScalarUnsafe(value);
}
