using System.Runtime.CompilerServices;
using System.Text;
using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Blends;

/// <summary>A ready blend as a store sells it: its tag and the area a bag claims to plant.</summary>
/// <remarks>It is only equal to itself; <c>blend with { ... }</c> makes another one. Its bag and price stand in an
/// <see cref="Offer{T}"/>.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed record StoreBlend
{
    /// <summary>Gets what the user calls it; not blank.</summary>
    /// <exception cref="ArgumentException">Blank.</exception>
    public required string Label
    {
        get;
        init => field = Guard.NotBlank(value, nameof(Label));
    }

    /// <summary>Gets the tag.</summary>
    /// <exception cref="ArgumentNullException">Null.</exception>
    public required SeedTag Tag
    {
        get;
        init => field = Guard.NotNull(value, nameof(Tag));
    }

    /// <summary>Gets the area a bag claims to plant; finite, above 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.</exception>
    public required Area ClaimedArea
    {
        get;
        init => field = Guard.Positive(value, nameof(ClaimedArea));
    }

    /// <summary>Whether this is the very same blend.</summary>
    /// <param name="other">Other blend.</param>
    /// <returns>True for the same object.</returns>
    public bool Equals(StoreBlend? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => RuntimeHelpers.GetHashCode(this);

    /// <summary>What the user calls it.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Label;

    /// <summary>Written here because the compiler's own would print a quantity in the words of the culture.</summary>
    private bool PrintMembers(StringBuilder text)
    {
        text.Append(ToString());
        return true;
    }
}
