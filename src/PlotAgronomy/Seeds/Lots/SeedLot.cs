using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy;

/// <summary>One kind as it can be bought: its analysis, package and price.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SeedLot
{
    /// <summary>Gets what the user calls the lot.</summary>
    public required string Label { get; init; }

    /// <summary>Gets the kind.</summary>
    public required CropKind Kind { get; init; }

    /// <summary>Gets the analysis.</summary>
    public required SeedAnalysis Analysis { get; init; }

    /// <summary>Gets the weight of a package, or null when it is sold by weight.</summary>
    public Mass? Package { get; init; }

    /// <summary>Gets the price of a pound out of the bag, or null.</summary>
    public decimal? PricePerPound { get; init; }

    /// <summary>Gets the count of this very lot, which goes before the kind's; or null.</summary>
    public SeedCount? OwnSeedCount { get; init; }

    /// <summary>Gets the month of test, or null.</summary>
    public TestMonth? TestMonth { get; init; }

    /// <summary>Gets a value indicating whether the seed is treated with a pesticide.</summary>
    public bool IsTreated { get; init; }

    /// <summary>Gets a value indicating whether the seed was inoculated before it was sold.</summary>
    public bool IsPreinoculated { get; init; }

    /// <summary>Gets the seed count: that of the lot, or else of the kind; null when neither is known.</summary>
    public SeedCount? SeedCount => OwnSeedCount ?? Kind.SeedCount;

    /// <summary>The price of a pound from the price of a package.</summary>
    /// <param name="price">Price of a package; at least 0.</param>
    /// <param name="package">Weight of a package; finite, above 0.</param>
    /// <returns>Price of a pound, unrounded.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static decimal PriceOfAPound(decimal price, Mass package)
    {
        double pounds = package.Pounds;
        return Guard.AtLeast(price, 0m, "per package") / (decimal)Guard.Above(pounds, 0, "lb", nameof(package));
    }

    /// <summary>The lot of one kind named on a tag.</summary>
    /// <param name="tag">Tag.</param>
    /// <param name="component">Kind named on it.</param>
    /// <param name="label">What to call the lot.</param>
    /// <param name="pricePerPound">Price of a pound of the bag, or null.</param>
    /// <returns>The lot.</returns>
    /// <exception cref="ArgumentException">The tag does not name this component, or a blank label.</exception>
    public static SeedLot FromTag(SeedTag tag, TagComponent component, string label, decimal? pricePerPound = null)
    {
        ArgumentNullException.ThrowIfNull(tag);
        ArgumentNullException.ThrowIfNull(component);
        return tag.Components.Contains(component)
            ? new SeedLot
            {
                Label = Guard.NotBlank(label),
                Kind = component.Kind,
                Analysis = component.Analysis,
                Package = tag.NetWeight,
                PricePerPound = pricePerPound,
                TestMonth = component.TestMonth ?? tag.OldestTest,
                IsTreated = tag.IsTreated,
                IsPreinoculated = tag.IsPreinoculated,
            }
            : throw new ArgumentException("The tag does not name this component.", nameof(component));
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

        if (IsPreinoculated && Kind.IsLegume)
        {
            found.Add(FindingCatalog.Create(SeedCodes.Preinoculated));
        }

        return Finding.InOrder(found);
    }
}
