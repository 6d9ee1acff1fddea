using System.Globalization;

namespace PlotAgronomy.Nutrients;

/// <summary>Kernels of the nitrogen rules.</summary>
internal static class NitrogenMath
{
    /// <summary>Size of a dose: half of the whole, the rest, or fixed pounds but never more than is left.</summary>
    internal static double DosePounds(string size, double wholePounds, double leftPounds) =>
        size switch
        {
            "half" => wholePounds / 2,
            "rest" => leftPounds,
            _ => Math.Min(double.Parse(size, CultureInfo.InvariantCulture), leftPounds),
        };

    /// <summary>Need of the non-legumes by their share of a full stand; together they never count for more than one full
    /// stand.</summary>
    internal static double ByShare(double poundsAlone, double share, double nonLegumeShare) =>
        poundsAlone * share / Math.Max(1, nonLegumeShare);

    /// <summary>A kind's part of a figure for the whole mixture with legumes, by its share of the kinds that are none; a thin
    /// stand counts for less.</summary>
    internal static double OfMixture(double pounds, double share, double nonLegumeShare, double allShares) =>
        pounds * share / nonLegumeShare * Math.Min(1, allShares);

    /// <summary>A mixture's need from the sum of each kind's need times its share, and the sum of the shares.</summary>
    internal static double MeanByShare(double needTimesShare, double shares) => needTimesShare / shares;

    /// <summary>What is left to spread after the nitrogen of an earlier legume.</summary>
    internal static double AfterCredit(double pounds, double creditPounds) => Math.Max(0, pounds - creditPounds);
}
