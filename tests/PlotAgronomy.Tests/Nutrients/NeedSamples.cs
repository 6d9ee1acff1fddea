using PlotAgronomy.Nutrients;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>Requests for the need of a plot.</summary>
internal static class NeedSamples
{
    internal static KindShare Kind(string id, double share) => KindShare.FromShare(KindCatalog.Standard.Find(id), share);

    internal static SoilReport NorthCarolina(double phosphorusIndex = 25, double potassiumIndex = 15, params SoilReading[] more) => new()
    {
        Laboratory = "North Carolina",
        SoilClass = SoilClass.Mineral,
        WaterPh = WaterPh.FromValue(6.0),
        Readings = [SystemRequests.PIndex(phosphorusIndex), SystemRequests.KIndex(potassiumIndex), .. more],
    };

    internal static PlotNeedRequest Request(params KindShare[] kinds) => With(RecommendationSystem.NorthCarolina, NorthCarolina(), kinds);

    internal static PlotNeedRequest With(RecommendationSystem system, SoilReport report, params KindShare[] kinds) =>
        new() { Soil = report, Kinds = [.. kinds], System = system, SecondaryRules = [] };

    internal static double Pounds(this PlotNeed need, PlantNutrient nutrient) => need.Find(nutrient)!.AtLeast.PoundsPerAcre;

    internal static bool Has(this PlotNeed need, string code) => need.Findings.Any(f => f.Code == code);
}
