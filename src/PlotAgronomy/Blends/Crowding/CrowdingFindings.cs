using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>The cautions of a crowded or thin stand.</summary>
internal static class CrowdingFindings
{
    internal static IEnumerable<Finding> Of(CrowdingReport report, StandMember[] members) =>
        Totals(report, members)
            .Concat(Groups(report))
            .Concat(FullStands(report))
            .Concat(Densities(report, members))
            .Concat(PastureKinds(report, members));

    private static IEnumerable<Finding> Totals(CrowdingReport report, StandMember[] members)
    {
        var total = report.Total;
        string limit = Amounts.Print(report.MostTotal, 2);
        double most = report.MostTotal * (1 + Tolerance.Dust);
        if (total.Lowest > most)
        {
            yield return FindingCatalog.Create(
                "blend-crowded-at-every-rate",
                ("total", Amounts.Print(total.Lowest, 2)),
                ("limit", limit),
                ("kinds", Kinds(report))
            );
        }
        else if (total.Chosen > most)
        {
            yield return FindingCatalog.Create(
                "blend-crowded",
                ("total", Amounts.Print(total.Chosen, 2)),
                ("limit", limit),
                ("kinds", Kinds(report))
            );
        }

        if (total.Chosen > most && report.Kinds > 1 && members.Select(m => m.Kind.Family).Distinct().Count() == 1)
        {
            yield return FindingCatalog.Create("blend-one-family", ("kinds", Kinds(report)), ("family", members[0].Kind.Family));
        }

        if (total.Highest > total.Lowest * BlendRules.UncertainTotal)
        {
            yield return FindingCatalog.Create(
                "blend-total-uncertain",
                ("low", Amounts.Print(total.Lowest, 2)),
                ("high", Amounts.Print(total.Highest, 2)),
                ("rates", string.Join("; ", report.Blend.Parts.Select(RateUsed)))
            );
        }
    }

    /// <summary>The full rate counted against, with the published ones, such as <c>Chicory 7 (4 to 10)</c>.</summary>
    private static string RateUsed(BlendPart part) =>
        $"{part.Kind.ShortName} {Amounts.Print(part.Component.FullRate.PoundsPerAcre, 2)} "
        + $"({Amounts.Print(part.Component.FullRange.Low.PoundsPerAcre, 2)} to "
        + $"{Amounts.Print(part.Component.FullRange.High.PoundsPerAcre, 2)})";

    private static IEnumerable<Finding> Groups(CrowdingReport report)
    {
        foreach (var group in report.Groups.Where(g => g.Applies && Tolerance.IsAbove(g.Share, g.CareFrom)))
        {
            (string, string)[] places =
            [
                ("group", group.Group),
                ("share", Amounts.Print(group.Share, 2)),
                ("cap", Amounts.Print(group.Cap, 2)),
                ("others", group.MustLiveOn),
            ];
            yield return FindingCatalog.Create(group.IsOverCap ? "blend-group-over-cap" : "blend-group-near-cap", places);
        }
    }

    private static IEnumerable<Finding> FullStands(CrowdingReport report) =>
        report.Kinds == 1
            ? []
            : report
                .Blend.Parts.Where(p => !Tolerance.IsBelow(p.ShareOfFullStand.Chosen, 1))
                .Select(p =>
                    FindingCatalog.Create(
                        "blend-kind-is-full-stand",
                        ("kind", p.Kind.ShortName),
                        ("share", Amounts.Print(p.ShareOfFullStand.Chosen, 2)),
                        ("others", Amounts.Print(report.Kinds - 1, 0))
                    )
                );

    private static IEnumerable<Finding> Densities(CrowdingReport report, StandMember[] members)
    {
        double seeds = report.Blend.LiveSeedsPerSquareFoot;
        foreach (var target in DensityTarget.All)
        {
            bool applies = target.Counted switch
            {
                DensityCount.WholeStand => members.All(m => target.Covers(m.Kind)),
                DensityCount.WholePlot => true,
                _ => false,
            };
            if (applies && Tolerance.IsAbove(seeds, target.HighPerSquareFoot))
            {
                yield return FindingCatalog.Create(
                    "blend-too-dense",
                    ("seeds", Amounts.Print(seeds, 1)),
                    ("high", Amounts.Print(target.HighPerSquareFoot, 1)),
                    ("low", Amounts.Print(target.LowPerSquareFoot, 1)),
                    ("context", target.Context)
                );
            }
        }
    }

    private static IEnumerable<Finding> PastureKinds(CrowdingReport report, StandMember[] members)
    {
        var perennials = members
            .Where(m => m.Kind.LifeCycle == LifeCycle.Perennial)
            .Select(m => m.Kind.ShortName)
            .Distinct()
            .ToArray();
        if (perennials.Length > 0 && report.Kinds > BlendRules.PastureKinds)
        {
            yield return FindingCatalog.Create(
                "blend-many-kinds",
                ("count", Amounts.Print(report.Kinds, 0)),
                ("limit", Amounts.Print(BlendRules.PastureKinds, 0)),
                ("slow", string.Join("; ", perennials))
            );
        }
    }

    private static string Kinds(CrowdingReport report) => string.Join("; ", report.Blend.Parts.Select(p => p.Kind.ShortName));
}
