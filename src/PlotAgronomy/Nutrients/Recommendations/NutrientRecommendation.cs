using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>What one recommendation system says about one report and one crop.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class NutrientRecommendation : IWorkedResult
{
    private readonly SystemRequest question;
    private readonly NutrientNeed? ofCrop;
    private readonly SystemAnswer first;
    private readonly SystemAnswer second;

    /// <param name="system">System.</param>
    /// <param name="question">What the system was asked.</param>
    /// <param name="ofCrop">The nitrogen of the crop, where the system prints it.</param>
    /// <param name="first">The answer for its first nutrient.</param>
    /// <param name="second">The answer for its second nutrient.</param>
    internal NutrientRecommendation(
        RecommendationSystem system,
        SystemRequest question,
        NutrientNeed? ofCrop,
        SystemAnswer first,
        SystemAnswer second
    )
    {
        this.question = question;
        System = system;
        this.ofCrop = ofCrop;
        this.first = first;
        this.second = second;
    }

    /// <summary>Gets the system that answered.</summary>
    public RecommendationSystem System { get; }

    /// <summary>Gets the crop and its use.</summary>
    public CropUse Crop => question.Crop;

    /// <summary>Gets the needs, in the order of <see cref="PlantNutrient"/>.</summary>
    public ImmutableArray<NutrientNeed> Needs => [.. new[] { ofCrop, first.Need, second.Need }.OfType<NutrientNeed>()];

    /// <summary>Gets the nutrients the system does not answer for, with the reason.</summary>
    public ImmutableArray<UnansweredNutrient> Unanswered =>
        [.. new[] { first.Unanswered, second.Unanswered }.OfType<UnansweredNutrient>()];

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Remarks(Unanswered);

    /// <summary>Gets the need for phosphate (P2O5), or null when it is unanswered.</summary>
    public NutrientNeed? Phosphate => For(PlantNutrient.Phosphate);

    /// <summary>Gets the need for potash (K2O), or null when it is unanswered.</summary>
    public NutrientNeed? Potash => For(PlantNutrient.Potash);

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        [.. Needs.SelectMany(n => n.Sources.Concat(n.Rating?.Sources ?? [])).Concat(System.Sources).Distinct()];

    /// <summary>Finds the need for a nutrient.</summary>
    /// <param name="nutrient">Nutrient.</param>
    /// <returns>The need, or null when it is unanswered or outside the system.</returns>
    public NutrientNeed? For(PlantNutrient nutrient)
    {
        Guard.Defined(nutrient);
        return ofCrop?.Nutrient == nutrient ? ofCrop
            : first.Need is { } one && one.Nutrient == nutrient ? one
            : second.Need is { } other && other.Nutrient == nutrient ? other
            : null;
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => [.. Needs.SelectMany(n => n.Work())];

    /// <summary>The remarks on what it does answer.</summary>
    internal ImmutableArray<Finding> FindingsOnNeeds => Remarks([]);

    /// <summary>The remarks of an answer that is read for one nutrient: that others are left unanswered is none of its
    /// business.</summary>
    internal ImmutableArray<Finding> FindingsOn(PlantNutrient nutrient) => Remarks(Unanswered.Where(u => u.Nutrient == nutrient));

    private ImmutableArray<Finding> Remarks(IEnumerable<UnansweredNutrient> unanswered) =>
        Finding.InOrder([
            .. Needs.SelectMany(n => n.Findings),
            .. unanswered.Select(u => u.Finding),
            .. SystemRemarks.For(System.Record, question, Needs),
        ]);

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
