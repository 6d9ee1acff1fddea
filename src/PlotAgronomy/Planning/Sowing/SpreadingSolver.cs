using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using PlotAgronomy.Spreading;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>Sorts the kinds into passes by size and sets the spreader for each.</summary>
internal static class SpreadingSolver
{
    /// <summary>Open while the seed is: nothing can be spread that cannot be weighed out.</summary>
    internal static Answer<SpreadingAnswer> Solve(PlotPlan plan, Answer<SeedAnswer> seed)
    {
        if (!seed.TryGet(out var weighed))
        {
            return Answers.Open<SpreadingAnswer>(() => seed.Questions);
        }

        var sown = weighed.Kinds;
        var groups = SizeGrouping.Arrange([.. sown.Select(SpreadingParts.PassKind)]);
        var spreading = new SpreadingAnswer(plan)
        {
            Groups = groups,
            Passes =
            [
                .. groups.Groups.Select(
                    (group, i) => Pass(plan, group, i + 1, [.. sown.Where(s => group.Holds(s.Planned.Kind))])
                ),
            ],
        };
        return Answers.Given(spreading, () => [.. FindingsFor(plan, spreading.Passes)], () => [.. spreading.Questions]);
    }

    private static SowingPass Pass(PlotPlan plan, SeedPass group, int number, ImmutableArray<SownKind> kinds)
    {
        var setup = SpreaderSetup.For(
            [.. kinds.Select(k => (k.Planned.Kind, k.Bulk.Bulk.Rate))],
            plan.Spreader.Swath,
            plan.Spreader.Runs,
            WalkingPace.Usual
        );
        return new SowingPass(plan.Spreader.Swath)
        {
            Number = number,
            Group = group,
            Kinds = kinds,
            Rate = setup.Rate,
            Load = Mass.FromPounds(kinds.Sum(k => k.Weight.Pounds)),
            Walk = SowingWalk.For(setup.Rate, plan.Plot.Area, plan.Spreader.Swath),
            Setup = setup,
            Laid = SpreadingParts.Laid(Layout(plan, setup.Rate, setup.PaceForGate?.Speed ?? WalkingPace.Usual)),
        };
    }

    private static FieldPasses? Layout(PlotPlan plan, ApplicationRate rate, Speed speed) =>
        plan.Plot.Measured.Outline is { } outline && !FieldPasses.HasTooManyStrips(outline, plan.Spreader.Swath)
            ? FieldPasses.Lay(
                outline,
                new FieldPassesRequest
                {
                    Rate = rate,
                    Swath = plan.Spreader.Swath,
                    Speed = speed,
                }
            )
            : null;

    /// <summary>Whether the load fits into the hopper at once, by the lightest bulk density its kinds may have.</summary>
    private static bool MayOverflow(SowingPass pass, Volume hopper)
    {
        double cubicFeet = 0;
        foreach (var kind in pass.Kinds)
        {
            if (kind.Planned.Kind.BushelWeight is not { } weight)
            {
                return false;
            }

            double poundsPerCubicFoot = weight.Low.PoundsPerCubicFoot;
            cubicFeet += kind.Weight.Pounds / poundsPerCubicFoot;
        }

        double held = hopper.CubicFeet;
        return cubicFeet > held;
    }

    internal static IEnumerable<Finding> FindingsFor(PlotPlan plan, ImmutableArray<SowingPass> passes)
    {
        if (plan.Plot.Measured.Outline is null)
        {
            yield return FindingCatalog.Create(PlanningCodes.NoSides);
        }

        foreach (var pass in passes)
        {
            if (pass.Run is { } run && pass.Kinds.Length > 1)
            {
                yield return FindingCatalog.Create(PlanningCodes.SwathRun, ("kinds", pass.Names), ("kind", run.Kind.ShortName));
            }

            if (plan.Spreader.Hopper is Volume hopper && MayOverflow(pass, hopper))
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
