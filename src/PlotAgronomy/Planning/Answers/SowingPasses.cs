using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Spreading;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>Sorts the kinds into passes by size and sets the spreader for each.</summary>
internal static class SowingPasses
{
    internal static (SizeGrouping Groups, ImmutableArray<SowingPass> Passes) Plan(PlanContent plan, ImmutableArray<SownKind> sown)
    {
        var groups = SizeGroups.Arrange([.. sown.Select(Seed)]);
        return (
            groups,
            [
                .. groups.Groups.Select(
                    (group, i) =>
                        Pass(
                            plan,
                            group,
                            i + 1,
                            [.. sown.Where(s => group.Kinds.Any(k => k.Name == SheetText.Name(s.Planned.Kind)))]
                        )
                ),
            ]
        );
    }

    private static HopperKind Seed(SownKind sown)
    {
        var kind = sown.Planned.Kind;
        return HopperKind.FromSeedCount(
            SheetText.Name(kind),
            sown.Part.Component.SeedsPerPound,
            sowingDepth: kind.Depth?.Deepest,
            chaffy: kind.IsChaffy
        );
    }

    private static SowingPass Pass(PlanContent plan, SizeGroup group, int number, ImmutableArray<SownKind> kinds)
    {
        var rate = kinds.Aggregate(ApplicationRate.Zero, (sum, k) => sum + k.Bulk.Bulk.Rate);
        var run = plan
            .Spreader.Runs.Where(r => kinds.Any(k => k.Planned.Kind.Id == r.Kind.Id))
            .OrderByDescending(r => kinds.First(k => k.Planned.Kind.Id == r.Kind.Id).Bulk.Bulk.PoundsPerAcre)
            .FirstOrDefault();
        var measured = run is null
            ? null
            : SpreaderCalibration.WeighedRun(run.Weighed, run.Distance, plan.Spreader.Swath, time: run.Time);
        var setting = measured?.Flow is MassFlow flow ? SpreaderRate.SpeedFor(rate, flow, plan.Spreader.Swath) : null;
        return new SowingPass
        {
            Number = number,
            Group = group,
            Kinds = kinds,
            Rate = rate,
            Load = Mass.FromPounds(kinds.Sum(k => k.Weight.Pounds)),
            Walk = SowingWalk.For(rate, plan.Site.Area, plan.Spreader.Swath),
            Run = run,
            Measured = measured,
            Setting = setting,
            Layout = Layout(plan, rate, setting?.Speed ?? WalkingPace.Usual),
        };
    }

    private static FieldPasses? Layout(PlanContent plan, ApplicationRate rate, Speed speed) =>
        plan.Site.Measured.Outline is { } outline
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

    internal static IEnumerable<Finding> FindingsFor(PlanContent plan, ImmutableArray<SowingPass> passes)
    {
        if (plan.Site.Measured.Outline is null)
        {
            yield return FindingCatalog.Create(PlanningCodes.NoSides);
        }

        foreach (var pass in passes)
        {
            if (pass.Run is { } run && pass.Kinds.Length > 1)
            {
                yield return FindingCatalog.Create(
                    PlanningCodes.SwathRun,
                    ("kinds", pass.Names),
                    ("kind", SheetText.Name(run.Kind))
                );
            }

            if (plan.Spreader.Hopper is Volume hopper && MayOverflow(pass, hopper))
            {
                yield return FindingCatalog.Create(
                    PlanningCodes.SpreadMoreThanHopper,
                    ("pass", Amounts.Print(pass.Number, 0)),
                    ("load", SheetText.Weight(pass.Load)),
                    ("hopper", Amounts.Print(hopper, "gal", 1))
                );
            }
        }
    }
}
