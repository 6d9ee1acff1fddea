using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>The cautions of a crowded or thin stand.</summary>
internal static class CrowdingFindings
{
    internal static IEnumerable<Finding> Of(StandCrowding stand) =>
        Totals(stand)
            .Concat(Groups(stand))
            .Concat(Seedlings(stand))
            .Concat(FullStands(stand))
            .Concat(Densities(stand))
            .Concat(PastureKinds(stand));

    private static IEnumerable<Finding> Totals(StandCrowding stand)
    {
        var total = stand.Total;
        string limit = Amounts.Print(stand.Limit.High, 2);
        bool isFull = Tolerance.IsAbove(total.Chosen, stand.Limit.High);
        if (Tolerance.IsAbove(total.Lowest, stand.Limit.High))
        {
            yield return FindingCatalog.Create(
                BlendCodes.CrowdedAtEveryRate,
                ("total", Amounts.Print(total.Lowest, 2)),
                ("limit", limit),
                ("kinds", Kinds(stand))
            );
        }
        else if (isFull)
        {
            yield return FindingCatalog.Create(
                BlendCodes.Crowded,
                ("total", Amounts.Print(total.Chosen, 2)),
                ("limit", limit),
                ("kinds", Kinds(stand))
            );
        }

        if (isFull && stand.Kinds > 1 && stand.Members.Select(m => m.Kind.Family).Distinct().Count() == 1)
        {
            yield return FindingCatalog.Create(
                BlendCodes.OneFamily,
                ("kinds", Kinds(stand)),
                ("family", stand.Members[0].Kind.Family)
            );
        }

        if (Tolerance.IsAbove(total.Highest, total.Lowest * BlendConstants.All["uncertain-total"]))
        {
            yield return FindingCatalog.Create(
                BlendCodes.TotalUncertain,
                ("low", Amounts.Print(total.Lowest, 2)),
                ("high", Amounts.Print(total.Highest, 2)),
                ("rates", string.Join("; ", stand.Blend.Parts.Select(RateUsed)))
            );
        }
    }

    /// <summary>The full rate counted against, with the published ones, such as <c>Chicory 7 (4 to 10)</c>.</summary>
    private static string RateUsed(BlendPart part) =>
        $"{part.Kind.ShortName} {Amounts.Print(part.Component.FullRate.PoundsPerAcre, 2)} "
        + $"({Amounts.Print(part.Component.FullRange.Low.PoundsPerAcre, 2)} to "
        + $"{Amounts.Print(part.Component.FullRange.High.PoundsPerAcre, 2)})";

    private static IEnumerable<Finding> Groups(StandCrowding stand)
    {
        foreach (var group in stand.Groups.Where(g => g.Applies && Tolerance.IsAbove(g.Share, g.CareFrom)))
        {
            (string, string)[] places =
            [
                ("group", group.Name),
                ("share", Amounts.Print(group.Share, 2)),
                ("cap", Amounts.Print(group.Cap, 2)),
                ("others", StandNames.Of(group.MustLiveOn)),
            ];
            yield return FindingCatalog.Create(group.IsOverCap ? BlendCodes.GroupOverCap : BlendCodes.GroupNearCap, places);
        }
    }

    /// <summary>Kinds that hold others back and have far more of the seedlings than of the weight.</summary>
    private static IEnumerable<Finding> Seedlings(StandCrowding stand)
    {
        foreach (var group in stand.Groups)
        {
            var inside = stand.Blend.Parts.Where(p => group.Group.Holds(p.Kind)).ToArray();
            double seeds = inside.Sum(p => p.ShareOfLiveSeeds.Value);
            double weight = inside.Sum(p => p.ShareOfLiveWeight.Value);
            if (
                inside.Length < stand.Blend.Parts.Length
                && Tolerance.IsAbove(seeds, BlendConstants.All["seedlings-high"])
                && Tolerance.IsAbove(seeds, weight * BlendConstants.All["seedlings-to-weight"])
            )
            {
                yield return FindingCatalog.Create(
                    BlendCodes.ManySeedlings,
                    ("group", group.Name),
                    ("seeds", Amounts.Print(Fraction.FromValue(seeds), 0)),
                    ("weight", Amounts.Print(Fraction.FromValue(weight), 0))
                );
            }
        }
    }

    private static IEnumerable<Finding> FullStands(StandCrowding stand) =>
        stand.Kinds == 1
            ? []
            : stand
                .Blend.Parts.Where(p => !Tolerance.IsBelow(p.ShareOfFullStand.Chosen, 1))
                .Select(p =>
                    FindingCatalog.Create(
                        BlendCodes.KindIsFullStand,
                        ("kind", p.Kind.ShortName),
                        ("share", Amounts.Print(p.ShareOfFullStand.Chosen, 2)),
                        ("others", Amounts.Print(stand.Kinds - 1, 0))
                    )
                );

    private static IEnumerable<Finding> Densities(StandCrowding stand)
    {
        double seeds = stand.Blend.LiveSeedsPerSquareFoot;
        return stand
            .Densities.Where(d => Tolerance.IsAbove(seeds, d.Most))
            .Select(d =>
                FindingCatalog.Create(
                    BlendCodes.TooDense,
                    ("seeds", Amounts.Print(seeds, 1)),
                    ("high", Amounts.Print(d.Most, 1)),
                    ("low", Amounts.Print(d.Target.LowPerSquareFoot, 1)),
                    ("context", d.Target.Context)
                )
            );
    }

    private static IEnumerable<Finding> PastureKinds(StandCrowding stand)
    {
        var perennials = stand.Members.Select(m => m.Kind).Where(k => k.LifeCycle == LifeCycle.Perennial).ToArray();
        if (perennials.Length > 0 && stand.Kinds > BlendConstants.All["pasture-kinds"])
        {
            yield return FindingCatalog.Create(
                BlendCodes.ManyKinds,
                ("count", Amounts.Print(stand.Kinds, 0)),
                ("limit", Amounts.Print(BlendConstants.All["pasture-kinds"], 0)),
                ("slow", StandNames.Of(perennials))
            );
        }
    }

    private static string Kinds(StandCrowding stand) => StandNames.Of(stand.Blend.Parts.Select(p => p.Kind));
}
