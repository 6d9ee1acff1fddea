using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Fertilizers;

/// <summary>What to ask of the dealer and to look at before fertilizer is spread.</summary>
internal static class FertilizerQuestions
{
    internal static OpenQuestion<FertilizerProduct> Offer() =>
        QuestionCatalog.Ask<FertilizerProduct>(FertilizerCodes.AskOffer, [], product => product.ToString());

    internal static OpenQuestion<Temperature> SoilTemperature() =>
        QuestionCatalog.AskNumber(
            FertilizerCodes.AskSoilTemperature,
            fahrenheit => Temperature.FromDegreesFahrenheit(fahrenheit),
            temperature => $"{Amounts.Print(temperature.DegreesFahrenheit, 0)} F"
        );

    internal static OpenQuestion<bool> NearWater() =>
        QuestionCatalog.Ask(FertilizerCodes.AskWater, [true, false], near => near ? "water is near" : "no water is near");
}
