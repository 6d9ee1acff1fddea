using System.Collections.Immutable;
using PlotAgronomy.Liming;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Planning;

/// <summary>A kind of the catalog that would stand where one of the plan drops out: it fits the soil, the day and the way of
/// sowing by its own figures.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SubstituteKind
{
    private readonly PlotPlan plan;

    internal SubstituteKind(PlotPlan plan) => this.plan = plan;

    /// <summary>Gets the kind.</summary>
    public required CropKind Kind { get; init; }

    /// <summary>Gets the kind of the plan in whose place it stands.</summary>
    public required CropKind InsteadOf { get; init; }

    /// <summary>Gets the lowest pH it stands on this soil.</summary>
    public double LowestPh => Kind.LowestPhOn(plan.Soil)!.Value;

    /// <summary>Gets the pH that a test must show before it is sown, which the lime may bring by then; null where today's soil
    /// will do.</summary>
    public double? TestMustShow => Kind.IsTooSourOn(plan.Soil) ? LowestPh : null;

    /// <summary>Whether today's soil is barely what it stands: a reading is off by as much.</summary>
    internal bool IsAtItsEdge =>
        TestMustShow is null
        && plan.Soil.WaterPh is { } today
        && !Tolerance.IsAbove(today.Value, LowestPh + PlanningConstants.All["ph-margin"]);

    /// <summary>Gets the wettest ground it stands, where it is known.</summary>
    public DrainageClass? WettestDrainage => Kind.Drainage?.Wettest;

    /// <summary>Gets the driest ground it stands, where it is known.</summary>
    public DrainageClass? DriestDrainage => Kind.Drainage?.Driest;

    /// <summary>Gets the published dates that hold the day of the plan; none while day or region is not known.</summary>
    public ImmutableArray<PlantingWindow> Windows => SowingSeason.WindowsOnDay(plan, Kind);

    /// <summary>Whom its plants poison, in words.</summary>
    internal IEnumerable<string> Poisons => Kind.Hazards.Where(h => h.Type == HazardType.Toxicity).Select(h => h.Level);

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Kind.ShortName} in place of {InsteadOf.ShortName}";
}
