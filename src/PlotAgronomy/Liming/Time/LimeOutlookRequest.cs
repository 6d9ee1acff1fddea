using System.Collections.Immutable;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Liming;

/// <summary>What is asked about the time between liming and planting.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class LimeOutlookRequest
{
    /// <summary>Gets today's soil pH.</summary>
    public required WaterPh SoilPh { get; init; }

    /// <summary>Gets the rate that is needed, with its target.</summary>
    public required LimeRate Rate { get; init; }

    /// <summary>Gets the share of that need that goes on now.</summary>
    public Fraction ShareDelivered { get; init; } = Fraction.One;

    /// <summary>Gets the material.</summary>
    public required LimingMaterial Material { get; init; }

    /// <summary>Gets where the lime goes.</summary>
    public LimePlacement Placement { get; init; }

    /// <summary>Gets the day of liming.</summary>
    public required DateOnly LimedOn { get; init; }

    /// <summary>Gets the day of planting; not before the liming.</summary>
    public required DateOnly PlantingOn { get; init; }

    /// <summary>Gets the kinds to plant.</summary>
    public ImmutableArray<CropKind> Kinds { get; init; } = [];

    /// <summary>Gets the texture, for the date of the next test; null when it is not known.</summary>
    public SoilTexture? Texture { get; init; }

    /// <summary>Gets the CEC, for the date of the next test; null when it is not known.</summary>
    public CationCharge? ExchangeCapacity { get; init; }
}
