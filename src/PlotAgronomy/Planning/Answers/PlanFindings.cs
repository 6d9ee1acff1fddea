using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Planning;

/// <summary>Every finding of every result behind the sheet.</summary>
internal static class PlanFindings
{
    private static readonly string[] GeneralOnDepth = [SoilCodes.DepthDiffers, SoilCodes.SampleShallow, SoilCodes.SampleDeep];

    internal static IEnumerable<Finding> Of(PlanResults results)
    {
        IWorkedResult?[] answers =
        [
            results.Plan.Site.Measured,
            results.Need,
            results.Lime.Target,
            results.Lime.Printed,
            results.Lime.Check,
            results.Lime.Computed,
            results.Lime.WeaklyBuffered,
            results.Lime.Order,
            results.Lime.Outlook,
            results.Fertilizer,
            results.Blend,
            results.Crowding,
            results.Groups,
            .. results.Passes.SelectMany(p => new IWorkedResult?[] { p.Walk, p.Layout, p.Measured, p.Setting }),
        ];
        return OneOnDepth(
            OnUreaOnlyWhereSpread(
                    results,
                    answers
                        .OfType<IWorkedResult>()
                        .SelectMany(a => a.Findings)
                        .Concat(results.ReportFindings)
                        .Concat(results.Lime.Findings)
                        .Concat(SowingPasses.FindingsFor(results.Plan, results.Passes))
                        .Concat(PurchaseSolver.FindingsFor(results))
                        .Concat(results.Sown.SelectMany(s => OfLot(s, results.Plan.SowingMethod)))
                )
                .ToList()
        );
    }

    /// <summary>The need cautions about urea before a product is chosen; a plan that spreads none drops it.</summary>
    private static IEnumerable<Finding> OnUreaOnlyWhereSpread(PlanResults results, IEnumerable<Finding> findings) =>
        results.Fertilizer?.Lines.Any(l =>
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
        string name = SheetText.Name(sown.Planned.Kind);
        return sown
            .Bulk.Findings.Concat(sown.Planned.Offer.Lot.Cautions(method))
            .Select(f => f.Subject == name ? f : f.About($"{name}, lot {sown.Planned.Offer.Lot.Label}"));
    }

    /// <summary>Where the recommendation system itself remarks on the sampled depth, the general caution would only say it
    /// twice.</summary>
    private static IEnumerable<Finding> OneOnDepth(IReadOnlyList<Finding> findings) =>
        findings.Any(f => f.Code == NutrientCodes.SampleDepth) ? findings.Where(f => !GeneralOnDepth.Contains(f.Code)) : findings;
}
