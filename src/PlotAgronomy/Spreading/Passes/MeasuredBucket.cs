using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>A bucket that stands for a scale in the field: how much of this seed or product one level bucket holds.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class MeasuredBucket
{
    private MeasuredBucket(Mass holds) => Holds = holds;

    /// <summary>Gets the mass of one level bucket.</summary>
    public Mass Holds { get; }

    /// <summary>A bucket that was weighed full, its own weight taken off.</summary>
    /// <param name="bucketful">Mass of one level bucket of this product; above 0.</param>
    /// <returns>The bucket.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mass is 0 or negative.</exception>
    public static MeasuredBucket Weighed(Mass bucketful)
    {
        double pounds = bucketful.Pounds;
        Guard.Above(pounds, 0, "lb", nameof(bucketful));
        return new MeasuredBucket(bucketful);
    }

    /// <summary>A bucket of known volume and a product of known bulk density.</summary>
    /// <param name="volume">Volume of one level bucket; above 0.</param>
    /// <param name="bulkDensity">Bulk density of the product; above 0.</param>
    /// <returns>The bucket.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>mass = volume x bulk density. Bulk density varies by several percent between lots: weighing is better.</remarks>
    public static MeasuredBucket FromVolume(Volume volume, Density bulkDensity)
    {
        double cubicFeet = volume.CubicFeet;
        double poundsPerCubicFoot = bulkDensity.PoundsPerCubicFoot;
        return new MeasuredBucket(
            Mass.FromPounds(
                Guard.Above(cubicFeet, 0, "ft3", nameof(volume))
                    * Guard.Above(poundsPerCubicFoot, 0, "lb/ft3", nameof(bulkDensity))
            )
        );
    }

    /// <summary>How often a hopper that holds one such bucket is filled again after the first filling.</summary>
    /// <param name="mass">Mass to spread; above 0.</param>
    /// <returns>Refills, none when one filling is enough.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, or more refills than can be counted.</exception>
    /// <remarks>refills = ceiling(mass / what it holds) - 1.</remarks>
    public int RefillsFor(Mass mass) => Package.RoundUp(Guard.Positive(mass), Holds) - 1;

    /// <summary>Level buckets that hold a mass.</summary>
    /// <param name="mass">Mass; at least 0.</param>
    /// <returns>Number of buckets, a pure number: 2.25 is two buckets and a quarter.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mass is negative.</exception>
    public double Count(Mass mass)
    {
        double pounds = mass.Pounds;
        return Guard.AtLeast(pounds, 0, "lb", nameof(mass)) / Holds.Pounds;
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Amounts.Print(Holds, "lb", 2)} in a level bucket";
}
