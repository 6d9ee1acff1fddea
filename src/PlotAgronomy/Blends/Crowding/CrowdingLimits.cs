using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Blends;

/// <summary>Caps of groups and limits of totals, from the tables.</summary>
internal static class CrowdingLimits
{
    private static readonly Table<GroupCap> Groups = new("Blends/Data/group-caps.csv", r => new GroupCap(
        r.Text("group"),
        KindSelector.Read(r, "selects"),
        r.YesOrNo("whole_group"),
        r.Number("share_low"),
        r.Number("share_high"),
        r.SourceId()
    ));

    private static readonly Table<(double MostKinds, TotalLimit Limit)> Totals = new("Blends/Data/stand-totals.csv", r =>
        (r.NumberOrNull("kinds_high") ?? double.PositiveInfinity, new TotalLimit(r.Number("total_high"), r.SourceId()))
    );

    internal static ImmutableArray<GroupCap> GroupCaps => Groups.Rows;

    internal static TotalLimit TotalFor(int kinds) => Totals.Rows.First(t => kinds <= t.MostKinds).Limit;

    internal sealed record GroupCap(
        string Group,
        KindSelector Selector,
        bool IsWholeGroup,
        double CareFrom,
        double Cap,
        string SourceId
    );

    internal readonly record struct TotalLimit(double High, string SourceId);
}
