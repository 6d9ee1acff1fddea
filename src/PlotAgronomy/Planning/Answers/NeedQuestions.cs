using System.Collections.Immutable;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Planning;

/// <summary>What stands between a plan and its need for nutrients, and the need under each plausible answer.</summary>
internal sealed class NeedQuestions(
    PlotPlan plan,
    MethodChoice<RecommendationSystem> choice,
    ImmutableArray<KindShare> kinds,
    PlotNeed need
)
{
    private static readonly ImmutableArray<Extractant> Common =
    [
        Extractant.Mehlich3,
        Extractant.BrayP1,
        Extractant.Mehlich1,
        Extractant.Olsen,
        Extractant.ModifiedMorgan,
        Extractant.Morgan,
    ];

    internal IEnumerable<OpenQuestion> All =>
        FromTheReport().Concat(need.StateOf(PlantNutrient.Nitrogen) == AnswerState.Open ? NutrientQuestions.Yields(need) : []);

    internal ImmutableArray<AnswerCase<PlotNeed>> Cases(Func<PlotPlan, ImmutableArray<KindShare>, PlotNeed> needOf) =>
        [
            .. All.OfType<OpenQuestion<RecommendationSystem>>()
                .SelectMany(q => q.CasesOf(system => needOf(plan with { NutrientSystem = system }, kinds))),
            .. All.OfType<OpenQuestion<Extractant>>().SelectMany(q => q.CasesOf(solution => NeedIn(solution, needOf))),
        ];

    /// <summary>Phosphate and potash that a report of readings leaves open.</summary>
    private IEnumerable<OpenQuestion> FromTheReport()
    {
        PlantNutrient[] asked = [PlantNutrient.Phosphate, PlantNutrient.Potash];
        PlantNutrient[] open = kinds.IsEmpty ? [] : [.. asked.Where(n => need.Find(n) is null)];
        if (open.Length == 0)
        {
            yield break;
        }

        var report = plan.ReportOrNone;
        if (!plan.IsTested)
        {
            yield return SoilQuestions.Report();
        }
        else if (report.Readings.Any(IsUnstated))
        {
            yield return SoilQuestions.Extractant(report, Plausible(report));
        }
        else if (plan.NutrientSystem is { } system)
        {
            foreach (var question in open.SelectMany(n => NutrientQuestions.For(report, system, n, need.ServedBy(n))))
            {
                yield return question;
            }
        }
        else
        {
            yield return NutrientQuestions.Whose(report, choice.Fitting);
        }
    }

    /// <summary>Those of the laboratory, where its program is known; else the common ones.</summary>
    private static ImmutableArray<Extractant> Plausible(SoilReport report) =>
        SoilProgram.For(report) is { } program
            ? [.. program.PhosphorusExtractants.Where(e => e != Extractant.NotStated).Take(OpenQuestion.MostPlausible)]
            : Common;

    private static bool IsUnstated(SoilReading reading) =>
        reading.Extractant == Extractant.NotStated && reading.Analyte is SoilAnalyte.Phosphorus or SoilAnalyte.Potassium;

    /// <summary>The need if the readings were made with this solution; null where no system then gives a figure.</summary>
    private PlotNeed? NeedIn(Extractant solution, Func<PlotPlan, ImmutableArray<KindShare>, PlotNeed> needOf)
    {
        var read = plan with
        {
            Report = plan.ReportOrNone with
            {
                Readings = [.. plan.ReportOrNone.Readings.Select(r => IsUnstated(r) ? r.MadeWith(solution) : r)],
            },
        };
        var system = plan.NutrientSystem ?? MethodChoices.Nutrients(read, kinds).Chosen;
        var found = needOf(read with { NutrientSystem = system }, kinds);
        return found.Find(PlantNutrient.Phosphate) is null && found.Find(PlantNutrient.Potash) is null ? null : found;
    }
}
