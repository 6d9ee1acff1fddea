using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;
using static PlotAgronomy.PlanFiles.Value;

namespace PlotAgronomy.PlanFiles;

/// <summary>What recommendation systems ask beyond the readings; read as the plan that knows it too.</summary>
internal sealed class SoilFactsShape : PlanShape<Func<PlotPlan, PlotPlan>, PlotPlan>
{
    internal SoilFactsShape()
        : base(
            "soilFacts",
            "What some recommendation systems ask beyond the printed values; "
                + "a system that needs a fact and is not given it says so."
        )
    {
        var regions = Choice(SoilRegion.All, r => r.Name);
        var region = Optional("region", regions, "Region of the southern states (South Carolina).", p => p.Plot.SoilRegion);
        var sample = Optional(
            "sampleState",
            Choice(SoilWords.SampleStates),
            "State in which the laboratory extracted the sample (Iowa).",
            p => p.ReportOrNone.SampleMoisture
        );
        var supply = Optional(
            "phosphorusSupply",
            Choice(SoilWords.Supplies),
            "Phosphorus-supplying power of the subsoil (Illinois).",
            p => p.Plot.PhosphorusSupply
        );
        var group = Optional(
            "exchangeCapacityGroup",
            Choice(SoilWords.Supplies, never: SoilSupply.Medium),
            "Whether the soil counts as low or high in exchange capacity (Illinois).",
            p => p.Plot.ExchangeCapacityGroup
        );
        var rating = Optional(
            "phosphorusRating",
            Choice(SouthCarolinaSystem.Ratings, r => r),
            "Rating of phosphorus that the laboratory printed (South Carolina).",
            p => p.ReportOrNone.PrintedPhosphorusRating
        );
        var spans = new PlanChoice<int>([("4 years", 4), ("8 years", 8)]);
        var buildUp = Optional("buildUp", spans, "Years over which a poor soil is built up (Missouri).", p => p.BuildUpYears);

        ReadAs(at =>
            plan =>
                plan with
                {
                    Plot = plan.Plot with
                    {
                        SoilRegion = at.Find(region),
                        PhosphorusSupply = at.Maybe(supply),
                        ExchangeCapacityGroup = at.Maybe(group),
                    },
                    Report = plan.ReportOrNone with
                    {
                        SampleMoisture = at.Maybe(sample),
                        PrintedPhosphorusRating = at.Find(rating),
                    },
                    BuildUpYears = at.Maybe(buildUp),
                }
        );
    }
}
