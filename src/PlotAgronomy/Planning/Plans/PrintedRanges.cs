using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>Rates that the laboratory printed as a range: the lower end is counted, both ends are worked out, and which is meant
/// is asked; never the middle.</summary>
internal static class PrintedRanges
{
    internal static IEnumerable<OpenQuestion<ApplicationRate>> Questions(PlotPlan plan) =>
        (plan.Printed?.Ranges ?? []).Select(r => NutrientQuestions.Range(r.Nutrient, r.Low, r.High));

    /// <summary>The answer at both ends of each range.</summary>
    internal static IEnumerable<AnswerCase<T>> Cases<T>(PlotPlan plan, Func<PlotPlan, T> solve)
        where T : class =>
        (plan.Printed?.Ranges ?? []).SelectMany(r =>
            NutrientQuestions
                .Range(r.Nutrient, r.Low, r.High)
                .CasesOf(meant => solve(plan with { Printed = plan.Printed!.If(r.Nutrient, meant) }))
        );

    /// <summary>That of a printed range of lime the lower end is counted.</summary>
    internal static IEnumerable<Finding> OfLime(PlotPlan plan) =>
        plan.Printed?.Lime is { UpTo: { } high } printed
            ?
            [
                FindingCatalog.Create(
                    PlanningCodes.RangeLowEnd,
                    ("nutrient", "lime"),
                    ("low", printed.AmountOf(printed.OfBasis)),
                    ("high", printed.AmountOf(high))
                ),
            ]
            : [];

    internal static IEnumerable<Finding> Findings(PlotPlan plan) =>
        (plan.Printed?.Ranges ?? []).Select(r =>
            FindingCatalog.Create(
                PlanningCodes.RangeLowEnd,
                ("nutrient", PlantNutrients.Names[r.Nutrient]),
                ("low", Amounts.Print(r.Low, "lb/ac", 1)),
                ("high", Amounts.Print(r.High, "lb/ac", 1))
            )
        );
}
