using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Blends;

/// <summary>Do the kinds of a blend leave each other room? Totals, groups and densities against their limits.</summary>
/// <remarks>The limits of totals and groups are common practice: the answer is a caution, not a proof. It does not consider
/// sowing dates, fertility or grazing, which decide who wins as much as rates do.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class CrowdingReport : IWorkedResult
{
    private readonly StandCrowding crowding;

    private CrowdingReport(StandCrowding crowding) => this.crowding = crowding;

    /// <summary>Gets the blend.</summary>
    public Blend Blend => crowding.Blend;

    /// <summary>Gets the sum of shares of a full stand, what stands already included.</summary>
    public StandTotal Total => crowding.Total;

    /// <summary>Gets the number of kinds, what stands already included.</summary>
    public int Kinds => crowding.Kinds;

    /// <summary>Gets the highest total of practice for that number of kinds, a pure number.</summary>
    public double MostTotal => crowding.Limit.High;

    /// <summary>Gets the groups that hold others back and are in the stand.</summary>
    public ImmutableArray<GroupShare> Groups => crowding.Groups;

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(CrowdingFindings.Of(crowding));

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        [
            .. Groups
                .SelectMany(g => g.Group.Origin.Sources)
                .Concat(crowding.Limit.Origin.Sources)
                .Concat(BlendFormulas.ShareSources)
                .Distinct(),
        ];

    /// <summary>Checks a blend.</summary>
    /// <param name="blend">Blend.</param>
    /// <param name="standing">Kinds that stand on the plot already with their shares of a full stand; each counts against its
    /// own full rate, so its share has no range.</param>
    /// <returns>The report.</returns>
    public static CrowdingReport For(Blend blend, params IReadOnlyList<KindShare> standing)
    {
        ArgumentNullException.ThrowIfNull(blend);
        Guard.WithoutNulls(standing);
        return new(new StandCrowding(blend, standing));
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            BlendFormulas
                .All["blend-with-standing"]
                .Line(
                    $"{Total} for {Kinds} kinds, limit {Amounts.Print(MostTotal, 2)}",
                    ("sown", Amounts.Print(Blend.StandTotal.Chosen, 3)),
                    ("standing", Amounts.Print(Total.Chosen - Blend.StandTotal.Chosen, 3))
                ),
            .. crowding.Densities.Select(d =>
                BlendFormulas
                    .All["blend-density-limit"]
                    .Line(
                        $"{Amounts.Print(d.Most, 1)}: {d.Target.Context}",
                        ("target", Amounts.Print(d.Target.HighPerSquareFoot, 1)),
                        ("live seeds", Amounts.Print(Blend.LiveSeedsPerSquareFoot, 2)),
                        ("full stands", Amounts.Print(Blend.StandTotal.Chosen, 3))
                    )
                    .From(d.Target.Origin)
            ),
            .. Groups.Select(g =>
                BlendFormulas
                    .Sum($"Share of {g.Group}", $"{Amounts.Print(g.Share, 3)}, cap {Amounts.Print(g.Cap, 2)}{WhereCapped(g)}")
                    .From(g.Group.Origin)
            ),
        ];

    private static string WhereCapped(GroupShare group) =>
        group.Applies ? $" beside {StandNames.Of(group.MustLiveOn)}" : " (does not apply: no other group must live on)";

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
