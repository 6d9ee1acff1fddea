using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Planning;

/// <summary>Seed without a tag: its weights stay open until a home test, with a case for each likely result.</summary>
internal static class UntaggedSeed
{
    /// <param name="plan">Plan.</param>
    /// <param name="untagged">Its kinds whose lot has no tag.</param>
    /// <param name="solve">Solves the seed of a plan.</param>
    internal static Answer<SeedAnswer> Cases(
        PlotPlan plan,
        IReadOnlyList<PlannedKind> untagged,
        Func<PlotPlan, Answer<SeedAnswer>> solve
    ) =>
        Answers.Open(
            () => [.. untagged.Select(k => SeedQuestions.HomeTest(k.Offer.Item))],
            () => SeedQuestions.HomeTest(untagged[0].Offer.Item).Cases(germination => solve(If(plan, germination)))
        );

    /// <summary>The plan as if every untagged lot had germinated so.</summary>
    internal static PlotPlan If(PlotPlan plan, Fraction germination) =>
        plan with
        {
            Kinds =
            [
                .. plan.Kinds.Select(k =>
                    k.Offer.Item.IsUntagged
                        ? k with
                        {
                            Choice = null,
                            Offer = k.Offer with { Item = k.Offer.Item.IfGerminating(germination) },
                        }
                        : k
                ),
            ],
        };
}
