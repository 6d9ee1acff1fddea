using System.Collections.Immutable;
using PlotAgronomy.Blends;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>Kinds that do not follow one another on the same ground.</summary>
internal sealed class RotationRule
{
    private static readonly Table<RotationRule> Rules = new("Planning/Data/rotation.csv", r => new RotationRule(r));

    private readonly KindSelector sown;
    private readonly KindSelector before;
    private readonly KindDecision decision;
    private readonly string code;

    private RotationRule(CsvRow row)
    {
        sown = KindSelector.Read(row, "sown_selects");
        before = KindSelector.Read(row, "before_selects");
        decision = row.Choice<KindDecision>("decision");
        code = row.Text("code");
        _ = row.Origin();
    }

    /// <summary>What grew or stands on the plot against a kind.</summary>
    internal static IEnumerable<KindObstacle> Against(PlotPlan plan, CropKind kind) =>
        from earlier in Earlier(plan)
        from rule in Rules.Rows
        where rule.sown.Selects(kind) && rule.before.Selects(earlier)
        select new KindObstacle(
            rule.decision,
            FindingCatalog.Create(rule.code, ("kind", kind.ShortName), ("before", earlier.ShortName))
        );

    /// <summary>What grew the season before, and what is worked under for this sowing; what stays is no forerunner.</summary>
    private static ImmutableArray<CropKind> Earlier(PlotPlan plan)
    {
        CropKind?[] kinds = [plan.Plot.GrewBefore, plan.Method == PlantingMethod.TilledAndPacked ? plan.Plot.CoverKind : null];
        return [.. kinds.OfType<CropKind>().DistinctBy(k => k.Id)];
    }
}
