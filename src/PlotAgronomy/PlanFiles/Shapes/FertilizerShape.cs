using System.Globalization;
using PlotAgronomy.Fertilizers;
using static PlotAgronomy.PlanFiles.Value;

namespace PlotAgronomy.PlanFiles;

/// <summary>A fertilizer on offer.</summary>
internal sealed class FertilizerShape : OfferShape<FertilizerProduct>
{
    /// <summary>Nutrients that have a field of their own.</summary>
    private readonly List<(PlantNutrient Nutrient, PlanField<double> Field, PlanAmount<double> Value)> extras = [];

    internal FertilizerShape()
        : base("fertilizer", "A fertilizer on offer.")
    {
        var name = Required("name", Text("complete 19-19-19"), "Name.", o => o.Item.Name);
        var grade = Text<FertilizerAnalysis>("19-19-19", FertilizerAnalysis.TryRead, Grade);
        var analysis = Required("analysis", grade, "Guaranteed N-P2O5-K2O in percent.", o => o.Item.Analysis);
        var substance = Optional(
            "substance",
            Choice(FertilizerWords.Substances),
            "What a straight material is made of; a mixture when left out.",
            o => o.Item.Substance == FertilizerMaterial.SubstanceOf(o.Item.Analysis) ? null : o.Item.Substance
        );
        Extra("sulfur", "4 %", "Guaranteed S.", PlantNutrient.Sulfur);
        Extra("magnesium", "11 %", "Guaranteed Mg.", PlantNutrient.Magnesium);
        Extra("boron", "0.5 %", "Guaranteed B.", PlantNutrient.Boron);
        Packed("50 lb");
        Unsaid("the density of a liquid", o => o.Item.LiquidDensity is not null);

        ReadAs(at =>
        {
            var whole = at.Get(analysis);
            foreach (var (nutrient, field, _) in extras)
            {
                if (at.Maybe(field) is { } percent)
                {
                    whole = at.Try(field, () => whole.With(nutrient, percent));
                }
            }

            return InBags(at, at.Try(name, () => FertilizerProduct.Create(at.Get(name), whole, at.Maybe(substance))));
        });
    }

    private void Extra(string name, string example, string meaning, PlantNutrient nutrient)
    {
        var value = PercentNumber(example);
        var field = Optional(name, value, meaning, o =>
            HasOwnField(o.Item.Analysis, nutrient) ? o.Item.Analysis.Percent(nutrient) : null
        );
        extras.Add((nutrient, field, value));
    }

    /// <summary>The analysis as a tag prints it, without what stands in a field of its own.</summary>
    private string Grade(FertilizerAnalysis analysis)
    {
        PlantNutrient[] grade = [PlantNutrient.Nitrogen, PlantNutrient.Phosphate, PlantNutrient.Potash];
        var behind = analysis.Holds.Except(grade).Where(n => !HasOwnField(analysis, n));
        return string.Join(
            '-',
            grade
                .Select(n => Digits(analysis.Percent(n)))
                .Concat(behind.Select(n => Digits(analysis.Percent(n)) + PlantNutrients.Symbols[n]))
        );
    }

    /// <summary>Not where its field would not give the figure back to the last digit.</summary>
    private bool HasOwnField(FertilizerAnalysis analysis, PlantNutrient nutrient) =>
        analysis.Percent(nutrient) > 0
        && extras.Exists(e => e.Nutrient == nutrient && e.Value.CanBeWritten(analysis.Percent(nutrient)));

    private static string Digits(double percent) =>
        decimal.Parse(percent.ToString("R", CultureInfo.InvariantCulture), NumberStyles.Float, CultureInfo.InvariantCulture)
            .ToString(CultureInfo.InvariantCulture);
}
