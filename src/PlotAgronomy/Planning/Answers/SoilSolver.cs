using System.Collections.Immutable;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Planning;

/// <summary>Asks what the report says by itself.</summary>
internal static class SoilSolver
{
    private static readonly ImmutableArray<SoilAnalyte> Bases =
    [
        SoilAnalyte.Potassium,
        SoilAnalyte.Magnesium,
        SoilAnalyte.Calcium,
        SoilAnalyte.Sodium,
    ];

    internal static Answer<SoilRatings> Ratings(PlotPlan plan)
    {
        if (plan.ReportOrNone.Readings.IsEmpty)
        {
            return Answers.NotAsked<SoilRatings>();
        }

        if (SoilProgram.For(plan.ReportOrNone)?.Institution is { } institution)
        {
            foreach (var system in institution.RatingSystems)
            {
                var rated = RatedBy(plan, system);
                if (!rated.Ratings.IsEmpty)
                {
                    return Answers.Given(rated, () => rated.Findings);
                }
            }
        }

        var question = NutrientQuestions.Ratings(plan.ReportOrNone);
        return Answers.Open(() => [question], () => question.CasesOf(system => RatedBy(plan, system)));
    }

    internal static Answer<CationBalance> Exchange(SoilReport report)
    {
        if (!report.Readings.Any(r => Bases.Contains(r.Analyte)))
        {
            return Answers.NoneNeeded<CationBalance>();
        }

        var balance = BalanceOf(report);
        return balance is { Capacity: not null }
            ? Answers.Given(balance, () => balance.Findings)
            : Answers.Open<CationBalance>(() => [SoilQuestions.Acidity(report)]);
    }

    internal static Answer<SamplingAdvice> Sampling(PlotPlan plan)
    {
        bool isTopDressed = !GrownKinds.IsTilled(plan) && (plan.TillageDepth is null || GrownKinds.IsUpkeep(plan));
        var advice = Advice(plan.ReportOrNone.SampledOn);
        var question = plan.ReportOrNone is { PrintsReadings: true, SampledOn: null }
            ? SoilQuestions.SampledDay(plan.PlantingDate)
            : null;
        return new(
            AnswerState.Given,
            true,
            advice,
            () => question is null ? [] : [question],
            () => question is null ? [] : question.Cases(day => Answers.Given(Advice(day)))
        );

        SamplingAdvice Advice(DateOnly? sampled) => SamplingAdvice.ForPlot(1, isTopDressed, sampled);
    }

    internal static ImmutableArray<SecondaryAnswer> Secondary(PlotPlan plan) =>
        [
            .. SecondaryRule
                .All.Where(rule => GrownKinds.Of(plan).Any(k => rule.IsFor(k.Kind)))
                .Select(rule => rule.Answer(plan.Soil))
                .Where(answer => answer.IsNeeded is not null),
        ];

    private static SoilRatings RatedBy(PlotPlan plan, RatingSystem system) => system.Rate(plan.Soil);

    private static CationBalance? BalanceOf(SoilReport report) =>
        report.ExchangeableAcidity is not null ? CationBalance.FromPrintedAcidity(report)
        : CationBalance.ByEveryTerm(report) is [var byBuffer, ..] ? byBuffer
        : report.WaterPh is not null ? CationBalance.WithoutAcidity(report)
        : null;
}
