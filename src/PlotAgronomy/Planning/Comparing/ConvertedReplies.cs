using System.Collections.Immutable;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Planning;

/// <summary>Asks systems about readings as another solution would have drawn them out.</summary>
internal static class ConvertedReplies
{
    private static readonly ImmutableArray<PlantNutrient> Compared = [PlantNutrient.Phosphate, PlantNutrient.Potash];

    /// <summary>For each nutrient of which fewer than two systems give a rate: who else would, by which equation.</summary>
    internal static ImmutableArray<ConvertedReply> Of(
        PlotPlan plan,
        IReadOnlyCollection<SystemReply> answering,
        bool includeFromMemory,
        Func<PlotPlan, PlantNutrient, SystemComparison> compared
    ) =>
        plan.Report is not { } report
            ? []
            :
            [
                .. from nutrient in Compared
                where answering.Count(a => NeedOf(a, nutrient) is not null) < 2
                from reading in report.Readings
                where reading.Analyte == AnalyteOf(nutrient)
                from equation in ExtractantConversion.All.Concat(includeFromMemory ? ExtractantConversion.Unchecked : [])
                where equation.Analyte == reading.Analyte && equation.From == reading.Extractant && IsConcentration(reading.Unit)
                let conversion = equation.Convert(reading)
                let changed = plan with
                {
                    Report = report with { Readings = report.Readings.Replace(reading, conversion.Converted) },
                }
                from reply in Replies(compared(changed, nutrient), nutrient)
                where answering.All(a => a.System != reply.Answer.System || NeedOf(a, nutrient) is null)
                select new ConvertedReply(reply, conversion, equation),
            ];

    private static IEnumerable<NutrientReply> Replies(SystemComparison compared, PlantNutrient nutrient) =>
        RecommendationSystem
            .Everything.Select(s => NutrientReply.Find(s, nutrient, compared))
            .OfType<NutrientReply>()
            .Where(r => r.Need is not null);

    private static NutrientNeed? NeedOf(SystemReply reply, PlantNutrient nutrient) =>
        reply.Asked.FirstOrDefault(a => a.Nutrient == nutrient)?.Need;

    private static SoilAnalyte AnalyteOf(PlantNutrient nutrient) =>
        nutrient == PlantNutrient.Phosphate ? SoilAnalyte.Phosphorus : SoilAnalyte.Potassium;

    private static bool IsConcentration(SoilTestUnit unit) => !SoilWords.IsIndex(unit) && unit != SoilTestUnit.PercentSaturation;
}
