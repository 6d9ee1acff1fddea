using System.Collections.Immutable;

namespace PlotAgronomy.PlanFiles;

/// <summary>What a part may ask of the rest of the plan; the whole plan, which declares those fields, hands it in.</summary>
/// <param name="Method">How the seed is planted.</param>
/// <param name="IsCarriedOff">Whether the plan says that the crop is cut and carried off.</param>
/// <param name="SeedLots">The lots of seed on offer that could be read.</param>
/// <param name="EverySeedLotWasRead">Whether those are all that the file lists.</param>
internal sealed record RestOfPlan(
    PlanField<PlantingMethod> Method,
    Func<PlanPart, bool> IsCarriedOff,
    Func<PlanPart, ImmutableArray<Offer<SeedLot>>> SeedLots,
    Func<PlanPart, bool> EverySeedLotWasRead
);
