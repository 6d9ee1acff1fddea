using System.Globalization;
using UnitsNet;

namespace PlotAgronomy.Seeds;

/// <summary>Seeds in a pound of a kind's bare, pure seed, as a range where sources differ.</summary>
/// <remarks>Counts of one kind differ by half between lots and publications: where it matters, count the lot.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class SeedCount
{
    private const string Figure = "seeds-per-lb";
    private const string Unit = "seeds/lb";

    private SeedCount(double low, double typical, double high, Origin evidence)
    {
        SeedsPerPoundLow = low;
        SeedsPerPound = typical;
        SeedsPerPoundHigh = high;
        Evidence = evidence;
    }

    /// <summary>Gets the lowest published count, seeds per lb.</summary>
    public double SeedsPerPoundLow { get; }

    /// <summary>Gets the count a careful agronomist would use, seeds per lb.</summary>
    public double SeedsPerPound { get; }

    /// <summary>Gets the highest published count, seeds per lb.</summary>
    public double SeedsPerPoundHigh { get; }

    /// <summary>Gets the sources; the status is that of the typical count.</summary>
    public Origin Evidence { get; }

    /// <summary>Gets the size class by the mass of one seed (limits 1, 5, 40 and 150 mg, common practice).</summary>
    public SeedSizeClass SizeClass =>
        (SeedMath.MilligramsPerPound / SeedsPerPound) switch
        {
            var mg when mg < SeedConstants.All["seed-small-from"] => SeedSizeClass.VerySmall,
            var mg when mg < SeedConstants.All["seed-medium-from"] => SeedSizeClass.Small,
            var mg when mg < SeedConstants.All["seed-large-from"] => SeedSizeClass.Medium,
            var mg when mg < SeedConstants.All["seed-very-large-from"] => SeedSizeClass.Large,
            _ => SeedSizeClass.VeryLarge,
        };

    /// <summary>The user's own count.</summary>
    /// <param name="seedsPerPound">Seeds per lb of bare, pure seed; finite, above 0.</param>
    /// <param name="detail">Where the count comes from.</param>
    /// <returns>The count.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, NaN or infinite.</exception>
    public static SeedCount FromSeedsPerPound(double seedsPerPound, string detail = "the user's own count") =>
        Own(Guard.Above(seedsPerPound, 0, "seeds per lb"), detail);

    /// <summary>A count from the weight of a thousand seeds.</summary>
    /// <param name="thousandSeeds">Mass of 1000 bare seeds; finite, above 0.</param>
    /// <param name="detail">Where the weight comes from.</param>
    /// <returns>The count.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, NaN or infinite.</exception>
    /// <remarks>seeds per lb = 453,592.37 / grams per 1000 seeds.</remarks>
    public static SeedCount FromThousandSeedWeight(Mass thousandSeeds, string detail = "the user's thousand-seed weight")
    {
        double grams = thousandSeeds.Grams;
        return Own(SeedMath.MilligramsPerPound / Guard.Above(grams, 0, "g", nameof(thousandSeeds)), detail);
    }

    /// <summary>A count from seeds counted in a weighed sample of bare, pure seed.</summary>
    /// <param name="seeds">Seeds counted; at least 1.</param>
    /// <param name="sample">Mass of the sample; finite, above 0.</param>
    /// <param name="detail">What was counted.</param>
    /// <returns>The count.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>seeds per lb = seeds / pounds; for 20 g this is seeds x 22.68 (SEED-S10).</remarks>
    public static SeedCount FromWeighedSample(int seeds, Mass sample, string detail = "the user's count of a weighed sample")
    {
        double pounds = sample.Pounds;
        return Own(Guard.AtLeast(seeds, 1, "seeds") / Guard.Above(pounds, 0, "lb", nameof(sample)), detail);
    }

    /// <summary>Whether a lot's count lies so far outside what is published that it was likely miscounted.</summary>
    internal bool IsFarFrom(SeedCount own) =>
        own.SeedsPerPound > SeedsPerPoundHigh * SeedConstants.All["count-unusual"]
        || own.SeedsPerPound < SeedsPerPoundLow / SeedConstants.All["count-unusual"];

    /// <summary>Text such as <c>200,000-226,800 seeds per lb, typically 220,000</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        SeedsPerPoundLow < SeedsPerPoundHigh
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"{SeedsPerPoundLow:#,##0}-{SeedsPerPoundHigh:#,##0} seeds per lb, typically {SeedsPerPound:#,##0}"
            )
            : string.Create(CultureInfo.InvariantCulture, $"{SeedsPerPound:#,##0} seeds per lb");

    /// <summary>The typical count is the one that the file chooses among those that were read; where it was only remembered, the
    /// median of those that were read goes before it.</summary>
    internal static SeedCount? Of(KindObservations kind)
    {
        var chosen = kind.Find(Figure, "typical");
        if (PrintedSpan.Of(kind, Figure, null, [Unit]) is not { } counts)
        {
            return null;
        }

        bool hasChosen = chosen is not null && (counts.Publications == 0 || chosen.Status != DataStatus.Memory);
        double typical = hasChosen ? chosen!.Number(Unit) : counts.Median;
        var evidence = hasChosen ? chosen!.Origin : counts.Origin;
        return new(Math.Min(counts.Low, typical), typical, Math.Max(counts.High, typical), evidence);
    }

    private static SeedCount Own(double seedsPerPound, string detail) =>
        new(seedsPerPound, seedsPerPound, seedsPerPound, Origin.FromUser(detail));
}
