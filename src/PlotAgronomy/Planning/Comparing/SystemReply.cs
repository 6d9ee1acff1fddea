using System.Collections.Immutable;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>One system's answers for phosphate and potash.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SystemReply
{
    internal SystemReply(RecommendationSystem system, SystemComparison phosphate, SystemComparison potash)
    {
        System = system;
        Phosphate = NutrientReply.Find(system, PlantNutrient.Phosphate, phosphate);
        Potash = NutrientReply.Find(system, PlantNutrient.Potash, potash);
    }

    /// <summary>Gets the system.</summary>
    public RecommendationSystem System { get; }

    /// <summary>Gets what it says of phosphate; null where it could not be asked.</summary>
    public NutrientReply? Phosphate { get; }

    /// <summary>Gets what it says of potash; null where it could not be asked.</summary>
    public NutrientReply? Potash { get; }

    /// <summary>Gets the answers that hold a rate or a rating, one for each row asked for.</summary>
    public ImmutableArray<NutrientRecommendation> Answers =>
        [.. Asked.Where(a => a.IsAnswered).Select(a => a.Answer).DistinctBy(a => a.Crop.Row)];

    /// <summary>Gets how well the weakest number of its needs is known.</summary>
    public DataStatus Status => DataStatuses.WeakestOf([.. Needs.Select(n => n.Status)]);

    /// <summary>Gets the row it was asked for; null where phosphate and potash take different rows.</summary>
    public CropRow? Row => Asked.Select(a => a.Answer.Crop.Row).Distinct().Count() == 1 ? Asked.First().Answer.Crop.Row : null;

    /// <summary>Gets the findings of what it answers; what it leaves unanswered is told by nutrient.</summary>
    public ImmutableArray<Finding> Findings => [.. Answers.SelectMany(a => a.FindingsOnNeeds)];

    /// <summary>What it could be asked, by nutrient.</summary>
    internal IEnumerable<NutrientReply> Asked => new[] { Phosphate, Potash }.OfType<NutrientReply>();

    /// <summary>The row, or the row by nutrient where they differ.</summary>
    internal string RowsAsked =>
        Row is { } row ? row.ToString() : string.Join(' ', Asked.Select(a => $"{a.Nutrient} {a.Answer.Crop.Row}"));

    private IEnumerable<NutrientNeed> Needs => Asked.Select(a => a.Need).OfType<NutrientNeed>();

    /// <summary>The system and what it answers.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{System}: {string.Join("; ", Asked)}";
}
