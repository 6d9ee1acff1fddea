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
            "What a straight material is made of; left out, what has just this analysis (46-0-0 is urea), else a mixture.",
            o => o.Item.Substance == FertilizerMaterial.SubstanceOf(o.Item.Analysis) ? null : o.Item.Substance
        );
        Extra("sulfur", "4 %", "Guaranteed S.", PlantNutrient.Sulfur);
        Extra("magnesium", "11 %", "Guaranteed Mg.", PlantNutrient.Magnesium);
        Extra("boron", "0.5 %", "Guaranteed B.", PlantNutrient.Boron);
        const string Weighs = "Density of a liquid, from its label; needed where the package is a volume.";
        var density = Optional("density", Density("11.1 lb/gal"), Weighs, o => o.Item.LiquidDensity);
        Packed("50 lb");
        Unsaid("a jug weighed by another density than its liquid's", o =>
            o.Package.Volume is not null && o.Package.Density is { } jug && !IsDensityOf(o.Item, jug)
        );

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

            if (at.Has(density) && at.Maybe(density) is null)
            {
                throw PlanPart.Unread();
            }

            var product = at.Try(name, () =>
                at.Maybe(density) is { } heavy
                    ? FertilizerProduct.Liquid(at.Get(name), whole, heavy, at.Maybe(substance))
                    : FertilizerProduct.Create(at.Get(name), whole, at.Maybe(substance))
            );
            return VolumeOf(at) is not { } jug ? InBags(at, product)
                : product.LiquidDensity is { } known ? InJugs(at, product, known, jug)
                : throw AskDensity(at, density);
        });
    }

    private static bool IsDensityOf(FertilizerProduct product, UnitsNet.Density density)
    {
        double ofJug = density.PoundsPerCubicFoot;
        return product.LiquidDensity is { } own && own.PoundsPerCubicFoot.Equals(ofJug);
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
