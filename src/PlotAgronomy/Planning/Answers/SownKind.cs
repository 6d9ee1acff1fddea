using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Planning;

/// <summary>One kind with its lot, its part of the blend and the bulk seed to weigh out.</summary>
internal sealed record SownKind(PlannedKind Planned, BlendPart Part, BulkSeeding Bulk, BulkSeedMass Weight, int Packages)
{
    internal decimal Cost => Packages * Planned.Offer.Price;
}
