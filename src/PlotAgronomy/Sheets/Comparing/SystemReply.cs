using System.Collections.Immutable;
using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Sheets;

/// <summary>One system's answers for P and K.</summary>
internal sealed class SystemReply
{
    private readonly ImmutableArray<(PlantNutrient Nutrient, NutrientRecommendation Answer)> asked;

    internal SystemReply(
        RecommendationSystem system,
        ImmutableArray<PlantNutrient> nutrients,
        ImmutableDictionary<PlantNutrient, SystemComparison> comparisons
    )
    {
        System = system;
        asked =
        [
            .. from nutrient in nutrients
            let comparison = comparisons[nutrient]
            from answer in comparison.Answers.Concat(comparison.LeftOut)
            where answer.System == system
            select (nutrient, answer),
        ];
    }

    internal RecommendationSystem System { get; }

    /// <summary>The answers that hold a rate or a rating, one for each row asked for.</summary>
    internal ImmutableArray<NutrientRecommendation> Answers =>
        [.. asked.Where(a => Says(a.Nutrient, a.Answer)).Select(a => a.Answer).DistinctBy(a => a.Crop.Row)];

    /// <summary>Why it stays silent, by nutrient.</summary>
    internal ImmutableArray<UnansweredNutrient> Silences =>
        [.. asked.SelectMany(a => a.Answer.Unanswered.Where(u => u.Nutrient == a.Nutrient))];

    internal bool RestsOnMemory => Needs.Any(n => n.Status == DataStatus.Memory);

    /// <summary>How well the weakest number of its needs is known.</summary>
    internal string Standing =>
        SheetText.Standing(
            RestsOnMemory ? DataStatus.Memory
            : Needs.Any(n => n.Status == DataStatus.Practice) ? DataStatus.Practice
            : DataStatus.Read
        );

    /// <summary>The row, or the row by nutrient where they differ.</summary>
    internal string AskedFor =>
        asked.Select(a => a.Answer.Crop.Row).Distinct().Count() == 1
            ? CropRows.WordsFor(asked[0].Answer.Crop.Row)
            : string.Join("; ", asked.Select(a => $"{SheetText.Symbol(a.Nutrient)}: {CropRows.WordsFor(a.Answer.Crop.Row)}"));

    internal string Reasons =>
        string.Join(" ", asked.Select(a => $"{SheetText.Symbol(a.Nutrient)}: {Reason(a.Nutrient, a.Answer)}"));

    /// <summary>The findings of what it answers; what it leaves unanswered is told by <see cref="Reasons"/>.</summary>
    internal IEnumerable<Finding> Findings => Answers.SelectMany(a => a.FindingsOnNeeds);

    private IEnumerable<NutrientNeed> Needs => asked.Select(a => a.Answer.For(a.Nutrient)).OfType<NutrientNeed>();

    internal string FigureFor(PlantNutrient nutrient) =>
        asked.FirstOrDefault(a => a.Nutrient == nutrient).Answer is not { } answer ? "-"
        : answer.For(nutrient) is { } need ? AtMost(need) + Amounts.Print(need.Rate.PoundsPerAcre, 1)
        : Says(nutrient, answer) ? "no rate"
        : "-";

    private static string AtMost(NutrientNeed need) => need.IsLegalMaximum ? "at most " : "";

    private static bool Says(PlantNutrient nutrient, NutrientRecommendation answer) =>
        answer.For(nutrient) is not null || answer.Unanswered.Any(u => u.Nutrient == nutrient && u.Rating is not null);

    private static string Reason(PlantNutrient nutrient, NutrientRecommendation answer) =>
        answer.For(nutrient) is { } need ? need.Why
        : answer.Unanswered.FirstOrDefault(u => u.Nutrient == nutrient) is { } silent ? $"{silent.Reason}."
        : "it does not deal with this nutrient.";
}
