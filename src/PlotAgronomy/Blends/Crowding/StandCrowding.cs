using System.Collections.Immutable;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>How full a coming stand is, and what limits it, before anything is remarked on.</summary>
internal sealed class StandCrowding
{
    internal StandCrowding(Blend blend, IReadOnlyList<KindShare> standing)
    {
        double already = standing.Sum(s => s.ShareOfFullStand);
        Blend = blend;
        Members = [.. StandMember.Of(blend, standing)];
        Total = blend.StandTotal + StandTotal.Of(already, already, already);
        Kinds = Members.Where(m => m.Share > 0).Select(m => m.Kind.Id).Distinct().Count();
        Limit = CrowdingLimits.TotalFor(Kinds);
        Groups = GroupsOf(Members);
    }

    internal Blend Blend { get; }

    internal StandMember[] Members { get; }

    internal StandTotal Total { get; }

    internal int Kinds { get; }

    internal CrowdingLimits.TotalLimit Limit { get; }

    internal ImmutableArray<GroupShare> Groups { get; }

    private static ImmutableArray<GroupShare> GroupsOf(StandMember[] members) =>
        [
            .. from cap in CrowdingLimits.GroupCaps
            let inside = members.Where(m => cap.Selector.Selects(m.Kind)).ToArray()
            where inside.Length > 0
            select new GroupShare
            {
                Group = cap.Group,
                Share = inside.Sum(m => m.Share),
                CareFrom = cap.CareFrom,
                Cap = cap.Cap,
                MustLiveOn = StandNames.Of(
                    members.Where(m => m.MustLiveOn && m.Share > 0 && !cap.Selector.Selects(m.Kind)).Select(m => m.Kind)
                ),
                SourceId = cap.SourceId,
            },
        ];
}
