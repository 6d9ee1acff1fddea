using System.Collections.Immutable;

namespace PlotAgronomy.Liming;

/// <summary>What is asked about the time between liming and planting.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class LimeOutlookRequest
{
    /// <summary>Gets the soil with today's pH in water; texture and exchange capacity tell the date of the next test. A report
    /// will do.</summary>
    /// <exception cref="ArgumentException">A soil without a pH in water.</exception>
    public required PlotSoil Soil
    {
        get;
        init =>
            field = Guard.NotNull(value, nameof(Soil)).WaterPh is null
                ? throw new ArgumentException("The soil has no pH in water.", nameof(Soil))
                : value;
    }

    /// <summary>Gets the rate that is needed, with its target.</summary>
    public required LimeRate Rate
    {
        get;
        init => field = Guard.NotNull(value, nameof(Rate));
    }

    /// <summary>Gets the share of that need that goes on now.</summary>
    public Fraction ShareDelivered { get; init; } = Fraction.One;

    /// <summary>Gets the material.</summary>
    public required LimingMaterial Material
    {
        get;
        init => field = Guard.NotNull(value, nameof(Material));
    }

    /// <summary>Gets where the lime goes.</summary>
    public LimePlacement Placement { get; init; }

    /// <summary>Gets the day of liming.</summary>
    public required DateOnly LimedOn { get; init; }

    /// <summary>Gets the day of planting; not before the liming.</summary>
    public required DateOnly PlantingOn { get; init; }

    /// <summary>Gets the kinds to plant.</summary>
    public ImmutableArray<CropKind> Kinds
    {
        get;
        init => field = Guard.Listed(value, nameof(Kinds));
    } = [];

    internal double SoilPh => Soil.WaterPh!.Value;

    /// <summary>What is put on when.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Rate} of {Material} on {LimeText.Date(LimedOn)}, planting on {LimeText.Date(PlantingOn)}";
}
