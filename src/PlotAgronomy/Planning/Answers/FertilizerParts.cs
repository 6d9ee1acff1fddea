using System.Collections.Immutable;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>The parts of the answer on fertilizer: what the purchase means for the ground, and what
/// is to be known for it.</summary>
internal static class FertilizerParts
{
    internal static ImmutableArray<NitrogenAcidity> Acidity(Purchase? purchase) =>
        [
            .. (purchase?.Lines ?? [])
                .Select(line =>
                    NitrogenAcidity.Find(
                        FertilizerWords.Substances[line.Product.Substance],
                        line.Rate * (line.Product.Analysis.Percent(PlantNutrient.Nitrogen) / 100)
                    )
                )
                .OfType<NitrogenAcidity>(),
        ];

    internal static Answer<PercentRange> UreaLoss(PlotPlan plan, Purchase? purchase)
    {
        bool hasSurfaceUrea =
            !GrownKinds.IsTilled(plan)
            && purchase?.Lines.Any(l =>
                l.Product.Substance is FertilizerSubstance.Urea or FertilizerSubstance.UreaAmmoniumNitrateSolution
            ) == true;
        if (!hasSurfaceUrea)
        {
            return Answers.NoneNeeded<PercentRange>();
        }

        if (plan.Soil.WaterPh is not { } ph)
        {
            return Answers.Open<PercentRange>(() => [SoilQuestions.WaterPh(plan.ReportOrNone)]);
        }

        var question = FertilizerQuestions.SoilTemperature();
        return Answers.Open(() => [question], () => question.Cases(warm => Loss(warm, ph)));
    }

    internal static Answer<ImmutableArray<SetbackRule>> Setbacks(Purchase? purchase) =>
        purchase is { Lines.IsEmpty: false }
            ? Answers.Given(SetbackRule.Examples, null, () => [FertilizerQuestions.NearWater()])
            : Answers.NoneNeeded<ImmutableArray<SetbackRule>>();

    private static Answer<PercentRange> Loss(Temperature soil, WaterPh ph) =>
        Fertilizers.UreaLoss.PlanningLoss(soil, ph.Value) is { } lost ? Answers.Given(lost) : Answers.NoneNeeded<PercentRange>();
}
