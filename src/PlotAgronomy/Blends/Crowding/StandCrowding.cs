using System.Collections.Immutable;

namespace PlotAgronomy.Blends;

/// <summary>How full a coming stand is, and what limits it, before anything is remarked on.</summary>
internal sealed class StandCrowding
{
    internal StandCrowding(Blend blend, IReadOnlyList<KindShare> standing)
    {
        double already = SumOf(standing);
        Blend = blend;
        Members = StandMember.Of(blend, standing);
        Total = blend.StandTotal + StandTotal.Of(already, already, already);
        Kinds = KindsIn(Members);
        Limit = CrowdingLimits.TotalFor(Kinds);
        Groups = GroupsOf(Members);
    }

    internal Blend Blend { get; }

    internal StandMember[] Members { get; }

    internal StandTotal Total { get; }

    internal int Kinds { get; }

    internal CrowdingLimits.TotalLimit Limit { get; }

    internal ImmutableArray<GroupShare> Groups { get; }

    /// <summary>The targets that speak of the whole stand, each with the most live seeds a square foot that it allows: one full
    /// stand by the kinds' own published rates is never too dense.</summary>
    internal IEnumerable<(DensityTarget Target, double Most)> Densities =>
        DensityTarget
            .All.Where(SpeaksOfAll)
            .Select(t =>
                (t, BlendMath.MostSeedsPerSquareFoot(t.HighPerSquareFoot, Blend.LiveSeedsPerSquareFoot, Blend.StandTotal.Chosen))
            );

    private bool SpeaksOfAll(DensityTarget target) =>
        target.Counted switch
        {
            DensityCount.WholeStand => Members.All(m => target.Covers(m.Kind)),
            DensityCount.WholePlot => true,
            _ => false,
        };

    private static double SumOf(IReadOnlyList<KindShare> standing)
    {
        double sum = 0;
        for (int i = 0; i < standing.Count; i++)
        {
            sum += standing[i].ShareOfFullStand;
        }

        return sum;
    }

    /// <summary>Kinds that take any share, each once, though it may be sown where it stands already.</summary>
    private static int KindsIn(StandMember[] members)
    {
        int kinds = 0;
        for (int i = 0; i < members.Length; i++)
        {
            kinds += members[i].Share > 0 && !StandsBefore(members, i) ? 1 : 0;
        }

        return kinds;
    }

    private static bool StandsBefore(StandMember[] members, int at)
    {
        for (int i = 0; i < at; i++)
        {
            if (members[i].Share > 0 && members[i].Kind.Id == members[at].Kind.Id)
            {
                return true;
            }
        }

        return false;
    }

    private static ImmutableArray<GroupShare> GroupsOf(StandMember[] members)
    {
        var shares = ImmutableArray.CreateBuilder<GroupShare>();
        foreach (var group in CrowdingGroup.All)
        {
            double share = 0;
            int inside = 0;
            foreach (var member in members)
            {
                bool isInside = group.Holds(member.Kind);
                share += isInside ? member.Share : 0;
                inside += isInside ? 1 : 0;
            }

            if (inside > 0)
            {
                shares.Add(new GroupShare(group) { Share = share, MustLiveOn = MustLiveOnBeside(group, members) });
            }
        }

        return shares.ToImmutable();
    }

    private static ImmutableArray<CropKind> MustLiveOnBeside(CrowdingGroup group, StandMember[] members)
    {
        var kinds = ImmutableArray.CreateBuilder<CropKind>();
        foreach (var member in members)
        {
            if (member.MustLiveOn && member.Share > 0 && !group.Holds(member.Kind))
            {
                kinds.Add(member.Kind);
            }
        }

        return kinds.ToImmutable();
    }
}
