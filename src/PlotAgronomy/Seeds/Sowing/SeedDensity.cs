using System.Globalization;
using UnitsNet;

namespace PlotAgronomy.Seeds;

/// <summary>Seeds, or plants, on an area of ground.</summary>
/// <remarks>Held in seeds per ft2. Germination enters once: a rate of pure live seed gives live seeds, and is not divided by
/// germination again. The default is none. Equality is exact.</remarks>
[JsonConverter(typeof(JsonTextConverter<SeedDensity>))]
public readonly record struct SeedDensity : IJsonText<SeedDensity>
{
    private SeedDensity(double seedsPerSquareFoot) => SeedsPerSquareFoot = seedsPerSquareFoot;

    /// <summary>Gets the seeds on a square foot.</summary>
    public double SeedsPerSquareFoot { get; }

    /// <summary>Gets the seeds on an acre.</summary>
    public double SeedsPerAcre => SeedsPerSquareFoot * ExactUnits.SquareFeetPerAcre;

    /// <summary>Gets the part of the square feet left without a seed when seeds fall at random.</summary>
    /// <remarks>exp(-m), the zero class of a Poisson distribution.</remarks>
    public Fraction EmptySquareFeet => Fraction.FromValue(Math.Exp(-SeedsPerSquareFoot));

    /// <summary>So many seeds on a square foot.</summary>
    /// <param name="seedsPerSquareFoot">Seeds per ft2; finite, at least 0.</param>
    /// <returns>The density.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static SeedDensity FromSeedsPerSquareFoot(double seedsPerSquareFoot) =>
        new(Guard.AtLeast(seedsPerSquareFoot, 0, "seeds per ft2"));

    /// <summary>So many seeds on an acre.</summary>
    /// <param name="seedsPerAcre">Seeds per acre; finite, at least 0.</param>
    /// <returns>The density.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static SeedDensity FromSeedsPerAcre(double seedsPerAcre) =>
        new(Guard.AtLeast(seedsPerAcre, 0, "seeds per acre") / ExactUnits.SquareFeetPerAcre);

    /// <summary>The same seeds as along a row, as so many on an area.</summary>
    /// <param name="row">Seeds along a row.</param>
    /// <param name="rowSpacing">Distance of the rows; finite, above 0.</param>
    /// <returns>The density.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, NaN or infinite.</exception>
    /// <remarks>seeds/ac = 43,560 x 12 / spacing in inches x seeds per row foot (SEED-S12).</remarks>
    public static SeedDensity FromRows(RowDensity row, Length rowSpacing)
    {
        double inches = rowSpacing.Inches;
        return FromSeedsPerAcre(SeedMath.SeedsPerAcreFromRow(row.SeedsPerFoot, Guard.Above(inches, 0, "in", nameof(rowSpacing))));
    }

    /// <summary>The live seeds that a rate lays down.</summary>
    /// <param name="rate">Rate of pure live seed.</param>
    /// <param name="count">Seeds in a pound.</param>
    /// <returns>Live seeds on the ground.</returns>
    /// <remarks>seeds/ft2 = lb/ac x seeds/lb / 43,560 (SEED-S13).</remarks>
    /// <exception cref="ArgumentNullException">Null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">More seeds than a number can hold.</exception>
    public static SeedDensity FromRate(PureLiveSeedRate rate, SeedCount count)
    {
        ArgumentNullException.ThrowIfNull(count);
        return FromSeedsPerSquareFoot(SeedMath.SeedsPerSquareFoot(rate.PoundsPerAcre, count.SeedsPerPound));
    }

    /// <summary>The rate that lays down this many live seeds.</summary>
    /// <param name="count">Seeds in a pound.</param>
    /// <param name="method">How it is sown.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentNullException">Null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Unknown method.</exception>
    /// <remarks>lb/ac = seeds/ft2 x 43,560 / seeds/lb (SEED-S10).</remarks>
    public PureLiveSeedRate RateOf(SeedCount count, SowingMethod method)
    {
        ArgumentNullException.ThrowIfNull(count);
        return PureLiveSeedRate.FromRate(
            ApplicationRate.FromPoundsPerAcre(SeedMath.PoundsPerAcreForDensity(SeedsPerSquareFoot, count.SeedsPerPound)),
            method
        );
    }

    /// <summary>The drilled rate of pure live seed that leaves this many plants after losses in the field.</summary>
    /// <param name="loss">Part of the live seeds lost before they are plants; below the whole.</param>
    /// <param name="count">Seeds in a pound.</param>
    /// <returns>The rate; divide by the pure live seed of the lot for its bulk rate.</returns>
    /// <exception cref="ArgumentNullException">Null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>lb PLS/ac = plants/ac / (1 - loss) / seeds/lb (SEED-S11, where germination divides once more to reach bulk
    /// seed).</remarks>
    public PureLiveSeedRate DrilledRateAfterLoss(Fraction loss, SeedCount count)
    {
        ArgumentNullException.ThrowIfNull(count);
        double kept = Guard.Above(1 - loss.Value, 0, "of the live seeds kept", nameof(loss));
        return PureLiveSeedRate.DrilledPoundsPerAcre(SeedMath.PoundsPerAcreForStand(SeedsPerAcre, kept, count.SeedsPerPound));
    }

    /// <summary>The plants that come of these live seeds.</summary>
    /// <param name="emerging">Part that emerges.</param>
    /// <param name="surviving">Part of those that lives on.</param>
    /// <returns>Plants on the ground.</returns>
    /// <remarks>plants/ft2 = live seeds/ft2 x emergence x survival (SEED-S09).</remarks>
    public SeedDensity PlantsLeft(Fraction emerging, Fraction surviving) =>
        new(SeedMath.PlantsPerSquareFoot(SeedsPerSquareFoot, emerging.Value, surviving.Value));

    /// <summary>The same seeds in rows.</summary>
    /// <param name="rowSpacing">Distance of the rows; finite, above 0.</param>
    /// <returns>Seeds along a row.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, NaN or infinite.</exception>
    /// <remarks>seeds per row foot = seeds/ac / 43,560 x spacing in inches / 12 (SEED-S12).</remarks>
    public RowDensity InRows(Length rowSpacing)
    {
        double inches = rowSpacing.Inches;
        return RowDensity.FromSeedsPerFoot(
            SeedMath.SeedsPerRowFoot(SeedsPerAcre, Guard.Above(inches, 0, "in", nameof(rowSpacing)))
        );
    }

    /// <summary>Invariant text such as <c>62.1 seeds/ft2</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{SeedsPerSquareFoot:0.###} seeds/ft2");

    static string IJsonText<SeedDensity>.ToJsonText(SeedDensity value) => $"{ExactText.Of(value.SeedsPerSquareFoot)} seeds/ft2";

    static SeedDensity IJsonText<SeedDensity>.FromJsonText(string text) =>
        FromSeedsPerSquareFoot(ExactText.Number(text, "seeds/ft2"));
}
