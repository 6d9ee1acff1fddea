using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Columns;

/// <summary>What the values of a row can be: what the typed call takes.</summary>
internal static class NeedRowLimits
{
    private static readonly double HighestCapacity = SoilLimits.HighestExchangeCapacity;

    internal static string InWords { get; } =
        $"a reading is a number of at least 0, an exchange capacity from 0 to {Amounts.Print(HighestCapacity, 0)} meq/100 g";

    internal static bool CanBeRead(double reading) => reading >= 0 && reading <= double.MaxValue;

    internal static bool CanBeCapacity(double capacity) => capacity >= 0 && capacity <= HighestCapacity;

    internal static Vector256<double> CanBeRead(Vector256<double> reading) =>
        Vector256.GreaterThanOrEqual(reading, Vector256<double>.Zero)
        & Vector256.LessThanOrEqual(reading, Vector256.Create(double.MaxValue));

    internal static Vector256<double> CanBeCapacity(Vector256<double> capacity) =>
        Vector256.GreaterThanOrEqual(capacity, Vector256<double>.Zero)
        & Vector256.LessThanOrEqual(capacity, Vector256.Create(HighestCapacity));

    /// <summary>What a row is whose reading or capacity cannot be used.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static RowStatus StatusOfUnusable(double reading, double capacity) =>
        (!double.IsNaN(reading) && !CanBeRead(reading)) || (!double.IsNaN(capacity) && !CanBeCapacity(capacity))
            ? RowStatus.Implausible
            : RowStatus.Missing;
}
