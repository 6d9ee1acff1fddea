namespace PlotAgronomy.PlanFiles;

/// <summary>Reads what recommendation systems ask beyond the readings; what is left out stays unknown.</summary>
internal static class SoilFactsReader
{
    /// <summary>What the laboratory knows: how it extracted the sample, the rating it printed.</summary>
    internal static SoilReport OfReport(PlanObject? facts, SoilReport report) =>
        facts is null
            ? report
            : report with
            {
                SampleMoisture = facts.Choice("sampleState", PlanVocabulary.SampleStates),
                PrintedPhosphorusRating = facts.Chosen("phosphorusRating", PlanVocabulary.PhosphorusRatings),
            };

    /// <summary>What a map of soils tells of the plot.</summary>
    internal static Plot OfPlot(PlanObject? facts, Plot plot) =>
        facts is null
            ? plot
            : plot with
            {
                SoilRegion = facts.Chosen("region", PlanVocabulary.Regions),
                PhosphorusSupply = facts.Choice("phosphorusSupply", PlanVocabulary.Supplies),
                ExchangeCapacityGroup = facts.Choice("exchangeCapacityGroup", PlanVocabulary.CapacityGroups),
            };
}
