using System.Collections.Immutable;

namespace PlotAgronomy.Nutrients;

/// <summary>What one recommendation system says about one report and one crop.</summary>
public sealed class NutrientRecommendation : IWorkedResult
{
    internal NutrientRecommendation() { }

    /// <summary>Gets the system that answered.</summary>
    public required RecommendationSystem System { get; init; }

    /// <summary>Gets the crop and its use.</summary>
    public required CropUse Crop { get; init; }

    /// <summary>Gets the needs, in the order of <see cref="PlantNutrient"/>.</summary>
    public required ImmutableArray<NutrientNeed> Needs { get; init; }

    /// <summary>Gets the nutrients the system does not answer for, with the reason.</summary>
    public required ImmutableArray<UnansweredNutrient> Unanswered { get; init; }

    /// <inheritdoc/>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>Gets the need for phosphate (P2O5), or null when it is unanswered.</summary>
    public NutrientNeed? Phosphate => For(PlantNutrient.Phosphate);

    /// <summary>Gets the need for potash (K2O), or null when it is unanswered.</summary>
    public NutrientNeed? Potash => For(PlantNutrient.Potash);

    /// <inheritdoc/>
    public ImmutableArray<string> SourceIds =>
        [
            .. Needs
                .SelectMany(n => n.SourceIds.Concat(n.Rating?.SourceIds ?? []))
                .Concat(System.SourceIds)
                .Distinct(StringComparer.Ordinal),
        ];

    /// <summary>Finds the need for a nutrient.</summary>
    /// <param name="nutrient">Nutrient.</param>
    /// <returns>The need, or null when it is unanswered or outside the system.</returns>
    public NutrientNeed? For(PlantNutrient nutrient)
    {
        Guard.Defined(nutrient);
        return Needs.FirstOrDefault(n => n.Nutrient == nutrient);
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => [.. Needs.SelectMany(n => n.Work())];
}
