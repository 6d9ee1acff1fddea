using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>What to ask where a system has no figure for a nutrient, or nobody rates the report.</summary>
internal static class NutrientQuestions
{
    /// <summary>The test that is missing, and another system where one would answer.</summary>
    internal static IEnumerable<OpenQuestion> For(
        SoilReport report,
        RecommendationSystem system,
        PlantNutrient nutrient,
        ImmutableArray<RecommendationSystem> others
    )
    {
        (string, string)[] places =
        [
            ("system", system.Name),
            ("nutrient", SoilWords.For(nutrient)),
            ("laboratory", report.Laboratory),
        ];
        yield return QuestionCatalog.Ask(
            NutrientCodes.AskTest,
            [.. system.Accepts.Where(t => t.Nutrient == nutrient).DistinctBy(t => t.ToString()).Take(OpenQuestion.MostPlausible)],
            test => test.ToString(),
            places
        );
        if (!others.IsEmpty)
        {
            yield return QuestionCatalog.Ask(
                NutrientCodes.AskSystem,
                [.. others.Take(OpenQuestion.MostPlausible)],
                other => other.Name,
                places
            );
        }
    }

    /// <summary>Whose of several systems that read the report, where nothing tells; or a test that one could read.</summary>
    internal static OpenQuestion<RecommendationSystem> Whose(SoilReport report, ImmutableArray<RecommendationSystem> fitting) =>
        QuestionCatalog.Ask(
            fitting.IsEmpty ? NutrientCodes.AskAnyTest : NutrientCodes.AskWhose,
            [.. fitting.Take(OpenQuestion.MostPlausible)],
            system => system.Name,
            ("laboratory", report.Laboratory)
        );

    /// <summary>The yields that nitrogen rules go by and nobody told.</summary>
    internal static IEnumerable<OpenQuestion> Yields(PlotNeed need) =>
        need
            .Components.Where(c => c.Nitrogen.Low is null)
            .Select(c =>
                QuestionCatalog.Ask<CropYield>(
                    NutrientCodes.AskYield,
                    [],
                    yield => yield.ToString(),
                    ("kind", c.Component.Kind.ShortName),
                    ("unit", NutrientWords.InFull(c.Nitrogen.Rule.YieldUnit ?? YieldUnit.Bushel))
                )
            );

    /// <summary>Which end of a printed range is meant.</summary>
    internal static OpenQuestion<ApplicationRate> Range(PlantNutrient nutrient, ApplicationRate low, ApplicationRate high) =>
        QuestionCatalog.Ask(
            NutrientCodes.AskRange,
            [low, high],
            rate => Amounts.Print(rate, "lb/ac", 1),
            ("nutrient", PlantNutrients.Names[nutrient]),
            ("low", Amounts.Print(low, "lb/ac", 1)),
            ("high", Amounts.Print(high, "lb/ac", 1))
        );

    /// <summary>Whose classes rate the report: the systems that rate anything on it.</summary>
    internal static OpenQuestion<RatingSystem> Ratings(SoilReport report) =>
        QuestionCatalog.Ask(
            NutrientCodes.AskRatings,
            [.. RatingSystem.All.Where(s => !s.Rate(report).Ratings.IsEmpty).Take(OpenQuestion.MostPlausible)],
            system => system.Name,
            ("laboratory", report.Laboratory)
        );
}
