namespace PlotAgronomy.Planning.Sections;

/// <summary>Every finding of every result behind the sheet.</summary>
internal static class PlanFindings
{
    private static readonly string[] GeneralOnDepth = ["soil-depth-differs", "soil-sample-shallow", "soil-sample-deep"];

    internal static IEnumerable<Finding> Of(PlanResults results)
    {
        IWorkedResult?[] answers =
        [
            results.Plan.Site.Measured, results.Need, results.Lime.Target, results.Lime.Printed, results.Lime.Check, results.Lime.Computed,
            results.Lime.WeaklyBuffered, results.Lime.Order, results.Lime.Outlook,
            results.Fertilizer, results.Blend, results.Crowding, results.Groups,
            .. results.Sown.Select(s => s.Bulk),
            .. results.Passes.SelectMany(p => new IWorkedResult?[] { p.Walk, p.Layout, p.Measured, p.Setting }),
        ];
        return OneOnDepth(answers.OfType<IWorkedResult>().SelectMany(a => a.Findings)
            .Concat(results.ReportFindings)
            .Concat(results.Lime.Findings)
            .Concat(SowingPasses.FindingsFor(results.Plan, results.Passes))
            .Concat(PurchaseSolver.FindingsFor(results))
            .Concat(results.Sown.SelectMany(s => s.Planned.Offer.Lot.Cautions(results.Plan.SowingMethod)))
            .ToList());
    }

    /// <summary>Where the recommendation system itself remarks on the sampled depth, the general caution would only say it twice.</summary>
    private static IEnumerable<Finding> OneOnDepth(IReadOnlyList<Finding> findings) =>
        findings.Any(f => f.Code == "nutrient-sample-depth") ? findings.Where(f => !GeneralOnDepth.Contains(f.Code)) : findings;
}
