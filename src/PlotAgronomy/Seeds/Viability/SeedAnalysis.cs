using PlotAgronomy.Seeds;

namespace PlotAgronomy;

/// <summary>What a tag says of one kind in a bag: pure seed by weight of the whole bag, and by number of pure seeds the
/// parts that germinate, are hard, or are dormant.</summary>
/// <remarks>On a lawful tag the pure seed of a coated lot is found on de-coated seed and given on the coated weight
/// (7 CFR 201.51b, SEED-S22): the coating is already outside it and is never taken off again. Hard and dormant seed stand
/// beside germination, not inside it (7 CFR 201.21, SEED-S18).</remarks>
/// <example>
/// <code>
/// var tag = SeedAnalysis.FromFractions(Fraction.FromPercent(98.5), germination: Fraction.FromPercent(78));
/// Console.WriteLine(tag);
/// // 98.5 % pure, 78 % germination
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed partial class SeedAnalysis
{
    private static readonly Lazy<double> LazyMostOfWhole = new(() => 1 + SeedConstants.All["tag-parts-over"]);

    private SeedAnalysis(
        Fraction pureSeed,
        Fraction germination,
        Fraction hardSeed,
        Fraction dormantSeed,
        Fraction coating,
        int? seedsTested
    )
    {
        PureSeed = pureSeed;
        Germination = germination;
        HardSeed = hardSeed;
        DormantSeed = dormantSeed;
        Coating = coating;
        SeedsTested = seedsTested;
    }

    /// <summary>The most that parts of one whole may add up to, each of them rounded.</summary>
    internal static double MostOfWhole => LazyMostOfWhole.Value;

    /// <summary>Gets the weight of bare, pure seed of the kind, as a part of the whole bag.</summary>
    public Fraction PureSeed { get; }

    /// <summary>Gets the pure seeds that gave normal seedlings, by number.</summary>
    public Fraction Germination { get; }

    /// <summary>Gets the hard seeds, by number.</summary>
    public Fraction HardSeed { get; }

    /// <summary>Gets the dormant seeds, by number.</summary>
    public Fraction DormantSeed { get; }

    /// <summary>Gets the coating as a part of the whole bag; it is outside the pure seed already.</summary>
    public Fraction Coating { get; }

    /// <summary>Gets how many seeds the germination test took, or null when that is not known.</summary>
    public int? SeedsTested { get; }

    /// <summary>Gets the part of the pure seeds that a tetrazolium test found alive, for a lot that was tested so in place of
    /// germination; null for all others.</summary>
    public Fraction? Tetrazolium { get; private init; }

    /// <summary>Gets the pure seeds that are neither germinating, hard nor dormant, by number.</summary>
    internal Fraction Dead =>
        Fraction.FromValue(Math.Max(0, 1 - (Tetrazolium?.Value ?? Germination.Value + HardSeed.Value + DormantSeed.Value)));

    /// <summary>The analysis as a tag gives it.</summary>
    /// <param name="pureSeed">Pure seed, part of the whole bag; above 0.</param>
    /// <param name="germination">Germination, hard seed not counted in.</param>
    /// <param name="hardSeed">Hard seed.</param>
    /// <param name="dormantSeed">Dormant seed.</param>
    /// <param name="coating">Coating, part of the whole bag, when the tag names it.</param>
    /// <param name="seedsTested">Seeds in the germination test, when known; at least 1. A laboratory takes 400.</param>
    /// <returns>The analysis.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No pure seed, no seeds tested, or parts above the whole: germination + hard
    /// + dormant above 100 % means that the germination printed is a total, and pure seed + coating above 100 % that the purity
    /// is that before coating.</exception>
    public static SeedAnalysis FromFractions(
        Fraction pureSeed,
        Fraction germination,
        Fraction hardSeed = default,
        Fraction dormantSeed = default,
        Fraction coating = default,
        int? seedsTested = null
    )
    {
        Guard.AboveUpTo(pureSeed.Value, 0, 1, "of the bag", nameof(pureSeed));
        Guard.AtLeast(seedsTested ?? 1, 1, "seeds", nameof(seedsTested));
        double counted = germination.Value + hardSeed.Value + dormantSeed.Value;
        if (counted > MostOfWhole)
        {
            throw new ArgumentOutOfRangeException(
                nameof(germination),
                germination,
                $"Germination + hard + dormant seed must be at most 100 %, found {Amounts.Print(counted * 100, 2)} %: does the "
                    + "germination printed already count the hard seed?"
            );
        }

        if (pureSeed.Value + coating.Value > MostOfWhole)
        {
            throw new ArgumentOutOfRangeException(
                nameof(coating),
                coating,
                $"Pure seed + coating must be at most 100 %, found {Amounts.Print((pureSeed.Value + coating.Value) * 100, 2)} %: "
                    + $"is that the purity before coating? Then use {nameof(FromPurityBeforeCoating)}."
            );
        }

        return new(pureSeed, germination, hardSeed, dormantSeed, coating, seedsTested);
    }

    /// <summary>An analysis by a tetrazolium test alone: seed that does not germinate within a test.</summary>
    /// <param name="pureSeed">Pure seed as a part of the bag's weight; above 0.</param>
    /// <param name="viable">Part of the pure seeds found alive.</param>
    /// <param name="coating">Coating as a part of the bag's weight.</param>
    /// <returns>The analysis; its germination is 0, and what is found alive stands for all else.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A part outside its range, or more than the whole.</exception>
    /// <remarks>7 CFR 201.57a (SEED-S19).</remarks>
    public static SeedAnalysis FromTetrazolium(Fraction pureSeed, Fraction viable, Fraction coating = default)
    {
        var analysis = FromFractions(pureSeed, default, coating: coating);
        return new(analysis.PureSeed, default, default, default, analysis.Coating, null) { Tetrazolium = viable };
    }

    /// <summary>The analysis of a coated lot whose seller names the purity of the seed before it was coated.</summary>
    /// <param name="purityBeforeCoating">Purity of the bare seed; above 0.</param>
    /// <param name="coating">Coating, part of the coated weight; below 1. See <see cref="CoatingFromBuildUp"/>.</param>
    /// <param name="germination">Germination, hard seed not counted in.</param>
    /// <param name="hardSeed">Hard seed.</param>
    /// <param name="dormantSeed">Dormant seed.</param>
    /// <param name="seedsTested">Seeds in the germination test, when known.</param>
    /// <returns>The analysis, as a lawful tag would give it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>pure seed = purity before coating x (1 - coating); plain arithmetic.</remarks>
    public static SeedAnalysis FromPurityBeforeCoating(
        Fraction purityBeforeCoating,
        Fraction coating,
        Fraction germination,
        Fraction hardSeed = default,
        Fraction dormantSeed = default,
        int? seedsTested = null
    ) =>
        FromFractions(
            Fraction.FromValue(purityBeforeCoating.Value * (1 - coating.Value)),
            germination,
            hardSeed,
            dormantSeed,
            coating,
            seedsTested
        );

    /// <summary>Coating as a part of the coated weight, from its build-up.</summary>
    /// <param name="poundsOfCoatingPerPoundOfSeed">Build-up: 1 for "1:1"; finite, at least 0.</param>
    /// <returns>The coating: a build-up of 1:1 is 50 %.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    /// <remarks>coating = build-up / (1 + build-up); plain arithmetic.</remarks>
    public static Fraction CoatingFromBuildUp(double poundsOfCoatingPerPoundOfSeed) =>
        Fraction.FromValue(
            Guard.AtLeast(poundsOfCoatingPerPoundOfSeed, 0, "lb of coating per lb of seed") / (1 + poundsOfCoatingPerPoundOfSeed)
        );

    /// <summary>The same seed, did another part of it germinate.</summary>
    internal SeedAnalysis Germinating(Fraction germination) =>
        FromFractions(PureSeed, germination, HardSeed, DormantSeed, Coating, SeedsTested);

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{PureSeed} pure, {Germination} germination";
}
