using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using PlotAgronomy.Spreading;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>Sorts the kinds into passes by size and sets the spreader for each.</summary>
internal static class SpreadingSolver
{
    /// <summary>Open while the seed is, for nothing can be spread that cannot be weighed out, and while no spreader is
    /// stated.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="seed">Seed to spread.</param>
    /// <param name="ground">The passes over the plot, whatever is spread; null where its sides are not known.</param>
    internal static Answer<SpreadingAnswer> Solve(PlotPlan plan, Answer<SeedAnswer> seed, FieldPasses? ground)
    {
        if (!seed.TryGet(out var weighed))
        {
            return seed.State == AnswerState.NoneNeeded
                ? Answers.NoneNeeded<SpreadingAnswer>()
                : Answers.Open<SpreadingAnswer>(() => seed.Questions);
        }

        if (plan.Spreader is not { } spreader)
        {
            string kinds = string.Join(", ", weighed.Kinds.Select(k => k.Planned.Kind.ShortName));
            return Answers.Open<SpreadingAnswer>(() => [SpreadingQuestions.Run(kinds)]);
        }

        var sown = weighed.Kinds;
        var groups = SizeGrouping.Arrange([.. sown.Select(SpreadingParts.PassKind)]);
        var spreading = new SpreadingAnswer(plan, spreader)
        {
            Groups = groups,
            Passes =
            [
                .. groups.Groups.Select(
                    (group, i) => Pass(plan, spreader, ground, group, i + 1, [.. sown.Where(s => group.Holds(s.Planned.Kind))])
                ),
            ],
        };
        return Answers.Given(spreading, () => [.. FindingsFor(plan, spreader, spreading.Passes)], () => [.. spreading.Questions]);
    }

    /// <summary>Passes over the plot as they lie for any rate and pace; null where its sides are not known.</summary>
    internal static FieldPasses? Ground(PlotPlan plan) =>
        plan is { Plot.Measured.Outline: { } outline, Spreader: { } spreader }
        && !FieldPasses.HasTooManyStrips(outline, spreader.Swath)
            ? FieldPasses.Lay(
                outline,
                new FieldPassesRequest
                {
                    Rate = ApplicationRate.FromPoundsPerAcre(1),
                    Swath = spreader.Swath,
                    Speed = WalkingPace.Usual,
                }
            )
            : null;

    /// <summary>The plot, and what its passes cover beside it.</summary>
    internal static Area SownGround(PlotPlan plan, FieldPasses? ground) =>
        Area.FromAcres(SpreaderMath.AcresCovered(plan.Plot.Area.Acres, ground?.OutsideShare ?? 0));

    /// <summary>Spacing, not swath, decides gate, test run and walk alike: the passes are evened out over the plot.</summary>
    private static SowingPass Pass(
        PlotPlan plan,
        PlannedSpreader spreader,
        FieldPasses? ground,
        SeedPass group,
        int number,
        ImmutableArray<SownKind> kinds
    )
    {
        var spacing = ground?.Spacing ?? spreader.Swath;
        var setup = SpreaderSetup.For(
            [.. kinds.Select(k => (k.Planned.Kind, k.Rate.Rate))],
            spacing,
            spreader.Runs,
            WalkingPace.Usual
        );
        return new SowingPass(spacing)
        {
            Number = number,
            Group = group,
            Kinds = kinds,
            Rate = setup.Rate,
            Load = Mass.FromPounds(kinds.Sum(k => k.Weight.Pounds)),
            Walk = SowingWalk.For(setup.Rate, plan.Plot.Area, spacing),
            Setup = setup,
            Laid = SpreadingParts.Laid(ground?.For(setup.Rate, PaceOver(ground, setup))),
        };
    }

    /// <summary>The pace of the setting; a usual walk where there is none or it would never end.</summary>
    private static Speed PaceOver(FieldPasses ground, SpreaderSetup setup) =>
        setup.PaceForGate is { } setting && WalkingPace.Ends(ground.Path, setting.Speed) ? setting.Speed : WalkingPace.Usual;

    /// <summary>Whether the load fits into the hopper at once, by the lightest bulk density its kinds may have.</summary>
    private static bool MayOverflow(SowingPass pass, Volume hopper)
    {
        if (pass.LightestBulk is not { } lightest)
        {
            return false;
        }

        double pounds = pass.Load.Pounds,
            held = hopper.CubicFeet;
        return pounds / lightest.PoundsPerCubicFoot > held;
    }

    internal static IEnumerable<Finding> FindingsFor(PlotPlan plan, PlannedSpreader spreader, ImmutableArray<SowingPass> passes)
    {
        if (plan.Plot.Measured.Outline is null)
        {
            yield return FindingCatalog.Create(PlanningCodes.NoSides);
        }

        foreach (var pass in passes)
        {
            foreach (var finding in pass.TestRunFindings)
            {
                yield return finding;
            }

            if (plan.Method == PlantingMethod.Drilled)
            {
                continue;
            }

            if (pass.Run is { } run && pass.Kinds.Length > 1)
            {
                yield return FindingCatalog.Create(PlanningCodes.SwathRun, ("kinds", pass.Names), ("kind", run.Kind.ShortName));
            }

            if (spreader.HopperVolume is { } hopper && MayOverflow(pass, hopper))
            {
                yield return FindingCatalog.Create(
                    PlanningCodes.SpreadMoreThanHopper,
                    ("pass", Amounts.Print(pass.Number, 0)),
                    ("load", Amounts.PrintForScale(pass.Load)),
                    ("hopper", Amounts.Print(hopper, "gal", 1))
                );
            }
        }
    }
}
