using System.Collections.Immutable;
using PlotAgronomy.Liming;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Planning;

/// <summary>Kinds that would stand where kinds of the plan drop out, worked out from their own figures.</summary>
internal static class SubstituteSearch
{
    /// <summary>At most three, turn by turn for each kind that drops out. Those of its own group go first, of them what stands
    /// the soil of today before what a test may let in by the day of sowing, then its life span, then the sourest soil it stands.
    /// Other groups are named where its own has none, and a kind with a grave hazard that no kind of the plan has where there is
    /// none without.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="held">The kinds that are not sown, for the soil, the ground or the season.</param>
    /// <param name="expected">The pH to expect on the day of sowing, or null.</param>
    internal static ImmutableArray<SubstituteKind> For(
        PlotPlan plan,
        IReadOnlyCollection<KindVerdict> held,
        LimeOutlook? expected
    )
    {
        SubstituteKind[] fit =
        [
            .. KindCatalog
                .Standard.Kinds.Where(k => IsAtHand(plan, k))
                .Select(k => new SubstituteKind(plan) { Kind = k, InsteadOf = k })
                .Where(s => Stands(plan, s, expected)),
        ];
        var turns = held.Where(v => v.Decision != KindDecision.OtherSeed)
            .Select(v => v.Planned.Kind)
            .Select(dropped => new Queue<SubstituteKind>(InPlaceOf(plan, dropped, fit)))
            .ToList();
        int most = (int)PlanningConstants.All["most-substitutes"];
        var taken = ImmutableArray.CreateBuilder<SubstituteKind>();
        while (taken.Count < most && turns.Exists(t => t.Count > 0))
        {
            foreach (var turn in turns.Where(t => t.Count > 0))
            {
                var next = turn.Dequeue();
                if (taken.Count < most && taken.All(t => t.Kind.Id != next.Kind.Id))
                {
                    taken.Add(next);
                }
            }
        }

        return taken.ToImmutable();
    }

    private static bool IsAtHand(PlotPlan plan, CropKind kind) =>
        kind.SeedCount is not null
        && plan.SowingMethod is { } sowing
        && kind.Rates?.For(sowing) is not null
        && kind.LowestPhOn(plan.Soil) is not null
        && kind.Hazards.All(h => h.Type != HazardType.NoxiousListing)
        && plan.Kinds.All(p => p.Kind.Id != kind.Id)
        && plan.Plot.CoverKind?.Id != kind.Id
        && (!IsDayKnown(plan) || !SowingSeason.WindowsOnDay(plan, kind).IsEmpty);

    /// <summary>Whether the day can be held against published dates.</summary>
    private static bool IsDayKnown(PlotPlan plan) => plan is { Plot.PlantingRegion: not null, PlantingDate: not null };

    /// <summary>Nothing speaks against it here and now, not even what would only be minded; a test may still be wanting that the
    /// lime brings within reach.</summary>
    private static bool Stands(PlotPlan plan, SubstituteKind kind, LimeOutlook? expected) =>
        KindJudge.Of(plan, kind.Kind).All(o => o.Decision == KindDecision.AfterTest)
        && (kind.TestMustShow is not { } ph || (expected is not null && !Tolerance.IsBelow(expected.ExpectedPhHigh, ph)));

    /// <summary>Where the day cannot be held against dates, only kinds of the same growing season.</summary>
    private static IEnumerable<SubstituteKind> InPlaceOf(PlotPlan plan, CropKind dropped, IEnumerable<SubstituteKind> fit)
    {
        var inSeason = fit.Where(s => IsDayKnown(plan) || s.Kind.GrowingSeason == dropped.GrowingSeason).ToList();
        var harmless = inSeason.FindAll(s => !BringsHazard(plan, s.Kind));
        var alike = Alike(harmless);
        return (alike.Count > 0 ? alike : Alike(inSeason))
            .OrderByDescending(s => s.TestMustShow is null)
            .ThenByDescending(s => s.Kind.LifeCycle == dropped.LifeCycle)
            .ThenBy(s => s.LowestPh)
            .Select(s => new SubstituteKind(plan) { Kind = s.Kind, InsteadOf = dropped });

        List<SubstituteKind> Alike(List<SubstituteKind> kinds) =>
            kinds.FindAll(s => s.Kind.Group == dropped.Group) is { Count: > 0 } own
                ? own
                : kinds.FindAll(s => s.TestMustShow is null);
    }

    /// <summary>Whether a kind is a grave hazard to deer or stock of a sort that the owner did not choose.</summary>
    private static bool BringsHazard(PlotPlan plan, CropKind kind) =>
        kind.Hazards.Any(h =>
            GraveHazards.Holds(h)
            && !plan.Kinds.Any(p => p.Kind.Hazards.Any(own => own.Type == h.Type && GraveHazards.Holds(own)))
        );
}
