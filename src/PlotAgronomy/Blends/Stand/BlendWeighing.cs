using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Blends;

/// <summary>What to weigh out for a blend.</summary>
public static class BlendWeighing
{
    /// <summary>Weights to weigh out for an area.</summary>
    /// <param name="blend">Blend.</param>
    /// <param name="area">Area sown; finite, above 0.</param>
    /// <returns>The batch.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, NaN or infinite.</exception>
    public static BlendBatch WeighFor(this Blend blend, Area area)
    {
        ArgumentNullException.ThrowIfNull(blend);
        double acres = area.Acres;
        Guard.Above(acres, 0, "ac", nameof(area));
        return new BlendBatch
        {
            Blend = blend,
            Area = area,
            Lines = [.. blend.Parts.Select(p => new BlendWeight { Component = p.Component, Weight = p.BulkRate.Over(area) })],
        };
    }

    /// <summary>Weights to weigh out for a batch of a given weight, such as one spreader fill.</summary>
    /// <param name="blend">Blend.</param>
    /// <param name="batch">Bulk weight of the whole batch, above 0.</param>
    /// <returns>The batch, with the area it covers.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A weight of zero.</exception>
    public static BlendBatch WeighBatch(this Blend blend, BulkSeedMass batch)
    {
        ArgumentNullException.ThrowIfNull(blend);
        return blend.WeighFor(Area.FromAcres(Guard.Above(batch.Pounds, 0, "lb", nameof(batch)) / blend.BulkRate.PoundsPerAcre));
    }
}
