using System.Globalization;
using PlotAgronomy.Liming;
using UnitsNet;

namespace PlotAgronomy.PlanFiles;

/// <summary>Reads a liming material on offer.</summary>
internal static class LimeOfferReader
{
    internal static LimeOffer? Read(PlanObject offer)
    {
        var moisture = offer.Amount<Fraction>("moisture", Amounts.TryReadPercent) ?? Fraction.Zero;
        var magnesium = offer.Amount<Fraction>("magnesium", Amounts.TryReadPercent);
        var package = offer.PositiveAmount<Mass>("package", Amounts.TryReadMass, m => m.Pounds);
        var sieves = Sieves(offer);
        if (
            offer.Text("name") is not { } name
            || offer.Number("cce") is not double cce
            || offer.Choice("form", PlanVocabulary.LimingForms) is not LimingForm form
            || package is not Mass bag
            || offer.Money("price") is not decimal price
        )
        {
            return null;
        }

        var material = offer.Try("cce", () => LimingMaterial.FromAnalysis(name, form, cce, sieves, moisture, magnesium));
        if (material is not null && offer.Number("poundsEqualToOneTon") is double label)
        {
            var unlabelled = material;
            material = offer.Try("poundsEqualToOneTon", () => unlabelled.WithFigure(LimeFigure.FromNorthCarolinaLabel(label)));
        }

        foreach (var figure in offer.Objects("labelFigures"))
        {
            if (
                material is { } plain
                && figure.Chosen("index", PlanVocabulary.LimeIndices) is { } index
                && figure.Number("value") is double value
            )
            {
                material = figure.Try("value", () => plain.WithFigure(LimeFigure.FromValue(index, value)));
            }
        }

        return material is null ? null : offer.Try("price", () => LimeOffer.InBags(material, bag, price));
    }

    private static SieveAnalysis? Sieves(PlanObject offer)
    {
        var passing = new List<(int Mesh, Fraction Part)>();
        foreach (var sieve in offer.Objects("sieves"))
        {
            if (sieve.Number("mesh") is double mesh && sieve.Amount<Fraction>("passing", Amounts.TryReadPercent) is Fraction part)
            {
                if (mesh != Math.Floor(mesh))
                {
                    sieve.Report("mesh", string.Create(CultureInfo.InvariantCulture, $"a mesh is a whole number, found {mesh}"));
                    continue;
                }

                passing.Add(((int)mesh, part));
            }
        }

        return passing.Count == 0 ? null : offer.Try("sieves", () => SieveAnalysis.FromFractions([.. passing]));
    }
}
