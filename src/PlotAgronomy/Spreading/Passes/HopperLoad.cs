using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>One filling of the hopper.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class HopperLoad
{
    /// <summary>Gets the number of the filling, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>Gets the mass to fill in.</summary>
    public required Mass Mass { get; init; }

    /// <summary>Gets the same in level measured buckets; null when no bucket was measured. A pure number.</summary>
    public double? Buckets { get; init; }

    /// <summary>Gets the number of the pass in which it runs out; 0 when that is on the headland lap.</summary>
    public required int RunsOutInPass { get; init; }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"filling {Amounts.Print(Number, 0)}: {Amounts.Print(Mass, "lb", 2)}";
}
