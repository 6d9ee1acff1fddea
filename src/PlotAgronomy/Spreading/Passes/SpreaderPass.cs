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

    internal static SpreaderPass Over(int number, (int Strip, PlanePoint Start, PlanePoint End) pass, double poundsPerFoot) =>
        new()
        {
            Number = number,
            Strip = pass.Strip,
            Start = pass.Start,
            End = pass.End,
            Seed = Mass.FromPounds(LandMath.DistanceFeet(pass.Start, pass.End) * poundsPerFoot),
        };

    internal double LengthFeet =>
        Math.Sqrt(Math.Pow(End.EastFeet - Start.EastFeet, 2) + Math.Pow(End.NorthFeet - Start.NorthFeet, 2));

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"pass {Amounts.Print(Number, 0)}: {Amounts.Print(Length, "ft", 0)} from {Start} to {End}";
}
