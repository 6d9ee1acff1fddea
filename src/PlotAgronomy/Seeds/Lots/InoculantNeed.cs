using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Seeds;

/// <summary>Inoculant for a weight of legume seed.</summary>
public sealed class InoculantNeed : IWorkedResult
{
    /// <summary>A maker's usual rate for small legumes: 6 oz treats 50 lb (common practice).</summary>
    private const double LabelOuncesPerPound = 6.0 / 50;

    /// <summary>Extra-rate slurry: about 6 oz for 25 lb of seed (SEED-S73).</summary>
    private const double ThoroughOuncesPerPound = 6.0 / 25;

    /// <summary>Sticker: 2 oz of syrup or molasses and 8 oz of water for 25 lb of seed (SEED-S73).</summary>
    private const double SyrupOuncesPerPound = 2.0 / 25;

    private const double WaterOuncesPerPound = 8.0 / 25;

    /// <summary>Inoculated seed not planted within this time is inoculated again (SEED-S74).</summary>
    private const int PlantWithinHours = 24;

    private readonly CropKind kind;

    private InoculantNeed(CropKind kind, BulkSeedMass seed)
    {
        this.kind = kind;
        Seed = seed;
        Findings = Finding.InOrder(Remarks());
    }

    /// <summary>Gets the inoculant group. Match by the crop's name on the package, not by the letter.</summary>
    public InoculantGroup Group => kind.InoculantGroup!;

    /// <summary>Gets the seed to treat.</summary>
    public BulkSeedMass Seed { get; }

    /// <summary>Gets the inoculant at a maker's usual rate, 0.12 oz per lb. The label of the package governs.</summary>
    public Mass AtLabelRate => Mass.FromOunces(Seed.Pounds * LabelOuncesPerPound);

    /// <summary>Gets the inoculant for an extra-rate slurry, 0.24 oz per lb: worth it on small plots, where its cost is
    /// trivial.</summary>
    public Mass AtThoroughRate => Mass.FromOunces(Seed.Pounds * ThoroughOuncesPerPound);

    /// <summary>Gets the syrup or molasses of the sticker.</summary>
    public Mass Syrup => Mass.FromOunces(Seed.Pounds * SyrupOuncesPerPound);

    /// <summary>Gets the water of the sticker.</summary>
    public Mass Water => Mass.FromOunces(Seed.Pounds * WaterOuncesPerPound);

    /// <summary>Gets the time within which to plant.</summary>
    public TimeSpan PlantWithin { get; } = TimeSpan.FromHours(PlantWithinHours);

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings { get; }

    /// <inheritdoc/>
    public ImmutableArray<string> SourceIds =>
        ["PRACTICE", "SEED-S73", "SEED-S74", .. Group.Evidence.SourceIds.Where(id => id is not ("SEED-S73" or "SEED-S74"))];

    /// <summary>Inoculant for a kind's seed.</summary>
    /// <param name="kind">Legume.</param>
    /// <param name="seed">Bulk seed to treat.</param>
    /// <returns>The need.</returns>
    /// <exception cref="ArgumentException">The kind needs no inoculant.</exception>
    public static InoculantNeed For(CropKind kind, BulkSeedMass seed)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return kind.InoculantGroup is not null
            ? new(kind, seed)
            : throw new ArgumentException($"{kind.ShortName} needs no inoculant: it is no legume.", nameof(kind));
    }

    /// <summary>Inoculant for a lot's seed; treated and preinoculated lots bring their cautions.</summary>
    /// <param name="lot">Lot of a legume.</param>
    /// <param name="seed">Bulk seed to treat.</param>
    /// <returns>The need.</returns>
    /// <exception cref="ArgumentException">The kind needs no inoculant.</exception>
    public static InoculantNeed For(SeedLot lot, BulkSeedMass seed)
    {
        ArgumentNullException.ThrowIfNull(lot);
        var need = For(lot.Kind, seed);
        return new(need, lot.Cautions(SowingMethod.Drilled));
    }

    private InoculantNeed(InoculantNeed need, ImmutableArray<Finding> more)
        : this(need.kind, need.Seed) => Findings = Finding.InOrder(need.Findings.Concat(more));

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            new(
                "Inoculant, label rate",
                "0.12 oz/lb x seed",
                $"0.12 x {Amounts.Print(Seed.Pounds, 2)} lb = {Amounts.Print(AtLabelRate, "oz", 2)}",
                "PRACTICE"
            ),
            new(
                "Inoculant, extra rate",
                "0.24 oz/lb x seed",
                $"0.24 x {Amounts.Print(Seed.Pounds, 2)} lb = {Amounts.Print(AtThoroughRate, "oz", 2)}",
                "SEED-S73"
            ),
            new(
                "Sticker",
                "0.08 oz syrup and 0.32 oz water a lb of seed",
                $"{Amounts.Print(Syrup, "oz", 2)} syrup, {Amounts.Print(Water, "oz", 2)} water",
                "SEED-S73"
            ),
        ];

    private IEnumerable<Finding> Remarks()
    {
        yield return FindingCatalog.Create(
            "seed-inoculate",
            ("group", Group.ToString()),
            ("hours", Amounts.Print(PlantWithinHours, 0))
        );
        if (Group.Evidence.FindingFor($"the inoculant group of {kind.ShortName}") is { } memory)
        {
            yield return memory;
        }
    }
}
