using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>What one recommendation system says about one report and one crop.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class NutrientRecommendation : IWorkedResult
{
    private readonly SystemRequest question;

    internal NutrientRecommendation(
        RecommendationSystem system,
        SystemRequest question,
        ImmutableArray<NutrientNeed> needs,
        ImmutableArray<UnansweredNutrient> unanswered
    )
    {
        this.question = question;
        System = system;
        Needs = needs;
        Unanswered = unanswered;
    }

    /// <summary>Gets the system that answered.</summary>
    public RecommendationSystem System { get; }

    /// <summary>Gets the crop and its use.</summary>
    public CropUse Crop => question.Crop;

    /// <summary>Gets the needs, in the order of <see cref="PlantNutrient"/>.</summary>
    public ImmutableArray<NutrientNeed> Needs { get; }

    /// <summary>Gets the nutrients the system does not answer for, with the reason.</summary>
    public ImmutableArray<UnansweredNutrient> Unanswered { get; }

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
        foreach (var need in Needs)
        {
            if (need.Nutrient == nutrient)
            {
                return need;
            }
        }

        return null;
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
