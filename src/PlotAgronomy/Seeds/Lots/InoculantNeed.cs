using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Seeds;

/// <summary>Inoculant for a weight of legume seed.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class InoculantNeed : IWorkedResult
{
    private readonly CropKind kind;
    private readonly SeedLot? lot;

    private InoculantNeed(CropKind kind, SeedLot? lot, BulkSeedMass seed)
    {
        this.kind = kind;
        this.lot = lot;
        Seed = seed;
    }

    /// <summary>Gets the inoculant group. Match by the crop's name on the package, not by the letter.</summary>
    public InoculantGroup Group => kind.InoculantGroup!;

    /// <summary>Gets the seed to treat.</summary>
    public BulkSeedMass Seed { get; }

    /// <summary>Gets the inoculant at a maker's usual rate, 0.12 oz per lb. The label of the package governs.</summary>
    public Mass AtLabelRate => OnSeed("inoculant-label-rate");

    /// <summary>Gets the inoculant for an extra-rate slurry, 0.24 oz per lb: worth it on small plots, where its cost is
    /// trivial.</summary>
    public Mass AtThoroughRate => OnSeed("inoculant-extra-rate");

    /// <summary>Gets the syrup or molasses of the sticker.</summary>
    public Mass Syrup => OnSeed("sticker-syrup");

    /// <summary>Gets the water of the sticker.</summary>
    public Mass Water => OnSeed("sticker-water");

    /// <summary>Gets the time within which to plant.</summary>
    public TimeSpan PlantWithin { get; } = TimeSpan.FromHours(Within.Value);

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder(Finding.InOrder(Remarks()).Concat(lot?.Cautions(SowingMethod.Drilled) ?? []));

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        [.. Worked.SelectMany(f => f.Origin!.Sources).Concat(Within.Origin.Sources).Concat(Group.Evidence.Sources).Distinct()];

    private static IEnumerable<Formula> Worked =>
        [
            SeedFormulas.All["inoculant-label-rate"],
            SeedFormulas.All["inoculant-extra-rate"],
            SeedFormulas.All["sticker-syrup"],
            SeedFormulas.All["sticker-water"],
        ];

    private static Constant Within => SeedConstants.All.Find("plant-inoculated-within");

    /// <summary>Inoculant for a kind's seed.</summary>
    /// <param name="kind">Legume.</param>
    /// <param name="seed">Bulk seed to treat.</param>
    /// <returns>The need.</returns>
    /// <exception cref="ArgumentException">The kind needs no inoculant.</exception>
    public static InoculantNeed For(CropKind kind, BulkSeedMass seed)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return Of(kind, null, seed);
    }

    /// <summary>Inoculant for a lot's seed; treated and preinoculated lots bring their cautions.</summary>
    /// <param name="lot">Lot of a legume.</param>
    /// <param name="seed">Bulk seed to treat.</param>
    /// <returns>The need.</returns>
    /// <exception cref="ArgumentException">The kind needs no inoculant.</exception>
    public static InoculantNeed For(SeedLot lot, BulkSeedMass seed)
    {
        ArgumentNullException.ThrowIfNull(lot);
        return Of(lot.Kind, lot, seed);
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork()
    {
        var seed = ("seed", $"{Amounts.Print(Seed.Pounds, 2)} lb");
        return
        [
            Line("inoculant-label-rate", "oz a lb", AtLabelRate),
            Line("inoculant-extra-rate", "oz a lb", AtThoroughRate),
            Line("sticker-syrup", "oz of syrup a lb", Syrup),
            Line("sticker-water", "oz of water a lb", Water),
        ];

        WorkedLine Line(string id, string place, Mass answer) =>
            SeedFormulas.All[id].Line(Amounts.Print(answer, "oz", 2), (place, Amounts.Print(SeedConstants.All[id], 2)), seed);
    }

    private static InoculantNeed Of(CropKind kind, SeedLot? lot, BulkSeedMass seed) =>
        kind.InoculantGroup is not null
            ? new(kind, lot, seed)
            : throw new ArgumentException($"{kind.ShortName} needs no inoculant: it is no legume.", nameof(kind));

    /// <summary>What goes on the seed at a rate that has the id of its formula.</summary>
    private Mass OnSeed(string rate) => Mass.FromOunces(SeedMath.OuncesOnSeed(SeedConstants.All[rate], Seed.Pounds));

    private IEnumerable<Finding> Remarks()
    {
        yield return FindingCatalog.Create(
            SeedCodes.Inoculate,
            ("group", Group.ToString()),
            ("hours", Amounts.Print(Within.Value, 0))
        );
        if (Group.Evidence.FindingFor($"the inoculant group of {kind.ShortName}") is { } memory)
        {
            yield return memory;
        }
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
