namespace PlotAgronomy.Nutrients;

/// <summary>What one kind of the blend would need, and whether it counts.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class ComponentNeed
{
    internal ComponentNeed() { }

    /// <summary>Gets the kind and its share.</summary>
    public required KindShare Component { get; init; }

    /// <summary>Gets whether its share is large enough to count for secondary nutrients, and for what is said of rows.</summary>
    public required bool Counts { get; init; }

    /// <summary>Gets the row it was taken as for phosphate, or null when the system has none.</summary>
    public required CropRow? PhosphateRow { get; init; }

    /// <summary>Gets the row it was taken as for potash, or null when the system has none.</summary>
    public required CropRow? PotashRow { get; init; }

    /// <summary>Gets its need for phosphate, or null when the system does not answer.</summary>
    public NutrientNeed? Phosphate => PhosphateAnswer?.Phosphate;

    /// <summary>Gets its need for potash, or null when the system does not answer.</summary>
    public NutrientNeed? Potash => PotashAnswer?.Potash;

    /// <summary>Gets its nitrogen grown alone.</summary>
    public required NitrogenAnswer Nitrogen { get; init; }

    /// <summary>What the system says of the row for phosphate; null without a row.</summary>
    internal NutrientRecommendation? PhosphateAnswer { get; init; }

    /// <summary>What the system says of the row for potash; null without a row.</summary>
    internal NutrientRecommendation? PotashAnswer { get; init; }

    internal NutrientRecommendation? AnswerFor(PlantNutrient nutrient) =>
        nutrient == PlantNutrient.Phosphate ? PhosphateAnswer : PotashAnswer;

    internal NutrientNeed? For(PlantNutrient nutrient) => nutrient == PlantNutrient.Phosphate ? Phosphate : Potash;

    /// <summary>The row it was read from.</summary>
    internal CropRow? Row => PotashRow ?? PhosphateRow;

    internal CropRow? RowFor(PlantNutrient nutrient) => nutrient == PlantNutrient.Phosphate ? PhosphateRow : PotashRow;

    /// <summary>The kind and what it needs.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join("; ", new object?[] { Component, Phosphate, Potash }.OfType<object>());
}
