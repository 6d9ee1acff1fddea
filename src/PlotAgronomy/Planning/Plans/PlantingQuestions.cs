using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Planning;

/// <summary>What to ask of a plan: the day and the way of planting, the pH of its soil.</summary>
internal static class PlantingQuestions
{
    internal static EnumWords<PlantingMethod> MethodWords { get; } =
        new(
            (PlantingMethod.TilledAndPacked, "the ground is tilled, firmed, sown by spreader and pressed"),
            (PlantingMethod.BroadcastThenRolled, "spread into a standing crop, which is then rolled down over the seed"),
            (PlantingMethod.BroadcastThenMown, "spread into standing growth, which is then mown over the seed"),
            (PlantingMethod.FrostSeeded, "spread on frozen ground in late winter"),
            (PlantingMethod.Drilled, "placed by a drill")
        );

    internal static OpenQuestion<DateOnly> Day() =>
        QuestionCatalog.Ask<DateOnly>(PlanningCodes.AskDay, [], day => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));

    internal static OpenQuestion<PlantingMethod> Method() =>
        QuestionCatalog.Ask(PlanningCodes.AskMethod, Enum.GetValues<PlantingMethod>().ToImmutableArray(), InWords);

    /// <summary>Of a report that prints nothing the pH is not asked alone.</summary>
    internal static OpenQuestion WaterPh(PlotPlan plan) =>
        plan.IsTested ? SoilQuestions.WaterPh(plan.ReportOrNone) : SoilQuestions.Report();

    /// <summary>A way of planting that the rest of the plan speaks against; null where nothing does.</summary>
    internal static OpenQuestion<PlantingMethod>? Contradiction(PlotPlan plan) =>
        plan.Method is { } method && Against(plan, method) is { } against
            ? QuestionCatalog.Ask(
                PlanningCodes.AskMethodMeant,
                [PlantingMethod.TilledAndPacked, method],
                InWords,
                ("method", InWords(method)),
                ("against", against)
            )
            : null;

    private static string InWords(PlantingMethod method) => MethodWords[method];

    private static string? Against(PlotPlan plan, PlantingMethod method)
    {
        bool needsGrowth = method is PlantingMethod.BroadcastThenRolled or PlantingMethod.BroadcastThenMown;
        string? bare =
            needsGrowth && plan.Plot is { Cover: GroundCover.BareGround, CoverKind: null } ? "nothing stands there" : null;
        string? worked =
            plan.TillageDepth is { } depth && method is not (PlantingMethod.TilledAndPacked or PlantingMethod.Drilled)
                ? $"the ground is worked {Amounts.Print(depth, "in", 1)} deep"
                : null;
        return bare is null || worked is null ? bare ?? worked : $"{bare}, and {worked}";
    }
}
