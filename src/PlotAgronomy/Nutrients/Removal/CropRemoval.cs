using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>What leaves a plot with the crop. A plot that is only browsed loses nothing that counts.</summary>
/// <remarks>Removal = yield x pounds per unit x part carried off (x share the animals keep). The yield is asked for, never
/// assumed.</remarks>
public sealed class CropRemoval : IWorkedResult
{
    private readonly Func<ImmutableArray<WorkedLine>> work;

    private CropRemoval(
        ImmutableArray<RemovedNutrient> nutrients,
        IEnumerable<Finding> findings,
        ImmutableArray<string> sourceIds,
        Func<ImmutableArray<WorkedLine>> work
    )
    {
        Nutrients = nutrients;
        Findings = Finding.InOrder(findings);
        SourceIds = sourceIds;
        this.work = work;
    }

    /// <summary>Gets a plot that is only browsed: nothing is carried off.</summary>
    public static CropRemoval Browsed { get; } = new([], [], [], () => [NothingRemoved()]);

    /// <summary>Gets the nutrients that leave; empty on a browsed plot.</summary>
    public ImmutableArray<RemovedNutrient> Nutrients { get; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings { get; }

    /// <inheritdoc/>
    public ImmutableArray<string> SourceIds { get; }

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
    public ImmutableArray<WorkedLine> ShowWork() => work();

    private static WorkedLine NothingRemoved() =>
        NutrientFormulas
            .All["nothing-carried-off"]
            .Line(NutrientFormulas.PerAcre(0), ("what", "Removal"));

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

        var nutrients = ImmutableArray.CreateBuilder<RemovedNutrient>();
        foreach (var (nutrient, low, high) in figure.PoundsPerUnit)
        {
            if (kept is null || kept.Of(nutrient) is not null)
            {
                double share = kept?.Of(nutrient)?.Value ?? 1;
                nutrients.Add(new RemovedNutrient(nutrient, Rate(low), Rate(high)));

                ApplicationRate Rate(double perUnit) =>
                    ApplicationRate.FromPoundsPerAcre(RemovalMath.PoundsPerAcre(yield.PerAcre, perUnit, part.Value, share));
            }
        }

        ImmutableArray<string> sources = kept is null ? figure.SourceIds : [.. figure.SourceIds, kept.SourceId];
        return new CropRemoval(
            nutrients.ToImmutable(),
            figure.Status == DataStatus.Memory ? [MemoryGate.FindingFor(figure.ToString(), figure.SourceIds[0])] : [],
            sources,
            Lines
        );

        ImmutableArray<WorkedLine> Lines() =>
            [
                .. from n in nutrients
                from perUnit in figure.PoundsPerUnit
                where perUnit.Nutrient == n.Nutrient
                select NutrientFormulas
                    .All["crop-removal"]
                    .Line(
                        $"{NutrientWords.Range(n.Low.PoundsPerAcre, n.High.PoundsPerAcre)} lb/ac",
                        ("nutrient", SoilWords.For(n.Nutrient)),
                        ("yield", yield.ToString()),
                        ("pounds a unit", NutrientWords.Range(perUnit.Low, perUnit.High)),
                        ("part carried off", NutrientFormulas.Number(part.Value)),
                        ("share kept", NutrientFormulas.Number(kept?.Of(n.Nutrient)?.Value ?? 1))
                    )
                    .From(figure.SourceIds[0], figure.Status),
            ];
    }
}
