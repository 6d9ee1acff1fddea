using System.Collections.Immutable;
using PlotAgronomy.Blends;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Planning;

/// <summary>Judges the kinds of a plan before anything is weighed out for them, and joins the verdicts to one for the
/// plot.</summary>
internal static class VerdictSolver
{
    private static readonly ImmutableArray<string> OfKindsTogether =
    [
        BlendCodes.WarmAndCool,
        BlendCodes.NoCommonDay,
        BlendCodes.CompanionOverLimit,
        BlendCodes.HostThin,
    ];

    internal static ImmutableArray<KindVerdict> Judge(PlotPlan plan) => [.. plan.Kinds.Select(k => new KindVerdict(plan, k))];

    /// <summary>The plan with those kinds alone that are sown now.</summary>
    internal static PlotPlan OfTheSown(PlotPlan plan, ImmutableArray<KindVerdict> kinds) =>
        Only(plan, kinds.Where(v => v.IsSown));

    /// <summary>The plan with the kinds that this ground may bear one day: lime is for them too. Where it bears none, with
    /// all.</summary>
    internal static PlotPlan OfTheLimed(PlotPlan plan, ImmutableArray<KindVerdict> kinds) =>
        kinds.Any(v => v.Decision != KindDecision.LeaveOut)
            ? Only(plan, kinds.Where(v => v.Decision != KindDecision.LeaveOut))
            : plan;

    /// <param name="plan">Plan.</param>
    /// <param name="kinds">Verdicts on its kinds.</param>
    /// <param name="expected">The pH to expect on the day of sowing, or null.</param>
    /// <param name="fit">How the kinds that are sown fit one another; null where nothing is weighed out.</param>
    internal static Answer<PlotVerdict> Solve(
        PlotPlan plan,
        ImmutableArray<KindVerdict> kinds,
        LimeOutlook? expected,
        Func<BlendFit?> fit
    )
    {
        if (kinds.IsEmpty && !GrownKinds.IsUpkeep(plan))
        {
            return Answers.NoneNeeded<PlotVerdict>();
        }

        var verdict = new PlotVerdict(plan, kinds, () => [.. fit()?.Findings.Where(f => OfKindsTogether.Contains(f.Code)) ?? []])
        {
            Expected = expected,
        };
        return IsOpen(plan)
            ? Answers.OpenButFor(verdict, () => [.. Questions(plan, kinds)], null, () => verdict.Findings)
            : Answers.Given(verdict, () => verdict.Findings, () => [.. Questions(plan, kinds)]);
    }

    /// <summary>Without a pH nobody can say whether the soil bears them.</summary>
    private static bool IsOpen(PlotPlan plan) => plan.Soil.WaterPh is null && plan.Kinds.Any(k => k.Kind.Ph is not null);

    private static IEnumerable<OpenQuestion> Questions(PlotPlan plan, ImmutableArray<KindVerdict> kinds)
    {
        if (IsOpen(plan))
        {
            yield return PlantingQuestions.WaterPh(plan);
        }

        foreach (var treated in kinds.Where(v => v.IsTreatedOnSurface))
        {
            yield return SeedQuestions.Untreated(treated.Planned.Kind);
        }

        if (!kinds.IsEmpty && plan.Plot.PlantingRegion is null)
        {
            yield return SeedQuestions.Region();
        }

        if (!kinds.IsEmpty && plan.Plot.Drainage is null)
        {
            yield return SeedQuestions.Drainage();
        }
    }

    private static PlotPlan Only(PlotPlan plan, IEnumerable<KindVerdict> kinds) =>
        plan with
        {
            Kinds = [.. kinds.Select(v => v.Planned)],
        };
}
