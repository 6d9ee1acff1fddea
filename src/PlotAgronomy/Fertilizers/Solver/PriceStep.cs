namespace PlotAgronomy.Fertilizers;

/// <summary>The largest amount of money every price is a multiple of: two sets of packages cannot differ in cost by
/// less.</summary>
internal static class PriceStep
{
    /// <summary>Prices are read to a hundredth of a cent; finer ones have no common step.</summary>
    private const double SmallestUnit = 0.0001;
    private const double LargestPrice = 1e9;

    /// <returns>The step, or zero when the prices have none.</returns>
    internal static double Of(ReadOnlySpan<double> prices)
    {
        long step = 0;
        foreach (double price in prices)
        {
            double units = price / SmallestUnit;
            double whole = Math.Round(units, MidpointRounding.AwayFromZero);
            if (price > LargestPrice || Math.Abs(units - whole) > 1e-6)
            {
                return 0;
            }

            step = GreatestCommonDivisor(step, (long)whole);
        }

        return step * SmallestUnit;
    }

    private static long GreatestCommonDivisor(long a, long b) => b == 0 ? a : GreatestCommonDivisor(b, a % b);
}
