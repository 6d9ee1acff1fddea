using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Blends;

/// <content>What to weigh out for a blend.</content>
public sealed partial class Blend
{
    /// <summary>Weights to weigh out for an area.</summary>
    /// <param name="area">Area sown; finite, above 0.</param>
    /// <returns>The batch.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, NaN or infinite.</exception>
    public BlendBatch WeighFor(Area area)
    {
        double acres = area.Acres;
        Guard.Above(acres, 0, "ac", nameof(area));
        return new BlendBatch
        {
            Blend = this,
            Area = area,
            Lines = [.. Parts.Select(p => new BlendWeight { Component = p.Component, Weight = p.BulkRate.Over(area) })],
        };
    }

    /// <summary>Weights to weigh out for a batch of a given weight, such as one spreader fill.</summary>
    /// <param name="batch">Bulk weight of the whole batch, above 0.</param>
    /// <returns>The batch, with the area it covers.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A weight of zero.</exception>
    public BlendBatch WeighBatch(BulkSeedMass batch)
    {
        return WeighFor(Area.FromAcres(Guard.Above(batch.Pounds, 0, "lb", nameof(batch)) / BulkRate.PoundsPerAcre));
    }
}
