using UnitsNet;

namespace PlotAgronomy.Seeds;

/// <summary>Seeds on the ground: from a rate to seeds per square foot and back, and along the row.</summary>
/// <remarks>Germination enters once: a rate of pure live seed gives live seeds, and is not divided by germination
/// again.</remarks>
public static class SeedDensity
{
    /// <summary>Live seeds on a square foot.</summary>
    /// <param name="rate">Rate of pure live seed.</param>
    /// <param name="count">Seeds in a pound.</param>
    /// <returns>Live seeds per ft2.</returns>
    /// <remarks>seeds/ft2 = lb/ac x seeds/lb / 43,560 (SEED-S13).</remarks>
    public static double LiveSeedsPerSquareFoot(PureLiveSeedRate rate, SeedCount count)
    {
        ArgumentNullException.ThrowIfNull(count);
        return SeedMath.SeedsPerSquareFoot(rate.PoundsPerAcre, count.SeedsPerPound);
    }

    /// <summary>Rate that lays down so many live seeds on a square foot.</summary>
    /// <param name="liveSeedsPerSquareFoot">Live seeds per ft2; finite, at least 0.</param>
    /// <param name="count">Seeds in a pound.</param>
    /// <param name="method">How it is sown.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite density, or unknown method.</exception>
    /// <remarks>lb/ac = seeds/ft2 x 43,560 / seeds/lb (SEED-S10).</remarks>
    public static PureLiveSeedRate RateFor(double liveSeedsPerSquareFoot, SeedCount count, SowingMethod method)
    {
        ArgumentNullException.ThrowIfNull(count);
        Guard.AtLeast(liveSeedsPerSquareFoot, 0, "seeds per ft2");
        return PureLiveSeedRate.FromRate(
            ApplicationRate.FromPoundsPerAcre(SeedMath.PoundsPerAcreForDensity(liveSeedsPerSquareFoot, count.SeedsPerPound)),
            method
        );
    }

    /// <summary>Drilled rate of pure live seed that leaves a stand after losses in the field.</summary>
    /// <param name="plantsPerAcre">Plants wanted per acre; finite, at least 0.</param>
    /// <param name="loss">Part of the live seeds lost before they are plants; below the whole.</param>
    /// <param name="count">Seeds in a pound.</param>
    /// <returns>The rate; divide by the pure live seed of the lot for its bulk rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>lb PLS/ac = plants/ac / (1 - loss) / seeds/lb (SEED-S11, where germination divides once more to reach bulk
    /// seed).</remarks>
    public static PureLiveSeedRate DrilledRateForStand(double plantsPerAcre, Fraction loss, SeedCount count)
    {
        ArgumentNullException.ThrowIfNull(count);
        Guard.AtLeast(plantsPerAcre, 0, "plants per acre");
        double kept = Guard.Above(1 - loss.Value, 0, "of the live seeds kept", nameof(loss));
        return PureLiveSeedRate.DrilledPoundsPerAcre(SeedMath.PoundsPerAcreForStand(plantsPerAcre, kept, count.SeedsPerPound));
    }

    /// <summary>Plants that come of live seeds.</summary>
    /// <param name="liveSeedsPerSquareFoot">Live seeds per ft2; finite, at least 0.</param>
    /// <param name="emerging">Part that emerges.</param>
    /// <param name="surviving">Part of those that lives on.</param>
    /// <returns>Plants per ft2.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite density.</exception>
    /// <remarks>plants/ft2 = live seeds/ft2 x emergence x survival (SEED-S09).</remarks>
    public static double PlantsPerSquareFoot(double liveSeedsPerSquareFoot, Fraction emerging, Fraction surviving) =>
        SeedMath.PlantsPerSquareFoot(Guard.AtLeast(liveSeedsPerSquareFoot, 0, "seeds per ft2"), emerging.Value, surviving.Value);

    /// <summary>Seeds along a foot of row.</summary>
    /// <param name="seedsPerAcre">Seeds per acre; finite, at least 0.</param>
    /// <param name="rowSpacing">Distance of the rows; finite, above 0.</param>
    /// <returns>Seeds per foot of row.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>seeds per row foot = seeds/ac / 43,560 x spacing in inches / 12 (SEED-S12).</remarks>
    public static double SeedsPerRowFoot(double seedsPerAcre, Length rowSpacing)
    {
        double inches = rowSpacing.Inches;
        return SeedMath.SeedsPerRowFoot(
            Guard.AtLeast(seedsPerAcre, 0, "seeds per acre"),
            Guard.Above(inches, 0, "in", nameof(rowSpacing))
        );
    }

    /// <summary>Seeds on an acre from seeds along a foot of row.</summary>
    /// <param name="seedsPerRowFoot">Seeds per foot of row; finite, at least 0.</param>
    /// <param name="rowSpacing">Distance of the rows; finite, above 0.</param>
    /// <returns>Seeds per acre.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>The inverse of <see cref="SeedsPerRowFoot"/> (SEED-S12).</remarks>
    public static double SeedsPerAcre(double seedsPerRowFoot, Length rowSpacing)
    {
        double inches = rowSpacing.Inches;
        return SeedMath.SeedsPerAcreFromRow(
            Guard.AtLeast(seedsPerRowFoot, 0, "seeds per foot"),
            Guard.Above(inches, 0, "in", nameof(rowSpacing))
        );
    }

    /// <summary>Part of the square feet left without a seed when seeds fall at random.</summary>
    /// <param name="seedsPerSquareFoot">Average seeds per ft2; finite, at least 0.</param>
    /// <returns>The part.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite density.</exception>
    /// <remarks>exp(-m), the zero class of a Poisson distribution.</remarks>
    public static Fraction EmptySquareFeet(double seedsPerSquareFoot) =>
        Fraction.FromValue(Math.Exp(-Guard.AtLeast(seedsPerSquareFoot, 0, "seeds per ft2")));
}
