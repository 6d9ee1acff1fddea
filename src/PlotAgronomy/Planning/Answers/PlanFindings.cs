using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Planning;

/// <summary>Every finding of every result behind the sheet.</summary>
internal static class PlanFindings
{
    private static readonly string[] GeneralOnDepth = [SoilCodes.DepthDiffers, SoilCodes.SampleShallow, SoilCodes.SampleDeep];

    internal static IEnumerable<Finding> Of(
        PlotPlan plan,
        IEnumerable<Finding> onTheReport,
        PlotNeed need,
        LimeAnswer lime,
        FertilizerAnswer fertilizer,
        SeedAnswer seed,
        SpreadingAnswer spreading
    )
    {
        IWorkedResult?[] answers =
        [
            plan.Plot.Measured,
            need,
            lime.Target,
            lime.Printed,
            lime.Check,
            lime.Computed,
            lime.WeaklyBuffered,
            lime.Order,
            lime.Outlook,
            fertilizer.Purchase,
            seed.Blend,
            seed.Crowding,
            spreading.Groups,
            .. spreading.Passes.SelectMany(p => new IWorkedResult?[] { p.Walk, p.Layout, p.Measured, p.Setting }),
        ];
        return OneOnDepth(
            OnUreaOnlyWhereSpread(
                    fertilizer,
                    answers
                        .OfType<IWorkedResult>()
                        .SelectMany(a => a.Findings)
                        .Concat(onTheReport)
                        .Concat(lime.Findings)
                        .Concat(SpreadingSolver.FindingsFor(plan, spreading.Passes))
                        .Concat(PurchaseSolver.FindingsFor(plan, fertilizer))
                        .Concat(seed.Kinds.SelectMany(s => OfLot(s, plan.SowingMethod)))
                )
                .ToList()
        );
    }

    /// <summary>The need cautions about urea before a product is chosen; a plan that spreads none drops it.</summary>
    private static IEnumerable<Finding> OnUreaOnlyWhereSpread(FertilizerAnswer fertilizer, IEnumerable<Finding> findings) =>
        fertilizer.Purchase?.Lines.Any(l =>
            l.Product.Substance
                is FertilizerSubstance.Urea
                    or FertilizerSubstance.UreaAmmoniumNitrateSolution
                    or FertilizerSubstance.Mixture
        ) == false
            ? findings.Where(f => f.Code != NutrientCodes.UreaNeedsRain)
            : findings;

    /// <summary>What is to be said of one lot says which lot it is.</summary>
    private static IEnumerable<Finding> OfLot(SownKind sown, SowingMethod method)
    {
        string name = sown.Planned.Kind.ShortName;
        return sown
            .Bulk.Findings.Concat(sown.Planned.Offer.Lot.Cautions(method))
            .Select(f => f.Subject == name ? f : f.About($"{name}, lot {sown.Planned.Offer.Lot.Label}"));
    }

    /// <summary>Where the recommendation system itself remarks on the sampled depth, the general caution would only say it
    /// twice.</summary>
    private static IEnumerable<Finding> OneOnDepth(IReadOnlyList<Finding> findings) =>
        findings.Any(f => f.Code == NutrientCodes.SampleDepth) ? findings.Where(f => !GeneralOnDepth.Contains(f.Code)) : findings;
}
