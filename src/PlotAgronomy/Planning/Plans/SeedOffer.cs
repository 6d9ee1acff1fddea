using System.Runtime.CompilerServices;
using System.Text;
using UnitsNet;

namespace PlotAgronomy;

/// <summary>A seed lot on offer in packages.</summary>
/// <remarks>It is only equal to itself; <c>offer with { ... }</c> makes another one.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed record SeedOffer
{
    /// <summary>Gets the lot.</summary>
    /// <exception cref="ArgumentNullException">Null.</exception>
    public required SeedLot Lot
    {
        get;
        init => field = Guard.NotNull(value, nameof(Lot));
    }

    /// <summary>Gets the weight of a package; above 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, NaN or infinite.</exception>
    public required Mass Package
    {
        get;
        init
        {
            double pounds = value.Pounds;
            Guard.Above(pounds, 0, "lb", nameof(Package));
            field = value;
        }
    }

    /// <summary>Gets the price of a package; at least 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public required decimal Price
    {
        get;
        init => field = Guard.AtLeast(value, 0m, "(money)", nameof(Price));
    }

    /// <summary>Whether this is the very same offer.</summary>
    /// <param name="other">Other offer.</param>
    /// <returns>True for the same object.</returns>
    public bool Equals(SeedOffer? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => RuntimeHelpers.GetHashCode(this);

    /// <summary>The lot and its package.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Lot.Kind.ShortName}, lot {Lot.Label}, {Amounts.Print(Package, "lb", 1)}";

    /// <summary>Written here because the compiler's own would print a quantity in the words of the culture.</summary>
    private bool PrintMembers(StringBuilder text)
    {
        text.Append(ToString());
        return true;
    }
}
