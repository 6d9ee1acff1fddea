using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;
using static PlotAgronomy.PlanFiles.Value;

namespace PlotAgronomy.PlanFiles;

/// <summary>What recommendation systems ask beyond the readings: of the report, the plot and the plan. What is left out stays
/// unknown.</summary>
internal sealed class SoilFactsShape : PlanShape<PlanPart, PlotPlan>
{
    private readonly PlanField<SoilRegion> region;
    private readonly PlanField<SampleMoisture> sample;
    private readonly PlanField<SoilSupply> supply;
    private readonly PlanField<SoilSupply> group;
    private readonly PlanField<string> rating;
    private readonly PlanField<int> buildUp;

    internal SoilFactsShape()
        : base(
            "soilFacts",
            "What some recommendation systems ask beyond the printed values; a system that needs a fact and is not given it says so."
        )
    {
        var regions = Choice(SoilRegion.All, r => r.Name);
        region = Optional("region", regions, "Region of the southern states (South Carolina).", p => p.Plot.SoilRegion);
        sample = Optional(
            "sampleState",
            Choice(SoilWords.SampleStates),
            "State in which the laboratory extracted the sample (Iowa).",
            p => p.Report.SampleMoisture
        );
        supply = Optional(
            "phosphorusSupply",
            Choice(SoilWords.Supplies),
            "Phosphorus-supplying power of the subsoil (Illinois).",
            p => p.Plot.PhosphorusSupply
        );
        group = Optional(
            "exchangeCapacityGroup",
            Choice(SoilWords.Supplies, never: SoilSupply.Medium),
            "Whether the soil counts as low or high in exchange capacity (Illinois).",
            p => p.Plot.ExchangeCapacityGroup
        );
        rating = Optional(
            "phosphorusRating",
            Choice(SouthCarolinaSystem.Ratings, r => r),
            "Rating of phosphorus that the laboratory printed (South Carolina).",
            p => p.Report.PrintedPhosphorusRating
        );
        var spans = new PlanChoice<int>([("4 years", 4), ("8 years", 8)]);
        buildUp = Optional("buildUp", spans, "Years over which a poor soil is built up (Missouri).", p => p.BuildUpYears);

        ReadAs(at => at);
    }

    /// <summary>What the laboratory knows: how it extracted the sample, the rating it printed.</summary>
    internal SoilReport OfReport(PlanPart? facts, SoilReport report) =>
        facts is null ? report : report with { SampleMoisture = facts.Maybe(sample), PrintedPhosphorusRating = facts.Find(rating) };

    /// <summary>What a map of soils tells of the plot.</summary>
    internal Plot OfPlot(PlanPart? facts, Plot plot) =>
        facts is null
            ? plot
            : plot with
            {
                SoilRegion = facts.Find(region),
                PhosphorusSupply = facts.Maybe(supply),
                ExchangeCapacityGroup = facts.Maybe(group),
            };

    /// <summary>What the owner chose.</summary>
    internal int? BuildUpYears(PlanPart? facts) => facts?.Maybe(buildUp);
}
