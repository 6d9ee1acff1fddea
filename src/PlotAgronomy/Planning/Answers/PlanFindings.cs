using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Planning;

/// <summary>Every finding behind the answers.</summary>
internal static class PlanFindings
{
    private static readonly string[] GeneralOnDepth = [SoilCodes.DepthDiffers, SoilCodes.SampleShallow, SoilCodes.SampleDeep];

    /// <summary>On the report, the lime, the fertilizer, the seed, its fit and the passes.</summary>
    internal static IEnumerable<Finding> Of(
        PlotPlan plan,
        SoilAnswer soil,
        PlotNeed need,
        LimeAnswer lime,
        Answer<FertilizerAnswer> bought,
        SeedAnswer? seed,
        Answer<SpreadingAnswer> spread
    )
    {
        var fertilizer = bought.Told;
        var spreading = spread.OrNull();
        IWorkedResult?[] results =
        [
            plan.Pace,
            plan.Plot.Measured,
            need,
            lime.Target,
            lime.Printed,
            lime.Check,
            lime.Computed,
            lime.WeaklyBuffered,
            lime.Order.OrNull(),
            lime.Expected,
            fertilizer.Purchase.OrNull(),
            seed?.Blend,
            seed?.Crowding,
            spreading?.Groups,
            .. (spreading?.Passes ?? []).SelectMany(p =>
                new IWorkedResult?[] { p.Walk, p.Laid.OrNull(), p.Measured, p.Setting.OrNull() }
            ),
            .. PlannedWalks.Of(plan, lime, fertilizer, spreading).Select(w => w.Pass),
            .. soil.WithoutSection,
            .. lime.WithoutSection,
            .. fertilizer.WithoutSection,
            .. seed?.WithoutSection ?? [],
            .. spreading?.WithoutSection ?? [],
        ];
        return OneOnDepth(
            OnUreaOnlyWhereSpread(
                    fertilizer,
                    OfBoronOnce(Of(results))
                        .Concat(soil.ReportFindings)
                        .Concat(lime.Findings)
                        .Concat(spread.Findings)
                        .Concat(bought.Findings)
                        .Concat(NeedSolver.FindingsFor(plan))
                        .Concat(
                            (seed?.Kinds ?? []).SelectMany(s =>
                                OfLot(s, plan.SowingMethod!.Value).Concat(OfTest(s)).Concat(s.OfStock)
                            )
                        )
                )
                .ToList()
        );
    }

    private static IEnumerable<Finding> Of(IEnumerable<IWorkedResult?> results) =>
        results.OfType<IWorkedResult>().SelectMany(r => r.Findings);

    /// <summary>The need cautions about urea before a product is chosen; a plan that spreads none drops it.</summary>
    private static IEnumerable<Finding> OnUreaOnlyWhereSpread(FertilizerAnswer fertilizer, IEnumerable<Finding> findings) =>
        fertilizer
            .Purchase.OrNull()
            ?.Lines.Concat(fertilizer.Later)
            .Any(l =>
                l.Product.Substance
                    is FertilizerSubstance.Urea
                        or FertilizerSubstance.UreaAmmoniumNitrateSolution
                        or FertilizerSubstance.Mixture
            ) == false
            ? findings.Where(f => f.Code != NutrientCodes.UreaNeedsRain)
            : findings;

    /// <summary>The shorter caution says nothing that the longer one does not.</summary>
    private static IEnumerable<Finding> OfBoronOnce(IEnumerable<Finding> findings)
    {
        var all = findings.ToList();
        return all.Exists(f => f.Code == NutrientCodes.BoronToxicity)
            ? all.Where(f => f.Code != FertilizerCodes.BoronNarrow)
            : all;
    }

    /// <summary>What is to be said of one lot says which lot it is.</summary>
    private static IEnumerable<Finding> OfLot(SownKind sown, SowingMethod method)
    {
        string name = sown.Planned.Kind.ShortName;
        return sown
            .Bulk.Findings.Concat(sown.Planned.Offer.Item.Cautions(method))
            .Select(f => f.Subject == name ? f : f.About(sown.Planned.Offer.Item.ToString()));
    }

    private static IEnumerable<Finding> OfTest(SownKind sown) =>
        sown.Test.Findings.Select(f => f.About(sown.Planned.Offer.Item.ToString()));

    /// <summary>Where the recommendation system itself remarks on the sampled depth, the general caution would only say it
    /// twice.</summary>
    private static IEnumerable<Finding> OneOnDepth(IReadOnlyList<Finding> findings) =>
        findings.Any(f => f.Code == NutrientCodes.SampleDepth) ? findings.Where(f => !GeneralOnDepth.Contains(f.Code)) : findings;
}
