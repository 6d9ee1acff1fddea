using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>One kind with its lot, its part of the blend and the bulk seed to weigh out.</summary>
internal sealed record SownKind(PlannedKind Planned, BlendPart Part, BulkSeeding Bulk, BulkSeedMass Weight, int Packages)
{
    internal IEnumerable<WorkedLine> LiveRateLines => BlendWork.LiveRate(Part);

    internal decimal Cost => Packages * Planned.Offer.Price;

    internal WorkedLine WeightLine(Area area)
    {
        double acres = area.Acres;
        return BlendWork.Weight(Part.Component, acres, Weight.Pounds);
    }
}
