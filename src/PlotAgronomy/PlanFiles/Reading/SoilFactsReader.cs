using PlotAgronomy.Nutrients;

namespace PlotAgronomy.PlanFiles;

/// <summary>Reads what recommendation systems ask beyond the report; what is left out stays unknown.</summary>
internal static class SoilFactsReader
{
    internal static PlotSetting Read(PlanObject report) =>
        report.Object("facts") is not { } facts
            ? PlotSetting.Unknown
            : new PlotSetting
            {
                Region = facts.Chosen("region", PlanVocabulary.Regions),
                SampleMoisture = facts.Choice("sampleState", PlanVocabulary.SampleStates),
                PhosphorusSupply = facts.Choice("phosphorusSupply", PlanVocabulary.Supplies),
                ExchangeCapacityGroup = facts.Choice("exchangeCapacityGroup", PlanVocabulary.CapacityGroups),
                PrintedPhosphorusRating = facts.Chosen("phosphorusRating", PlanVocabulary.PhosphorusRatings),
                BuildUpYears = facts.Choice("buildUp", PlanVocabulary.BuildUpSpans),
            };
}
