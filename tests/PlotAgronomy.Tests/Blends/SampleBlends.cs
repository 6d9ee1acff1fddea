using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Tests.Blends;

/// <summary>Inputs of the worked examples, as their sources give them.</summary>
internal static class SampleBlends
{
    internal static CropKind Kind(string id) => KindCatalog.Standard.Kinds.Single(k => k.Id == id);

    /// <summary>A kind that the table does not hold, known by its seed count alone.</summary>
    internal static CropKind Unlisted(string name, double seedsPerPound) => Kind("timothy") with
    {
        Id = name.ToLowerInvariant().Replace(' ', '-'),
        CommonName = name,
        SeedCount = SeedCount.FromSeedsPerPound(seedsPerPound),
    };

    internal static BlendComponent Drilled(string id, double full, double seedsPerPound) =>
        BlendComponent.FromKind(Kind(id), PureLiveSeedRate.DrilledPoundsPerAcre(full)) with { SeedsPerPound = seedsPerPound };

    internal static BlendComponent Broadcast(string id, double full, double seedsPerPound) =>
        BlendComponent.FromKind(Kind(id), PureLiveSeedRate.BroadcastPoundsPerAcre(full)) with { SeedsPerPound = seedsPerPound };

    internal static BlendComponent Tagged(this BlendComponent component, double purityPercent, double viabilityPercent) =>
        component with { Purity = Fraction.FromPercent(purityPercent), Viability = Fraction.FromPercent(viabilityPercent) };

    internal static PureLiveSeedRate LiveBroadcast(double pounds) => PureLiveSeedRate.BroadcastPoundsPerAcre(pounds);

    internal static PureLiveSeedRate LiveDrilled(double pounds) => PureLiveSeedRate.DrilledPoundsPerAcre(pounds);

    internal static Blend TurnipRapeRadish() => Blend.FromLiveRates(
        (Broadcast("purple-top-turnip", 5, 220_000), LiveBroadcast(3)),
        (Broadcast("rape-dwarf-essex", 5, 156_960), LiveBroadcast(2)),
        (Broadcast("forage-radish", 10, 34_000), LiveBroadcast(5)));

    internal static Blend FiveDrilled() => Blend.FromLiveRates(
        (Drilled("forage-radish", 13, 34_000), LiveDrilled(5)),
        (Drilled("purple-top-turnip", 5, 220_000), LiveDrilled(5)),
        (Drilled("ladino-clover", 5, 776_000), LiveDrilled(5)),
        (Drilled("cereal-rye", 120, 18_160), LiveDrilled(50)),
        (Drilled("winter-wheat", 120, 12_000), LiveDrilled(50)));

    internal static Blend FourGrains() => Blend.FromLiveRates(
        (Broadcast("austrian-winter-pea", 100, 4_000), LiveBroadcast(40)),
        (Broadcast("cereal-rye", 160, 18_160), LiveBroadcast(40)),
        (Broadcast("winter-wheat", 150, 12_000), LiveBroadcast(40)),
        (Broadcast("oats-spring", 150, 16_000), LiveBroadcast(40)));

    /// <summary>Rye, pea, coated crimson and radish by share of a full stand, broadcast at 1.25 times the drilled rates.</summary>
    internal static Blend FallFour() => Blend.FromSharesOfFullStand(
        (FactorOnce("cereal-rye", 90, 18_000).Tagged(98.50, 90), 0.35),
        (FactorOnce("austrian-winter-pea", 50, 2_800).Tagged(99.00, 88), 0.30),
        (FactorOnce("crimson-clover", 18, 150_000).Tagged(65.00, 85), 0.25),
        (FactorOnce("daikon-radish", 8, 34_000).Tagged(99.00, 92), 0.20));

    /// <summary>A 50-lb bag spread at 50 lb/ac, read from its tag.</summary>
    internal static Blend FiveOnTag(double bagRate = 50) => Blend.FromTag(
        ApplicationRate.FromPoundsPerAcre(bagRate),
        (Drilled("oats-spring", 90, 14_000).Viable(90), Fraction.FromPercent(46.20)),
        (Drilled("winter-wheat", 100, 15_000).Viable(90), Fraction.FromPercent(29.40)),
        (Drilled("austrian-winter-pea", 50, 2_800).Viable(85), Fraction.FromPercent(14.70)),
        (Drilled("crimson-clover", 18, 150_000).Viable(90), Fraction.FromPercent(4.90)),
        (Drilled("purple-top-turnip", 4, 190_000).Viable(90), Fraction.FromPercent(1.96)));

    internal static Blend ThreeBySeeds() => Blend.FromSeedShares(
        30,
        (Drilled("oats-spring", 90, 14_000).Tagged(98, 90), Fraction.FromPercent(40)),
        (Drilled("crimson-clover", 18, 150_000).Tagged(65, 85), Fraction.FromPercent(35)),
        (Drilled("purple-top-turnip", 4, 190_000).Tagged(99, 90), Fraction.FromPercent(25)));

    /// <summary>Eight natives at the printed rates, seed counts as the printed seeds per ft2 imply.</summary>
    internal static Blend Sandyland() => Blend.FromLiveRates(
        Native("Big bluestem", 1.20, 164_657),
        Native("Little bluestem", 0.68, 264_819),
        Native("Indiangrass", 0.90, 174_676),
        Native("Switchgrass", 0.60, 279_655),
        Native("Sand lovegrass", 0.10, 1_749_805),
        Native("Partridge pea", 0.16, 75_359),
        Native("Prairie clover", 0.12, 287_932),
        Native("Maximilian sunflower", 0.06, 224_770));

    internal static Blend Find(string name) => name switch
    {
        "fall-four" => FallFour(),
        "five-on-tag" => FiveOnTag(),
        "three-by-seeds" => ThreeBySeeds(),
        "sandyland" => Sandyland(),
        _ => throw new ArgumentException($"No blend '{name}'.", nameof(name)),
    };

    private static BlendComponent Viable(this BlendComponent component, double percent) => component with { Viability = Fraction.FromPercent(percent) };

    private static BlendComponent FactorOnce(string id, double drilled, double seedsPerPound) =>
        BlendComponent.FromKind(Kind(id), BroadcastFactor.BroadcastFrom(LiveDrilled(drilled), SeedbedCover.CoveredAndRolled)) with { SeedsPerPound = seedsPerPound };

    private static (BlendComponent, PureLiveSeedRate) Native(string name, double pounds, double seedsPerPound) =>
        (BlendComponent.FromKind(Unlisted(name, seedsPerPound), PureLiveSeedRate.DrilledPoundsPerAcre(10)), PureLiveSeedRate.DrilledPoundsPerAcre(pounds));
}
