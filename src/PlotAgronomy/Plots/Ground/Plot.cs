using System.Runtime.CompilerServices;
using System.Text;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy;

/// <summary>A plot of ground: where it lies, how it was measured, what eyes saw of its soil, and what stands there.</summary>
/// <remarks>A plot is only equal to itself; <c>plot with { ... }</c> makes another one. What a laboratory printed of the
/// soil stands in a <see cref="SoilReport"/>; <see cref="PlotSoil"/> joins the two.</remarks>
/// <example>
/// <code>
/// var plot = new Plot
/// {
///     Name = "Fern Bottom",
///     Measured = PlotArea.FromRectangle(Length.FromFeet(182), Length.FromFeet(140)),
///     Place = Place.Find("North Carolina"),
///     Texture = SoilTexture.SandyLoam,
/// };
/// Console.WriteLine(plot);
/// // Fern Bottom, 0.585 ac
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed record Plot
{
    /// <summary>Gets the name of the plot; not blank.</summary>
    /// <exception cref="ArgumentException">Blank.</exception>
    public required string Name
    {
        get;
        init => field = Guard.NotBlank(value, nameof(Name));
    }

    /// <summary>Gets the area as it was measured: from an outline, from sides, or stated alone.</summary>
    /// <exception cref="ArgumentNullException">Null.</exception>
    public required PlotArea Measured
    {
        get;
        init => field = Guard.NotNull(value, nameof(Measured));
    }

    /// <summary>Gets the state or province it lies in, or null.</summary>
    public Place? Place { get; init; }

    /// <summary>Gets the region by which planting dates are found, or null.</summary>
    /// <value>That of the <see cref="Place"/>, where it lies in one region, unless stated.</value>
    public PlantingRegion? PlantingRegion
    {
        get => field ?? Place?.PlantingRegion;
        init;
    }

    /// <summary>Gets the region of the southern states by which soils are told apart, or null; states reach over several, so
    /// it is not taken from the place.</summary>
    public SoilRegion? SoilRegion { get; init; }

    /// <summary>Gets the soil class, or null when it is not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Unknown class.</exception>
    public SoilClass? SoilClass
    {
        get;
        init => field = Guard.Defined(value, nameof(SoilClass));
    }

    /// <summary>Gets the soil's texture, or null when it is not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Unknown texture.</exception>
    public SoilTexture? Texture
    {
        get;
        init => field = Guard.Defined(value, nameof(Texture));
    }

    /// <summary>Gets how the soil drains, or null when it is not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Unknown class.</exception>
    public DrainageClass? Drainage
    {
        get;
        init => field = Guard.Defined(value, nameof(Drainage));
    }

    /// <summary>Gets a value indicating whether the soil is dry or thin.</summary>
    public bool IsDryOrThin { get; init; }

    /// <summary>Gets the phosphorus-supplying power of the subsoil on the map of Illinois, or null.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Unknown group.</exception>
    public SoilSupply? PhosphorusSupply
    {
        get;
        init => field = Guard.Defined(value, nameof(PhosphorusSupply));
    }

    /// <summary>Gets whether the map of Illinois counts the soil to those of low or high exchange capacity, or null; medium is
    /// not printed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Unknown group.</exception>
    public SoilSupply? ExchangeCapacityGroup
    {
        get;
        init => field = Guard.Defined(value, nameof(ExchangeCapacityGroup));
    }

    /// <summary>Gets a value indicating whether surface water is near; null when unknown.</summary>
    public bool? IsNearWater { get; init; }

    /// <summary>Gets what stands there now.</summary>
    /// <value>Bare ground unless stated.</value>
    /// <exception cref="ArgumentOutOfRangeException">Unknown cover.</exception>
    public GroundCover Cover
    {
        get;
        init => field = Guard.Defined(value, nameof(Cover));
    }

    /// <summary>Gets the kind that stands there now, or null.</summary>
    public CropKind? CoverKind { get; init; }

    /// <summary>Gets how much of a full stand the standing kind still is, 0 to 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0, above 1 or NaN.</exception>
    public double CoverShare
    {
        get;
        init => field = Guard.Between(value, 0, 1, "of a full stand", nameof(CoverShare));
    }

    /// <summary>Gets the kind that grew there the season before, or null.</summary>
    public CropKind? GrewBefore { get; init; }

    /// <summary>Gets a value indicating whether the crop is cut and carried off; a plot that is only browsed loses
    /// nothing.</summary>
    public bool IsCarriedOff { get; init; }

    /// <summary>Gets the area.</summary>
    public Area Area => Measured.Area;

    /// <summary>Whether this is the very same plot.</summary>
    /// <param name="other">Other plot.</param>
    /// <returns>True for the same object.</returns>
    public bool Equals(Plot? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => RuntimeHelpers.GetHashCode(this);

    /// <summary>The name and the area.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Name}, {Amounts.Print(Area, "ac", 3)}";

    /// <summary>Written here because the compiler's own would print a quantity in the words of the culture.</summary>
    private bool PrintMembers(StringBuilder text)
    {
        text.Append(ToString());
        return true;
    }
}
