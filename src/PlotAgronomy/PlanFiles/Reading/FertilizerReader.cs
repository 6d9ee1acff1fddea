using UnitsNet;

namespace PlotAgronomy.PlanFiles;

/// <summary>Reads a fertilizer on offer.</summary>
internal static class FertilizerReader
{
    private static readonly (string Field, PlantNutrient Nutrient)[] Extras =
    [
        ("sulfur", PlantNutrient.Sulfur),
        ("magnesium", PlantNutrient.Magnesium),
        ("boron", PlantNutrient.Boron),
    ];

    internal static FertilizerProduct? Read(PlanObject offer)
    {
        var analysis = Analysis(offer);
        var package = offer.PositiveAmount<Mass>("package", Amounts.TryReadMass, m => m.Pounds);
        return
            offer.Text("name") is { } name
            && analysis is not null
            && package is Mass mass
            && offer.Money("price") is decimal price
            ? offer.Try("name", () =>
                FertilizerProduct.Create(name, analysis, mass, price, offer.Choice("substance", PlanVocabulary.Substances))
            )
            : null;
    }

    private static FertilizerAnalysis? Analysis(PlanObject offer)
    {
        if (offer.Text("analysis") is not { } text)
        {
            return null;
        }

        if (!FertilizerAnalysis.TryRead(text, out var analysis, out string problem))
        {
            offer.Report("analysis", problem);
            return null;
        }

        foreach (var (field, nutrient) in Extras)
        {
            if (analysis is { } soFar && offer.Amount<Fraction>(field, Amounts.TryReadPercent) is Fraction part)
            {
                analysis = offer.Try(field, () => soFar.With(nutrient, part.Percent));
            }
        }

        return analysis;
    }
}
