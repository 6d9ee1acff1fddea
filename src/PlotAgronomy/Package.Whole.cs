using UnitsNet;

namespace PlotAgronomy;

/// <content>Named rounding steps for what is bought in whole packages.</content>
public sealed partial class Package
{
    /// <summary>Smallest number of whole packages that holds a mass.</summary>
    /// <param name="needed">Mass needed; finite, at least 0.</param>
    /// <param name="package">Mass in one package; finite, above 0.</param>
    /// <returns>Number of packages.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>packages = ceiling(needed / package).</remarks>
    public static int RoundUp(Mass needed, Mass package)
    {
        double neededPounds = needed.Pounds;
        double packagePounds = package.Pounds;
        return RoundUp(
            Guard.AtLeast(neededPounds, 0, "lb", nameof(needed)) / Guard.Above(packagePounds, 0, "lb", nameof(package))
        );
    }

    /// <summary>Nearest number of whole packages; a half goes up.</summary>
    /// <param name="needed">Mass needed; finite, at least 0.</param>
    /// <param name="package">Mass in one package; finite, above 0.</param>
    /// <returns>Number of packages.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static int RoundToNearest(Mass needed, Mass package)
    {
        double neededPounds = needed.Pounds;
        double packagePounds = package.Pounds;
        return Counted(
            Math.Round(
                Guard.AtLeast(neededPounds, 0, "lb", nameof(needed)) / Guard.Above(packagePounds, 0, "lb", nameof(package)),
                MidpointRounding.AwayFromZero
            )
        );
    }

    internal static int RoundUp(double packages)
    {
        double nearest = Math.Round(packages, MidpointRounding.AwayFromZero);
        return Counted(Math.Abs(packages - nearest) <= Tolerance.Dust * Math.Max(1, nearest) ? nearest : Math.Ceiling(packages));
    }

    private static int Counted(double packages) => (int)Guard.Between(packages, 0, int.MaxValue, "packages");
}
