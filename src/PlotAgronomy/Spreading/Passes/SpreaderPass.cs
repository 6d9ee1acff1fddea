using PlotAgronomy.Land;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>One straight pass: open the gate at the start, close it at the end.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SpreaderPass
{
    /// <summary>Gets the number of the pass, from 1, in the order of driving.</summary>
    public required int Number { get; init; }

    /// <summary>Gets the number of the strip it sows, from 1; a strip that leaves the plot and comes back holds several
    /// passes.</summary>
    public required int Strip { get; init; }

    /// <summary>Gets where the gate opens.</summary>
    public required PlanePoint Start { get; init; }

    /// <summary>Gets where the gate closes.</summary>
    public required PlanePoint End { get; init; }

    /// <summary>Gets the length of the pass.</summary>
    public Length Length => Length.FromFeet(LengthFeet);

    /// <summary>Gets the mass that leaves the hopper on it.</summary>
    public required Mass Seed { get; init; }

    internal double LengthFeet =>
        Math.Sqrt(Math.Pow(End.EastFeet - Start.EastFeet, 2) + Math.Pow(End.NorthFeet - Start.NorthFeet, 2));
}
