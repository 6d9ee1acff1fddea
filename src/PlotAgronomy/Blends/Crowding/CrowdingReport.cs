using System.Collections.Immutable;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>Do the kinds of a blend leave each other room? Totals, groups and densities against their limits.</summary>
/// <remarks>The limits of totals and groups are common practice: the answer is a caution, not a proof. It does not consider
/// sowing dates, fertility or grazing, which decide who wins as much as rates do.</remarks>
public sealed class CrowdingReport : IWorkedResult
{
    private CrowdingReport(Blend blend, StandMember[] members, double standing)
    {
        Blend = blend;
        Total = blend.StandTotal + StandTotal.Of(standing, standing, standing);
        Kinds = members.Where(m => m.Share > 0).Select(m => m.Kind.Id).Distinct().Count();
        var limit = CrowdingLimits.TotalFor(Kinds);
        MostTotal = limit.High;
        Groups = GroupsOf(members);
        SourceIds = [.. Groups.Select(g => g.SourceId).Append(limit.SourceId).Append("SEED-S88").Distinct()];
        Findings = Finding.InOrder(CrowdingFindings.Of(this, members));
    }

    /// <summary>Gets the blend.</summary>
    public Blend Blend { get; }

    /// <summary>Gets the sum of shares of a full stand, what stands already included.</summary>
    public StandTotal Total { get; }

    /// <summary>Gets the number of kinds, what stands already included.</summary>
    public int Kinds { get; }

    /// <summary>Gets the highest total of practice for that number of kinds, a pure number.</summary>
    public double MostTotal { get; }

    /// <summary>Gets the groups that hold others back and are in the stand.</summary>
    public ImmutableArray<GroupShare> Groups { get; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings { get; }

    /// <inheritdoc/>
    public ImmutableArray<string> SourceIds { get; }

    /// <summary>Checks a blend.</summary>
    /// <param name="blend">Blend.</param>
    /// <param name="standing">Kinds that stand on the plot already with their shares of a full stand; each counts against its
    /// own full rate, so its share has no range.</param>
    /// <returns>The report.</returns>
    public static CrowdingReport Of(Blend blend, params IReadOnlyList<KindShare> standing)
    {
        ArgumentNullException.ThrowIfNull(blend);
        ArgumentNullException.ThrowIfNull(standing);
        return new(blend, [.. StandMember.Of(blend, standing)], standing.Sum(s => s.ShareOfFullStand));
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            new(
                "Sum of shares",
                "sum of live rate / full rate over the kinds sown and standing",
                $"{Total} for {Kinds} kinds, limit {Amounts.Print(MostTotal, 2)}",
                "SEED-S88"
            ),
            .. Groups.Select(g => new WorkedLine(
                $"Share of {g.Group}",
                "sum over the kinds of the group",
                $"{Amounts.Print(g.Share, 3)}, cap {Amounts.Print(g.Cap, 2)}{WhereCapped(g)}",
                g.SourceId
            )),
        ];

    private static string WhereCapped(GroupShare group) =>
        group.Applies ? $" beside {group.MustLiveOn}" : " (does not apply: no other group must live on)";

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
                MustLiveOn = string.Join(
                    "; ",
                    members
                        .Where(m => m.MustLiveOn && m.Share > 0 && !cap.Selector.Selects(m.Kind))
                        .Select(m => m.Kind.ShortName)
                        .Distinct()
                ),
                SourceId = cap.SourceId,
            },
        ];
}
