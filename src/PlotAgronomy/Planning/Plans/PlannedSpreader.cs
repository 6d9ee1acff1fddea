using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Text;
using UnitsNet;

namespace PlotAgronomy;

/// <summary>The spreader of a plan and what was measured with it.</summary>
/// <remarks>It is only equal to itself; <c>spreader with { ... }</c> makes another one.</remarks>
/// <example>
/// <code>
/// Console.WriteLine(new PlannedSpreader { Name = "shoulder spreader", Swath = Length.FromFeet(14) });
/// // shoulder spreader, swath 14 ft
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed record PlannedSpreader
{
    /// <summary>Gets the name; not blank.</summary>
    /// <exception cref="ArgumentException">Blank.</exception>
    public required string Name
    {
        get;
        init => field = Guard.NotBlank(value, nameof(Name));
    }

    /// <summary>Gets the width that one pass covers evenly; above 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, NaN or infinite.</exception>
    public required Length Swath
    {
        get;
        init => field = Guard.Positive(value, nameof(Swath));
    }

    /// <summary>Gets what the hopper holds, above 0; null when it is not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, NaN or infinite.</exception>
    public Volume? Hopper
    {
        get;
        init => field = value is { } hopper ? Guard.Positive(hopper, nameof(Hopper)) : null;
    }

    /// <summary>Gets the weight that the hopper holds of some material, as its label says; null when it says a volume or
    /// nothing.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, NaN or infinite.</exception>
    public Mass? HopperWeight
    {
        get;
        init => field = value is { } weight ? Guard.Positive(weight, nameof(HopperWeight)) : null;
    }

    /// <summary>Gets the kind of seed that <see cref="HopperWeight"/> is stated for; null when the label does not say.</summary>
    public CropKind? HopperWeightOf { get; init; }

    /// <summary>What the hopper holds at least: its volume, else its weight by the heaviest bulk density of what that is stated
    /// for; null where neither is known.</summary>
    internal Volume? HopperVolume
    {
        get
        {
            if (Hopper is not null || HopperWeight is not { } weight || HopperWeightOf?.BushelWeight is not { } bushel)
            {
                return Hopper;
            }

            double pounds = weight.Pounds,
                poundsPerCubicFoot = bushel.High.PoundsPerCubicFoot;
            return Volume.FromCubicFeet(pounds / poundsPerCubicFoot);
        }
    }

    /// <summary>Whether the label gives a weight that cannot be turned into a volume.</summary>
    internal bool IsHopperOpen => HopperWeight is not null && HopperVolume is null;

    /// <summary>Gets the weighed runs.</summary>
    /// <value>None unless stated.</value>
    /// <exception cref="ArgumentException">A list that was never made, or with a null in it.</exception>
    public ImmutableArray<SpreaderRun> Runs
    {
        get;
        init => field = Guard.Listed(value, nameof(Runs));
    } = [];

    /// <summary>Whether this is the very same spreader.</summary>
    /// <param name="other">Other spreader.</param>
    /// <returns>True for the same object.</returns>
    public bool Equals(PlannedSpreader? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => RuntimeHelpers.GetHashCode(this);

    /// <summary>The name and the swath.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Name}, swath {Amounts.Print(Swath, "ft", 1)}";

    /// <summary>Written here because the compiler's own would print a quantity in the words of the culture.</summary>
    private bool PrintMembers(StringBuilder text)
    {
        text.Append(ToString());
        return true;
    }
}
