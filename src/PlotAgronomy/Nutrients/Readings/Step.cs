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
        (Vector128.LessThan(Vector128.CreateScalarUnsafe(test), Vector128.CreateScalarUnsafe(limit))
            & Vector128.CreateScalarUnsafe(value)).ToScalar();

    /// <summary>The value as far as the limit; 0 above it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static double UpTo(double test, double limit, double value) =>
        (Vector128.LessThanOrEqual(Vector128.CreateScalarUnsafe(test), Vector128.CreateScalarUnsafe(limit))
            & Vector128.CreateScalarUnsafe(value)).ToScalar();
}
