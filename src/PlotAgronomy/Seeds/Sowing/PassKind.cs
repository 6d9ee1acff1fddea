using UnitsNet;

namespace PlotAgronomy.Seeds;

/// <summary>A kind as it goes into the hopper: what decides with which others it shares a pass.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class PassKind
{
    private PassKind(string name, double milligramsPerSeed)
    {
        Name = name;
        MilligramsPerSeed = milligramsPerSeed;
    }

    /// <summary>Gets the name of the kind.</summary>
    public string Name { get; }

    /// <summary>Gets the kind; null for one described by hand.</summary>
    public CropKind? Kind { get; private init; }

    /// <summary>Gets the seed diameter, when it was measured.</summary>
    public Length? Diameter { get; private init; }

    /// <summary>Gets the density of the seed, or its bulk density, when known. All kinds compared must use the same
    /// one.</summary>
    public Density? Density { get; private init; }

    /// <summary>Gets the deepest sowing depth, when known: it decides between covering and pressing.</summary>
    public Length? SowingDepth { get; private init; }

    /// <summary>Gets a value indicating whether the seed is chaffy: light, awned or fluffy, so that it bridges and hardly
    /// flies.</summary>
    public bool Chaffy { get; private init; }

    internal double MilligramsPerSeed { get; }

    /// <summary>Gets the source of the seed count and how well it is known; null for a kind described by hand.</summary>
    public Origin? Evidence { get; private init; }

    /// <summary>Takes what the hopper needs from the kind table.</summary>
    /// <param name="kind">Kind with a seed count.</param>
    /// <param name="diameter">Measured seed diameter; above 0, or null.</param>
    /// <returns>The kind, with its mean bushel weight as density and its deepest planting depth.</returns>
    /// <exception cref="InvalidOperationException">The kind has no seed count.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static PassKind FromKind(CropKind kind, Length? diameter = null)
    {
        ArgumentNullException.ThrowIfNull(kind);
        var count = kind.RequireSeedCount();
        var plain = FromSeedCount(
            kind.ShortName,
            count.SeedsPerPound,
            diameter,
            kind.BushelWeight is { } bushel ? Mean(bushel) : null,
            kind.Depth?.Deepest,
            kind.IsChaffy
        );
        return new PassKind(plain.Name, plain.MilligramsPerSeed)
        {
            Diameter = plain.Diameter,
            Density = plain.Density,
            SowingDepth = plain.SowingDepth,
            Chaffy = plain.Chaffy,
            Kind = kind,
            Evidence = count.Evidence,
        };
    }

    /// <summary>Takes what the hopper needs from the kind table, but for the seed count: that of the lot is known.</summary>
    /// <param name="kind">Kind.</param>
    /// <param name="seedsPerPound">Seeds in a pound of the lot; a pure number above 0.</param>
    /// <returns>The kind with its deepest planting depth, without a density: that of the lot was not measured.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static PassKind FromKind(CropKind kind, double seedsPerPound)
    {
        ArgumentNullException.ThrowIfNull(kind);
        var plain = FromSeedCount(kind.ShortName, seedsPerPound, sowingDepth: kind.Depth?.Deepest, chaffy: kind.IsChaffy);
        return new PassKind(plain.Name, plain.MilligramsPerSeed)
        {
            Kind = kind,
            SowingDepth = plain.SowingDepth,
            Chaffy = plain.Chaffy,
        };
    }

    /// <summary>Creates a kind from its seed count.</summary>
    /// <param name="name">Name; not blank.</param>
    /// <param name="seedsPerPound">Seeds in a pound; a pure number above 0.</param>
    /// <param name="diameter">Measured seed diameter; above 0, or null.</param>
    /// <param name="density">Density of the seed or of the bulk; above 0, or null.</param>
    /// <param name="sowingDepth">Deepest sowing depth; at least 0, or null.</param>
    /// <param name="chaffy">True for light, awned or fluffy seed.</param>
    /// <returns>The kind.</returns>
    /// <exception cref="ArgumentException">A blank name.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static PassKind FromSeedCount(
        string name,
        double seedsPerPound,
        Length? diameter = null,
        Density? density = null,
        Length? sowingDepth = null,
        bool chaffy = false
    )
    {
        if (diameter is { } measured)
        {
            double feet = measured.Feet;
            Guard.Above(feet, 0, "ft", nameof(diameter));
        }

        if (density is { } known)
        {
            double poundsPerCubicFoot = known.PoundsPerCubicFoot;
            Guard.Above(poundsPerCubicFoot, 0, "lb/ft3", nameof(density));
        }

        if (sowingDepth is { } depth)
        {
            double inches = depth.Inches;
            Guard.AtLeast(inches, 0, "in", nameof(sowingDepth));
        }

        double pounds = 1 / Guard.Above(seedsPerPound, 0, "seeds/lb");
        Guard.Finite(pounds, "lb for each seed", nameof(seedsPerPound));
        return new PassKind(Guard.NotBlank(name), Mass.FromPounds(pounds).Milligrams)
        {
            Diameter = diameter,
            Density = density,
            SowingDepth = sowingDepth,
            Chaffy = chaffy,
        };
    }

    private static Density Mean(BushelWeight bushel)
    {
        double low = bushel.Low.KilogramsPerCubicMeter;
        double high = bushel.High.KilogramsPerCubicMeter;
        return UnitsNet.Density.FromKilogramsPerCubicMeter((low + high) / 2);
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Name;
}
