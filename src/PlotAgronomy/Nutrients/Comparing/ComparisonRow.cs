namespace PlotAgronomy.Nutrients;

/// <summary>One system's need for one nutrient, as a line of a side-by-side.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class ComparisonRow
{
    internal ComparisonRow() { }

    /// <summary>Gets the system.</summary>
    public required RecommendationSystem System { get; init; }

    /// <summary>Gets the crop row and use it was asked for.</summary>
    public required CropUse Crop { get; init; }

    /// <summary>Gets the need.</summary>
    public required NutrientNeed Need { get; init; }

    /// <summary>System, rate and reason.</summary>
    /// <returns>Text such as <c>Tri-State 2020: K2O 72.5 lb/ac: ...</c>.</returns>
    public override string ToString() => $"{System.Name}: {Need}";
}
