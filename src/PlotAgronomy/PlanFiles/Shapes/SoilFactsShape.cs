using PlotAgronomy.Nutrients;
using static PlotAgronomy.PlanFiles.Value;

namespace PlotAgronomy.PlanFiles;

/// <summary>What recommendation systems ask beyond the report; what is left out stays unknown.</summary>
internal sealed class SoilFactsShape : PlanShape<PlotSetting>
{
    internal SoilFactsShape()
        : base(
            "soilFacts",
            "What some recommendation systems ask beyond the printed values; a system that needs a fact and is not given it says so."
        )
    {
        var regions = Choice(SoilRegion.All, r => r.Name);
        var region = Optional("region", regions, "Region of the southern states (South Carolina).", s => s.Region);
        var sample = Optional(
            "sampleState",
            Choice(NutrientWords.SampleStates),
            "State in which the laboratory extracted the sample (Iowa).",
            s => s.SampleMoisture
        );
        var supply = Optional(
            "phosphorusSupply",
            Choice(NutrientWords.Supplies),
            "Phosphorus-supplying power of the subsoil (Illinois).",
            s => s.PhosphorusSupply
        );
        var group = Optional(
            "exchangeCapacityGroup",
            Choice(NutrientWords.Supplies, never: SoilSupply.Medium),
            "Whether the soil counts as low or high in exchange capacity (Illinois).",
            s => s.ExchangeCapacityGroup
        );
        var rating = Optional(
            "phosphorusRating",
            Choice(SouthCarolinaSystem.Ratings, r => r),
            "Rating of phosphorus that the laboratory printed (South Carolina).",
            s => s.PrintedPhosphorusRating
        );
        var spans = new PlanChoice<int>([("4 years", 4), ("8 years", 8)]);
        var buildUp = Optional("buildUp", spans, "Years over which a poor soil is built up (Missouri).", s => s.BuildUpYears);
        Unsaid("a class of soil beside the report's", s => s.SoilClass is not null);
        Unsaid("an exchange capacity beside the report's", s => s.ExchangeCapacity is not null);
        Unsaid("potassium of the subsoil", s => s.SubsoilPotassium is not null);

        ReadAs(at =>
            new()
            {
                Region = at.Find(region),
                SampleMoisture = at.Maybe(sample),
                PhosphorusSupply = at.Maybe(supply),
                ExchangeCapacityGroup = at.Maybe(group),
                PrintedPhosphorusRating = at.Find(rating),
                BuildUpYears = at.Maybe(buildUp),
            }
        );
    }
}
