using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy;

/// <summary>Seed of one kind as it lies in the bag: what its tag says.</summary>
/// <remarks>It is only equal to itself; <c>lot with { ... }</c> makes another one. What it costs stands in an
/// <see cref="Offer{T}"/>.</remarks>
/// <example>
/// <code>
/// var clover = KindCatalog.Standard.Find("crimson clover");
/// var tag = SeedAnalysis.FromFractions(Fraction.FromPercent(98.5), germination: Fraction.FromPercent(85));
/// var lot = new SeedLot { Kind = clover, Label = "C-3", Analysis = tag };
/// Console.WriteLine(Amounts.Print(lot.BulkRate(PureLiveSeedRate.BroadcastPoundsPerAcre(20)).Bulk.PoundsPerAcre, 1));
/// // 23.9
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed record SeedLot
{
    /// <summary>Gets what the user calls the lot.</summary>
    /// <exception cref="ArgumentException">Blank.</exception>
    public required string Label
    {
        get;
        init => field = Guard.NotBlank(value, nameof(Label));
    }

    /// <summary>Gets the kind.</summary>
    /// <exception cref="ArgumentNullException">Null.</exception>
    public required CropKind Kind
    {
        get;
        init => field = Guard.NotNull(value, nameof(Kind));
    }

    /// <summary>Gets the analysis.</summary>
    /// <exception cref="ArgumentNullException">Null.</exception>
    public required SeedAnalysis Analysis
    {
        get;
        init => field = Guard.NotNull(value, nameof(Analysis));
    }

    /// <summary>Gets the count of this very lot, which goes before the kind's; or null.</summary>
    public SeedCount? OwnSeedCount { get; init; }

    /// <summary>Gets the month of test, or null.</summary>
    public TestMonth? TestMonth { get; init; }

    /// <summary>Gets a value indicating whether the seed is treated with a pesticide.</summary>
    public bool IsTreated { get; init; }

    /// <summary>Gets a value indicating whether the seed was inoculated before it was sold.</summary>
    public bool IsPreinoculated { get; init; }

    /// <summary>Gets the seed of other crops; null when the tag was not given so far.</summary>
    public Fraction? OtherCrop { get; init; }

    /// <summary>Gets the inert matter, coating counted in; null when the tag was not given so far.</summary>
    public Fraction? Inert { get; init; }

    /// <summary>Gets the weed seed; null when the tag was not given so far.</summary>
    public Fraction? Weed { get; init; }

    /// <summary>Gets the noxious weed seeds named on the tag.</summary>
    /// <value>None unless stated.</value>
    /// <exception cref="ArgumentException">A list that was never made, or with a null in it.</exception>
    public ImmutableArray<NoxiousWeed> Noxious
    {
        get;
        init => field = Guard.Listed(value, nameof(Noxious));
    } = [];

    /// <summary>Gets a value indicating whether it has no tag, such as oats from an elevator: its <see cref="Analysis"/> is an
    /// assumption then, and no seed is weighed out by it before a home test.</summary>
    public bool IsUntagged { get; init; }

    /// <summary>The kind as it is in this lot: with the lot's own count where it was counted.</summary>
    /// <param name="kind">Kind of the lot, as a plan holds it.</param>
    internal CropKind WithOwnCount(CropKind kind) => OwnSeedCount is { } own ? kind with { SeedCount = own } : kind;

    /// <summary>Gets the seed count: that of the lot, or else of the kind; null when neither is known.</summary>
    public SeedCount? SeedCount => OwnSeedCount ?? Kind.SeedCount;

    /// <summary>The lot of one kind named on a tag.</summary>
    /// <param name="tag">Tag.</param>
    /// <param name="component">Kind named on it.</param>
    /// <param name="label">What to call the lot.</param>
    /// <returns>The lot.</returns>
    /// <exception cref="ArgumentException">The tag does not name this component, or a blank label.</exception>
    public static SeedLot FromTag(SeedTag tag, TagComponent component, string label)
    {
        ArgumentNullException.ThrowIfNull(tag);
        ArgumentNullException.ThrowIfNull(component);
        return tag.Components.Contains(component)
            ? Of(tag, component, label)
            : throw new ArgumentException("The tag does not name this component.", nameof(component));
    }

    /// <summary>The lot of one kind on a tag, its varieties joined.</summary>
    /// <param name="tag">Tag.</param>
    /// <param name="kind">Kind named on it.</param>
    /// <param name="label">What to call the lot.</param>
    /// <returns>The lot.</returns>
    /// <exception cref="ArgumentException">The tag does not name this kind, or a blank label.</exception>
    public static SeedLot FromTag(SeedTag tag, CropKind kind, string label)
    {
        ArgumentNullException.ThrowIfNull(tag);
        ArgumentNullException.ThrowIfNull(kind);
        return tag.ByKind.FirstOrDefault(c => c.Kind.Id == kind.Id) is { } joined
            ? Of(tag, joined, label)
            : throw new ArgumentException($"The tag does not name {kind.ShortName}.", nameof(kind));
    }

    /// <summary>The bulk rate that delivers a rate of pure live seed from this lot.</summary>
    /// <param name="target">Rate of pure live seed.</param>
    /// <param name="rule">Which seeds count as alive; null takes the rule for the kind
    /// (<see cref="ViabilityRule.For(CropKind)"/>).</param>
    /// <returns>The bulk rate.</returns>
    public BulkSeeding BulkRate(PureLiveSeedRate target, ViabilityRule? rule = null) =>
        PureLiveSeed.BulkRate(target, Analysis, rule ?? ViabilityRule.For(Kind), Kind);

    /// <summary>The part of the bag that is pure live seed.</summary>
    /// <param name="rule">Which seeds count as alive; null takes the rule for the kind.</param>
    /// <returns>The part.</returns>
    public Fraction PureLiveSeedPart(ViabilityRule? rule = null) =>
        PureLiveSeed.PartOf(Analysis, rule ?? ViabilityRule.For(Kind));

    /// <summary>Cautions of the lot itself for a way of sowing: treated seed, seed inoculated long ago.</summary>
    /// <param name="method">How it is sown.</param>
    /// <returns>The findings, most serious first.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Unknown method.</exception>
    public ImmutableArray<Finding> Cautions(SowingMethod method)
    {
        Guard.Defined(method);
        var found = new List<Finding>();
        if (IsTreated)
        {
            found.Add(FindingCatalog.Create(SeedCodes.Treated));
            if (method != SowingMethod.Drilled)
            {
                found.Add(FindingCatalog.Create(SeedCodes.TreatedOnSurface, ("method", SowingMethods.InWords(method))));
            }

            if (Kind.IsLegume)
            {
                found.Add(FindingCatalog.Create(SeedCodes.TreatedLegume));
            }
        }

        if (OwnSeedCount is { } own && Kind.SeedCount is { } published && published.IsFarFrom(own))
        {
            found.Add(
                FindingCatalog.Create(
                    SeedCodes.CountUnusual,
                    ("kind", Kind.ShortName),
                    ("count", Amounts.Print(own.SeedsPerPound, 0)),
                    ("published", published.ToString())
                )
            );
        }

        found.AddRange(LotParts.Remarks(new TagComponent { Kind = Kind, Analysis = Analysis }, OtherCrop, Inert, Weed, Noxious));
        if (IsPreinoculated && Kind.IsLegume)
        {
            found.Add(FindingCatalog.Create(SeedCodes.Preinoculated));
        }

        return Finding.InOrder(found);
    }

    /// <summary>A lot without a tag, such as oats from an elevator: planned by an assumption as cases only.</summary>
    /// <param name="kind">Kind.</param>
    /// <param name="label">What to call the lot.</param>
    /// <returns>The lot.</returns>
    /// <exception cref="ArgumentException">A blank label.</exception>
    public static SeedLot Untagged(CropKind kind, string label)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return new()
        {
            Label = label,
            Kind = kind,
            Analysis = AssumedWith(Fraction.FromPercent(SeedConstants.All["untagged-germination"])),
            IsUntagged = true,
        };
    }

    /// <summary>An untagged lot as if a home test had found so much of it germinating.</summary>
    internal SeedLot IfGerminating(Fraction germination) => this with { Analysis = AssumedWith(germination), IsUntagged = false };

    private static SeedAnalysis AssumedWith(Fraction germination) =>
        SeedAnalysis.FromFractions(Fraction.FromPercent(SeedConstants.All["untagged-purity"]), germination);

    private static SeedLot Of(SeedTag tag, TagComponent component, string label) =>
        new()
        {
            Label = Guard.NotBlank(label),
            Kind = component.Kind,
            Analysis = component.Analysis,
            TestMonth = component.TestMonth ?? tag.OldestTest,
            OtherCrop = tag.ByKind.Length == 1 ? tag.OtherCrop : null,
            Inert = tag.ByKind.Length == 1 ? tag.Inert : null,
            Weed = tag.ByKind.Length == 1 ? tag.Weed : null,
            Noxious = tag.Noxious,
            IsTreated = tag.IsTreated,
            IsPreinoculated = tag.IsPreinoculated,
        };

    /// <summary>Whether this is the very same lot.</summary>
    /// <param name="other">Other lot.</param>
    /// <returns>True for the same object.</returns>
    public bool Equals(SeedLot? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => RuntimeHelpers.GetHashCode(this);

    /// <summary>The kind and the label.</summary>
    /// <returns>Text such as <c>Crimson clover, lot C-3</c>.</returns>
    public override string ToString() => $"{Kind.ShortName}, lot {Label}";
}
