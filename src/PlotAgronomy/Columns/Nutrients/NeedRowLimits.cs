using System.Runtime.CompilerServices;
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

    /// <summary>What a row is whose reading or capacity cannot be used.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static RowStatus StatusOfUnusable(double reading, double capacity) =>
        (!double.IsNaN(reading) && !CanBeRead(reading)) || (!double.IsNaN(capacity) && !CanBeCapacity(capacity))
            ? RowStatus.Implausible
            : RowStatus.Missing;
}
