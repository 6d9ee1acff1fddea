using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Blends;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Planning;

/// <summary>One kind against the plot and the day: what stops it, and what is only to be minded. Nobody else decides which kinds
/// are held back.</summary>
/// <remarks>No lime and no forecast of its work lifts what today's pH stops. A day that misses the published dates by less than
/// they differ among themselves is minded, not refused.</remarks>
internal static class KindJudge
{
    /// <param name="plan">Plan.</param>
    /// <param name="kind">Kind, of the plan or one that might stand in its place.</param>
    /// <param name="lot">Lot it is sown from, or null.</param>
    internal static ImmutableArray<KindObstacle> Of(PlotPlan plan, CropKind kind, SeedLot? lot = null) =>
        [
            .. Ground(plan.Soil, kind),
            .. Day(plan, kind),
            .. RotationRule.Against(plan, kind),
            .. SmallPlotRule.Against(plan, kind),
            .. lot is null ? [] : Lot(plan, lot),
        ];

    /// <summary>A sour soil is told once, with the pH that a test must show.</summary>
    private static IEnumerable<KindObstacle> Ground(PlotSoil soil, CropKind kind) =>
        HeldBack
            .Findings(HeldBack.Of([kind], soil), soil)
            .Select(f => new KindObstacle(KindDecision.AfterTest, f))
            .Concat(
                GroundFindings
                    .Of([kind], soil)
                    .Where(f => f.Code != BlendCodes.PhLow)
                    .Select(f => new KindObstacle(KindDecision.LeaveOut, f))
            );

    private static IEnumerable<KindObstacle> Day(PlotPlan plan, CropKind kind)
    {
        if (plan.PlantingDate is not { } planting)
        {
            yield break;
        }

        if (SowingSeason.IsFrostMissing(plan.Method, planting))
        {
            yield return new(
                KindDecision.NotThisSeason,
                FindingCatalog.Create(
                    PlanningCodes.NoFrost,
                    ("day", planting.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture))
                )
            );
        }

        if (DayFinding.Of(kind, planting, SowingSeason.Windows(plan, kind)) is { } off)
        {
            yield return new(off.Code == BlendCodes.OutOfSeason ? KindDecision.NotThisSeason : KindDecision.Sow, off);
        }
    }

    private static IEnumerable<KindObstacle> Lot(PlotPlan plan, SeedLot lot)
    {
        var cautions = SeedParts.IsTreatedOnSurface(plan, lot) && plan.SowingMethod is { } sowing ? lot.Cautions(sowing) : [];
        return cautions
            .Select(f => new KindObstacle(
                f.Code == SeedCodes.TreatedOnSurface ? KindDecision.OtherSeed : KindDecision.Sow,
                f.About(lot.ToString())
            ))
            .Concat(SeedParts.Test(plan, lot).Findings.Select(f => new KindObstacle(KindDecision.Sow, f.About(lot.ToString()))));
    }
}
