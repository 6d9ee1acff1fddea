using System.Collections.Immutable;
using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>One kind with its lot, its part of the blend and the bulk seed to weigh out.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SownKind
{
    private readonly Area area;

    internal SownKind(Area area) => this.area = area;

    /// <summary>Gets the kind and its lot as planned.</summary>
    public required PlannedKind Planned { get; init; }

    /// <summary>Gets its part of the blend.</summary>
    public required BlendPart Part { get; init; }

    /// <summary>Gets the bulk rate that brings its living seed.</summary>
    public required BulkSeeding Bulk { get; init; }

    /// <summary>Gets the bulk seed to weigh out for the plot.</summary>
    public required BulkSeedMass Weight { get; init; }

    /// <summary>Gets the whole packages to buy.</summary>
    public required int? Packages { get; init; }

    /// <summary>Gets the price of the packages, in the plan's currency.</summary>
    public decimal Cost =>
        Packages is { } packages ? Planned.Offer.CostOf(packages) : BlendMath.Cost(Planned.Offer.PricePerPound, Weight.Pounds);

    /// <summary>Lays out how the living rate and the weight come about; <see cref="Bulk"/> shows what lies between.</summary>
    /// <returns>The lines, in order.</returns>
    public ImmutableArray<WorkedLine> ShowWork()
    {
        double acres = area.Acres;
        return [.. BlendWork.LiveRate(Part), BlendWork.Weight(Part.Component, acres, Weight.Pounds)];
    }
}
