using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Blends;

/// <summary>A ready blend as a store sells it: its tag, its price and the area it claims to plant.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class StoreBag
{
    /// <summary>Gets what the user calls the bag.</summary>
    public required string Label { get; init; }

    /// <summary>Gets the tag.</summary>
    public required SeedTag Tag { get; init; }

    /// <summary>Gets the net weight of the bag; finite, above 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.</exception>
    public required Mass NetWeight
    {
        get;
        init
        {
            double pounds = value.Pounds;
            Guard.Above(pounds, 0, "lb", nameof(NetWeight));
            field = value;
        }
    }

    /// <summary>Gets the price of the bag; at least 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public required decimal Price
    {
        get;
        init => field = Guard.AtLeast(value, 0m, "per bag", nameof(Price));
    }

    /// <summary>Gets the area the bag claims to plant; finite, above 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.</exception>
    public required Area ClaimedArea
    {
        get;
        init
        {
            double acres = value.Acres;
            Guard.Above(acres, 0, "ac", nameof(ClaimedArea));
            field = value;
        }
    }
}
