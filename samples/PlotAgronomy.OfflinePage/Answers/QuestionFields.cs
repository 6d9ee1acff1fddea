using PlotAgronomy.OfflinePage.Plan;

namespace PlotAgronomy.OfflinePage.Answers;

/// <summary>Which field of the plan holds the answer to a question. A question without a line here is answered by nothing that
/// is typed into a plan.</summary>
internal static class QuestionFields
{
    private static readonly Dictionary<string, string> Fields = new()
    {
        ["calendar-ask-frost"] = "season.firstFreeze",
        ["calendar-ask-label"] = "season.weeds.labelDays",
        ["calendar-ask-smother"] = "season.weeds.smotherKind",
        ["calendar-ask-weeds"] = "season.weeds",
        ["calendar-ask-where"] = "plot.place",
        ["fertilizer-ask-offer"] = "materials.fertilizers",
        ["land-ask-outline"] = "plot.sides",
        ["lime-ask-any-reading"] = "soilReport.buffer",
        ["lime-ask-basis"] = "soilReport.recommendation.lime.basis",
        ["lime-ask-buffer"] = "soilReport.buffer.name",
        ["lime-ask-day"] = "limeDate",
        ["lime-ask-depth"] = "soilReport.recommendation.lime.depth",
        ["lime-ask-label"] = "materials.lime",
        ["lime-ask-method"] = "methods.lime",
        ["lime-ask-nearest"] = "soilReport.recommendation.lime",
        ["lime-ask-offer"] = "materials.lime",
        ["lime-ask-range"] = "soilReport.recommendation.lime.rate",
        ["lime-ask-reading"] = "soilReport.buffer",
        ["lime-ask-target"] = "soilReport.recommendation.lime.targetPh",
        ["lime-ask-whose"] = "methods.lime",
        ["nutrient-ask-any-test"] = "soilReport.readings",
        ["nutrient-ask-range"] = "soilReport.recommendation",
        ["nutrient-ask-ratings"] = "soilReport.laboratory",
        ["nutrient-ask-system"] = "methods.nutrients",
        ["nutrient-ask-test"] = "soilReport.readings",
        ["nutrient-ask-whose"] = "methods.nutrients",
        ["nutrient-ask-yield"] = "growing.kinds",
        ["plan-ask-day"] = "plantingDate",
        ["plan-ask-method"] = "method",
        ["plan-ask-method-meant"] = "method",
        ["seed-ask-drainage"] = "plot.drainage",
        ["seed-ask-full-rate"] = "growing.kinds",
        ["seed-ask-home-test"] = "growing.kinds",
        ["seed-ask-rate"] = "method",
        ["seed-ask-region"] = "plot.place",
        ["seed-ask-test-month"] = "materials.seedLots",
        ["seed-ask-untreated"] = "materials.seedLots",
        ["soil-ask-acidity"] = "soilReport.exchangeableAcidity",
        ["soil-ask-extractant"] = "soilReport.readings",
        ["soil-ask-report"] = "soilReport",
        ["soil-ask-sampled-day"] = "soilReport.sampled",
        ["soil-ask-texture"] = "plot.texture",
        ["soil-ask-water-ph"] = "soilReport.waterPh",
        ["spread-ask-hopper"] = "spreader.hopperOf",
        ["spread-ask-run"] = "spreader.measuredRuns",
        ["spread-ask-time"] = "spreader.measuredRuns",
    };

    internal static IReadOnlyDictionary<string, string> All => Fields;

    internal static PlanPath? Find(OpenQuestion question) =>
        Fields.TryGetValue(question.Code, out string? field) ? PlanPath.Of(field) : null;
}
