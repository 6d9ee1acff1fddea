using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>What leaves a plot with the crop. A plot that is only browsed loses nothing that counts.</summary>
/// <remarks>Removal = yield x pounds per unit x part carried off (x share the animals keep). The yield is asked for, never
/// assumed.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class CropRemoval : IWorkedResult
{
    private readonly RemovalFigure? figure;
    private readonly CropYield yield;
    private readonly Fraction part;
    private readonly RetainedShare? kept;

    private CropRemoval(RemovalFigure? figure, CropYield yield, Fraction part, RetainedShare? kept)
    {
        this.figure = figure;
        this.yield = yield;
        this.part = part;
        this.kept = kept;
        Nutrients = figure is null ? [] : [.. figure.PoundsPerUnit.Where(n => IsKnown(n.Nutrient)).Select(Removed)];
    }

    /// <summary>Gets a plot that is only browsed: nothing is carried off.</summary>
    public static CropRemoval Browsed { get; } = new(null, default, Fraction.One, null);

    /// <summary>Gets the nutrients that leave; empty on a browsed plot.</summary>
    public ImmutableArray<RemovedNutrient> Nutrients { get; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        figure is { Status: DataStatus.Memory } ? [MemoryGate.FindingFor(figure.ToString(), figure.Origin.FirstSource)] : [];

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        figure is null ? []
        : kept is null ? figure.Origin.Sources
        : [.. figure.Origin.Sources, .. kept.Origin.Sources];

    /// <summary>A crop that is harvested and carried off.</summary>
    /// <param name="figure">Published figure.</param>
    /// <param name="yield">Yield in the figure's unit.</param>
    /// <param name="partCarriedOff">Part of it that leaves, such as half of the stover; null for all.</param>
    /// <returns>The removal.</returns>
    /// <exception cref="ArgumentException">The yield is in another unit than the figure.</exception>
    public static CropRemoval CarriedOff(RemovalFigure figure, CropYield yield, Fraction? partCarriedOff = null) =>
        Create(figure, yield, partCarriedOff ?? Fraction.One, null);

    /// <summary>A crop that is eaten in place: the animals keep a share and return the rest.</summary>
    /// <param name="figure">Published figure.</param>
    /// <param name="yield">Yield eaten, in the figure's unit.</param>
    /// <param name="kept">Shares the animals keep.</param>
    /// <returns>The removal; nutrients without a published share are left out.</returns>
    /// <exception cref="ArgumentException">The yield is in another unit than the figure.</exception>
    public static CropRemoval Grazed(RemovalFigure figure, CropYield yield, RetainedShare kept)
    {
        ArgumentNullException.ThrowIfNull(kept);
        return Create(figure, yield, Fraction.One, kept);
    }

    /// <summary>Finds what leaves of a nutrient.</summary>
    /// <param name="nutrient">Nutrient.</param>
    /// <returns>The removal; zero on a browsed plot; null when the publication has no figure for it.</returns>
    public RemovedNutrient? Find(PlantNutrient nutrient)
    {
        Guard.Defined(nutrient);
        return ReferenceEquals(this, Browsed)
            ? new RemovedNutrient(nutrient, ApplicationRate.Zero, ApplicationRate.Zero)
            : Nutrients.FirstOrDefault(n => n.Nutrient == nutrient);
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        figure is null ? [NothingRemoved()] : [.. figure.PoundsPerUnit.Where(n => IsKnown(n.Nutrient)).Select(Line)];

    private static WorkedLine NothingRemoved() =>
        NutrientFormulas.All["nothing-carried-off"].Line(NutrientFormulas.PerAcre(0), ("what", "Removal"));

    private static CropRemoval Create(RemovalFigure figure, CropYield yield, Fraction part, RetainedShare? kept)
    {
        ArgumentNullException.ThrowIfNull(figure);
        if (yield.Unit != figure.Unit)
        {
            throw new ArgumentException(
                $"The figure '{figure.Id}' is per {NutrientWords.YieldUnits[figure.Unit]}, the yield is {yield}.",
                nameof(yield)
            );
        }

        return new CropRemoval(figure, yield, part, kept);
    }

    /// <summary>A nutrient without a published share is left out of what is grazed.</summary>
    private bool IsKnown(PlantNutrient nutrient) => kept is null || kept.Of(nutrient) is not null;

    private double ShareKept(PlantNutrient nutrient) => kept?.Of(nutrient)?.Value ?? 1;

    private RemovedNutrient Removed((PlantNutrient Nutrient, double Low, double High) perUnit) =>
        new(perUnit.Nutrient, Rate(perUnit.Nutrient, perUnit.Low), Rate(perUnit.Nutrient, perUnit.High));

    private ApplicationRate Rate(PlantNutrient nutrient, double perUnit) =>
        ApplicationRate.FromPoundsPerAcre(RemovalMath.PoundsPerAcre(yield.PerAcre, perUnit, part.Value, ShareKept(nutrient)));

    private WorkedLine Line((PlantNutrient Nutrient, double Low, double High) perUnit)
    {
        var removed = Removed(perUnit);
        return NutrientFormulas
            .All["crop-removal"]
            .Line(
                $"{NutrientWords.Range(removed.Low.PoundsPerAcre, removed.High.PoundsPerAcre)} lb/ac",
                ("nutrient", SoilWords.For(perUnit.Nutrient)),
                ("yield", yield.ToString()),
                ("pounds a unit", NutrientWords.Range(perUnit.Low, perUnit.High)),
                ("part carried off", NutrientFormulas.Number(part.Value)),
                ("share kept", NutrientFormulas.Number(ShareKept(perUnit.Nutrient)))
            )
            .From(figure!.Origin.Published?.FirstSource);
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
