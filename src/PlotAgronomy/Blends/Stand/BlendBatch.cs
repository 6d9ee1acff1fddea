using System.Collections.Immutable;
using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Blends;

/// <summary>The weights of a blend for one area.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class BlendBatch
{
    internal BlendBatch() { }

    /// <summary>Gets the blend.</summary>
    public required Blend Blend { get; init; }

    /// <summary>Gets the area the batch covers.</summary>
    public required Area Area { get; init; }

    /// <summary>Gets what to weigh out of each bag.</summary>
    public required ImmutableArray<BlendWeight> Lines { get; init; }

    /// <summary>Gets the bulk weight of the batch.</summary>
    public BulkSeedMass Total => Lines.Aggregate(default(BulkSeedMass), (sum, l) => sum + l.Weight);

    /// <summary>Rounds every weight up to a whole step of the scale, and says what the blend then is.</summary>
    /// <param name="step">Step of the scale, such as 0.1 lb; finite, above 0.</param>
    /// <returns>The batch as it is weighed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A step not above 0, NaN or infinite.</exception>
    public BlendBatch RoundUpTo(Mass step)
    {
        double stepPounds = step.Pounds;
        Guard.Above(stepPounds, 0, "lb", nameof(step));
        var lines = Lines
            .Select(l => new BlendWeight
            {
                Component = l.Component,
                Weight = BulkSeedMass.FromPounds(Package.RoundUp(l.Weight.Pounds / stepPounds) * stepPounds),
            })
            .ToImmutableArray();
        return new BlendBatch
        {
            Blend = Blend.FromBatch(Area, [.. lines.Select(l => (l.Component, l.Weight))]),
            Area = Area,
            Lines = lines,
        };
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Amounts.Print(Total.ToMass(), "lb", 2)} for {Amounts.Print(Area, decimals: 3)}";
}
