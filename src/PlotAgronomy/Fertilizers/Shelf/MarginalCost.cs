namespace PlotAgronomy.Fertilizers;

/// <summary>What one more pound of a nutrient would cost in the exact plan: the dual value of its need.</summary>
/// <remarks>Equal to residual pricing when each nutrient has its own source.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class MarginalCost
{
    /// <summary>Gets the nutrient.</summary>
    public required PlantNutrient Nutrient { get; init; }

    /// <summary>Gets the money per lb by which the exact plan rises when the need rises; zero when the need is met by the
    /// way.</summary>
    public required decimal PerPoundNeeded { get; init; }

    /// <summary>Gets the money per lb by which the exact plan falls when the cap rises; zero when the cap does not
    /// bind.</summary>
    public required decimal PerPoundOfCap { get; init; }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Nutrient}";
}
