using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Blends;

/// <summary>Caps of groups, limits of totals and targets of density, from the tables.</summary>
internal static class CrowdingLimits
{
    /// <summary>A share this little above its limit, relative, is on it: arithmetic dust.</summary>
    internal const double Dust = 1e-9;

    private static readonly Lazy<ImmutableArray<GroupCap>> Groups = new(() =>
        [.. CsvTable.Embedded("blends-group-caps.csv", "id", "group", "selects", "whole_group", "share_low", "share_high", "source_id", "locator", "status").Rows
            .Select(r => new GroupCap(r.Text("id"), r.Text("group"), KindSelector.Read(r, "selects"), r.Text("whole_group") == "yes", r.Number("share_low"), r.Number("share_high"), r.SourceId()))]);

    private static readonly Lazy<ImmutableArray<(double MostKinds, TotalLimit Limit)>> Totals = new(() =>
        [.. CsvTable.Embedded("blends-stand-totals.csv", "id", "kinds_low", "kinds_high", "total_low", "total_high", "source_id", "locator", "status").Rows
            .Select(r => (r.NumberOrNull("kinds_high") ?? double.PositiveInfinity, new TotalLimit(r.Number("total_low"), r.Number("total_high"), r.SourceId())))]);

    private static readonly Lazy<ImmutableArray<DensityTarget>> Densities = new(() =>
        [.. CsvTable.Embedded("blends-density-targets.csv", "id", "context", "selects", "low_per_ft2", "high_per_ft2", "counted", "source_id", "locator", "status").Rows
            .Select(r => new DensityTarget(r.Text("id"), r.Text("context"), KindSelector.Read(r, "selects"), r.Number("low_per_ft2"), r.Number("high_per_ft2"), r.Choice<Counted>("counted"), r.SourceId()))]);

    internal enum Counted
    {
        Seeds,
        LiveSeeds,
        Plants,
        WholeStand,
        WholePlot,
    }

    internal static ImmutableArray<GroupCap> GroupCaps => Groups.Value;

    internal static ImmutableArray<DensityTarget> DensityTargets => Densities.Value;

    internal static TotalLimit TotalFor(int kinds) => Totals.Value.First(t => kinds <= t.MostKinds).Limit;

    internal sealed record GroupCap(string Id, string Group, KindSelector Selector, bool IsWholeGroup, double CareFrom, double Cap, string SourceId);

    internal readonly record struct TotalLimit(double Low, double High, string SourceId);

    internal sealed record DensityTarget(string Id, string Context, KindSelector Selector, double Low, double High, Counted Counted, string SourceId);
}
