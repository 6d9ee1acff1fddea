using MathNet.Numerics.Distributions;

namespace PlotAgronomy.Weather;

/// <summary>Dates of frost as days of the year.</summary>
internal static class FrostMath
{
    /// <summary>Standard deviations between the 10 % and the 90 % quantile of a normal distribution.</summary>
    internal static double DeviationsBetweenTails => 2 * Normal.InvCDF(0, 1, 0.9);

    internal static double Deviations(double chance) => Normal.InvCDF(0, 1, chance);

    internal static double DateWith(double mean, double deviations, double spread) => mean + (deviations * spread);

    internal static double SpreadFromTails(double late, double early, double deviationsBetween) =>
        (late - early) / deviationsBetween;

    /// <summary>Chance of a freeze by a date, where some years have none.</summary>
    internal static double ChanceBy(double yearsWithout, double day, double mean, double spread) =>
        (1 - yearsWithout) * Normal.CDF(mean, spread, day);

    internal static double SowBy(double frost, double days, double buffer) => frost - days - buffer;

    internal static double Spread(IReadOnlyCollection<double> days, double mean) =>
        Math.Sqrt(days.Sum(d => (d - mean) * (d - mean)) / (days.Count - 1));
}
